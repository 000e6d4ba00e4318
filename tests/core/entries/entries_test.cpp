#include "core/entries/body.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <limits>

namespace treadwell::entries {
namespace {

using namespace testing_support;

Load fullLoad() {
    Load load = someLoad(12.34);
    load.truck = idOf<farm::TruckTag>(2);
    load.field = idOf<farm::FieldTag>(3);
    load.ticket = "A \"17\"";
    load.evidence = sha256("row");
    load.timeSpread = Seconds{90};
    return load;
}

/// One of each kind, every optional field filled.
std::vector<Body> oneOfEach() {
    farm::Tractor tractor = someTractor(1, 14);
    tractor.hourlyCost = CostRate::fromPerHour(80);
    farm::Truck truck;
    truck.name = "Red";
    truck.boxVolume = Volume::fromCubicMetres(40);
    farm::Field field;
    field.crop = crop::Crop::lucerne;
    farm::SiteRules rules;
    rules.fillingDensity = DryDensity::fromKilogramsPerCubicMetre(210);
    const DryMatterSample sample{DryMatter::fromPercent(35), DryMatterMethod::microwave,
                                 idOf<farm::FieldTag>(3), AsFedMass::fromKilograms(0.1),
                                 DryMass::fromKilograms(0.035)};
    const Instant begin = at("2026-02-10T03:00:00Z");
    const HeightReading reading{Length::fromMetres(1), Length::fromMetres(2), Length::fromMetres(1.5)};
    const auto silo = idOf<farm::SiloTag>(1);
    Core core;
    core.silo = silo;
    core.along = Length::fromMetres(12);
    core.height = Length::fromMetres(1.2);
    core.dryMatter = DryMatter::fromPercent(34);
    core.mass = AsFedMass::fromKilograms(0.4536);
    core.diameter = Length::fromMetres(0.0508);
    core.length = Length::fromMetres(0.3048);
    return {SeasonStarted{"Farm", "America/Sao_Paulo"},
            SiloDefined{someSilo()},
            TractorDefined{tractor},
            TruckDefined{truck},
            FieldDefined{field},
            RulesSet{rules},
            fullLoad(),
            sample,
            someWork(4, farm::Activity::spreading, 0.5),
            LayerSeen{silo, Length::fromCentimetres(15), LayerMethod::loadsPerCover},
            HeightSurvey{silo, {reading, reading}},
            core,
            Pause{silo, false, "lunch"},
            Note{"rain\n"},
            VoidEntry{"twice"},
            DayClosed{*dayFromIso8601("2026-02-10"), begin, begin + std::chrono::hours{24}},
            AdviceDecided{silo, "addTractor", AdviceDecision::accepted, {}, {}, {}, {}},
            CautionShown{"siloGas"},
            RowSetAside{"tickets.csv", "tickets", 7, 4, "truck", "nameUnknown", "No truck is called Zebra",
                        sha256("row")}};
}

TEST(Body, EveryKindReadsBackAsItWasWritten) {
    const std::vector<Body> bodies = oneOfEach();
    EXPECT_EQ(bodies.size(), std::variant_size_v<Body> - 1);
    for (std::size_t i = 0; i < bodies.size(); ++i) {
        EXPECT_EQ(bodies[i].index(), i + 1);
        const auto [kind, version] = kindOf(bodies[i]);
        const std::string payload = encode(bodies[i]);
        const auto read = decode(kind, version, payload);
        ASSERT_TRUE(read) << kind << ' ' << payload << ' ' << read.error().field;
        EXPECT_EQ(*read, bodies[i]) << payload;
        EXPECT_EQ(encode(*read), payload);
    }
}

TEST(Body, CanonicalFormIsSortedAndShort) {
    EXPECT_EQ(encode(LayerSeen{idOf<farm::SiloTag>(1), Length::fromMetres(0.15), LayerMethod::measured}),
              R"({"method":"measured","silo":"00000000-0000-0000-0000-000000000001","thickness_m":0.15})");
}

TEST(Body, RulesFromBeforeTheFillingDensityFillAtTheMinimum) {
    const std::string old =
        R"({"rules":{"dry_matter_high":0.36,"dry_matter_low":0.34,"maximum_layer_m":0.15,)"
        R"("minimum_density_kg_dm_m3":230,"porosity_goal":0.4,"rate_window_s":3600,"sample_interval_s":3600,)"
        R"("wanted_chance":0.5}})";
    const auto read = decode(RulesSet::kKind, RulesSet::kVersion, old);
    ASSERT_TRUE(read) << read.error().field;
    EXPECT_DOUBLE_EQ(std::get<RulesSet>(*read).rules.usualFilling().kilogramsPerCubicMetre(), 230);
    EXPECT_EQ(encode(*read), old);
}

TEST(Body, UnknownKindsAndNewerVersionsAreKeptUnread) {
    EXPECT_EQ(decode("moonPhase", 1, "{}"), Body{});
    EXPECT_EQ(decode("note", 2, "{}"), Body{});
    EXPECT_THROW(static_cast<void>(kindOf(Body{})), std::logic_error);
}

TEST(Body, WhatCannotBeReadNamesTheField) {
    EXPECT_EQ(decode("note", 1, "{\"text\":").error().code(), Code::payloadUnreadable);
    EXPECT_EQ(decode("note", 1, "[]").error().code(), Code::payloadUnreadable);
    const auto missing = decode("note", 1, "{}");
    EXPECT_EQ(missing.error().code(), Code::payloadFieldMissing);
    EXPECT_EQ(missing.error().field, "text");
    const auto wrong = decode("note", 1, R"({"text":3})");
    EXPECT_EQ(wrong.error().code(), Code::payloadFieldWrong);
    const auto nested = decode(
        "height_survey", 1, R"({"silo":"00000000-0000-0000-0000-000000000001","readings":[{"along_m":1}]})");
    EXPECT_EQ(nested.error().code(), Code::payloadFieldMissing);
    EXPECT_EQ(nested.error().field, "across_m");
}

TEST(Validate, NamesFieldValueAndRange) {
    Load load = fullLoad();
    EXPECT_TRUE(validate(Body{load}));
    load.mass = AsFedMass::fromTonnes(120);
    const auto heavy = validate(Body{load});
    ASSERT_FALSE(heavy);
    EXPECT_EQ(heavy.error().field, "mass");
    EXPECT_EQ(heavy.error().message.arguments.at(0), Argument{load.mass.amount()});
    load.mass = AsFedMass::fromSi(std::numeric_limits<double>::quiet_NaN());
    EXPECT_EQ(validate(Body{load}).error().code(), Code::valueNotFinite);
}

TEST(Validate, TheDishMustAgreeWithTheValue) {
    DryMatterSample sample{DryMatter::fromPercent(40),
                           DryMatterMethod::oven,
                           {},
                           AsFedMass::fromKilograms(0.1),
                           DryMass::fromKilograms(0.035)};
    EXPECT_EQ(validate(sample).error().code(), Code::dishDisagrees);
    sample.dryMatter = DryMatter::fromPercent(35);
    EXPECT_TRUE(validate(sample));
}

TEST(Validate, ATractorAtWorkIsAtASilo) {
    TractorWork work = someWork(4, farm::Activity::packing);
    work.silo.reset();
    EXPECT_EQ(validate(work).error().field, "silo");
    work.activity = farm::Activity::away;
    EXPECT_TRUE(validate(work));
}

TEST(EntryHash, ChangesWithEveryPart) {
    Header header;
    header.kind = "note";
    const Hash base = entryHash({}, header, "{}");
    const auto differs = [&](auto change) {
        Header other = header;
        change(other);
        return entryHash({}, other, "{}") != base;
    };
    EXPECT_TRUE(differs([](Header& h) { h.id.value.bytes[0] = 1; }));
    EXPECT_TRUE(differs([](Header& h) { h.device.value.bytes[0] = 1; }));
    EXPECT_TRUE(differs([](Header& h) { h.deviceSequence = 1; }));
    EXPECT_TRUE(differs([](Header& h) { h.lamport = 1; }));
    EXPECT_TRUE(differs([](Header& h) { h.author.value.bytes[0] = 1; }));
    EXPECT_TRUE(differs([](Header& h) { h.kind = "void"; }));
    EXPECT_TRUE(differs([](Header& h) { h.kindVersion = 2; }));
    EXPECT_TRUE(differs([](Header& h) { h.happened += std::chrono::microseconds{1}; }));
    EXPECT_TRUE(differs([](Header& h) { h.recorded += std::chrono::microseconds{1}; }));
    EXPECT_TRUE(differs([](Header& h) { h.utcOffsetMinutes = 60; }));
    EXPECT_TRUE(differs([](Header& h) { h.target = EntryId{}; }));
    EXPECT_NE(entryHash({1}, header, "{}"), base);
    EXPECT_NE(entryHash({}, header, "{ }"), base);
}

TEST(HappenedBefore, TiesBreakByLamportThenDevice) {
    Header a;
    Header b;
    b.lamport = 1;
    EXPECT_TRUE(happenedBefore(a, b));
    a.lamport = 2;
    EXPECT_TRUE(happenedBefore(b, a));
    a.happened -= std::chrono::seconds{1};
    EXPECT_TRUE(happenedBefore(a, b));
}

}  // namespace
}  // namespace treadwell::entries
