#include "core/passes/press.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <thread>

namespace treadwell::passes {

namespace {

constexpr double kWheels = 4.0;
constexpr double kReferenceStress_Pa = 100e3;

/// A range of one coordinate.
struct Interval {
    double low = -std::numeric_limits<double>::infinity();
    double high = std::numeric_limits<double>::infinity();

    /// Narrows to where low <= offset + slope * x < high.
    void hold(double offset, double slope, double low_m, double high_m) noexcept {
        if (std::abs(slope) < 1e-12) {
            if (!(low_m <= offset && offset < high_m)) high = low;
            return;
        }
        const double a = (low_m - offset) / slope, b = (high_m - offset) / slope;
        low = std::max(low, std::min(a, b));
        high = std::min(high, std::max(a, b));
    }
};

/// Columns of a chunk at a time, so that their depths stay in the first cache.
constexpr std::size_t kChunk = 256;

/// Where a pass presses in a row, and how much less than right under a tyre.
struct Pressed {
    std::size_t first;  ///< column of the pad
    std::size_t count;
    double looser;  ///< factor of the attainable specific volume
};

void pressChunk(Pad& pad, const PressTable& table, const Pressed& pressed) noexcept {
    std::array<double, kChunk> depth_m{};
    const std::size_t columns = pad.columns();
    for (std::size_t layer = pad.layers.size(); layer-- > 0;) {
        const PadLayer& crop = pad.layers[layer];
        const double loose = crop.loose_m3_kg, saturated = crop.saturated_m3_kg;
        const double looser = crop.attainable * pressed.looser;
        const double* areal_kg_m2 = pad.areal_kg_m2.data() + layer * columns + pressed.first;
        double* volume_m3_kg = pad.volume_m3_kg.data() + layer * columns + pressed.first;
        double shallowest_m = table.reach_m();
        for (std::size_t i = 0; i < pressed.count; ++i) {
            const double volume = volume_m3_kg[i];
            depth_m[i] += areal_kg_m2[i] * volume;
            shallowest_m = std::min(shallowest_m, depth_m[i]);
            const double fall = loose - table.attainable_m3_kg(depth_m[i]) * looser;
            const double fallen = loose - volume;
            if (fallen >= PressTable::kMostDone * fall) continue;  // no stress, or nothing left to gain
            const double pressedTo = volume - fall * table.gain(fallen / fall);
            volume_m3_kg[i] = std::max(pressedTo, saturated);
        }
        if (shallowest_m >= table.reach_m()) return;
    }
}

void pressRun(Pad& pad, const PressTable& table, const Run& run, double looser) noexcept {
    const std::size_t first = run.row * pad.along + run.first;
    for (std::size_t done = 0; done < run.count; done += kChunk) {
        pressChunk(pad, table, {first + done, std::min(kChunk, run.count - done), looser});
    }
}

void countRun(Pad& pad, const Run& run) noexcept {
    const std::size_t first = (pad.layers.size() - 1) * pad.columns() + run.row * pad.along + run.first;
    for (std::size_t i = 0; i < run.count; ++i) ++pad.passes[first + i];
}

void pressRows(Pad& pad, std::span<const WheelPass> passes, std::span<const PressTable> tables,
               std::size_t firstRow, std::size_t endRow) noexcept {
    const double cell_m = pad.shape.cellAcross.si(), beside_m = pad.parameters.besideTyre_m;
    const double looser = std::pow(pad.parameters.besideTyre, -pad.parameters.stressExponent);
    const auto rowAt = [&](double y_m) {
        return static_cast<std::size_t>(
            std::clamp(std::floor(y_m / cell_m), static_cast<double>(firstRow), static_cast<double>(endRow)));
    };
    for (const WheelPass& pass : passes) {
        const PressTable& table = tables[pass.roller];
        const double half_m = 0.5 * table.roller().width().si() + beside_m;
        const std::size_t low = rowAt(std::min(pass.y0_m, pass.y1_m) - half_m);
        const std::size_t high = std::min(rowAt(std::max(pass.y0_m, pass.y1_m) + half_m) + 1, endRow);
        for (const Strip& tyre : tyresOf(table.roller())) {
            for (std::size_t row = low; row < high; ++row) {
                const Run under = runOf(pad, pass, tyre, row);
                pressRun(pad, table, under, 1.0);
                countRun(pad, under);
                pressRun(pad, table, runOf(pad, pass, {tyre.from_m - beside_m, tyre.from_m}, row), looser);
                pressRun(pad, table, runOf(pad, pass, {tyre.to_m, tyre.to_m + beside_m}, row), looser);
            }
        }
    }
}

}  // namespace

double contactPressure(MachineMass mass, const Parameters& parameters) noexcept {
    const double twelveTonnes = mass / MachineMass::fromTonnes(12);
    return std::clamp(parameters.pressure_Pa * std::pow(twelveTonnes, parameters.pressureExponent),
                      parameters.lowestPressure_Pa, parameters.highestPressure_Pa);
}

double stressUnderWheel(double load_N, double pressure_Pa, double depth_m, double concentration) noexcept {
    if (!(depth_m > 0.0)) return pressure_Pa;
    const double radius_m = std::sqrt(load_N / (std::numbers::pi * pressure_Pa));
    const double ratio = radius_m / depth_m;
    return pressure_Pa * (1.0 - std::pow(1.0 + ratio * ratio, -0.5 * concentration));
}

DryDensity attainable(double stress_Pa, DryMatter dryMatter, const Parameters& parameters) noexcept {
    return DryDensity::fromSi(parameters.attainable_kg_m3 *
                              std::pow(stress_Pa / kReferenceStress_Pa, parameters.stressExponent) *
                              std::pow(dryMatter.si() / 0.35, parameters.dryMatterExponent));
}

PressTable::PressTable(const Roller& roller, const Parameters& parameters)
    : m_roller{roller},
      m_reach_m{parameters.reach_m},
      m_perDepth{(kNodes - 1) / parameters.reach_m},
      m_attainable{},
      m_gain{} {
    const DryMatter reference = DryMatter::fromFraction(0.35);
    const double c = parameters.laterGain;
    const double load_N = roller.mass.si() * kGravity_m_s2 / kWheels;
    const double pressure_Pa = contactPressure(roller.mass, parameters);
    const double counts = std::pow(parameters.usualSpeed_m_s / roller.speed.si(), parameters.speedExponent);
    for (std::size_t i = 0; i < kNodes; ++i) {
        const double depth_m = static_cast<double>(i) / m_perDepth;
        const double stress_Pa = stressUnderWheel(load_N, pressure_Pa, depth_m, parameters.concentration);
        m_attainable[i].value = 1.0 / attainable(stress_Pa, reference, parameters).si();
        // N equal passes have done firstPass + c ln N; one more makes N into N + counts.
        const double done = static_cast<double>(i) / kGainPerDone;
        m_gain[i].value = c * std::log1p(counts * std::exp((parameters.firstPass - done) / c));
    }
    // Beyond their ends: no stress, and nothing left to gain.
    m_attainable.back().value = 1.0;
    m_gain.back().value = 0.0;
    for (std::size_t i = 0; i + 1 < kNodes; ++i) {
        m_attainable[i].slope = m_attainable[i + 1].value - m_attainable[i].value;
        m_gain[i].slope = m_gain[i + 1].value - m_gain[i].value;
    }
}

std::array<Strip, 2> tyresOf(const Roller& roller) noexcept {
    const double inner_m = 0.5 * (roller.gauge() - roller.tyreWidth()).si();
    const double outer_m = 0.5 * roller.width().si();
    return {{{-outer_m, -inner_m}, {inner_m, outer_m}}};
}

Run runOf(const Pad& pad, const WheelPass& pass, const Strip& strip, std::size_t row) noexcept {
    const double dx = pass.x1_m - pass.x0_m, dy = pass.y1_m - pass.y0_m;
    const double length_m = std::hypot(dx, dy);
    if (!(length_m > 0.0)) return {row, 0, 0};
    const double ux = dx / length_m, uy = dy / length_m;
    const double y_m = (static_cast<double>(row) + 0.5) * pad.shape.cellAcross.si() - pass.y0_m;
    Interval x;  // of the columns' middles, from the pass's begin
    x.hold(y_m * uy, ux, 0.0, length_m);
    x.hold(y_m * ux, -uy, strip.from_m, strip.to_m);
    const double cell_m = pad.shape.cellAlong.si();
    const auto columnAt = [&](double from_m) {
        const double column = std::ceil((from_m + pass.x0_m) / cell_m - 0.5);
        return static_cast<std::size_t>(std::clamp(column, 0.0, static_cast<double>(pad.along)));
    };
    if (!(x.low < x.high)) return {row, 0, 0};
    const std::size_t first = columnAt(x.low), end = columnAt(x.high);
    return {row, first, end > first ? end - first : 0};
}

void press(Pad& pad, std::span<const WheelPass> passes, std::span<const PressTable> tables,
           unsigned threads) {
    if (pad.layers.empty() || passes.empty()) return;
    const std::size_t parts = std::clamp<std::size_t>(threads, 1, pad.across);
    std::vector<std::jthread> workers;
    for (std::size_t part = 1; part < parts; ++part) {
        workers.emplace_back([&, part] {
            pressRows(pad, passes, tables, pad.across * part / parts, pad.across * (part + 1) / parts);
        });
    }
    pressRows(pad, passes, tables, 0, pad.across / parts);
}

}  // namespace treadwell::passes
