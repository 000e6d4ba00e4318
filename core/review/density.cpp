#include "core/density/readings.h"
#include "core/review/day_view.h"

namespace treadwell::review {

namespace {

void addReading(Table& table, std::vector<Message>& remarks, const std::string& silo, Code what,
                const density::SiloReading& reading) {
    if (!reading.estimate) {
        remarks.push_back({Code::reviewNoEstimate, {what}});
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
    Section section{"density", Code::reviewDensity, {}};
    Table table{"readings",
                {{"silo", Code::columnSilo},
                 {"reading", Code::columnReading},
                 {"median", Code::columnMedian},
                 {"low80", Code::columnLow},
                 {"high80", Code::columnHigh},
                 {"target", Code::columnTarget},
                 {"chance", Code::columnChance},
                 {"porosity", Code::columnPorosity},
                 {"porosityLow80", Code::columnPorosityLow},
                 {"porosityHigh80", Code::columnPorosityHigh},
                 {"packing", Code::columnPackingTime}},
                {}};
    std::vector<Message> remarks;
    for (const auto& [silo, readings] : view.readings) {
        const std::string name = nameText(view.day.farm().silos, silo);
        std::vector<Message> own;
        addReading(table, own, name, Code::readingToday, readings.today);
        addReading(table, own, name, Code::readingSilo, readings.silo);
        if (readings.silo.estimate) {
            const std::vector<Message>& warnings = readings.silo.estimate->warnings;
            own.insert(own.end(), warnings.begin(), warnings.end());
        }
        if (!own.empty()) remarks.push_back({Code::reviewOfSilo, {name}});
        remarks.insert(remarks.end(), own.begin(), own.end());
    }
    section.blocks.push_back(orNothing(std::move(table)));
    for (Message& remark : remarks) section.blocks.emplace_back(std::move(remark));
    return section;
}

}  // namespace treadwell::review
