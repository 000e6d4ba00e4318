#include "core/intake/sample_logs.h"

#include "core/base/codes.h"
#include "core/intake/codes.h"
#include "core/samples/codes.h"
#include "tests/core/intake/list_reading.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

template <class Kind>
Kind only(Reader reader, const std::string& bytes) {
    const Intake intake = read(reader, bytes);
    EXPECT_TRUE(intake.quarantine.empty()) << toText(intake.quarantine.at(0).reason.code());
    return std::get<Kind>(intake.proposals.at(0).body);
}

Code reasonOf(Reader reader, const std::string& bytes) {
    return read(reader, bytes).quarantine.at(0).reason.code();
}

TEST(ReadSieveTests, ByMassOnSievesOfAnySort) {
    const auto test =
        only<entries::SieveTest>(readSieveTests,
                                 "time,field,sieves_mm,masses_g,before_g,top_length_mm,wet sample\n"
                                 "2026-09-15T10:30:00+02:00,Quornstieg,19/8/4,6.0/70.2/31/11,120,42,yes\n");
    EXPECT_EQ(test.field, idOf<farm::FieldId>(6));
    ASSERT_EQ(test.openings.size(), 3u);
    EXPECT_NEAR(test.openings[2].millimetres(), 4, 1e-12);
    EXPECT_NEAR(test.masses.at(1).kilograms(), 0.0702, 1e-12);
    EXPECT_NEAR(test.before->kilograms(), 0.120, 1e-12);
    EXPECT_NEAR(test.topLength->millimetres(), 42, 1e-12);
    EXPECT_TRUE(test.wet);
}

TEST(ReadSieveTests, ByPercentOnAKnownStackWithDecimalCommas) {
    const auto test = only<entries::SieveTest>(readSieveTests,
                                               "Zeit;Siebe;Anteile\n"
                                               "15.09.2026 10:30;threeTo118;5,5/58,5/32/4\n");
    EXPECT_EQ(test.openings.back(), Length::fromMillimetres(1.18));
    EXPECT_NEAR(test.parts.at(1).percent(), 58.5, 1e-9);
    EXPECT_TRUE(test.masses.empty());
}

TEST(ReadSieveTests, QuarantinesWhatItCannotUse) {
    const auto reason = [](const std::string& row) {
        return reasonOf(readSieveTests, "time,sieves,masses,parts\n2026-09-15T10:30:00+02:00," + row + '\n');
    };
    EXPECT_EQ(reason("19/8/four,1/2/3/4,"), code::numberUnreadable);
    EXPECT_EQ(reason("19/8/4,1/2/3,"), code::sieveCountWrong);
    EXPECT_EQ(reason("19/8/4,,10/20/30/20"), code::percentSum);
    EXPECT_EQ(reason("19/8/4,,"), code::valueMissing);
    EXPECT_EQ(reason("19/8/4,1/2/3/4,10/20/30/40"), code::valueMissing);
    EXPECT_EQ(reason("8/19/4,1/2/3/4,"), code::sievesNotInOrder);
}

TEST(ReadKernelTests, CountsAndScores) {
    const std::string header =
        "time,field,material,kernels,whole_g,coarse_g,whole starch_percent,coarse starch_percent\n"
        "2026-09-15T10:30:00+02:00,";
    const auto counted = only<entries::KernelTest>(readKernelTests, header + "Quornstieg,,3,,,,\n");
    EXPECT_EQ(counted.kernels, 3);
    EXPECT_EQ(counted.material, samples::Material::fresh);
    const auto scored = only<entries::KernelTest>(readKernelTests, header + ",fermented,,100,30,32,36\n");
    EXPECT_EQ(scored.material, samples::Material::fermented);
    EXPECT_NEAR((*entries::scoreOf(scored))->score.percent(), 66.25, 1e-9);
    EXPECT_EQ(reasonOf(readKernelTests, header + ",,2.5,,,,\n"), code::numberUnreadable);
    EXPECT_EQ(reasonOf(readKernelTests, header + ",,,,,,\n"), code::valueMissing);
    EXPECT_EQ(reasonOf(readKernelTests, header + ",,,100,30,,36\n"), code::valueMissing);
    EXPECT_EQ(reasonOf(readKernelTests, header + ",,-4,,,,\n"), code::valueOutOfRange);
}

TEST(ReadTemperatures, InTheUnitOfTheHeader) {
    const Intake intake = read(readTemperatures, "date,low_f,high_f\n2026-08-03,65,90\n2026-08-04,,90\n");
    const entries::DayTemperatures day =
        std::get<entries::Temperatures>(intake.proposals.at(0).body).days.at(0);
    EXPECT_EQ(toIso8601(day.day), "2026-08-03");
    EXPECT_NEAR(day.high.fahrenheit(), 90, 1e-9);
    EXPECT_EQ(intake.proposals[0].happened, utc("2026-08-03T21:59:59.999999Z"));
    EXPECT_EQ(intake.quarantine.at(0).reason.code(), code::valueMissing);
    EXPECT_EQ(reasonOf(readTemperatures, "date,low,high\n2026-08-03,12,27\n"), code::temperatureUnitMissing);
    EXPECT_EQ(reasonOf(readTemperatures, "date,low_c,high_c\n2026-08-03,27,12\n"), code::temperaturesSwapped);
    EXPECT_EQ(reasonOf(readTemperatures, "date,low_c,high_c\n2026-08-43,12,27\n"), code::wallTimeUnreadable);
}

TEST(ReadTemperatures, AFileIsOneEntry) {
    const std::string bytes = "date,low_c,high_c\n2026-08-03,12,27\n2026-08-04,13,29\n";
    Context context = farmContext();
    const Intake intake = read(readTemperatures, bytes, context);
    ASSERT_EQ(intake.proposals.size(), 1u);
    EXPECT_EQ(std::get<entries::Temperatures>(intake.proposals[0].body).days.size(), 2u);
    EXPECT_EQ(intake.used, 2);
    EXPECT_EQ(intake.proposals[0].happened, utc("2026-08-04T21:59:59.999999Z"));
    record(context, intake);
    const Intake again = read(readTemperatures, bytes, context);
    EXPECT_EQ(again.alreadyImported, 2);
    EXPECT_TRUE(again.proposals.empty());
}

TEST(ReadFieldVisits, WhatWasSeen) {
    const auto visit = only<entries::FieldObserved>(
        readFieldVisits,
        "time,field,planted,silked,hybrid,hybrid days,milk line_percent,dry matter_percent\n"
        "2026-09-01T09:00:00+02:00,Vellerbruch,2026-05-02,2026-07-18,Tarn 240,101,40,29.5\n");
    EXPECT_EQ(visit.field, idOf<farm::FieldId>(7));
    EXPECT_EQ(toIso8601(*visit.silked), "2026-07-18");
    EXPECT_EQ(visit.hybrid, "Tarn 240");
    EXPECT_EQ(visit.hybridDays, 101);
    EXPECT_NEAR(visit.milkLine->percent(), 40, 1e-9);
    EXPECT_NEAR(visit.dryMatter->percent(), 29.5, 1e-9);
    const std::string header = "time,field,planted,silked\n2026-09-01T09:00:00+02:00,";
    EXPECT_EQ(reasonOf(readFieldVisits, header + "Vellerbruch,2026-07-02,2026-05-18\n"), code::daysReversed);
    EXPECT_EQ(reasonOf(readFieldVisits, header + "Vellerbruch,,\n"), code::readingsMissing);
    EXPECT_EQ(reasonOf(readFieldVisits, header + "Nowhere,,\n"), code::nameUnknown);
}

TEST(ReadChopSettings, InTheUnitsOfTheTrade) {
    const auto set = only<entries::ChopSet>(readChopSettings,
                                            "time,cut,roll gap,cutting height_cm,processor\n"
                                            "2026-09-15T09:30:00+02:00,17,2.25,18,longChop\n");
    EXPECT_NEAR(set.length->millimetres(), 17, 1e-12);
    EXPECT_NEAR(set.rollGap->millimetres(), 2.25, 1e-12);
    EXPECT_NEAR(set.cuttingHeight->centimetres(), 18, 1e-12);
    EXPECT_EQ(set.processor, samples::Processor::longChop);
    EXPECT_EQ(reasonOf(readChopSettings, "time,cut_mm\n2026-09-15T09:30:00+02:00,170\n"),
              code::valueOutOfRange);
}

TEST(ReadSampleLists, TheSameRowAgainAddsNothing) {
    const std::string bytes = "time,cut_mm\n2026-09-15T09:30:00+02:00,17\n2026-09-15T09:30:00+02:00,17\n";
    Context context = farmContext();
    const Intake first = read(readChopSettings, bytes, context);
    EXPECT_EQ(first.used, 1);
    EXPECT_EQ(first.duplicates, 1);
    record(context, first);
    EXPECT_EQ(read(readChopSettings, bytes, context).alreadyImported, 1);
}

TEST(ReadRemovals, InTheUnitOfTheHeader) {
    const auto fed = only<entries::FeedRemoved>(readRemovals,
                                                "Zeit;Masse t;TM percent;Anschnitt m\n"
                                                "2027-01-10T08:00:00+01:00;12,5;33,1;59,5\n");
    EXPECT_NEAR(fed.mass.tonnes(), 12.5, 1e-9);
    EXPECT_NEAR(fed.dryMatter->percent(), 33.1, 1e-9);
    EXPECT_NEAR(fed.face->metres(), 59.5, 1e-12);
    const auto pounds =
        only<entries::FeedRemoved>(readRemovals, "time,mass_lb\n2027-01-10T08:00:00+01:00,20000\n");
    EXPECT_NEAR(pounds.mass.kilograms(), 9071.8474, 1e-6);
    EXPECT_FALSE(pounds.dryMatter || pounds.face);
    EXPECT_EQ(reasonOf(readRemovals, "time,mass\n2027-01-10T08:00:00+01:00,12\n"), code::massUnitMissing);
    EXPECT_EQ(reasonOf(readRemovals, "time,mass_t\n2027-01-10T08:00:00+01:00,-2\n"), code::valueOutOfRange);
}

TEST(ReadFaceTemperatures, InCelsiusOrFahrenheit) {
    const auto seen = only<entries::FaceTemperature>(readFaceTemperatures,
                                                     "time,behind face f,core c,across,height\n"
                                                     "2027-01-10T08:00:00+01:00,88,24.5,3,2\n");
    EXPECT_NEAR(seen.behindFace.celsius(), 31.111, 1e-3);
    EXPECT_NEAR(seen.core.celsius(), 24.5, 1e-9);
    EXPECT_NEAR(seen.across->metres(), 3, 1e-12);
    EXPECT_EQ(reasonOf(readFaceTemperatures, "time,behind face,core c\n2027-01-10T08:00:00+01:00,31,24\n"),
              code::temperatureUnitMissing);
}

}  // namespace
}  // namespace treadwell::intake
