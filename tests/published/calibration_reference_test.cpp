// The calibration's posterior, found level by level, against SciPy's from one dense covariance matrix of all
// unknowns; evidence.csv and posterior.csv say from which version and by which command they came.
#include "core/density/calibration.h"
#include "tests/support/reference_table.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::density {
namespace {

using testing_support::ReferenceTable;

farm::SiloId siloNumber(std::int64_t number) {
    return testing_support::idOf<farm::SiloTag>(static_cast<std::uint8_t>(number));
}

std::vector<DensityEvidence> evidenceOf(const ReferenceTable& table) {
    std::vector<DensityEvidence> evidence;
    for (std::size_t row = 0; row < table.size(); ++row) {
        DensityEvidence each;
        each.kind = *enumFromText<entries::EvidenceKind>(table.text(row, "kind"));
        each.silo = siloNumber(table.whole(row, "silo"));
        each.face = table.whole(row, "face");
        each.place = table.whole(row, "place");
        each.predicted = DryDensity::fromKilogramsPerCubicMetre(220);
        each.measured = each.predicted * std::exp(table.number(row, "log_ratio"));
        each.inputs = table.number(row, "inputs");
        each.error = table.number(row, "error");
        each.layers = table.number(row, "layers");
        evidence.push_back(std::move(each));
    }
    return evidence;
}

template <class Things, class Member>
const auto& numbered(const Things& things, Member member, std::int64_t number) {
    const auto found =
        std::find_if(things.begin(), things.end(), [&](const auto& each) { return each.*member == number; });
    if (found == things.end()) throw std::runtime_error("not among the posteriors");
    return *found;
}

stats::Scalar toldOf(const Calibration& calibration, const ReferenceTable& table, std::size_t row) {
    const std::string what = table.text(row, "what");
    if (what == "site") return calibration.site;
    if (what == "offset") return calibration.surveyMethod;
    const SiloPosterior* silo = calibration.find(siloNumber(table.whole(row, "silo")));
    if (silo == nullptr) throw std::runtime_error("no such silo");
    if (what == "silo") return silo->level;
    const FacePosterior& face = numbered(silo->faces, &FacePosterior::face, table.whole(row, "face"));
    if (what == "face") return face.level;
    const PlacePosterior& place = numbered(face.places, &PlacePosterior::place, table.whole(row, "place"));
    return what == "place" ? place.spot : place.layer;
}

TEST(PublishedCalibration, AgreesWithOneDenseMatrix) {
    const ReferenceTable expected{"posterior.csv"};
    CalibrationPrior prior;
    prior.degreesOfFreedom = std::numeric_limits<double>::infinity();
    const auto calibration = calibrate(evidenceOf(ReferenceTable{"evidence.csv"}), prior);
    ASSERT_TRUE(calibration);
    ASSERT_EQ(expected.size(), 62U);
    for (std::size_t row = 0; row < expected.size(); ++row) {
        const stats::Scalar told = toldOf(*calibration, expected, row);
        EXPECT_NEAR(told.mean, expected.number(row, "mean"), 1e-10) << row;
        EXPECT_NEAR(told.variance, expected.number(row, "variance"), 1e-12) << row;
    }
}

}  // namespace
}  // namespace treadwell::density
