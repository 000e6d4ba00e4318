#include "core/review/face_sheet.h"

#include "core/attention/cautions.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <cmath>

namespace treadwell::review {

namespace {

template <class Q>
void append(std::vector<Cell>& row, const std::optional<Q>& quantity) {
    if (quantity) {
        row.emplace_back(quantity->amount());
    } else {
        row.emplace_back();
    }
}

Section coresOf(const season::Season& season, const face::Face& face) {
    Table table{"cores",
                {{"day", code::columnDay},
                 {"along", code::columnAlong},
                 {"across", code::columnAcross},
                 {"up", code::columnUp},
                 {"origin", code::columnOrigin},
                 {"measured", code::columnMeasured},
                 {"predicted", code::columnPredicted},
                 {"residual", code::columnResidual},
                 {"learnt", code::columnLearnt}},
                {},
                4};
    std::vector<Message> said;
    for (const face::FaceCore& core : face.cores) {
        std::vector<Cell> row{toIso8601(season.zone().dayOf(core.core.at)), core.core.what.along.amount(),
                              core.core.what.across.amount()};
        append(row, core.up);
        row.emplace_back(Word{enumText(core.core.what.origin)});
        append(row, core.measured);
        append(row, core.predicted);
        const auto residual = core.residual();
        append(row, residual ? std::optional{Share::fromFraction(*residual)} : std::nullopt);
        append(row, core.learnt ? std::optional{core.learnt->median()} : std::nullopt);
        table.rows.push_back(std::move(row));
        if (core.reason) said.push_back(*core.reason);
    }
    Section section{"cores", code::reviewCores, {orNothing(std::move(table))}};
    for (Message& message : said) section.blocks.emplace_back(std::move(message));
    return section;
}

/// What the measurements of the season did to this silo's readings.
Section learntOf(const season::Season& season, const farm::Silo& silo, Instant now) {
    Section section{"learnt", code::reviewLearnt, {}};
    for (const Message& message : density::readingsAt(season, silo.id, now).learnt)
        section.blocks.emplace_back(message);
    if (section.blocks.empty()) section.blocks.emplace_back(Message{code::reviewNothing, {}});
    return section;
}

Section mapOf(const face::Face& face) {
    Section section{"map", code::reviewFaceMap, {}};
    if (!face.map) {
        section.blocks.emplace_back(*face.reason);
        return section;
    }
    const face::FaceMap& map = *face.map;
    const stats::Resemblance& resemblance = map.fit.resemblance;
    section.blocks.emplace_back(
        Message{code::reviewMapOf, {map.along.amount(), static_cast<std::int64_t>(map.cores)}});
    section.blocks.emplace_back(Message{code::reviewMapFit,
                                        {Length::fromMetres(resemblance.range).amount(),
                                         Share::fromFraction(std::sqrt(resemblance.variance)).amount(),
                                         Share::fromFraction(std::sqrt(resemblance.noise)).amount()}});
    if (!map.fit.converged) section.blocks.emplace_back(Message{code::reviewMapNotConverged, {}});
    section.blocks.emplace_back(
        Message{code::reviewLeftOut,
                {Share::fromFraction(map.leftOutLogSd).amount(),
                 static_cast<std::int64_t>(map.leftOutWithin80), static_cast<std::int64_t>(map.cores)}});
    Table table{"map",
                {{"across", code::columnAcross},
                 {"up", code::columnUp},
                 {"median", code::columnMeasured},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh},
                 {"predicted", code::columnPredicted},
                 {"predictedLow80", code::columnLow},
                 {"predictedHigh80", code::columnHigh}},
                {},
                2};
    for (const face::MapCell& cell : map.cells) {
        std::vector<Cell> row{cell.across.amount(), cell.up.amount(), cell.measured.median().amount(),
                              cell.measured.low80().amount(), cell.measured.high80().amount()};
        if (cell.predicted) {
            for (const Amount amount : {cell.predicted->median().amount(), cell.predicted->low80().amount(),
                                        cell.predicted->high80().amount()}) {
                row.emplace_back(amount);
            }
        }
        row.resize(table.columns.size());
        table.rows.push_back(std::move(row));
    }
    section.blocks.emplace_back(std::move(table));
    return section;
}

}  // namespace

Section faceCautionsOf(const farm::Silo& silo, Instant now) {
    Section section{"cautions", code::reviewFaceCautions, {}};
    const attention::CautionSituation open{.stage = attention::Stage::open};
    for (const attention::CautionNow& caution : attention::cautionsFor(silo, open, now)) {
        section.blocks.emplace_back(caution.message);
    }
    section.blocks.emplace_back(attention::standingText());
    return section;
}

Document faceSheet(const season::Season& season, const farm::Silo& silo, Instant now,
                   const face::Face& face) {
    return {"faceSheet",
            {code::reviewFaceSheet, {season.farm().farm, silo.name}},
            {faceCautionsOf(silo, now), coresOf(season, face), learntOf(season, silo, now), mapOf(face)}};
}

}  // namespace treadwell::review
