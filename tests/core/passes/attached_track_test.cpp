#include "core/passes/attached_track.h"

#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/passes/codes.h"
#include "core/passes/silo_tracks.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace treadwell::passes {
namespace {

using namespace testing_support;
namespace fs = std::filesystem;

const farm::TractorId kTractor = idOf<farm::TractorTag>(1);

/// The published sentences of inputs: GGA with RTK, RMC with the date.
constexpr const char* kDrive =
    "$GNRMC,142530.20,A,4331.21468,N,08930.55012,W,3.24,271.5,150926,,,R*72\r\n"
    "$GNGGA,142530.20,4331.21468,N,08930.55012,W,4,17,0.6,281.432,M,-34.118,M,1.0,0000*68\r\n"
    "$GNGGA,142531.20,4331.21471,N,08930.55177,W,5,15,0.8,281.460,M,-34.118,M,2.0,0000*6A\r\n";

class AttachedTrack : public testing::Test {
  protected:
    AttachedTrack() {
        fs::remove_all(m_folder);
        fs::create_directories(m_folder);
    }
    ~AttachedTrack() override { fs::remove_all(m_folder); }

    fs::path write(const char* name, std::string_view content) const {
        std::ofstream{m_folder / name, std::ios::binary} << content;
        return m_folder / name;
    }

    fs::path m_folder =
        fs::path{testing::TempDir()} /
        (std::string{"track_"} + testing::UnitTest::GetInstance()->current_test_info()->name());
};

TEST_F(AttachedTrack, IsKnownByNamePlaceSizeHashAndSpan) {
    const auto track = lookAtTrack(write("drive.nmea", kDrive), kTractor);
    ASSERT_TRUE(track);
    EXPECT_EQ(track->file, "drive.nmea");
    EXPECT_EQ(track->place, m_folder.string());
    EXPECT_EQ(track->bytes, std::string_view{kDrive}.size());
    // The hash of the same bytes at once.
    EXPECT_EQ(track->sha256, sha256(kDrive));
    EXPECT_EQ(track->fixes, 2);
    EXPECT_EQ(track->begin, instantFromIso8601("2026-09-15T14:25:30.2Z").value());
    EXPECT_EQ(track->end, instantFromIso8601("2026-09-15T14:25:31.2Z").value());
    EXPECT_TRUE(entries::validate(*track));
}

TEST_F(AttachedTrack, RefusesWhatIsNoTrack) {
    const auto refused = [&](const fs::path& file) { return lookAtTrack(file, kTractor).error(); };
    EXPECT_EQ(refused(m_folder / "none.nmea").code(), code::fileUnreadable);
    EXPECT_EQ(refused(m_folder).code(), code::fileUnreadable);
    EXPECT_EQ(refused(write("notes.txt", "no sentence\n")).code(), code::trackWithoutFixes);
    EXPECT_EQ(refused(write("empty.gpx", "")).code(), code::trackWithoutFixes);
    const Error broken = refused(write("broken.gpx", "<gpx><trk>\n<trkseg></trk>"));
    EXPECT_EQ(broken.place.line, 2);
    EXPECT_EQ(broken.place.file, (m_folder / "broken.gpx").string());
    EXPECT_EQ(refused(write("\xFF.nmea", kDrive)).code(), code::fileUnreadable) << "no text to write down";
}

TEST_F(AttachedTrack, IsReadOnlyWhileItIsTheFileThatWasAttached) {
    const fs::path file = write("drive.nmea", kDrive);
    const auto track = lookAtTrack(file, kTractor).value();
    int fixes = 0;
    const auto count = [&](const formats::Fix& /*fix*/) { ++fixes; };
    ASSERT_TRUE(readAttached(track, count));
    EXPECT_EQ(fixes, 2);

    std::string other = kDrive;
    other.replace(other.find("15,0.8"), 2, "14");
    write("drive.nmea", other);  // as long, one digit apart
    EXPECT_EQ(readAttached(track, count).error().code(), code::trackChanged);
    write("drive.nmea", "<gpx><trk>");
    EXPECT_EQ(readAttached(track, count).error().code(), code::trackChanged)
        << "not that another file cannot be read";
    fs::remove(file);
    const Error gone = readAttached(track, count).error();
    EXPECT_EQ(gone.code(), code::trackGone);
    EXPECT_EQ(gone.message.arguments, (std::vector<Argument>{"drive.nmea", m_folder.string()}));
    fs::create_directory(file);
    EXPECT_EQ(readAttached(track, count).error().code(), code::trackGone);
}

TEST_F(AttachedTrack, CanBeLeftBeforeItsEnd) {
    std::string longOne;
    while (longOne.size() < 400'000) longOne += kDrive;
    auto track = lookAtTrack(write("long.nmea", longOne), kTractor).value();
    track.sha256 = {};  // would be found at the end
    int pieces = 0;
    EXPECT_TRUE(readAttached(
        track, [](const formats::Fix& /*fix*/) {}, [&](std::string_view /*bytes*/) { return ++pieces < 3; }));
    EXPECT_EQ(pieces, 3);
}

season::Season seasonWith(const entries::TrackAttached& track) {
    SeasonMaker maker;
    maker.add(track, track.begin);
    return season::Season::fold(maker.entries);
}

TEST_F(AttachedTrack, IsAttachedOnceAndFoundAgainWhereItLies) {
    const auto track = lookAtTrack(write("drive.nmea", kDrive), kTractor).value();
    const season::Season season = seasonWith(track);
    const auto known = attachedTracks(season, track.begin);
    ASSERT_EQ(known.size(), 1u);
    EXPECT_EQ(known.front().what, track);
    EXPECT_TRUE(attachedTracks(season, track.begin - std::chrono::seconds{1}).empty());

    EXPECT_EQ(attachingOf(season, track).error().code(), code::trackAttachedAlready);
    const auto moved = lookAtTrack(write("elsewhere.nmea", kDrive), kTractor).value();
    const auto again = attachingOf(season, moved);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->target, known.front().entry);
    EXPECT_EQ(again->track.file, "elsewhere.nmea");
    std::string longer = kDrive;
    longer += kDrive;
    const auto another = lookAtTrack(write("other.nmea", longer), kTractor).value();
    EXPECT_EQ(attachingOf(season, another)->target, std::nullopt);
}

TEST_F(AttachedTrack, IsLaidOnlyForATractorThatTheFarmKnows) {
    const auto track = lookAtTrack(write("drive.nmea", kDrive), kTractor).value();
    auto grid = DrivenGrid::make({Length::fromMetres(40), Length::fromMetres(12)},
                                 {43.5202, -89.5092, 0.0, {}}, {{1, track.begin, 0, 40}})
                    .value();
    season::FarmBook farm;
    EXPECT_EQ(layTrack(grid, farm, track, 0, track.end).error().code(), code::trackTractorUnknown);
    farm.tractors[kTractor].name = "Bison";
    farm.tractors[kTractor].mass = MachineMass::fromTonnes(12);
    const auto laid = layTrack(grid, farm, track, 0, track.end);
    ASSERT_TRUE(laid);
    EXPECT_EQ(laid->tractor, "Bison");
    EXPECT_EQ(laid->counts.fixes, 2);
    // What was driven later belongs to layers that are not in the grid.
    const auto half = layTrack(grid, farm, track, 0, track.begin);
    ASSERT_TRUE(half);
    EXPECT_EQ(half->counts.fixes, 1);
    EXPECT_EQ(half->later, 1);
}

}  // namespace
}  // namespace treadwell::passes
