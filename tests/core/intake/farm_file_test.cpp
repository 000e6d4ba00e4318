#include "core/intake/farm_file.h"

#include "core/base/codes.h"
#include "core/entries/codes.h"
#include "core/intake/codes.h"
#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

std::string farmFile(const std::string& more) {
    return R"({"format":"treadwell farm","version":1,"begins":"2026-09-14T08:00:00+02:00",)"
           R"("farm":"Ostrelmark farm","zone":"Europe/Berlin")" +
           more + '}';
}

const std::string kField =
    R"({"id":"00000000-0000-0000-0000-000000000006","name":"Quornstieg","crop":"maize"})";

TEST(ReadFarm, BeginsTheSeasonAndDefinesWhatIsThere) {
    const auto intake = readFarm(farmFile(",\"fields\":[" + kField + "]"), Context{});
    ASSERT_TRUE(intake);
    ASSERT_EQ(intake->proposals.size(), 2u);
    EXPECT_EQ(std::get<entries::SeasonStarted>(intake->proposals[0].body),
              (entries::SeasonStarted{"Ostrelmark farm", "Europe/Berlin"}));
    EXPECT_EQ(std::get<entries::FieldDefined>(intake->proposals[1].body).field,
              (farm::Field{idOf<farm::FieldId>(6), "Quornstieg", crop::Crop::maize}));
    for (const Proposal& proposal : intake->proposals)
        EXPECT_EQ(proposal.happened, utc("2026-09-14T06:00:00Z"));
}

TEST(ReadFarm, WhatItDefinesCanBeNamedAfterwards) {
    Context context;
    record(context, *readFarm(farmFile(",\"fields\":[" + kField + "]"), context));
    EXPECT_EQ(context.zone.name(), "Europe/Berlin");
    EXPECT_EQ(context.fields.find("quornstieg", "field"), idOf<farm::FieldId>(6));
    const auto again = readFarm(farmFile(",\"fields\":[" + kField + "]"), context);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->proposals.empty());
    EXPECT_EQ(again->alreadyImported, 2);
}

struct BadFile {
    std::string file;
    Code code;
    const char* field;
};

class BadFiles : public testing::TestWithParam<BadFile> {};

TEST_P(BadFiles, AreRefusedWithTheFieldThatIsWrong) {
    const auto intake = readFarm(GetParam().file, Context{});
    ASSERT_FALSE(intake);
    EXPECT_EQ(intake.error().code(), GetParam().code) << toText(intake.error().code());
    EXPECT_EQ(intake.error().field, GetParam().field);
}

INSTANTIATE_TEST_SUITE_P(
    Farms, BadFiles,
    testing::Values(
        BadFile{"{", code::payloadUnreadable, "payload"}, BadFile{"[]", code::payloadUnreadable, "payload"},
        BadFile{"{}", code::payloadFieldMissing, "format"},
        BadFile{R"({"format":"a list","version":1,"begins":"","farm":"","zone":""})", code::payloadFieldWrong,
                "format"},
        BadFile{R"({"format":"treadwell farm","version":2,"begins":"","farm":"","zone":""})",
                code::farmFileVersion, "version"},
        BadFile{
            R"({"format":"treadwell farm","version":1,"begins":"2026-09-14","farm":"a","zone":"Europe/Berlin"})",
            code::timeUnreadable, "begins"},
        BadFile{
            R"({"format":"treadwell farm","version":1,"begins":"2026-09-14T06:00:00Z","farm":"a","zone":"Mars"})",
            code::zoneUnknown, "zone"},
        BadFile{farmFile(R"(,"colour":"green")"), code::fieldUnknown, "colour"},
        BadFile{farmFile(R"(,"fields":{})"), code::payloadFieldWrong, "fields"},
        BadFile{farmFile(R"(,"fields":[7])"), code::payloadFieldWrong, "fields[0]"},
        BadFile{farmFile(",\"fields\":[" + kField + R"(,{"id":"x","name":"a","crop":"maize"}])"),
                code::payloadFieldWrong, "fields[1].id"},
        BadFile{farmFile(R"(,"trucks":[{"id":"00000000-0000-0000-0000-000000000006","name":"Amsel"}])"),
                code::payloadFieldMissing, "trucks[0].usual_load_kg"},
        BadFile{farmFile(R"(,"trucks":[{"id":"00000000-0000-0000-0000-000000000006","name":"Amsel",)"
                         R"("usual_load_kg":12}])"),
                code::valueOutOfRange, "trucks[0].usualLoad"},
        BadFile{farmFile(R"(,"trucks":[{"color":"red"}])"), code::fieldUnknown, "trucks[0].color"},
        BadFile{farmFile(R"(,"rules":{})"), code::payloadFieldMissing, "rules.dry_matter_high"}));

}  // namespace
}  // namespace treadwell::intake
