#include "core/review/feed_sheet.h"

#include "core/density/codes.h"
#include "core/density/readings.h"
#include "core/face/removed.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"
#include "core/review/face_sheet.h"

namespace treadwell::review {

namespace {

/// The question with what the log of removals knows; the first day after it.
FeedQuestion filledFrom(FeedQuestion question, const face::FedOut& fed, const FarmZone& zone) {
    if (!question.from && !fed.removals.empty()) question.from = dayAfter(zone.dayOf(fed.removals.back().at));
    if (!question.perDay) question.perDay = fed.perDay(zone);
    if (!question.dryMatter) question.dryMatter = fed.dryMatter;
    if (!question.face) question.face = fed.face;
    return question;
}

Result<face::FeedPlan> planOf(const FeedQuestion& question, const density::Distribution& density) {
    face::FeedPlan plan{*question.from, *question.perDay, *question.dryMatter, {}, {}, {}, question.face};
    if (question.loss) {
        plan.loss = plan.lowLoss = plan.highLoss = *question.loss;
        return plan;
    }
    const auto loss = outcome::lossAt(density.median());
    const auto low = outcome::lossAt(density.high80());
    const auto high = outcome::lossAt(density.low80());
    for (const auto* each : {&loss, &low, &high}) {
        if (!*each) return Unexpected{each->error()};
    }
    plan.loss = *loss;
    plan.lowLoss = *low;
    plan.highLoss = *high;
    return plan;
}

Section endOf(const FeedQuestion& question, const face::FeedPlan& plan, const face::FeedOut& out) {
    Section section{"end", code::reviewFeedEnd, {}};
    section.blocks.emplace_back(
        Message{code::feedPlaced, {out.placed.amount(), out.toFeed.amount(), plan.loss.amount()}});
    section.blocks.emplace_back(Message{question.loss ? code::feedLossGiven : code::feedLossBySurvey,
                                        {plan.lowLoss.amount(), plan.highLoss.amount()}});
    section.blocks.emplace_back(
        Message{code::feedEnds, {toIso8601(out.end), toIso8601(out.earlyEnd), toIso8601(out.lateEnd)}});
    return section;
}

Section weekOf(const face::FeedOut& out) {
    Section section{"week", code::reviewFeedWeek, {}};
    Table table{"week",
                {{"day", code::columnDay},
                 {"from", code::columnFaceFrom},
                 {"to", code::columnFaceTo},
                 {"advance", code::columnAdvance},
                 {"laid", code::columnLaidOn},
                 {"median", code::columnMedian},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh},
                 {"loosest", code::columnLoosest}},
                {}};
    bool slow = false;
    for (const face::FeedDay& day : out.coming) {
        std::string laid;
        for (const LocalDay each : day.laid) laid += (laid.empty() ? "" : " ") + toIso8601(each);
        slow |= day.advance() < face::kLeastAdvance;
        table.rows.push_back({toIso8601(day.day), day.from.amount(), day.to.amount(), day.advance().amount(),
                              std::move(laid), day.density.median().amount(), day.density.low80().amount(),
                              day.density.high80().amount(), day.loosest.amount()});
    }
    section.blocks.push_back(orNothing(std::move(table)));
    if (slow) section.blocks.emplace_back(Message{code::feedSlow, {face::kLeastAdvance.amount()}});
    return section;
}

Section removedOf(const face::FedOut& fed, const FarmZone& zone) {
    Table table{"removed",
                {{"day", code::columnDay},
                 {"mass", code::columnFed},
                 {"dryMatter", code::columnDryMatter},
                 {"face", code::columnFaceTo}},
                {}};
    for (const auto& removal : fed.removals) {
        const entries::FeedRemoved& what = removal.what;
        table.rows.push_back({toIso8601(zone.dayOf(removal.at)), what.mass.amount(), amountOf(what.dryMatter),
                              amountOf(what.face)});
    }
    return {"removed", code::reviewFeedRemoved, {orNothing(std::move(table))}};
}

/// What a silo loses lies below this, also where it was packed and sealed badly (common practice); Ruppel
/// 1992 measured 20 % in his loosest bunkers. Beyond it the log rather than the silo is short.
constexpr Loss kLargestUsualLoss = Loss::fromPercent(30);

/// As fed against as fed and dry matter against dry matter, each on a line of its own.
Section balanceSectionOf(const season::Delivered& in, const density::Field& field, const face::FedOut& fed) {
    Section section{"balance", code::reviewFeedBalance, {}};
    if (fed.removals.empty()) {
        section.blocks.emplace_back(Message{code::reviewNothing, {}});
        return section;
    }
    const auto balance = face::fedBalanceOf(in, field, fed);
    if (!balance) {
        section.blocks.emplace_back(balance.error().message);
        return section;
    }
    section.blocks.emplace_back(
        Message{code::feedShrink,
                {balance->massIn.amount(), balance->massOut.amount(), balance->balance.shrink.amount()}});
    section.blocks.emplace_back(Message{
        code::feedLoss, {balance->dryIn.amount(), balance->dryOut.amount(), balance->balance.loss.amount()}});
    if (balance->balance.loss > kLargestUsualLoss)
        section.blocks.emplace_back(Message{code::feedLossUnlikely, {kLargestUsualLoss.amount()}});
    if (*fed.face > Length{}) section.blocks.emplace_back(Message{code::feedPartByField, {}});
    return section;
}

Section heatOf(const std::vector<season::Dated<entries::FaceTemperature>>& seen, const FarmZone& zone) {
    Section section{"heat", code::reviewFeedHeat, {}};
    Table table{"heat",
                {{"day", code::columnDay},
                 {"at", code::columnTime},
                 {"across", code::columnAcross},
                 {"up", code::columnUp},
                 {"behindFace", code::columnBehindFace},
                 {"core", code::columnInCore}},
                {},
                2};
    for (const auto& each : seen) {
        const entries::FaceTemperature& what = each.what;
        table.rows.push_back({toIso8601(zone.dayOf(each.at)), each.at, amountOf(what.across),
                              amountOf(what.height), what.behindFace.amount(), what.core.amount()});
    }
    if (!seen.empty()) {
        const entries::FaceTemperature& last = seen.back().what;
        section.blocks.emplace_back(
            Message{face::heats(last.behindFace, last.core) ? code::feedHeats : code::feedHeatSeen,
                    {last.behindFace.amount(), last.core.amount()}});
    }
    section.blocks.push_back(orNothing(std::move(table)));
    return section;
}

}  // namespace

Result<Document> feedSheet(const season::Season& season, const farm::Silo& silo, Instant now,
                           const FeedQuestion& asked) {
    const density::Readings readings = density::readingsAt(season, silo.id, now);
    const auto field =
        readings.layers ? fieldOf(season, *readings.layers, density::Filled::asItLies) : std::nullopt;
    if (!field || readings.layers->layers.empty() || !readings.silo.asItLies) {
        return Unexpected{Error{readings.silo.reason.value_or(Message{code::noLoads, {}}), "silo", {}}};
    }
    const FarmZone& zone = season.zone();
    const face::FedOut fed = face::fedOutOf(season, silo.id, now);
    const FeedQuestion question = filledFrom(asked, fed, zone);
    Document sheet{"feedSheet", {code::reviewFeedSheet, {season.farm().farm, silo.name}}, {}};
    if (question.from && question.perDay && question.dryMatter) {
        const auto plan = planOf(question, readings.silo.asItLies->density);
        if (!plan) return Unexpected{plan.error()};
        const auto out =
            face::feedOutOf(season, *readings.layers, *field, *plan, question.week.value_or(*question.from));
        if (!out) return Unexpected{out.error()};
        sheet.sections = {endOf(question, *plan, *out), weekOf(*out)};
    } else {
        sheet.sections = {{"end", code::reviewFeedEnd, {Message{code::feedNoPlan, {}}}}};
    }
    sheet.sections.push_back(balanceSectionOf(readings.rolling.siloIn, *field, fed));
    sheet.sections.push_back(removedOf(fed, zone));
    sheet.sections.push_back(heatOf(face::faceTemperaturesOf(season, silo.id, now), zone));
    sheet.sections.push_back(faceCautionsOf(silo, now));
    return sheet;
}

}  // namespace treadwell::review
