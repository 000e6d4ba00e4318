// Tracks against an independent converter: gpsbabel 1.8.0 (Debian) made tests/data/tracks/packing.gpx of
// packing.nmea there, by `gpsbabel -t -i nmea,date=20260915 -f packing.nmea -o gpx,gpxver=1.1 -F
// packing.gpx`. The track is invented: RTK at 1 Hz over midnight, a stretch as float, one lost, a few
// autonomous fixes.
#include "core/base/atomic_file.h"
#include "core/base/number_text.h"
#include "core/formats/gpx.h"
#include "core/formats/nmea.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>

namespace treadwell::formats {
namespace {

std::string fileOf(const char* name) {
    return readFile(std::string{TREADWELL_TEST_DATA "/tracks/"} + name).value();
}

template <class Reader>
std::vector<Fix> fixesOf(const char* name) {
    std::vector<Fix> fixes;
    Reader reader{{[&](const Fix& fix) { fixes.push_back(fix); }, [](const Rejected&) {}}};
    static_cast<void>(reader.take(fileOf(name)));
    static_cast<void>(reader.finish());
    return fixes;
}

/// As the converter wrote them, read without a parser of ours.
std::vector<Fix> converted() {
    static const std::regex kPoint{
        R"re(<trkpt lat="([^"]+)" lon="([^"]+)">\s*(?:<ele>([^<]+)</ele>\s*)?<time>([^<]+)</time>)re"};
    const std::string text = fileOf("packing.gpx");
    std::vector<Fix> fixes;
    for (std::sregex_iterator point{text.begin(), text.end(), kPoint}, end; point != end; ++point) {
        Fix fix;
        fix.latitude_deg = numberFromText((*point)[1].str()).value();
        fix.longitude_deg = numberFromText((*point)[2].str()).value();
        if ((*point)[3].matched) fix.height = Length::fromMetres(numberFromText((*point)[3].str()).value());
        fix.at = instantFromIso8601((*point)[4].str()).value();
        fixes.push_back(fix);
    }
    return fixes;
}

/// The converter writes nine decimals of a degree and three of a metre.
void expectSame(const std::vector<Fix>& ours, const std::vector<Fix>& theirs) {
    ASSERT_EQ(ours.size(), theirs.size());
    for (std::size_t i = 0; i < ours.size(); ++i) {
        EXPECT_EQ(ours[i].at, theirs[i].at) << i;
        EXPECT_NEAR(ours[i].latitude_deg, theirs[i].latitude_deg, 1e-9) << i;
        EXPECT_NEAR(ours[i].longitude_deg, theirs[i].longitude_deg, 1e-9) << i;
        ASSERT_EQ(ours[i].height.has_value(), theirs[i].height.has_value()) << i;
        if (!ours[i].height) continue;
        EXPECT_NEAR(ours[i].height->metres(), theirs[i].height->metres(), 1e-3) << i;
    }
}

TEST(Converter, FindsTheSameFixesInNmea) {
    const std::vector<Fix> theirs = converted();
    ASSERT_EQ(theirs.size(), 294);
    expectSame(fixesOf<NmeaReader>("packing.nmea"), theirs);
}

TEST(Converter, FindsTheSameFixesInGpx) {
    expectSame(fixesOf<GpxReader>("packing.gpx"), converted());
}

TEST(Converter, TheQualityIsThatOfTheSentences) {
    const std::vector<Fix> fixes = fixesOf<NmeaReader>("packing.nmea");
    const auto count = [&](FixQuality quality) {
        return std::count_if(fixes.begin(), fixes.end(),
                             [&](const Fix& fix) { return fix.quality == quality; });
    };
    EXPECT_EQ(count(FixQuality::rtkFloat), 30);
    EXPECT_EQ(count(FixQuality::autonomous), 5);
    EXPECT_EQ(count(FixQuality::rtkFixed), 259);
}

}  // namespace
}  // namespace treadwell::formats
