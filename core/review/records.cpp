// The sections that list what was recorded as it stands.
#include "core/attention/cautions.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>

namespace treadwell::review {

namespace {

Code wordOf(entries::LayerMethod method) {
    return method == entries::LayerMethod::measured ? code::layerMeasured : code::layerByLoads;
}

}  // namespace

Section pausesOf(const DayView& view) {
    Table table{"pauses",
                {{"begin", code::columnBegin},
                 {"end", code::columnEnd},
                 {"silo", code::columnSilo},
                 {"reason", code::columnReason}},
                {}};
    for (const season::PauseSpan& pause : view.day.pauses) {
        if (pause.begin > view.until) continue;
        const bool over = pause.end && *pause.end <= view.until;
        table.rows.push_back({pause.begin, over ? Cell{*pause.end} : Cell{Message{code::reviewGoesOn, {}}},
                              nameIn(view.day.farm().silos, pause.silo), pause.reason});
    }
    return {"pauses", code::reviewPauses, {orNothing(std::move(table))}};
}

Section layersOf(const DayView& view) {
    Table table{"layers",
                {{"at", code::columnTime},
                 {"silo", code::columnSilo},
                 {"thickness", code::columnThickness},
                 {"method", code::columnMethod}},
                {}};
    for (const season::LayerNote& layer : view.day.layers) {
        if (layer.at > view.until) continue;
        table.rows.push_back({layer.at, nameIn(view.day.farm().silos, std::optional{layer.what.silo}),
                              layer.what.thickness.layerAmount(), Message{wordOf(layer.what.method), {}}});
    }
    return {"layers", code::reviewLayers, {orNothing(std::move(table))}};
}

Section heightsOf(const DayView& view) {
    Table table{"heights",
                {{"at", code::columnTime},
                 {"silo", code::columnSilo},
                 {"readings", code::columnReadings},
                 {"lowest", code::columnLowest},
                 {"mean", code::columnMean},
                 {"highest", code::columnHighest}},
                {}};
    for (const season::Survey& survey : view.day.surveys) {
        const auto& readings = survey.what.readings;
        if (survey.at > view.until || readings.empty()) continue;
        Length sum, lowest = readings.front().height, highest = lowest;
        for (const entries::HeightReading& reading : readings) {
            sum += reading.height;
            lowest = std::min(lowest, reading.height);
            highest = std::max(highest, reading.height);
        }
        const auto count = static_cast<std::int64_t>(readings.size());
        table.rows.push_back({survey.at, nameIn(view.day.farm().silos, std::optional{survey.what.silo}),
                              count, lowest.amount(), (sum / static_cast<double>(count)).amount(),
                              highest.amount()});
    }
    return {"heights", code::reviewHeights, {orNothing(std::move(table))}};
}

/// What was taken from silos that are open already, and how warm they were.
Section feedingOf(const DayView& view) {
    Table fed{"fed",
              {{"at", code::columnTime},
               {"silo", code::columnSilo},
               {"mass", code::columnFed},
               {"dryMatter", code::columnDryMatter},
               {"face", code::columnFaceTo}},
              {},
              2};
    for (const auto& removed : view.day.records.of<entries::FeedRemoved>()) {
        if (removed.at > view.until) continue;
        fed.rows.push_back({removed.at, nameIn(view.day.farm().silos, std::optional{removed.what.silo}),
                            removed.what.mass.amount(), amountOf(removed.what.dryMatter),
                            amountOf(removed.what.face)});
    }
    Table heat{"heat",
               {{"at", code::columnTime},
                {"silo", code::columnSilo},
                {"behindFace", code::columnBehindFace},
                {"core", code::columnInCore}},
               {},
               2};
    for (const auto& seen : view.day.records.of<entries::FaceTemperature>()) {
        if (seen.at > view.until) continue;
        heat.rows.push_back({seen.at, nameIn(view.day.farm().silos, std::optional{seen.what.silo}),
                             seen.what.behindFace.amount(), seen.what.core.amount()});
    }
    Section section{"feeding", code::reviewFeeding, {orNothing(std::move(fed))}};
    if (!heat.rows.empty()) section.blocks.emplace_back(std::move(heat));
    return section;
}

Section handOverOf(const DayView& view) {
    Table table{"handOver", {{"at", code::columnTime}, {"text", code::columnForNextShift}}, {}};
    for (const auto& said : view.day.records.of<entries::HandOver>()) {
        if (said.at <= view.until) table.rows.push_back({said.at, said.what.text});
    }
    return {"handOver", code::reviewHandOver, {orNothing(std::move(table))}};
}

Section notesOf(const DayView& view) {
    Table table{"notes", {{"at", code::columnTime}, {"note", code::columnNote}}, {}};
    for (const auto& note : view.day.records.of<entries::Note>()) {
        if (note.at <= view.until) table.rows.push_back({note.at, note.what.text});
    }
    return {"notes", code::reviewNotes, {orNothing(std::move(table))}};
}

Section cautionsOf(const DayView& view) {
    Table table{"shown", {{"at", code::columnTime}, {"caution", code::columnCaution}}, {}};
    for (const auto& note : view.day.records.of<entries::CautionShown>()) {
        if (note.at <= view.until) table.rows.push_back({note.at, note.what.caution});
    }
    Section section{"cautions", code::reviewCautions, {orNothing(std::move(table))}};
    section.blocks.emplace_back(attention::standingText());
    return section;
}

}  // namespace treadwell::review
