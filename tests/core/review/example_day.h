#pragma once

#include "core/review/day_sheet.h"
#include "tests/support/season_maker.h"

namespace treadwell::review {

/// A day at one bunker: ten loads of 12 t six minutes apart from 12:00 UTC, two of them not weighed, three
/// from a second field; 14 t packs from 11:50 to 13:30 and 10 t half of its time from 12:30.
inline testing_support::SeasonMaker exampleDay() {
    using namespace testing_support;
    using std::chrono::minutes;
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    const Instant noon = at("2026-02-10T12:00:00Z");
    maker.add(entries::SeasonStarted{"Lindenhof", "America/Sao_Paulo"}, start);
    maker.add(entries::SiloDefined{someSilo()}, start);
    farm::Tractor heavy = someTractor(1, 14);
    heavy.hourlyCost = CostRate::fromPerHour(90);
    maker.add(entries::TractorDefined{heavy}, start);
    maker.add(entries::TractorDefined{someTractor(2, 10)}, start);
    for (std::uint8_t i = 1; i <= 2; ++i) {
        maker.add(entries::FieldDefined{{idOf<farm::FieldTag>(i), "Field " + std::to_string(i)}}, start);
        maker.add(
            entries::TruckDefined{
                {idOf<farm::TruckTag>(i), "Truck " + std::to_string(i), AsFedMass::fromTonnes(12), {}}},
            start);
    }
    maker.add(someWork(1, farm::Activity::packing), noon - minutes{10});
    maker.add(someWork(1, farm::Activity::away), noon + minutes{90});
    maker.add(someWork(2, farm::Activity::packing, 0.5), noon + minutes{30});
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(36), {}, idOf<farm::FieldTag>(1), {}, {}},
              noon - minutes{5});
    maker.add(
        entries::DryMatterSample{
            DryMatter::fromPercent(32), entries::DryMatterMethod::meter, idOf<farm::FieldTag>(2), {}, {}},
        noon + minutes{40});
    for (int i = 0; i < 10; ++i) {
        entries::Load load = someLoad(12);
        load.field = idOf<farm::FieldTag>(i < 7 ? 1 : 2);
        load.truck = idOf<farm::TruckTag>(i % 2 == 0 ? 1 : 2);
        if (i < 2) load.source = entries::MassSource::usual;
        if (i == 9) load.truck.reset();
        maker.add(load, noon + i * minutes{6} + minutes{i < 5 ? 0 : 31});
    }
    maker.add(entries::Pause{{}, true, "lunch"}, noon + minutes{25});
    maker.add(entries::Pause{{}, false, ""}, noon + minutes{55});
    maker.add(entries::Note{"Shower at two"}, noon + minutes{80});
    maker.add(entries::CautionShown{"siloGas"}, noon + minutes{81});
    maker.add(
        entries::AdviceDecided{idOf<farm::SiloTag>(1), "pack:Tractor 2", entries::AdviceDecision::accepted,
                               DryDensity::fromSi(212), DryDensity::fromSi(236), Chance::fromPercent(36),
                               Chance::fromPercent(61)},
        noon + minutes{29});
    maker.add(entries::HeightSurvey{idOf<farm::SiloTag>(1),
                                    {{Length{}, Length{}, Length::fromMetres(1)},
                                     {Length{}, Length{}, Length::fromMetres(2)},
                                     {Length{}, Length{}, Length::fromMetres(1.8)}}},
              noon + minutes{85});
    return maker;
}

inline LocalDay exampleDate() {
    using namespace std::chrono_literals;
    return LocalDay{2026y, std::chrono::February, 10d};
}

inline Document exampleSheet(const testing_support::SeasonMaker& maker = exampleDay(),
                             const char* now = "2026-02-10T13:36:00Z") {
    return daySheet(season::Season::fold(maker.entries), exampleDate(), testing_support::at(now)).value();
}

inline double siOf(const Cell& cell) {
    return std::get<Amount>(cell).si;
}

inline Section sectionOf(const Document& document, std::string_view key) {
    for (const Section& section : document.sections) {
        if (section.key == key) return section;
    }
    throw std::out_of_range("no such section");
}

inline Table tableOf(const Document& document, std::string_view section, std::string_view key) {
    for (const Block& block : sectionOf(document, section).blocks) {
        if (const auto* table = std::get_if<Table>(&block); table != nullptr && table->key == key)
            return *table;
    }
    throw std::out_of_range("no such table");
}

}  // namespace treadwell::review
