#include "core/intake/logs.h"

#include "core/base/codes.h"
#include "core/entries/codes.h"
#include "core/intake/codes.h"
#include "core/quantity/relations.h"
#include "core/samples/codes.h"
#include "tests/core/intake/list_reading.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

template <class Kind>
const Kind& bodyAt(const Intake& intake, std::size_t index) {
    return std::get<Kind>(intake.proposals.at(index).body);
}

Code onlyReason(const Intake& intake) {
    EXPECT_EQ(intake.quarantine.size(), 1u);
    return intake.quarantine.at(0).reason.code();
}

TEST(ReadTractorLog, SaysWhatEachTractorDoesFromThenOn) {
    const Intake intake = read(readTractorLog,
                               "time,tractor,activity,share_percent\n"
                               "2026-09-15T10:00:00+02:00,bison,Packing,50\n"
                               "2026-09-15T10:10:00+02:00,Widder,spreading,0\n"
                               "2026-09-15T12:00:00+02:00,Bison,away,\n");
    ASSERT_EQ(intake.proposals.size(), 3u);
    const auto& packing = bodyAt<entries::TractorWork>(intake, 0);
    EXPECT_EQ(packing.tractor, idOf<farm::TractorId>(2));
    EXPECT_EQ(packing.activity, farm::Activity::packing);
    EXPECT_DOUBLE_EQ(packing.packingShare.percent(), 50);
    EXPECT_EQ(packing.silo, idOf<farm::SiloId>(1));
    EXPECT_EQ(intake.proposals[0].happened, utc("2026-09-15T08:00:00Z"));
    EXPECT_FALSE(bodyAt<entries::TractorWork>(intake, 2).silo);
}

TEST(ReadTractorLog, APackingTractorWithoutAShareGivesAllItsTime) {
    const Intake intake = read(readTractorLog, "time;tractor;activity\n15.09.2026 10:00;Bison;packing\n");
    EXPECT_DOUBLE_EQ(bodyAt<entries::TractorWork>(intake, 0).packingShare.fraction(), 1.0);
}

TEST(ReadTractorLog, QuarantinesWhatItDoesNotUnderstand) {
    const auto reasonOf = [](const std::string& row) {
        return onlyReason(read(readTractorLog, "time,tractor,activity,share\n" + row + '\n'));
    };
    EXPECT_EQ(reasonOf("2026-09-15T10:00:00Z,Ox,packing,1"), code::nameUnknown);
    EXPECT_EQ(reasonOf("2026-09-15T10:00:00Z,Bison,sleeping,1"), code::wordUnknown);
    EXPECT_EQ(reasonOf("2026-09-15T10:00:00Z,Bison,,1"), code::valueMissing);
    EXPECT_EQ(reasonOf("2026-09-15T10:00:00Z,Bison,packing,50"), code::valueOutOfRange);
    EXPECT_EQ(reasonOf("soon,Bison,packing,1"), code::wallTimeUnreadable);
}

// A dish of 150.0 g that dries to 49.5 g holds 33 % dry matter.
TEST(ReadSamples, ReckonsADish) {
    const Intake intake = read(readSamples,
                               "time,field,wet_g,dry_g,method\n"
                               "2026-09-15T10:15:00+02:00,Quornstieg,150.0,49.5,oven\n"
                               "2026-09-15T11:15:00+02:00,,0.1500,0.0495,microwave\n");
    ASSERT_EQ(intake.used, 2);
    const auto& sample = bodyAt<entries::DryMatterSample>(intake, 0);
    EXPECT_NEAR(sample.dryMatter.percent(), 33, 1e-9);
    EXPECT_NEAR(sample.wet->kilograms(), 0.15, 1e-12);
    EXPECT_NEAR(sample.dry->kilograms(), 0.0495, 1e-12);
    EXPECT_EQ(sample.field, idOf<farm::FieldId>(6));
    EXPECT_FALSE(bodyAt<entries::DryMatterSample>(intake, 1).field);
}

TEST(ReadSamples, TakesAMetersReading) {
    const Intake intake = read(readSamples, "time;method;TM %\n15.09.2026 10:15;meter;34,5\n");
    const auto& sample = bodyAt<entries::DryMatterSample>(intake, 0);
    EXPECT_NEAR(sample.dryMatter.percent(), 34.5, 1e-9);
    EXPECT_FALSE(sample.wet);
}

TEST(ReadSamples, QuarantinesImpossibleAndContradictoryDishes) {
    const auto reasonOf = [](const std::string& row) {
        return onlyReason(
            read(readSamples, "time,method,wet_g,dry_g,dm_percent\n2026-09-15T10:15:00Z," + row + '\n'));
    };
    EXPECT_EQ(reasonOf("oven,49.5,150.0,"), code::dishImpossible);
    EXPECT_EQ(reasonOf("oven,0,0,"), code::dishImpossible);
    EXPECT_EQ(reasonOf("oven,150.0,,"), code::valueMissing);
    EXPECT_EQ(reasonOf("oven,150.0,49.5,36.1"), code::dishDisagrees);
    EXPECT_EQ(reasonOf("oven,150.0,149.5,"), code::valueOutOfRange);
    EXPECT_EQ(reasonOf("meter,,,"), code::valueMissing);
    EXPECT_EQ(reasonOf("nose,,,35.5"), code::wordUnknown);
}

TEST(ReadHeights, JoinsTheReadingsOfOneTimeAndSilo) {
    const std::string file =
        "time,silo,along_m,across_m,height_m\n"
        "2026-09-15T17:30:00+02:00,Long bunker,2,7,3.41\n"
        "2026-09-16T17:30:00+02:00,Long bunker,2,7,3.52\n"
        "2026-09-15T17:30:00+02:00,Long bunker,10,7,1.25\n"
        "2026-09-15T17:30:00+02:00,Long bunker,10,7,1.25\n"
        "2026-09-15T17:30:00+02:00,Long bunker,10,7,13.0\n";
    Context context = farmContext();
    const Intake intake = read(readHeights, file, context);
    ASSERT_EQ(intake.proposals.size(), 2u);
    EXPECT_EQ(intake.used, 3);
    EXPECT_EQ(intake.duplicates, 1);
    EXPECT_EQ(onlyReason(intake), code::valueOutOfRange);
    const auto& survey = bodyAt<entries::HeightSurvey>(intake, 0);
    EXPECT_EQ(survey.silo, idOf<farm::SiloId>(1));
    ASSERT_EQ(survey.readings.size(), 2u);
    EXPECT_DOUBLE_EQ(survey.readings[1].along.metres(), 10);
    EXPECT_DOUBLE_EQ(survey.readings[1].across.metres(), 7);
    EXPECT_DOUBLE_EQ(survey.readings[1].height.metres(), 1.25);

    record(context, intake);
    const Intake again = read(readHeights, file, context);
    EXPECT_TRUE(again.proposals.empty());
    EXPECT_EQ(again.alreadyImported, 3);
}

TEST(ReadCores, ReadsTheWaysToADensity) {
    const Intake intake = read(
        readCores,
        "time,silo,along_m,across_m,depth_m,height_m,origin,dry_matter_percent,mass_g,diameter_mm,length_mm,"
        "volume_m3,density\n"
        "2026-11-20T10:00:00+01:00,Long bunker,20,5,1.8,,machineCorer,35,453.6,50.8,304.8,,\n"
        "2026-11-20T10:05:00+01:00,,20,9,,1.2,blockCut,34,900000,,,1.3,\n"
        "2026-11-20T10:10:00+01:00,,20,7,1.8,,faceBalance,,,,,,231\n"
        "2026-11-20T10:15:00+01:00,,20,7,1.8,,loaderRemoved,33,,,,,\n"
        "2026-11-20T10:20:00+01:00,,20,7,1.8,,,33,,,,,\n");
    ASSERT_EQ(intake.used, 4);
    EXPECT_EQ(onlyReason(intake), code::coreDensityUnclear);
    const auto& cored = bodyAt<entries::Core>(intake, 0);
    EXPECT_NEAR(cored.dryDensity()->kilogramsPerCubicMetre(), 734.2 * 0.35, 0.05);
    EXPECT_NEAR(cored.depth->metres(), 1.8, 1e-12);
    EXPECT_FALSE(cored.height);
    EXPECT_NEAR(bodyAt<entries::Core>(intake, 1).dryDensity()->kilogramsPerCubicMetre(), 306.0 / 1.3, 1e-9);
    EXPECT_EQ(bodyAt<entries::Core>(intake, 2).origin, entries::CoreOrigin::faceBalance);
    EXPECT_FALSE(bodyAt<entries::Core>(intake, 3).dryDensity());
}

TEST(ReadLayers, ReadsTheHeadersUnit) {
    const Intake intake = read(readLayers,
                               "time,silo,thickness_cm,method\n"
                               "2026-09-15T10:30:00+02:00,Long bunker,15,loadsPerCover\n"
                               "2026-09-15T11:30:00+02:00,,17,\n");
    ASSERT_EQ(intake.used, 2);
    EXPECT_NEAR(bodyAt<entries::LayerSeen>(intake, 0).thickness.centimetres(), 15, 1e-12);
    EXPECT_EQ(bodyAt<entries::LayerSeen>(intake, 0).method, entries::LayerMethod::loadsPerCover);
    EXPECT_EQ(bodyAt<entries::LayerSeen>(intake, 1).method, entries::LayerMethod::measured);
    const Intake inches = read(readLayers, "time,thickness_in\n2026-09-15T10:30:00Z,6.0\n");
    EXPECT_NEAR(bodyAt<entries::LayerSeen>(inches, 0).thickness.centimetres(), 15.24, 1e-12);
}

TEST(Logs, ImportingAgainAddsNothing) {
    const std::string file = "time,thickness_cm\n2026-09-15T10:30:00Z,15\n2026-09-15T10:30:00Z,15\n";
    Context context = farmContext();
    const Intake first = read(readLayers, file, context);
    EXPECT_EQ(first.used, 1);
    EXPECT_EQ(first.duplicates, 1);
    record(context, first);
    const Intake again = read(readLayers, file + "2026-09-15T11:30:00Z,15\n", context);
    EXPECT_EQ(again.used, 1);
    EXPECT_EQ(again.alreadyImported, 1);
}

TEST(Logs, SayWhichColumnIsMissing) {
    for (const Reader reader : {&readTractorLog, &readSamples, &readHeights, &readLayers}) {
        const auto intake = reader("silo,remark\nLong bunker,x\n", farmContext());
        ASSERT_FALSE(intake);
        EXPECT_EQ(intake.error().code(), code::columnMissing);
        EXPECT_EQ(intake.error().field, "time");
    }
}

}  // namespace
}  // namespace treadwell::intake
