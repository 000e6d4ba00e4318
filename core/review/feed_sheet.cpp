#include "core/review/feed_sheet.h"

#include "core/density/codes.h"
#include "core/density/readings.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"
#include "core/review/face_sheet.h"

namespace treadwell::review {

namespace {

Result<face::FeedPlan> planOf(const FeedQuestion& question, const density::Distribution& density) {
    face::FeedPlan plan{question.from, question.perDay, question.dryMatter, {}, {}, {}};
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

Section heatOf(const FeedQuestion& question) {
    Section section{"heat", code::reviewFeedHeat, {}};
    if (!question.behindFace || !question.core) {
        section.blocks.emplace_back(Message{code::reviewNothing, {}});
        return section;
    }
    const bool heats = face::heats(*question.behindFace, *question.core);
    section.blocks.emplace_back(Message{heats ? code::feedHeats : code::feedHeatSeen,
                                        {question.behindFace->amount(), question.core->amount()}});
    return section;
}

}  // namespace

Result<Document> feedSheet(const season::Season& season, const farm::Silo& silo, Instant now,
                           const FeedQuestion& question) {
    const density::Readings readings = density::readingsAt(season, silo.id, now);
    const auto field =
        readings.layers ? fieldOf(season, *readings.layers, density::Filled::asItLies) : std::nullopt;
    if (!field || readings.layers->layers.empty() || !readings.silo.asItLies) {
        return Unexpected{Error{readings.silo.reason.value_or(Message{code::noLoads, {}}), "silo", {}}};
    }
    const auto plan = planOf(question, readings.silo.asItLies->density);
    if (!plan) return Unexpected{plan.error()};
    const auto out =
        face::feedOutOf(season, *readings.layers, *field, *plan, question.week.value_or(question.from));
    if (!out) return Unexpected{out.error()};
    return Document{
        "feedSheet",
        {code::reviewFeedSheet, {season.farm().farm, silo.name}},
        {endOf(question, *plan, *out), weekOf(*out), heatOf(question), faceCautionsOf(silo, now)}};
}

}  // namespace treadwell::review
