#include "core/intake/typed_entry.h"

#include "core/base/codes.h"
#include "core/entries/codes.h"
#include "core/intake/codes.h"
#include "tests/core/intake/farm_context.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

using Fields = std::vector<TypedField>;

class TypedEntry : public testing::Test {
  protected:
    Result<entries::Body> made(std::string_view kind, const Fields& fields) {
        return typedEntry(*entries::emptyBody(kind), fields, context, ids, utc("2026-09-15T12:00:00Z"));
    }
    template <class Kind>
    Kind madeAs(const Fields& fields) {
        const auto body = made(Kind::kKind, fields);
        EXPECT_TRUE(body) << toText(body.error().code()) << ' ' << body.error().field;
        return std::get<Kind>(*body);
    }

    Context context = farmContext();
    UuidSource ids{1};
};

TEST_F(TypedEntry, ReadsQuantitiesNamesAndWords) {
    const auto load = madeAs<entries::Load>(
        {{"mass", "27000lb"}, {"truck", "Amsel"}, {"source", "weighed"}, {"ticket", "17"}});
    EXPECT_NEAR(load.mass.kilograms(), 12246.99399, 1e-9);
    EXPECT_EQ(load.truck, idOf<farm::TruckId>(4));
    EXPECT_EQ(load.silo, idOf<farm::SiloId>(1)) << "the only silo there is";
    EXPECT_EQ(load.source, entries::MassSource::weighed);
    EXPECT_EQ(load.field, std::nullopt);
    const auto work = madeAs<entries::TractorWork>(
        {{"tractor", "Bison"}, {"silo", "Long bunker"}, {"packing-share", "50%"}});
    EXPECT_EQ(work.packingShare, Share::fromFraction(0.5));
    EXPECT_FALSE(madeAs<entries::Pause>({{"begins", "no"}}).begins);
}

TEST_F(TypedEntry, TimesFollowTheFarmsClock) {
    const auto closed = madeAs<entries::DayClosed>(
        {{"day", "2026-09-15"}, {"begin", "2026-09-15 00:00"}, {"end", "2026-09-16T00:00:00+02:00"}});
    EXPECT_EQ(closed.begin, utc("2026-09-14T22:00:00Z"));
    EXPECT_EQ(closed.end, utc("2026-09-15T22:00:00Z"));
}

TEST_F(TypedEntry, ListsAreNumberedFromOne) {
    const auto survey = madeAs<entries::HeightSurvey>({{"readings.1.along", "5m"},
                                                       {"readings.1.across", "2m"},
                                                       {"readings.1.height", "140cm"},
                                                       {"readings.2.along", "10m"},
                                                       {"readings.2.across", "2m"},
                                                       {"readings.2.height", "1.5m"}});
    ASSERT_EQ(survey.readings.size(), 2u);
    EXPECT_EQ(survey.readings[1].along, Length::fromMetres(10));
    const auto gap = made("height_survey", {{"readings.2.height", "1.5m"}});
    EXPECT_EQ(gap.error().code(), code::typedFieldUnknown) << "the first is missing";
}

TEST_F(TypedEntry, AThingWithoutAnIdGetsOne) {
    const auto first = madeAs<entries::FieldDefined>({{"name", "Quornstieg"}});
    const auto second = madeAs<entries::FieldDefined>({{"name", "Quornstieg"}});
    EXPECT_FALSE(first.field.id.value.isNil());
    EXPECT_NE(first.field.id, second.field.id);
    EXPECT_EQ(madeAs<entries::FieldDefined>({{"id", "Quornstieg"}, {"name", "Q"}}).field.id,
              idOf<farm::FieldId>(6));
}

TEST_F(TypedEntry, SaysWhatIsMissingWrongOrTooMuch) {
    struct Case {
        std::string kind;
        Fields fields;
        Code code;
        std::string field;
    };
    const std::vector<Case> cases{
        {"load", {}, code::valueMissing, "mass"},
        {"load", {{"mass", "12"}}, code::unitMissing, "mass"},
        {"load", {{"mass", "12t"}, {"truck", "Drossel"}}, code::nameUnknown, "truck"},
        {"load", {{"mass", "12t"}, {"source", "guessed"}}, code::wordUnknown, "source"},
        {"load", {{"mass", "12t"}, {"colour", "red"}}, code::typedFieldUnknown, "colour"},
        {"load", {{"mass", "12t"}, {"mass", "13t"}}, code::typedFieldTwice, "mass"},
        {"pause", {{"begins", "maybe"}}, code::wordUnknown, "begins"},
        {"shift", {}, code::valueMissing, "person"},
        {"silo_defined",
         {{"crown", "0m"},
          {"length", "50m"},
          {"name", "New"},
          {"planned_depth", "2.5m"},
          {"ramp_ends", "1.5"}},
         code::textNotNumber,
         "ramp_ends"},
        {"day_closed",
         {{"begin", "2026-09-15T06:00:00+02:00"}, {"day", "today"}},
         code::wallTimeUnreadable,
         "day"},
        {"day_closed", {{"day", "2026-09-15"}, {"begin", "noon"}}, code::wallTimeUnreadable, "begin"},
        {"season_carried", {{"from.1.head", "00ff"}}, code::payloadFieldWrong, "from.1.head"},
    };
    for (const Case& wrong : cases) {
        const auto body = made(wrong.kind, wrong.fields);
        ASSERT_FALSE(body) << wrong.kind << ' ' << wrong.field;
        EXPECT_EQ(body.error().code(), wrong.code) << wrong.kind << ' ' << toText(body.error().code());
        EXPECT_EQ(body.error().field, wrong.field);
    }
}

TEST_F(TypedEntry, AChangeTouchesWhatIsTypedAlone) {
    const auto load = madeAs<entries::Load>({{"mass", "12t"}, {"truck", "Amsel"}, {"ticket", "17"}});
    const Fields change{{"mass", "13t"}, {"truck", ""}};
    const auto changed = typedChange(load, change, context);
    ASSERT_TRUE(changed);
    entries::Load expected = load;
    expected.mass = AsFedMass::fromTonnes(13);
    expected.truck.reset();
    EXPECT_EQ(*changed, entries::Body{expected});
    EXPECT_EQ(typedChange(load, Fields{{"mass", ""}}, context).error().code(), code::textEmpty);
    EXPECT_EQ(typedChange(entries::Body{}, change, context).error().code(), code::typedFieldUnknown);
}

}  // namespace
}  // namespace treadwell::intake
