#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/base/farm_zone.h"
#include "core/base/hash.h"
#include "core/base/hex.h"
#include "core/base/instant.h"
#include "core/base/json_writer.h"
#include "core/base/number_text.h"
#include "core/base/uuid.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace treadwell {
namespace {

using namespace std::chrono;

TEST(Instant, IsoTextRoundTrips) {
    for (const char* text : {"2026-09-15T14:25:30Z", "2026-09-15T14:25:30.2Z", "1970-01-01T00:00:00Z",
                             "1969-12-31T23:59:59.999999Z"}) {
        const auto at = instantFromIso8601(text);
        ASSERT_TRUE(at) << text;
        EXPECT_EQ(toIso8601(*at), text);
    }
}

TEST(Instant, OffsetIsApplied) {
    EXPECT_EQ(toIso8601(*instantFromIso8601("2026-09-15T14:25:30+02:00")), "2026-09-15T12:25:30Z");
    EXPECT_EQ(toIso8601(*instantFromIso8601("2026-09-15T22:25:30-0330")), "2026-09-16T01:55:30Z");
}

TEST(Instant, WhatIsNotAnInstantIsRefused) {
    for (const char* text :
         {"", "2026-09-15", "2026-09-15T14:25:30", "2026-02-30T00:00:00Z", "2026-09-15T24:00:00Z",
          "2026-09-15T14:25:30Z ", "2026-09-15T14:25:30.Z", "-026-09-15T14:25:30Z",
          "9999-12-31T23:59:59-12:00", "0000-01-01T00:00:00+01:00"}) {
        EXPECT_FALSE(instantFromIso8601(text)) << text;
    }
}

TEST(NumberText, IsTheSameInEveryLocaleAndReadsBack) {
    EXPECT_EQ(shortestText(0.1), "0.1");
    EXPECT_EQ(fixedText(1234.567, 1), "1234.6");
    EXPECT_EQ(fixedText(-0.04, 1), "0.0");
    EXPECT_EQ(numberFromText("3.5"), 3.5);
    EXPECT_EQ(numberFromText("+3.5"), 3.5);
}

TEST(NumberText, HalfReadOrNotFiniteIsRefused) {
    for (const char* text : {"3,5", " 3", "3 ", "nan", "inf", "1e999", "", "+", "+-3", "0x10"}) {
        EXPECT_FALSE(numberFromText(text)) << text;
    }
    EXPECT_THROW(static_cast<void>(shortestText(0.0 / 0.0)), std::invalid_argument);
}

// NIST FIPS 180-4 example "abc".
TEST(Sha256, PublishedExample) {
    EXPECT_EQ(toHex(sha256("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(Sha256, StartsAnewAfterFinish) {
    Sha256 hasher;
    const Hash first = hasher.add("abc").finish();
    EXPECT_EQ(hasher.add("abc").finish(), first);
}

TEST(Uuid, VersionSevenCarriesTimeAndRoundTrips) {
    UuidSource source(7);
    // RFC 9562, appendix A.6: 2022-02-22T19:22:22Z is 017F22E2-79B0 in milliseconds.
    const Uuid uuid = source.next(*instantFromIso8601("2022-02-22T19:22:22Z"));
    EXPECT_EQ(uuid.text().substr(0, 15), "017f22e2-79b0-7");
    EXPECT_NE(std::string_view("89ab").find(uuid.text()[19]), std::string_view::npos);
    EXPECT_EQ(Uuid::fromText(uuid.text()), uuid);
    EXPECT_FALSE(Uuid::fromText("017f22e2-79b0-7cc3-98c4-dc0c0c07398"));
    EXPECT_FALSE(Uuid::fromText("017f22e2-79b0-7cc3-98c4-dc0c0c07398g"));
}

TEST(FarmZone, DaysFollowTheFarmNotTheMachine) {
    const FarmZone zone = *FarmZone::named("America/Sao_Paulo");
    EXPECT_EQ(toIso8601(zone.dayOf(*instantFromIso8601("2026-02-10T01:30:00Z"))), "2026-02-09");
    EXPECT_EQ(clockText(zone, *instantFromIso8601("2026-02-10T01:30:00Z")), "22:30");
    EXPECT_EQ(toIso8601(zone.startOf(*dayFromIso8601("2026-02-10"))), "2026-02-10T03:00:00Z");
}

TEST(FarmZone, TheHourThatComesTwiceIsTheEarlierAndSaid) {
    const FarmZone zone = *FarmZone::named("Europe/Berlin");
    const auto twice = zone.instantOf(local_days{2026y / October / 25} + hours{2} + minutes{30});
    EXPECT_TRUE(twice.ambiguous);
    EXPECT_EQ(toIso8601(twice.at), "2026-10-25T00:30:00Z");
    const auto skipped = zone.instantOf(local_days{2026y / March / 29} + hours{2} + minutes{30});
    EXPECT_TRUE(skipped.ambiguous);
    EXPECT_EQ(toIso8601(skipped.at), "2026-03-29T01:00:00Z");
}

TEST(FarmZone, UnknownNameIsAnError) {
    const auto zone = FarmZone::named("Nowhere/Atall");
    ASSERT_FALSE(zone);
    EXPECT_EQ(zone.error().code(), code::zoneUnknown);
}

TEST(JsonWriter, NestsAndEscapes) {
    JsonWriter json;
    json.beginObject().member("a", 1).key("b").beginArray().value(0.5).value("q\"\n").null().endArray();
    json.member("c", true).endObject();
    EXPECT_EQ(json.text(), R"({"a":1,"b":[0.5,"q\"\n",null],"c":true})");
}

class AtomicFile : public testing::Test {
  protected:
    std::filesystem::path folder =
        std::filesystem::temp_directory_path() /
        ("treadwell_atomic_" + std::to_string(::testing::UnitTest::GetInstance()->random_seed()) + "_" +
         std::to_string(getpid()));
    void SetUp() override { std::filesystem::create_directories(folder); }
    void TearDown() override { std::filesystem::remove_all(folder); }
};

TEST_F(AtomicFile, ReplacesWholeAndLeavesNothingBeside) {
    const auto path = folder / "file";
    ASSERT_TRUE(writeFileAtomically(path, "one"));
    ASSERT_TRUE(writeFileAtomically(path, "two"));
    EXPECT_EQ(readFile(path), "two");
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder), {}), 1);
    EXPECT_EQ(std::filesystem::status(path).permissions(), std::filesystem::perms(0600));
}

TEST_F(AtomicFile, FailureSaysWhichFileAndWhy) {
    const auto written = writeFileAtomically(folder / "none" / "file", "x");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code(), code::fileUnwritable);
    EXPECT_FALSE(readFile(folder));
    EXPECT_FALSE(readFile(folder / "absent"));
}

}  // namespace
}  // namespace treadwell
