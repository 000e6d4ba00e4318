#include "app/cli/plan.h"
#include "core/plan/codes.h"
#include "core/plan/feeds.h"
#include "core/plan/seals.h"
#include "core/quantity/product.h"

namespace treadwell::cli {

namespace {

PlanTable sealTable(const std::vector<plan::Seal>& seals) {
    PlanTable result{"seals", "Covering, in order of filling", {}};
    result.table.columns = {{"silo", "Silo"},
                            {"full", "Full on"},
                            {"treatment", "Treatment", Dimension::productVolume},
                            {"side_sheets", "Side sheets", Dimension::area},
                            {"sheets", "Sheets"},
                            {"sheet_area", "each film", Dimension::area},
                            {"tyres", "Tyres"},
                            {"crew_time", "Crew at work", Dimension::duration},
                            {"exposed", "Exposed", Dimension::dryMass},
                            {"lost_by_a_day", "lost by a day", Dimension::dryMass},
                            {"cost_of_a_day", "which costs"}};
    for (const plan::Seal& seal : seals)
        result.table.rows.push_back({Name{seal.silo}, toIso8601(seal.full),
                                     ProductVolume::fromLitres(seal.treatment_L).amount(),
                                     seal.sideSheets.amount(), std::int64_t{seal.sheets.count},
                                     seal.sheets.area.amount(), seal.tyres, durationAmount(seal.crewTime),
                                     seal.exposed.amount(), seal.lostByADay.amount(), seal.costOfADay});
    result.remarks = {{code::planSealOrder, {}}, {code::planWaiting, {}}};
    return result;
}

PlanTable feedTable(const plan::FeedPlan& feeds) {
    PlanTable result{"feeds", "Feeding out", {}};
    result.table.columns = {{"silo", "Silo"},
                            {"face", "Face", Dimension::area},
                            {"summer_face", "at most: summer", Dimension::area},
                            {"winter_face", "winter", Dimension::area},
                            {"advance", "A day", Dimension::length},
                            {"left", "Feed", Dimension::dryMass},
                            {"days", "Days"},
                            {"slow_days", "too slow"},
                            {"opens", "Opened from"},
                            {"empty", "Next open by"},
                            {"gas_until", "Silo gas until"},
                            {"effluent", "Effluent", Dimension::productVolume}};
    for (const plan::Feed& feed : feeds.silos) {
        result.table.rows.push_back({Name{feed.silo}, feed.face.amount(), feed.summerFace.amount(),
                                     feed.winterFace.amount(), feed.advance.amount(), feed.left.amount(),
                                     feed.days, std::int64_t{feed.slowDays}, toIso8601(feed.opens),
                                     toIso8601(feed.empty), toIso8601(feed.gasUntil),
                                     ProductVolume::fromLitres(feed.effluent_L).amount()});
        if (feed.slowDays > 0)
            result.remarks.push_back({code::planFaceTooLarge,
                                      {feed.silo, feed.advance.amount(), std::int64_t{feed.slowDays},
                                       feed.summerWidth.amount(), feed.winterWidth.amount()}});
    }
    if (feeds.daysWithout > 0)
        result.remarks.push_back({code::planDaysWithoutFeed, {std::int64_t{feeds.daysWithout}}});
    return result;
}

}  // namespace

PlanView sealsView(const plan::Inputs& inputs) {
    return plan::sealsOf(inputs).map(
        [](const std::vector<plan::Seal>& seals) { return std::vector{sealTable(seals)}; });
}

PlanView feedsView(const plan::Inputs& inputs) {
    return plan::feedsOf(inputs).map(
        [](const plan::FeedPlan& feeds) { return std::vector{feedTable(feeds)}; });
}

}  // namespace treadwell::cli
