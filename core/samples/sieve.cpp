#include "core/samples/sieve.h"

#include "core/base/codes.h"
#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/samples/grams.h"
#include "core/samples/item.h"
#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadwell::samples {

namespace {

constexpr Length mm(double value) {
    return Length::fromMillimetres(value);
}

constexpr std::array kThreeTo4{mm(19), mm(8), mm(4)};
constexpr std::array kThreeTo118{mm(19), mm(8), mm(1.18)};
constexpr std::array kFiveScreens{mm(26.9), mm(18.0), mm(8.98), mm(5.61), mm(1.65)};

Result<void> checkStack(std::span<const Length> openings, std::size_t readings) {
    if (openings.empty()) return fail(code::readingsMissing, "openings");
    for (std::size_t i = 0; i < openings.size(); ++i) {
        if (const auto held = holdsWithin(openings[i], mm(0.1), mm(100), item("openings", i)); !held)
            return held;
        if (i > 0 && !(openings[i] < openings[i - 1]))
            return fail(code::sievesNotInOrder, item("openings", i), openings[i].chopAmount(),
                        openings[i - 1].chopAmount());
    }
    if (readings != openings.size() + 1)
        return fail(code::sieveCountWrong, "masses", std::int64_t(readings), std::int64_t(openings.size()));
    return {};
}

void remarkEmpty(SieveParts& parts) {
    for (std::size_t i = 0; i < parts.openings.size(); ++i) {
        if (parts.parts[i] == Share{})
            parts.remarks.push_back({code::sieveEmpty, {parts.openings[i].chopAmount()}});
    }
    if (parts.parts.back() == Share{}) parts.remarks.push_back({code::panEmpty, {}});
}

Result<void> checkMasses(const SieveTest& test) {
    for (std::size_t i = 0; i < test.masses.size(); ++i) {
        const AsFedMass most = AsFedMass::fromKilograms(20);
        if (auto held = holdsGrams(test.masses[i], AsFedMass{}, most, item("masses", i)); !held) return held;
    }
    return {};
}

Result<void> remarkLoss(const SieveTest& test, AsFedMass total, Share usualLoss, SieveParts& parts) {
    if (!test.before) return {};
    const AsFedMass before = *test.before;
    if (!std::isfinite(before.si())) return fail(code::valueNotFinite, "before");
    if (before * (1.0 + usualLoss.fraction()) < total)
        return fail(code::sieveGained, "before", gramsOf(before), gramsOf(total));
    const Share lost = Share::fromFraction(1.0 - total / before);
    if (lost > usualLoss) parts.remarks.push_back({code::sieveLost, {lost.amount(), usualLoss.amount()}});
    return {};
}

}  // namespace

std::span<const Length> openingsOf(SieveStack stack) {
    switch (stack) {
        case SieveStack::threeTo4:
            return kThreeTo4;
        case SieveStack::threeTo118:
            return kThreeTo118;
        case SieveStack::fiveScreens:
            break;
    }
    return kFiveScreens;
}

std::optional<Share> SieveParts::coarserThan(Length opening) const {
    Share coarser;
    for (std::size_t i = 0; i < openings.size(); ++i) {
        coarser += parts[i];
        if (std::abs(openings[i] / opening - 1.0) < 1e-9) return coarser;
    }
    return std::nullopt;
}

Share SieveParts::coarserThanAny(Length opening) const {
    if (const auto exact = coarserThan(opening)) return *exact;
    Share above;
    for (std::size_t i = 0; i < openings.size(); ++i) {
        const Share here = above + parts[i];
        if (openings[i] < opening) {
            if (i == 0 || !(above > Share{}) || !(here.fraction() < 1.0)) return i == 0 ? here : above;
            const double along =
                std::log(opening / openings[i - 1]) / std::log(openings[i] / openings[i - 1]);
            const double from = stats::normalQuantile(above.fraction());
            const double to = stats::normalQuantile(here.fraction());
            return Share::fromFraction(stats::normalCdf(from + along * (to - from)));
        }
        above = here;
    }
    return above;
}

Result<SieveParts> partsOf(const SieveTest& test, Share usualLoss) {
    if (const auto held = checkStack(test.openings, test.masses.size()); !held)
        return Unexpected{held.error()};
    if (const auto held = checkMasses(test); !held) return Unexpected{held.error()};
    const AsFedMass total = std::accumulate(test.masses.begin(), test.masses.end(), AsFedMass{});
    if (!(total > AsFedMass{})) return fail(code::sieveNothing, "masses");
    SieveParts parts;
    parts.openings = test.openings;
    for (const AsFedMass mass : test.masses) parts.parts.push_back(Share::fromFraction(mass / total));
    remarkEmpty(parts);
    if (const auto held = remarkLoss(test, total, usualLoss, parts); !held) return Unexpected{held.error()};
    if (test.wet) parts.remarks.push_back({code::sieveWet, {}});
    return parts;
}

Result<SieveParts> partsOfPercent(std::span<const Length> openings, std::span<const double> percent) {
    SieveTest test;
    test.openings.assign(openings.begin(), openings.end());
    double sum = 0.0;
    for (std::size_t i = 0; i < percent.size(); ++i) {
        if (const auto held = holdsWithin(percent[i], 0.0, 100.0, item("percent", i)); !held)
            return Unexpected{held.error()};
        sum += percent[i];
        test.masses.push_back(AsFedMass::fromKilograms(percent[i] / 100.0));
    }
    if (auto held = checkStack(openings, percent.size()); !held) return Unexpected{held.error()};
    if (sum < 99.0 || sum > 101.0) return fail(code::percentSum, "percent", sum);
    return partsOf(test);
}

Result<SieveParts> pooled(std::span<const SieveParts> tests) {
    if (tests.empty()) return fail(code::readingsMissing, "tests");
    if (tests.size() == 1) return tests.front();
    SieveParts pool;
    pool.openings = tests.front().openings;
    pool.parts.resize(tests.front().parts.size());
    pool.tests = 0;
    const auto n = static_cast<double>(tests.size());
    for (std::size_t t = 0; t < tests.size(); ++t) {
        if (tests[t].openings != pool.openings) return fail(code::sieveStacksDiffer, item("tests", t));
        for (std::size_t i = 0; i < pool.parts.size(); ++i) pool.parts[i] += tests[t].parts[i] / n;
        pool.tests += tests[t].tests;
        for (const Message& remark : tests[t].remarks) {
            const bool isNew = std::ranges::find(pool.remarks, remark) == pool.remarks.end();
            if (isNew) pool.remarks.push_back(remark);
        }
    }
    for (std::size_t i = 0; i < pool.parts.size(); ++i) {
        double squares = 0.0;
        for (const SieveParts& test : tests) squares += std::pow((test.parts[i] - pool.parts[i]).si(), 2);
        pool.sds.push_back(Share::fromFraction(std::sqrt(squares / (n - 1.0))));
    }
    return pool;
}

}  // namespace treadwell::samples
