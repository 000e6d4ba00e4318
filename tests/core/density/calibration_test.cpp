#include "core/density/calibration.h"

#include "core/base/codes.h"
#include "core/density/calibration_check.h"
#include "core/density/calibration_gain.h"
#include "core/density/codes.h"
#include "core/density/estimate.h"
#include "tests/core/density/example.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

constexpr double kOneCoreError = 0.026 * 0.026;
constexpr double kOrdinaryInputs = 0.0055;

DensityEvidence core(int silo, std::int64_t face, std::int64_t place, double logRatio) {
    DensityEvidence evidence;
    evidence.silo = testing_support::idOf<farm::SiloTag>(static_cast<std::uint8_t>(silo));
    evidence.face = face;
    evidence.place = place;
    evidence.predicted = DryDensity::fromKilogramsPerCubicMetre(225);
    evidence.measured = evidence.predicted * std::exp(logRatio);
    evidence.inputs = kOrdinaryInputs;
    evidence.error = kOneCoreError;
    return evidence;
}

DensityEvidence survey(int silo, double logRatio, double error) {
    DensityEvidence evidence = core(silo, 0, 0, logRatio);
    evidence.kind = entries::EvidenceKind::survey;
    evidence.error = error;
    evidence.layers = 20;
    return evidence;
}

// Cores of one face, each in a layer of its own, that read as was predicted on average.
std::vector<DensityEvidence> evenFace(int silo, int cores, double level = 0.0) {
    std::vector<DensityEvidence> evidence;
    for (int i = 0; i < cores; ++i) evidence.push_back(core(silo, 1, i, level + (i % 2 == 0 ? 0.2 : -0.2)));
    return evidence;
}

TEST(Calibration, WithoutEvidenceTheSurveysResidualStands) {
    const auto calibration = calibrate({});
    ASSERT_TRUE(calibration);
    EXPECT_TRUE(calibration->silos.empty());
    EXPECT_EQ(calibration->next.ordinaryInputs, Residual{}.ordinaryInputs);
    EXPECT_EQ(calibration->next.site, Residual{}.site);
    EXPECT_EQ(calibration->next.varianceDoubt, 0.0);
    EXPECT_FALSE(checkCalibration({})->error());
}

// Derived: .166 of 225 before; 1 / (1/.02755 + 1/(.085^2 + .04/24 + .026^2/24)) after.
TEST(Calibration, TwentyFourCoresOfOneFaceHalveTheBand) {
    const auto calibration = calibrate(evenFace(1, 24));
    ASSERT_TRUE(calibration);
    const BandGain gain = gainOf(calibration->silos.at(0));
    EXPECT_EQ(gain.cores, 24);
    EXPECT_NEAR(gain.before.kilogramsPerCubicMetre(), 48.0, 0.5);
    EXPECT_NEAR(gain.after.kilogramsPerCubicMetre(), 24.0, 0.5);
    EXPECT_EQ(messageOf(gain).code, code::calibrationGain);
    // The same band through an estimate.
    Options options;
    options.residual = calibration->residualOf(calibration->silos[0].silo);
    Situation situation = exampleSituation();
    situation.meanDepth = Length::fromMetres(2.0 * FieldEquation::kUnitDepth);
    options.entries = {.machineMass = 0.0, .layer = 0.0, .packingTime = 0.0, .dryMatter = 0.0};
    const auto estimated = estimate(situation, options);
    EXPECT_NEAR(estimated->density.sigma(), std::sqrt(calibration->silos[0].level.variance), 1e-12);
}

TEST(Calibration, TheNextSiloLearnsLessThanTheCoredOne) {
    const auto calibration = calibrate(evenFace(1, 24, 0.05));
    const SiloPosterior& cored = calibration->silos.at(0);
    EXPECT_GT(cored.level.mean, calibration->next.level);
    EXPECT_GT(calibration->next.level, 0.0);
    EXPECT_LT(gainOf(cored).after, gainOfNext(*calibration).after);
    EXPECT_LT(gainOfNext(*calibration).after, gainOfNext(*calibration).before);
    EXPECT_EQ(&calibration->residualOf(testing_support::idOf<farm::SiloTag>(9)), &calibration->next);
    EXPECT_EQ(calibration->find(cored.silo, "another season"), nullptr);
}

TEST(Calibration, DegreesOfFreedomAreFourAndTheSilosLessOne) {
    std::vector<DensityEvidence> evidence;
    for (int silo = 1; silo <= 5; ++silo) {
        const auto more = evenFace(silo, 4, 0.05 * silo);
        evidence.insert(evidence.end(), more.begin(), more.end());
    }
    const auto calibration = calibrate(evidence);
    EXPECT_TRUE(calibration->converged);
    EXPECT_EQ(calibration->siloVariance.degreesOfFreedom, 8.0);
    EXPECT_EQ(calibration->placeVariance.degreesOfFreedom, 4.0 + 5 * 3);
    const auto check = checkCalibration(evidence);
    ASSERT_EQ(check->silos.size(), 5U);
    EXPECT_GT(*check->error(), 0.03);
    EXPECT_LT(*check->error(), 0.15);
    for (const LeftOut& left : check->silos) EXPECT_TRUE(left.isInside());
}

TEST(Calibration, SilosThatDifferMoreThanThoughtWidenTheNextOnesBand) {
    std::vector<DensityEvidence> evidence;
    for (int silo = 1; silo <= 6; ++silo) {
        const auto more = evenFace(silo, 24, silo % 2 == 0 ? 0.5 : -0.5);
        evidence.insert(evidence.end(), more.begin(), more.end());
    }
    const auto calibration = calibrate(evidence);
    EXPECT_GT(calibration->siloVariance.scale, 3.0 * Residual{}.silo);
    EXPECT_EQ(messageOf(gainOfNext(*calibration)).code, code::calibrationWidened);
    EXPECT_GT(*checkCalibration(evidence)->error(), 0.4);
}

// One reading without error is the level but for method and way to opening.
TEST(Calibration, ASurveySharesMethodAndWayToOpening) {
    const auto calibration = calibrate(std::vector{survey(1, 0.2, 1e-8)});
    const SiloPosterior& silo = calibration->silos.at(0);
    EXPECT_EQ(silo.surveys, 1);
    const double own = 0.05 * 0.05 * 2 + 0.01 / 20;
    const double before = 0.105 * 0.105 + calibration->siloVariance.scale + kOrdinaryInputs;
    EXPECT_NEAR(silo.level.variance, 1.0 / (1.0 / before + 1.0 / own), 1e-5);
    EXPECT_GT(calibration->surveyMethod.mean, 0.0);
    EXPECT_EQ(messageOf(gainOf(silo)).code, code::calibrationGainMixed);
}

// How far the variance moves with the silos' own, against small steps of it.
TEST(Calibration, TheDoubtIsTheDerivativeOfTheVariance) {
    std::vector<DensityEvidence> evidence{survey(1, 0.1, 0.004), survey(3, -0.1, 0.004),
                                          survey(3, 0.0, 0.003)};
    for (int silo = 1; silo <= 2; ++silo) {
        const auto more = evenFace(silo, 6, 0.1);
        evidence.insert(evidence.end(), more.begin(), more.end());
    }
    const auto fitted = calibrate(evidence);
    CalibrationPrior known;
    known.degreesOfFreedom = std::numeric_limits<double>::infinity();
    const double scale = fitted->placeVariance.scale / (known.survey.layer + known.survey.spot);
    known.survey.layer *= scale;
    known.survey.spot *= scale;
    const auto at = [&](double variance) {
        known.survey.silo = variance;
        return *calibrate(evidence, known);
    };
    const double middle = fitted->siloVariance.scale, step = 1e-6;
    const auto doubt = [&](auto varianceOf) {
        const double slope = (varianceOf(at(middle + step)) - varianceOf(at(middle - step))) / (2.0 * step);
        return std::pow(slope * middle, 2) / fitted->siloVariance.degreesOfFreedom;
    };
    EXPECT_NEAR(fitted->next.varianceDoubt,
                doubt([](const Calibration& c) { return c.next.site + c.next.silo; }), 1e-11);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(fitted->silos[i].residual.varianceDoubt,
                    doubt([&](const Calibration& c) { return c.silos[i].level.variance; }), 1e-11);
    }
}

TEST(Calibration, ALayerWithCoresOfItsOwnIsKnownBetterThanOneWithout) {
    std::vector<DensityEvidence> evidence = evenFace(1, 8);
    for (int i = 0; i < 6; ++i) evidence.push_back(core(1, 1, 99, -0.3));
    const auto calibration = calibrate(evidence);
    const SiloPosterior& silo = calibration->silos.at(0);
    const PlacePosterior& loose = silo.faces.at(0).places.back();
    EXPECT_EQ(loose.place, 99);
    EXPECT_EQ(loose.cores, 6);
    EXPECT_LT(loose.layer.mean, silo.level.mean);
    const Residual own = silo.residualOf(loose);
    const auto whole = [](const Residual& r) { return r.site + r.silo + r.ordinaryInputs + r.layer; };
    EXPECT_NEAR(whole(own), loose.layer.variance, 1e-15);
    EXPECT_LT(whole(own), whole(silo.residual));
}

RC_GTEST_PROP(Calibration, NothingThatIsNotFiniteLeaves, ()) {
    std::vector<DensityEvidence> evidence;
    const int count = *rc::gen::inRange(0, 30);
    for (int i = 0; i < count; ++i) {
        DensityEvidence each = core(*rc::gen::inRange(1, 5), *rc::gen::inRange(1, 4), *rc::gen::inRange(0, 5),
                                    static_cast<double>(*rc::gen::inRange(-180, 181)) / 100.0);
        each.kind = *rc::gen::element(entries::EvidenceKind::core, entries::EvidenceKind::faceBalance,
                                      entries::EvidenceKind::survey);
        each.inputs = *rc::gen::element(0.0, 1e-9, 0.01, 1.0);
        each.error = *rc::gen::element(1e-8, 0.0007, 1.0);
        evidence.push_back(std::move(each));
    }
    const auto calibration = calibrate(evidence);
    RC_ASSERT(calibration.has_value());
    RC_ASSERT(calibration->converged);
    const auto isSound = [](const stats::Scalar& x) { return std::isfinite(x.mean) && x.variance >= 0.0; };
    RC_ASSERT(isSound(calibration->site) && isSound(calibration->surveyMethod));
    for (const SiloPosterior& silo : calibration->silos) {
        RC_ASSERT(isSound(silo.level));
        RC_ASSERT(std::isfinite(gainOf(silo).after.si()));
        Options options;
        options.residual = silo.residual;
        RC_ASSERT(estimate(exampleSituation(), options).has_value());
        for (const FacePosterior& face : silo.faces) {
            RC_ASSERT(isSound(face.level));
            for (const PlacePosterior& place : face.places)
                RC_ASSERT(isSound(place.spot) && isSound(place.layer));
        }
    }
}

// Surveys that read far below the cores elsewhere raise what a survey alone teaches, here beyond e^2.
TEST(Calibration, EstimatesWithWhateverWasLearnt) {
    std::vector<DensityEvidence> evidence{survey(2, 1.8, 1e-8)};
    for (int i = 0; i < 12; ++i) evidence.push_back(core(1, i % 3, i, 1.8));
    evidence.push_back(survey(1, -1.8, 1e-8));
    const auto calibration = calibrate(evidence);
    ASSERT_TRUE(calibration);
    Options options;
    for (const SiloPosterior& silo : calibration->silos) {
        options.residual = silo.residual;
        EXPECT_TRUE(estimate(exampleSituation(), options)) << silo.level.mean;
    }
    EXPECT_GT(options.residual.level, 2.0);
}

TEST(Calibration, RefusesEvidenceThatCannotBe) {
    std::vector<DensityEvidence> evidence = evenFace(1, 3);
    evidence[2].measured = DryDensity{};
    const auto calibration = calibrate(evidence);
    ASSERT_FALSE(calibration);
    EXPECT_EQ(calibration.error().code(), code::valueOutOfRange);
    EXPECT_EQ(calibration.error().field, "evidence[2].measured");
}

}  // namespace
}  // namespace treadwell::density
