#include "core/density/readings.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

namespace treadwell::review {

namespace {

void addReading(Table& table, std::vector<Message>& remarks, const std::string& silo, Code what,
                const density::SiloReading& reading) {
    if (!reading.estimate) {
        remarks.push_back({code::reviewNoEstimate, {what}});
        if (reading.reason) remarks.push_back(*reading.reason);
        return;
    }
    const density::Estimate& estimate = *reading.estimate;
    table.rows.push_back({silo, Message{what, {}}, estimate.density.median().amount(),
                          estimate.density.low80().amount(), estimate.density.high80().amount(),
                          estimate.target.density.amount(), estimate.chance.amount(),
                          estimate.porosity.median().amount(), estimate.porosity.low80().amount(),
                          estimate.porosity.high80().amount(), estimate.packing.allTime.amount()});
}

}  // namespace

Section densityOf(const DayView& view) {
    Section section{"density", code::reviewDensity, {}};
    Table table{"readings",
                {{"silo", code::columnSilo},
                 {"reading", code::columnReading},
                 {"median", code::columnMedian},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh},
                 {"target", code::columnTarget},
                 {"chance", code::columnChance},
                 {"porosity", code::columnPorosity},
                 {"porosityLow80", code::columnPorosityLow},
                 {"porosityHigh80", code::columnPorosityHigh},
                 {"packing", code::columnPackingTime}},
                {},
                2};
    std::vector<Message> remarks;
    for (const auto& [silo, readings] : view.readings) {
        const std::string name = nameText(view.day.farm().silos, silo);
        std::vector<Message> own;
        addReading(table, own, name, code::readingToday, readings.today);
        addReading(table, own, name, code::readingSilo, readings.silo);
        if (readings.silo.estimate) {
            const std::vector<Message>& warnings = readings.silo.estimate->warnings;
            own.insert(own.end(), warnings.begin(), warnings.end());
        }
        if (!own.empty()) remarks.push_back({code::reviewOfSilo, {name}});
        remarks.insert(remarks.end(), own.begin(), own.end());
    }
    section.blocks.push_back(orNothing(std::move(table)));
    for (Message& remark : remarks) section.blocks.emplace_back(std::move(remark));
    return section;
}

}  // namespace treadwell::review
