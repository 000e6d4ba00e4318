#include "core/formats/gpx.h"

#include "core/formats/codes.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace treadwell::formats {
namespace {

struct GpxRead {
    std::vector<Fix> fixes;
    std::vector<Rejected> rejected;
    Result<void> result;
};

GpxRead readGpx(std::string_view text, std::size_t size = 1U << 20U) {
    GpxRead read;
    GpxReader reader{{[&](const Fix& fix) { read.fixes.push_back(fix); },
                      [&](const Rejected& rejected) { read.rejected.push_back(rejected); }}};
    for (; !text.empty() && read.result; text.remove_prefix(std::min(size, text.size()))) {
        read.result = reader.take(text.substr(0, size));
    }
    if (read.result) read.result = reader.finish();
    return read;
}

constexpr std::string_view kTrack = R"(<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="example" xmlns="http://www.topografix.com/GPX/1/1" xmlns:v="urn:vendor">
 <metadata><time>2020-01-01T00:00:00Z</time></metadata>
 <wpt lat="1" lon="2"><time>2026-09-15T14:00:00Z</time></wpt>
 <trk><name>pack tractor 1</name><trkseg>
  <trkpt lat="43.5202447" lon="-89.5091687"><ele>281.43</ele><time>2026-09-15T14:25:30.200Z</time><fix>3d</fix><hdop>0.6</hdop>
   <extensions><v:time>nonsense</v:time><v:d><ele>9</ele></v:d></extensions></trkpt>
  <trkpt lat="43.5202452" lon="-89.5091962"><ele>281.46</ele><time>2026-09-15T15:25:31.200+01:00</time></trkpt>
 </trkseg><trkseg>
  <trkpt lat="43.6" lon="-89.6"><time>2026-09-15T14:30:00</time></trkpt>
  <trkpt lat="143.6" lon="-89.6"><time>2026-09-15T14:30:00Z</time></trkpt>
  <trkpt lon="-89.6"><time>2026-09-15T14:30:00Z</time></trkpt>
  <trkpt lat="43.6" lon="-89.6"><fix>none</fix><time>2026-09-15T14:30:00Z</time></trkpt>
  <trkpt lat="43.6" lon="-89.6"><fix>dgps</fix><time> 2026-09-15T14:30:02Z </time></trkpt>
 </trkseg></trk></gpx>
)";

TEST(Gpx, ReadsTrackPointsAndTellsTheRest) {
    const GpxRead read = readGpx(kTrack);
    ASSERT_TRUE(read.result);
    ASSERT_EQ(read.fixes.size(), 3);
    EXPECT_EQ(toIso8601(read.fixes[0].at), "2026-09-15T14:25:30.2Z");
    EXPECT_DOUBLE_EQ(read.fixes[0].longitude_deg, -89.5091687);
    EXPECT_DOUBLE_EQ(read.fixes[0].height->metres(), 281.43);
    EXPECT_EQ(read.fixes[0].hdop, 0.6);
    EXPECT_EQ(read.fixes[0].quality, FixQuality::autonomous);
    EXPECT_EQ(read.fixes[1].at - read.fixes[0].at, std::chrono::seconds{1});
    EXPECT_EQ(read.fixes[1].quality, FixQuality::untold);
    EXPECT_FALSE(read.fixes[1].beginsSegment);
    EXPECT_TRUE(read.fixes[2].beginsSegment);
    EXPECT_EQ(read.fixes[2].quality, FixQuality::differential);
    std::vector<TrackFault> faults;
    for (const Rejected& rejected : read.rejected) faults.push_back(rejected.fault);
    EXPECT_EQ(faults, (std::vector{TrackFault::noTime, TrackFault::outOfRange, TrackFault::unreadable,
                                   TrackFault::noFix}));
    EXPECT_EQ(read.rejected[0].line, 10);
}

TEST(Gpx, PiecesMakeNoDifference) {
    const GpxRead whole = readGpx(kTrack);
    for (const std::size_t size : {1U, 5U, 100U}) EXPECT_EQ(readGpx(kTrack, size).fixes, whole.fixes);
}

TEST(Gpx, OlderFilesWithAByteOrderMark) {
    const GpxRead read = readGpx(
        "\xEF\xBB\xBF<gpx version=\"1.0\"><trk><trkseg><trkpt lat=\"1\" lon=\"2\">"
        "<time>2026-09-15T14:30:02Z</time><speed>1.1</speed></trkpt></trkseg></trk></gpx>");
    ASSERT_TRUE(read.result);
    EXPECT_EQ(read.fixes.size(), 1);
}

TEST(Gpx, SaysWhatIsWrongAndWhere) {
    const GpxRead cut = readGpx(kTrack.substr(0, 700));
    ASSERT_FALSE(cut.result);
    EXPECT_EQ(cut.result.error().code(), code::gpxUnreadable);
    EXPECT_GT(cut.result.error().place.line, 5);
    const GpxRead other = readGpx("<html></html>");
    EXPECT_EQ(other.result.error().code(), code::gpxRootWrong);
    const GpxRead entities = readGpx("<!DOCTYPE gpx [<!ENTITY a \"aaaa\">]>\n<gpx>&a;</gpx>");
    EXPECT_EQ(entities.result.error().code(), code::gpxDoctype);
    EXPECT_EQ(entities.result.error().place.line, 1);
    EXPECT_FALSE(readGpx("").result);
}

}  // namespace
}  // namespace treadwell::formats
