#include "core/review/season_review.h"

#include "core/review/codes.h"
#include "core/review/day_view.h"
#include "core/review/laid.h"
#include "core/review/season_view.h"

#include <algorithm>
#include <cmath>

namespace treadwell::review {

namespace {

constexpr std::size_t kWeakestOfSilo = 5;

SeasonView viewOf(const season::Season& season, Instant now) {
    SeasonView view{season, now, {}};
    for (const auto& day : season.days()) {
        for (const season::LoadTipped& load : day->loads) {
            const farm::SiloId silo = load.load.silo;
            if (load.at <= now && !view.readings.contains(silo))
                view.readings.emplace(silo, density::readingsAt(season, silo, now));
        }
    }
    return view;
}

Section daysOf(const SeasonView& view) {
    Table table = dayFiguresTable("days");
    for (const auto& day : view.season.days()) {
        if (day->begin > view.until) break;
        const DayView own{
            .season = view.season,
            .day = *day,
            .until = std::clamp(view.until, day->begin, day->end - std::chrono::microseconds{1})};
        auto row = dayFiguresOf(own, toIso8601(day->date));
        if (std::get<std::int64_t>(row[1]) > 0) table.rows.push_back(std::move(row));
    }
    return {"days", code::reviewDays, {orNothing(std::move(table))}};
}

Section silosOf(const SeasonView& view) {
    Table table{"silos",
                {{"silo", code::columnSilo},
                 {"loads", code::columnLoads},
                 {"mass", code::columnMass},
                 {"dryMass", code::columnDryMass},
                 {"median", code::columnMedian},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh},
                 {"target", code::columnTarget},
                 {"chance", code::columnChance}},
                {}};
    std::vector<Message> said;
    for (const auto& [silo, readings] : view.readings) {
        const season::Delivered& in = readings.rolling.siloIn;
        std::vector<Cell> row{view.nameOf(silo), in.loads, in.mass.amount(), in.dry.amount()};
        if (readings.silo.estimate) {
            appendBand(row, readings.silo.estimate->density);
            row.emplace_back(readings.silo.estimate->target.density.amount());
            row.emplace_back(readings.silo.estimate->chance.amount());
        } else if (readings.silo.reason) {
            said.push_back(*readings.silo.reason);
        }
        row.resize(table.columns.size());
        table.rows.push_back(std::move(row));
    }
    Section section{"silos", code::reviewSilos, {orNothing(std::move(table))}};
    for (Message& message : said) section.blocks.emplace_back(std::move(message));
    return section;
}

/// What each evening's heights gave beside what was estimated just before they were read.
Section eveningsOf(const SeasonView& view) {
    Table table{"evenings",
                {{"silo", code::columnSilo},
                 {"day", code::columnDay},
                 {"measured", code::columnMeasured},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh},
                 {"estimated", code::columnEstimated},
                 {"residual", code::columnResidual}},
                {},
                2};
    double sum = 0.0, squares = 0.0;
    std::int64_t count = 0;
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.surveyed) continue;
        for (const density::MeasuredSilo& survey : readings.surveyed->surveys) {
            if (!survey.whole) continue;
            std::vector<Cell> row{view.nameOf(silo), view.dayOf(survey.at)};
            appendBand(row, survey.whole->density);
            const auto before =
                density::readingsAt(view.season, silo, survey.at - std::chrono::microseconds{1});
            if (before.silo.asItLies) {
                const DryDensity estimated = before.silo.asItLies->density.median();
                const double ratio = survey.whole->density.median() / estimated;
                row.emplace_back(estimated.amount());
                row.emplace_back(Share::fromFraction(ratio - 1.0).amount());
                sum += std::log(ratio);
                squares += std::log(ratio) * std::log(ratio);
                ++count;
            }
            row.resize(table.columns.size());
            table.rows.push_back(std::move(row));
        }
    }
    Section section{"evenings", code::reviewEvenings, {orNothing(std::move(table))}};
    if (count > 0) {
        const double n = static_cast<double>(count);
        section.blocks.emplace_back(Message{code::reviewEveningsMean,
                                            {count, Share::fromFraction(std::exp(sum / n) - 1.0).amount(),
                                             Share::fromFraction(std::sqrt(squares / n)).amount()}});
    }
    return section;
}

Section weakestOf(const SeasonView& view) {
    Table places{"weakPlaces",
                 {{"silo", code::columnSilo},
                  {"day", code::columnDay},
                  {"begin", code::columnBegin},
                  {"end", code::columnEnd},
                  {"median", code::columnMedian},
                  {"low80", code::columnLow},
                  {"high80", code::columnHigh},
                  {"mass", code::columnMass}},
                 {},
                 3};
    Table causes{"causes",
                 {{"silo", code::columnSilo},
                  {"day", code::columnDay},
                  {"begin", code::columnBegin},
                  {"cause", code::columnCause}},
                 {},
                 3};
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.layers) continue;
        for (const density::WeakPlace& place :
             weakestPlaces(view.season, *readings.layers, density::Filled::whenFull, kWeakestOfSilo)) {
            std::vector<Cell> row{view.nameOf(silo), view.dayOf(place.begin), place.begin, place.end};
            appendBand(row, place.density);
            row.emplace_back(place.mass.amount());
            places.rows.push_back(std::move(row));
            for (const Message& cause : place.causes)
                causes.rows.push_back({view.nameOf(silo), view.dayOf(place.begin), place.begin, cause});
        }
    }
    Section section{"weakPlaces", code::reviewWeakPlaces, {orNothing(std::move(places))}};
    if (!causes.rows.empty()) section.blocks.emplace_back(std::move(causes));
    return section;
}

Section furtherByDay(const SeasonView& view) {
    Table table{"further",
                {{"silo", code::columnSilo},
                 {"day", code::columnDay},
                 {"median", code::columnMedian},
                 {"change", code::columnChange},
                 {"changeLow80", code::columnLow},
                 {"changeHigh80", code::columnHigh}},
                {},
                2};
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.layers) continue;
        for (const auto& day : view.season.days()) {
            const density::LayerSpan span = laidBetween(*readings.layers, day->begin, day->end);
            if (span.count == 0 || !day->placed.contains(silo)) continue;
            const auto reading = readingOf(view.season, *readings.layers, span, density::Reading::day);
            const auto effect =
                reading.estimate ? withFurtherTractor(view.season, reading.situation) : std::nullopt;
            if (!effect) continue;
            table.rows.push_back({view.nameOf(silo), toIso8601(day->date),
                                  reading.estimate->density.median().amount(), effect->change.amount(),
                                  effect->low80.amount(), effect->high80.amount()});
        }
    }
    Section section{"further", code::reviewFurther, {orNothing(std::move(table))}};
    section.blocks.emplace_back(Message{code::reviewFurtherHow, {}});
    return section;
}

}  // namespace

Document seasonReview(const season::Season& season, Instant now) {
    const SeasonView view = viewOf(season, now);
    Document review{
        "seasonReview", {code::reviewSeason, {season.farm().farm, toIso8601(season.zone().dayOf(now))}}, {}};
    for (const auto section : {daysOf, silosOf, shiftsSideOf, eveningsOf, limitsOf, weakestOf, furtherByDay})
        review.sections.push_back(section(view));
    return review;
}

}  // namespace treadwell::review
