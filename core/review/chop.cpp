#include "core/review/codes.h"
#include "core/review/day_view.h"
#include "core/samples/particle_size.h"
#include "core/season/sampled.h"

namespace treadwell::review {

namespace {

Message wordOf(samples::Material material) {
    return {material == samples::Material::fresh ? code::materialFresh : code::materialFermented, {}};
}

Message wordOf(samples::Processing processing) {
    switch (processing) {
        case samples::Processing::optimal:
            return {code::processingOptimal, {}};
        case samples::Processing::adequate:
            return {code::processingAdequate, {}};
        case samples::Processing::inadequate:
            break;
    }
    return {code::processingInadequate, {}};
}

/// The table, and below it what was odd about the tests and what the cut needs.
void addSieves(const DayView& view, Section& section) {
    Table table{"chop",
                {{"field", code::columnField},
                 {"tests", code::columnTests},
                 {"cut", code::columnCut},
                 {"meanLength", code::columnMeanLength},
                 {"spread", code::columnSpread},
                 {"on19mm", code::columnOn19},
                 {"on8mm", code::columnOn8},
                 {"on4mm", code::columnOn4},
                 {"below4mm", code::columnBelow4}},
                {}};
    std::vector<Message> said;
    for (const season::ChopOfField& chop : season::chopOf(view.season, view.day, view.until)) {
        const auto size = samples::logNormalSize(chop.parts);
        const bool isSet = chop.setting && chop.setting->length;
        std::vector<Cell> row{nameIn(view.day.farm().fields, chop.field), chop.parts.tests,
                              isSet ? Cell{chop.setting->length->chopAmount()} : Cell{},
                              size ? Cell{size->geometricMean.chopAmount()} : Cell{},
                              size && size->spread ? Cell{*size->spread} : Cell{}};
        for (const samples::JudgedPart& part : samples::judge(chop.parts, chop.ranges).parts)
            row.emplace_back(part.part.amount());
        table.rows.push_back(std::move(row));
        said.insert(said.end(), chop.parts.remarks.begin(), chop.parts.remarks.end());
        for (const Message& advice : chop.advice()) said.push_back(advice);
    }
    section.blocks.push_back(orNothing(std::move(table)));
    for (Message& message : said) section.blocks.emplace_back(std::move(message));
}

void addKernels(const DayView& view, Section& section) {
    const season::KernelsOfDay kernels = season::kernelsOf(view.season, view.day, view.until);
    Table table{"kernels",
                {{"material", code::columnMaterial},
                 {"tests", code::columnTests},
                 {"kernels", code::columnKernels},
                 {"score", code::columnScore},
                 {"processing", code::columnProcessing}},
                {}};
    for (const samples::CupMean& cups : kernels.cups)
        table.rows.push_back(
            {wordOf(cups.material), cups.cups, cups.perCup, Cell{}, wordOf(cups.processing)});
    for (const season::ScoreOfField& score : kernels.scores) {
        table.rows.push_back({wordOf(score.score.material), std::int64_t{1}, Cell{},
                              score.score.score.amount(), wordOf(score.score.processing)});
    }
    if (!table.rows.empty()) section.blocks.emplace_back(std::move(table));
    for (const Message& advice : kernels.advice) section.blocks.emplace_back(advice);
}

}  // namespace

Section chopOf(const DayView& view) {
    Section section{"chop", code::reviewChop, {}};
    addSieves(view, section);
    addKernels(view, section);
    return section;
}

}  // namespace treadwell::review
