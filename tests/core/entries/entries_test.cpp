#include "core/base/codes.h"
#include "core/entries/body.h"
#include "core/entries/codes.h"
#include "core/entries/payload.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <limits>
#include <set>

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

/// Fills every field, optional ones too, each with a value that no other field has.
class Filler {
  public:
    template <class T>
    void operator()(std::string_view /*key*/, T& target) {
        fill(target);
    }

  private:
    template <class T>
    void fill(T& target) {
        ++m_number;
        if constexpr (isOptional<T>) {
            fill(target.emplace());
        } else if constexpr (isVector<T>) {
            fill(target.emplace_back());
            fill(target.emplace_back());
        } else if constexpr (UnitType<T>) {
            target = T::fromSi(m_number + 0.25);
        } else if constexpr (NamedEnum<T>) {
            target = static_cast<T>(enumTexts(T{}).size() - 1);
        } else if constexpr (isId<T>) {
            target.value.bytes[15] = static_cast<std::uint8_t>(m_number);
        } else if constexpr (std::is_same_v<T, Hash>) {
            target = sha256(std::to_string(m_number));
        } else if constexpr (std::is_same_v<T, Instant>) {
            target = instantFromMicroseconds(m_number);
        } else if constexpr (std::is_same_v<T, LocalDay>) {
            target = *dayFromIso8601("2026-02-10");
        } else if constexpr (std::is_same_v<T, Seconds>) {
            target = Seconds{m_number + 0.5};
        } else if constexpr (std::is_same_v<T, bool>) {
            target = !target;
        } else if constexpr (std::is_same_v<T, std::string>) {
            target = "\"text\" " + std::to_string(m_number) + '\n';
        } else if constexpr (std::is_arithmetic_v<T>) {
            target = static_cast<T>(m_number);
        } else {
            T::fields(*this, target);
        }
    }

    int m_number = 0;
};

/// One of each kind of the variant, filled.
template <class... Kinds>
std::vector<Body> oneOfEach(std::type_identity<std::variant<std::monostate, Kinds...>> /*of*/) {
    const auto filled = []<class Kind>(Kind kind) {
        Filler filler;
        Kind::fields(filler, kind);
        return Body{kind};
    };
    return {filled(Kinds{})...};
}

TEST(Body, EveryKindReadsBackAsItWasWritten) {
    std::set<std::string_view> kinds;
    for (const Body& body : oneOfEach(std::type_identity<Body>{})) {
        const auto [kind, version] = kindOf(body);
        EXPECT_TRUE(kinds.insert(kind).second) << kind << " names two kinds";
        const std::string payload = encode(body);
        const auto read = decode(kind, version, payload);
        ASSERT_TRUE(read) << kind << ' ' << payload << ' ' << read.error().field;
        EXPECT_EQ(*read, body) << payload;
        EXPECT_EQ(encode(*read), payload);
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<Body> - 1);
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
    EXPECT_EQ(decode("note", 1, "{\"text\":").error().code(), code::payloadUnreadable);
    EXPECT_EQ(decode("note", 1, "[]").error().code(), code::payloadUnreadable);
    const auto missing = decode("note", 1, "{}");
    EXPECT_EQ(missing.error().code(), code::payloadFieldMissing);
    EXPECT_EQ(missing.error().field, "text");
    const auto wrong = decode("note", 1, R"({"text":3})");
    EXPECT_EQ(wrong.error().code(), code::payloadFieldWrong);
    const auto nested = decode(
        "height_survey", 1, R"({"silo":"00000000-0000-0000-0000-000000000001","readings":[{"along_m":1}]})");
    EXPECT_EQ(nested.error().code(), code::payloadFieldMissing);
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
    EXPECT_EQ(validate(Body{load}).error().code(), code::valueNotFinite);
}

TEST(Validate, TheDishMustAgreeWithTheValue) {
    DryMatterSample sample{DryMatter::fromPercent(40),
                           DryMatterMethod::oven,
                           {},
                           AsFedMass::fromKilograms(0.1),
                           DryMass::fromKilograms(0.035)};
    EXPECT_EQ(validate(sample).error().code(), code::dishDisagrees);
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

TEST(Validate, AStretchEndsBeyondItsBegin) {
    Cover cover{idOf<farm::SiloTag>(1), CoverStep::sheet, {}};
    EXPECT_TRUE(validate(cover)) << "the whole silo";
    cover.stretch.begin = Length::fromMetres(20);
    EXPECT_TRUE(validate(cover));
    cover.stretch.end = Length::fromMetres(20);
    EXPECT_EQ(validate(cover).error().code(), code::stretchEmpty);
    cover.stretch.end = Length::fromMetres(600);
    EXPECT_EQ(validate(cover).error().field, "end");
}

TEST(Validate, WordsSaySomething) {
    for (const Code said : {validate(HandOver{}).error().code(), validate(Note{}).error().code()})
        EXPECT_EQ(said, code::textEmpty);
}

TEST(Validate, AProductHasANameAndAnAmount) {
    Additive additive{idOf<farm::SiloTag>(1), {"Acid", ProductMass::fromKilograms(25), {}}};
    EXPECT_TRUE(validate(additive));
    additive.dose.mass.reset();
    EXPECT_EQ(validate(additive).error().code(), code::valueMissing);
    additive.dose.volume = ProductVolume::fromLitres(-1);
    EXPECT_EQ(validate(additive).error().field, "volume");
    additive.dose.volume = ProductVolume::fromLitres(20);
    EXPECT_TRUE(validate(additive));
    additive.dose.product.clear();
    EXPECT_EQ(validate(additive).error().field, "product");
}

TEST(Validate, WhatIsRecordedSaysSomething) {
    EXPECT_EQ(validate(Incident{}).error().field, "text");
    EXPECT_TRUE(validate(Incident{IncidentSort::spill, {}, {}, {}})) << "nobody has to type";
    EXPECT_EQ(validate(Shift{}).error().field, "person");
    EXPECT_EQ(validate(SeasonCarried{}).error().field, "from");
    EXPECT_EQ(validate(WeatherSeen{Sky::rain, Length::fromMetres(1), {}, {}}).error().field, "rain");
    EXPECT_TRUE(validate(WeatherSeen{Sky::rain, Length::fromCentimetres(1), {}, {}}));
}

// Every load that nobody sampled takes it over.
TEST(Validate, CarriedDryMatterIsThatOfACrop) {
    SeasonCarried carried;
    carried.from.push_back({"Farm", {}, idOf<EntryTag>(3), {}});
    carried.dryMatter = DryMatter::fromPercent(34);
    EXPECT_TRUE(validate(carried));
    for (const double percent : {0.34, 95.0}) {
        carried.dryMatter = DryMatter::fromPercent(percent);
        EXPECT_EQ(validate(carried).error().field, "dryMatter");
    }
}

TEST(Validate, CarriedEvidenceIsOfASeasonThatIsNamed) {
    SeasonCarried carried;
    carried.from.push_back({"Farm", {}, idOf<EntryTag>(3), {}});
    EXPECT_TRUE(validate(carried));
    DensityEvidence core;
    core.season = idOf<EntryTag>(3).value.text();
    core.measured = core.predicted = DryDensity::fromKilogramsPerCubicMetre(200);
    core.error = 0.01;
    carried.evidence = {{core, core}};
    EXPECT_TRUE(validate(carried));
    carried.evidence->back().error = 2;
    EXPECT_EQ(validate(carried).error().field, "evidence[1].error");
    carried.evidence->front().season.clear();
    EXPECT_EQ(validate(carried).error().field, "evidence[0].season");
}

// One payload of every version that was written by a version of ours and is not written any more.
TEST(OlderVersions, AreStillRead) {
    const auto carried = decode("season_carried", 1,
                                R"({"from":[{"farm":"Two Creeks","head":")" + std::string(64, 'a') +
                                    R"(","season":"0199a3c5-7c00-7000-8000-00000000002a"}]})");
    ASSERT_TRUE(carried);
    const auto& first = std::get<SeasonCarried>(*carried);
    EXPECT_EQ(first.from.at(0).farm, "Two Creeks");
    EXPECT_EQ(first.from.at(0).begins, std::nullopt);
    EXPECT_EQ(first.evidence, std::nullopt);
    EXPECT_TRUE(validate(*carried));
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
