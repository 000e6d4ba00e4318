#include "core/review/codes.h"
#include "core/review/day_view.h"

namespace treadwell::review {

namespace {

constexpr std::size_t kMostOfSeason = 50;
constexpr std::size_t kMostOfDay = 3;

}  // namespace

std::vector<WeakPlaceOfDay> weakPlacesOn(const DayView& view) {
    std::vector<WeakPlaceOfDay> found;
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.layers) continue;
        std::size_t count = 0;
        for (density::WeakPlace& place :
             weakestPlaces(view.season, *readings.layers, density::Filled::whenFull, kMostOfSeason)) {
            const density::LayerSpan& span = place.layers;
            const Instant last = readings.layers->layers[span.first + span.count - 1].layer->end;
            if (last < view.day.begin || count == kMostOfDay) continue;
            found.push_back({nameText(view.day.farm().silos, silo), std::move(place), count == 0});
            ++count;
        }
    }
    return found;
}

Section weakPlacesOf(const DayView& view) {
    Table places{"weakPlaces",
                 {{"silo", code::columnSilo},
                  {"begin", code::columnBegin},
                  {"end", code::columnEnd},
                  {"mass", code::columnMass},
                  {"median", code::columnMedian},
                  {"low80", code::columnLow},
                  {"high80", code::columnHigh}},
                 {},
                 2};
    Table causes{"causes",
                 {{"silo", code::columnSilo}, {"begin", code::columnBegin}, {"cause", code::columnCause}},
                 {},
                 2};
    for (const WeakPlaceOfDay& weak : weakPlacesOn(view)) {
        const density::WeakPlace& place = weak.place;
        places.rows.push_back({weak.silo, place.begin, place.end, place.mass.amount(),
                               place.density.median().amount(), place.density.low80().amount(),
                               place.density.high80().amount()});
        for (const Message& cause : place.causes) causes.rows.push_back({weak.silo, place.begin, cause});
    }
    Section section{"weakPlaces", code::reviewWeakPlaces, {orNothing(std::move(places))}};
    if (!causes.rows.empty()) section.blocks.emplace_back(std::move(causes));
    return section;
}

}  // namespace treadwell::review
