// The sections that list what was recorded as it stands.
#include "core/attention/cautions.h"
#include "core/review/day_view.h"

#include <algorithm>

namespace treadwell::review {

namespace {

Code wordOf(entries::AdviceDecision decision) {
    switch (decision) {
        case entries::AdviceDecision::shown:
            return Code::adviceWasShown;
        case entries::AdviceDecision::accepted:
            return Code::adviceWasAccepted;
        case entries::AdviceDecision::declined:
            break;
    }
    return Code::adviceWasDeclined;
}

Code wordOf(entries::LayerMethod method) {
    return method == entries::LayerMethod::measured ? Code::layerMeasured : Code::layerByLoads;
}

}  // namespace

Section adviceOf(const DayView& view) {
    Table table{"advice",
                {{"at", Code::columnTime},
                 {"silo", Code::columnSilo},
                 {"advice", Code::columnAdvice},
                 {"decision", Code::columnDecision},
                 {"before", Code::columnBefore},
                 {"after", Code::columnAfter},
                 {"chanceBefore", Code::columnChanceBefore},
                 {"chanceAfter", Code::columnChanceAfter}},
                {}};
    for (const auto& note : view.day.records.of<entries::AdviceDecided>()) {
        if (note.at > view.until) continue;
        const entries::AdviceDecided& what = note.what;
        table.rows.push_back({note.at, nameIn(view.day.farm().silos, std::optional{what.silo}), what.advice,
                              Message{wordOf(what.decision), {}}, what.before.amount(), what.after.amount(),
                              what.chanceBefore.amount(), what.chanceAfter.amount()});
    }
    return {"advice", Code::reviewAdvice, {orNothing(std::move(table))}};
}

Section pausesOf(const DayView& view) {
    Table table{"pauses",
                {{"begin", Code::columnBegin},
                 {"end", Code::columnEnd},
                 {"silo", Code::columnSilo},
                 {"reason", Code::columnReason}},
                {}};
    for (const season::PauseSpan& pause : view.day.pauses) {
        if (pause.begin > view.until) continue;
        const bool over = pause.end && *pause.end <= view.until;
        table.rows.push_back({pause.begin, over ? Cell{*pause.end} : Cell{Message{Code::reviewGoesOn, {}}},
                              nameIn(view.day.farm().silos, pause.silo), pause.reason});
    }
    return {"pauses", Code::reviewPauses, {orNothing(std::move(table))}};
}

Section layersOf(const DayView& view) {
    Table table{"layers",
                {{"at", Code::columnTime},
                 {"silo", Code::columnSilo},
                 {"thickness", Code::columnThickness},
                 {"method", Code::columnMethod}},
                {}};
    for (const season::LayerNote& layer : view.day.layers) {
        if (layer.at > view.until) continue;
        table.rows.push_back({layer.at, nameIn(view.day.farm().silos, std::optional{layer.what.silo}),
                              layer.what.thickness.layerAmount(), Message{wordOf(layer.what.method), {}}});
    }
    return {"layers", Code::reviewLayers, {orNothing(std::move(table))}};
}

Section heightsOf(const DayView& view) {
    Table table{"heights",
                {{"at", Code::columnTime},
                 {"silo", Code::columnSilo},
                 {"readings", Code::columnReadings},
                 {"lowest", Code::columnLowest},
                 {"mean", Code::columnMean},
                 {"highest", Code::columnHighest}},
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
    return {"heights", Code::reviewHeights, {orNothing(std::move(table))}};
}

Section notesOf(const DayView& view) {
    Table table{"notes", {{"at", Code::columnTime}, {"note", Code::columnNote}}, {}};
    for (const auto& note : view.day.records.of<entries::Note>()) {
        if (note.at <= view.until) table.rows.push_back({note.at, note.what.text});
    }
    return {"notes", Code::reviewNotes, {orNothing(std::move(table))}};
}

Section cautionsOf(const DayView& view) {
    Table table{"shown", {{"at", Code::columnTime}, {"caution", Code::columnCaution}}, {}};
    for (const auto& note : view.day.records.of<entries::CautionShown>()) {
        if (note.at <= view.until) table.rows.push_back({note.at, note.what.caution});
    }
    Section section{"cautions", Code::reviewCautions, {orNothing(std::move(table))}};
    section.blocks.emplace_back(attention::standingText());
    return section;
}

}  // namespace treadwell::review
