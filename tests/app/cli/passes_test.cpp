#include "core/base/atomic_file.h"
#include "core/base/number_text.h"
#include "tests/app/cli/json.h"
#include "tests/app/cli/refused.h"

#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>

namespace treadwell::cli {
namespace {

constexpr const char* kWhen = "2026-09-16T15:00:00+02:00";

/// The example season by its second afternoon.
class Passes : public testing::Test {
  protected:
    static void SetUpTestSuite() {
        folder.emplace();
        season = folder->file("season.treadwell");
        EXPECT_EQ(runProgram({"new", season, "--farm", kExamples + "farm.json"}).status, 0);
        EXPECT_EQ(runProgram({"import", season, "--tickets", kExamples + "tickets.csv", "--tractors",
                              kExamples + "tractor_log.csv", "--samples", kExamples + "samples.csv",
                              "--layers", kExamples + "layers.csv"})
                      .status,
                  0);
    }
    static void TearDownTestSuite() { folder.reset(); }

    [[nodiscard]] std::string someTractor() const {
        const std::ifstream in{kExamples + "farm.json"};
        std::stringstream farm;
        farm << in.rdbuf();
        return Json{farm.str()}.text("/tractors/0/name");
    }

    static std::optional<Folder> folder;
    static std::string season;
};

std::optional<Folder> Passes::folder;
std::string Passes::season;

TEST_F(Passes, AReplayStandsBesideTheRegression) {
    const Answered answered = runProgram({"replay", season, "--at", kWhen, "--json"});
    ASSERT_EQ(answered.status, 0) << answered.err;
    const Json json{answered.out};
    const double simulated = json.number("/simulation_kg_dm_m3/median");
    EXPECT_GT(simulated, json.number("/regression_kg_dm_m3/low80"));
    EXPECT_LT(simulated, json.number("/regression_kg_dm_m3/high80"));
    EXPECT_LT(json.number("/simulation_kg_dm_m3/low80"), simulated);
    EXPECT_GT(json.number("/layers/0/passes"), 1.0);
    EXPECT_EQ(answered.out, runProgram({"replay", season, "--at", kWhen, "--json"}).out);
}

TEST_F(Passes, TracksInTheMiddleLeaveItLooser) {
    const auto median = [&](const char* pattern) {
        return Json{runProgram({"replay", season, "--at", kWhen, "--pattern", pattern, "--json"}).out}.number(
            "/simulation_kg_dm_m3/median");
    };
    EXPECT_LT(median("middle"), median("wholeWidth"));
}

TEST_F(Passes, ReplayRefusesWhatItCannotRead) {
    expectRefused({{{"replay", season, "--pattern", "spiral"}, 2, "wholeWidth, middle, anywhere"},
                   {{"replay", season, "--seed", "-1"}, 2, "--seed"},
                   {{"replay", season, "--silo", "Nowhere"}, 2, "none is called \"Nowhere\""}});
}

/// GPX of one drive a metre a second over the example's silo, which lies north from the corner.
std::string driveOver(double across_m, const std::string& hour) {
    std::string text = "<gpx version=\"1.1\" creator=\"test\"><trk><trkseg>\n";
    for (int i = 0; i < 55; ++i) {
        text += "<trkpt lat=\"" + fixedText(51.0 + i / 111250.0, 6) + "\" lon=\"" +
                fixedText(9.0 + across_m / 70200.0, 6) + "\"><time>2026-09-16T" + hour +
                ":00:" + (i < 10 ? "0" : "") + std::to_string(i) + "Z</time><fix>dgps</fix></trkpt>\n";
    }
    return text + "</trkseg></trk></gpx>\n";
}

TEST_F(Passes, TracksAreMatchedToLayersByTheirTime) {
    const std::string track = folder->file("track.gpx", driveOver(7.0, "10"));
    const std::string tractor = someTractor();
    const Answered answered = runProgram({"tracks", season, "--at", kWhen, "--track", track, "--tractor",
                                          tractor, "--corner", "51.0,9.0", "--bearing", "0", "--json"});
    ASSERT_EQ(answered.status, 0) << answered.err;
    const Json json{answered.out};
    EXPECT_EQ(json.number("/tracks/0/fixes"), 55);
    EXPECT_EQ(json.number("/tracks/0/by_quality/differential"), 55);
    EXPECT_GT(json.number("/layers/0/distance_m"), 10);
    // Satellite-corrected positions tell no wheel tracks.
    EXPECT_EQ(json.number("/layers/0/precise_share"), 0);
    EXPECT_EQ(json.number("/layers/0/at_least/passes"), 0);
    EXPECT_GT(json.number("/layers/0/at_most/passes"), 0);
}

TEST_F(Passes, TracksAreDebriefedAsALessonIsAndMapped) {
    const std::string track = folder->file("rtk.gpx", driveOver(7.0, "10"));
    const std::string map = folder->file("map.csv");
    const Json json{runProgram({"tracks", season, "--at", kWhen, "--track", track, "--tractor", someTractor(),
                                "--corner", "51.0,9.0", "--bearing", "0", "--map", map, "--json"})
                        .out};
    EXPECT_EQ(json.number("/least_passes"), 3);
    // Satellite-corrected at best: what is told is that wheels cannot be told.
    EXPECT_EQ(json.text("/findings/0/code"), "debriefCoarse");
    const std::string text = readFile(map).value();
    EXPECT_TRUE(text.starts_with("layer,along_m,across_m,passes,at_least,at_most\r\n"));
    EXPECT_NE(text.find(",,0,1\r\n"), std::string::npos);
    expectRefused({{{"tracks", season, "--at", kWhen, "--track", track, "--tractor", someTractor(),
                     "--corner", "51.0,9.0", "--bearing", "0", "--map", map},
                    1,
                    "is there already"}});
}

TEST_F(Passes, AnAttachedTrackIsReadWhereItLiesAndTellsWhenItMoves) {
    const Folder tracks;
    const std::string attached = tracks.file("season.treadwell");
    std::filesystem::copy_file(season, attached);
    const std::string track = tracks.file("rtk.gpx", driveOver(7.0, "10"));
    expectRefused(
        {{{"tracks", attached, "--at", kWhen}, 1, "No track is attached"},
         {{"attach", attached, "--track", tracks.file("none.gpx"), "--tractor", someTractor()},
          1,
          "cannot be read"},
         {{"attach", attached, "--track", tracks.file("notes.txt", "mown\n"), "--tractor", someTractor()},
          1,
          "no position with a time"},
         {{"attach", attached, "--track", track, "--tractor", "Nobody"}, 2, "--tractor"}});
    const std::vector<std::string> attach{"attach",    attached,      "--track", track,
                                          "--tractor", someTractor(), "--json"};
    const Answered made = runProgram(attach);
    ASSERT_EQ(made.status, 0) << made.err;
    const Json entry{made.out};
    EXPECT_EQ(entry.text("/kind"), "track_attached");
    EXPECT_EQ(entry.text("/happened"), "2026-09-16T10:00:00Z");
    EXPECT_FALSE(entry.truth("/corrects"));
    EXPECT_THAT(entry.text("/text"), testing::HasSubstr("fixes 55"));
    expectRefused({{attach, 1, "attached already"},
                   {{"tracks", attached, "--at", kWhen}, 1, "is not recorded"},
                   {{"tracks", attached, "--at", kWhen, "--corner", "51,9"}, 2, "both or neither"},
                   {{"add", attached, "silo_placed", "latitude=51.0", "longitude=9.0"}, 2, "bearing"}});

    const Answered placed =
        runProgram({"add", attached, "silo_placed", "latitude=51.0000001", "longitude=9", "bearing=0"});
    ASSERT_EQ(placed.status, 0) << placed.err;
    EXPECT_THAT(placed.out, testing::HasSubstr("latitude 51.0000001\u00B0")) << "to the centimetre";
    const std::vector<std::string> read{"tracks", attached, "--at", kWhen, "--json"};
    const Answered answered = runProgram(read);
    ASSERT_EQ(answered.status, 0) << answered.err;
    const Json json{answered.out};
    EXPECT_EQ(json.text("/tracks/0/file"), track);
    EXPECT_GT(json.number("/layers/0/at_most/passes"), 0);

    const std::string elsewhere = tracks.file("moved.gpx");
    std::filesystem::rename(track, elsewhere);
    expectRefused({{read, 1, "no longer lies in"}});
    const Answered again =
        runProgram({"attach", attached, "--track", elsewhere, "--tractor", someTractor(), "--json"});
    ASSERT_EQ(again.status, 0) << again.err;
    EXPECT_TRUE(Json{again.out}.truth("/corrects"));
    EXPECT_EQ(Json{runProgram(read).out}.text("/tracks/0/file"), elsewhere);
    static_cast<void>(tracks.file("moved.gpx", driveOver(6.0, "10")));
    expectRefused({{read, 1, "its content has changed"}});
}

TEST_F(Passes, TracksRefuseWhatTheyCannotPlace) {
    const std::string track = folder->file("track.gpx", "<html></html>");
    const std::vector<std::string> start{"tracks",    season, "--tractor", someTractor(),
                                         "--bearing", "0",    "--track"};
    const auto with = [&](std::vector<std::string> more) {
        std::vector<std::string> all = start;
        all.insert(all.end(), more.begin(), more.end());
        return all;
    };
    expectRefused({{with({track, "--corner", "51 9"}), 2, "--corner"},
                   {with({track, "--corner", "95,9"}), 2, "-89.0 to 89.0"},
                   {with({folder->file("none.nmea"), "--corner", "51,9"}), 1, "cannot be read"},
                   {with({track, "--track", track, "--corner", "51,9"}), 2, "--tractor"},
                   {with({track, "--corner", "51,9"}), 1, "html"}});
}

}  // namespace
}  // namespace treadwell::cli
