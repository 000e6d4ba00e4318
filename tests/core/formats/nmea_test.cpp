#include "core/formats/nmea.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <string>
#include <vector>

namespace treadwell::formats {
namespace {

struct NmeaRead {
    std::vector<Fix> fixes;
    std::vector<Rejected> rejected;
};

/// Reads `text` in pieces of `size` bytes.
NmeaRead readNmea(std::string_view text, std::size_t size = 1U << 20U) {
    NmeaRead read;
    NmeaReader reader{{[&](const Fix& fix) { read.fixes.push_back(fix); },
                       [&](const Rejected& rejected) { read.rejected.push_back(rejected); }}};
    for (; !text.empty(); text.remove_prefix(std::min(size, text.size()))) reader.take(text.substr(0, size));
    reader.finish();
    return read;
}

/// With its checksum, as the standard defines it: all characters between $ and * xored.
std::string sentence(const std::string& body) {
    unsigned sum = 0;
    for (const char c : body) sum ^= static_cast<unsigned char>(c);
    char hex[3];
    std::snprintf(hex, sizeof hex, "%02X", sum);
    return "$" + body + "*" + hex + "\r\n";
}

Instant at(const char* iso) {
    return instantFromIso8601(iso).value();
}

// The widely published examples of GGA and RMC, then an RTK receiver's, RTK float, and one without a fix.
constexpr std::string_view kKnown =
    "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n"
    "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n"
    "$GNGGA,142530.20,4331.21468,N,08930.55012,W,4,17,0.6,281.432,M,-34.118,M,1.0,0000*68\r\n"
    "$GNRMC,142530.20,A,4331.21468,N,08930.55012,W,3.24,271.5,150926,,,R*72\r\n"
    "$GNGGA,142531.20,4331.21471,N,08930.55177,W,5,15,0.8,281.460,M,-34.118,M,2.0,0000*6A\r\n"
    "$GNRMC,142531.20,V,,,,,,,150926,,,N*68\r\n";

TEST(Nmea, ReadsPublishedSentences) {
    const NmeaRead read = readNmea(kKnown);
    EXPECT_TRUE(read.rejected.empty());
    ASSERT_EQ(read.fixes.size(), 3);
    EXPECT_EQ(read.fixes[0].at, at("1994-03-23T12:35:19Z"));
    EXPECT_NEAR(read.fixes[0].latitude_deg, 48.0 + 7.038 / 60, 1e-12);
    EXPECT_NEAR(read.fixes[0].longitude_deg, 11.0 + 31.0 / 60, 1e-12);
    EXPECT_EQ(read.fixes[0].quality, FixQuality::autonomous);
    EXPECT_NEAR(read.fixes[0].height->metres(), 545.4, 1e-12);
    EXPECT_NEAR(read.fixes[1].latitude_deg, 43.5202447, 5e-8);
    EXPECT_NEAR(read.fixes[1].longitude_deg, -89.5091687, 5e-8);
    EXPECT_EQ(read.fixes[1].quality, FixQuality::rtkFixed);
    EXPECT_EQ(read.fixes[2].quality, FixQuality::rtkFloat);
    EXPECT_TRUE(read.fixes[2].checked);
}

TEST(Nmea, PiecesMakeNoDifference) {
    const NmeaRead whole = readNmea(kKnown);
    for (const std::size_t size : {1U, 7U, 64U, 83U}) {
        EXPECT_EQ(readNmea(kKnown, size).fixes, whole.fixes) << size;
    }
}

TEST(Nmea, ALineOfTheGreatestLengthIsTheSameInPieces) {
    for (std::size_t size = 254; size < 260; ++size) {
        const std::string text = std::string(size, 'x') + "\r\n";
        const NmeaRead whole = readNmea(text), parted = readNmea(text, 10);
        ASSERT_EQ(whole.rejected.size(), 1);
        ASSERT_EQ(parted.rejected.size(), 1);
        EXPECT_EQ(whole.rejected[0].fault, parted.rejected[0].fault) << size;
    }
}

TEST(Nmea, AChecksumThatContradictsRejectsTheLine) {
    std::string text{kKnown};
    text[text.find("4807")] = '5';
    const NmeaRead read = readNmea(text);
    ASSERT_FALSE(read.rejected.empty());
    EXPECT_EQ(read.rejected[0].fault, TrackFault::checksumWrong);
    EXPECT_EQ(read.rejected[0].line, 1);
}

TEST(Nmea, AMissingChecksumIsTakenAndSaid) {
    const NmeaRead read = readNmea("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W\n");
    ASSERT_EQ(read.fixes.size(), 1);
    EXPECT_FALSE(read.fixes[0].checked);
    EXPECT_EQ(read.fixes[0].quality, FixQuality::untold);
}

TEST(Nmea, MidnightPassesBetweenAPositionAndItsDate) {
    const std::string gga = ",4331.21468,N,08930.55012,W,4,17,0.6,281.4,M,-34.1,M,1.0,0000";
    const std::string rmc = ",A,4331.21468,N,08930.55012,W,3.24,271.5,";
    const NmeaRead read =
        readNmea(sentence("GNRMC,235959.10" + rmc + "150926,,,R") + sentence("GNGGA,235959.10" + gga) +
                 sentence("GNGGA,000000.10" + gga) + sentence("GNRMC,000000.10" + rmc + "160926,,,R") +
                 sentence("GNGGA,000001.10" + gga));
    ASSERT_EQ(read.fixes.size(), 3);
    EXPECT_EQ(read.fixes[0].at, at("2026-09-15T23:59:59.1Z"));
    EXPECT_EQ(read.fixes[1].at, at("2026-09-16T00:00:00.1Z"));
    EXPECT_EQ(read.fixes[2].at, at("2026-09-16T00:00:01.1Z"));
}

TEST(Nmea, APositionWaitsForItsDateOnce) {
    const std::string gga = ",4331.21468,N,08930.55012,W,4,17,0.6,281.4,M,-34.1,M,1.0,0000";
    const NmeaRead dated =
        readNmea(sentence("GNGGA,120000.00" + gga) + sentence("GNZDA,120000.00,15,09,2026,00,00"));
    ASSERT_EQ(dated.fixes.size(), 1);
    EXPECT_EQ(dated.fixes[0].at, at("2026-09-15T12:00:00Z"));
    const NmeaRead undated = readNmea(sentence("GNGGA,120000.00" + gga) + sentence("GNGGA,120001.00" + gga));
    EXPECT_TRUE(undated.fixes.empty());
    ASSERT_EQ(undated.rejected.size(), 2);
    EXPECT_EQ(undated.rejected[1].fault, TrackFault::noDate);
}

TEST(Nmea, LossOfReceptionBeginsASegment) {
    const auto gga = [](const char* time, char quality) {
        return sentence("GNGGA," + std::string{time} + ",4331.21468,N,08930.55012,W," + quality +
                        ",17,0.6,281.4,M,-34.1,M,1.0,0000");
    };
    const NmeaRead read =
        readNmea(sentence("GNZDA,115959.00,15,09,2026,00,00") + gga("120000", '4') + gga("120001", '4') +
                 gga("120002", '0') + gga("120003", '1') + gga("120004", '8'));
    ASSERT_EQ(read.fixes.size(), 3);
    EXPECT_TRUE(read.fixes[0].beginsSegment);
    EXPECT_FALSE(read.fixes[1].beginsSegment);
    EXPECT_TRUE(read.fixes[2].beginsSegment);
    ASSERT_EQ(read.rejected.size(), 2);
    EXPECT_EQ(read.rejected[0].fault, TrackFault::noFix);
    EXPECT_EQ(read.rejected[1].fault, TrackFault::notARecord);
}

TEST(Nmea, WhatIsNoSentenceIsTold) {
    const NmeaRead read = readNmea("hello\r\n\r\n" + std::string(300, 'x') + "\r\n" + sentence("PABCD,1") +
                                   sentence("GNGGA,12") + "$\n");
    std::vector<TrackFault> faults;
    for (const Rejected& rejected : read.rejected) faults.push_back(rejected.fault);
    EXPECT_EQ(faults, (std::vector{TrackFault::unreadable, TrackFault::cut, TrackFault::unreadable,
                                   TrackFault::unreadable}));
    EXPECT_EQ(read.rejected[1].line, 3);
    EXPECT_EQ(read.rejected[3].line, 6);
}

}  // namespace
}  // namespace treadwell::formats
