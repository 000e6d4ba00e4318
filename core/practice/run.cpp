#include "core/practice/run.h"

#include "core/quantity/range.h"

#include <algorithm>
#include <cmath>

namespace treadwell::practice {

namespace {

/// Of its time that a tractor rolls, the rest it turns and waits (assumed); of that for each other tractor
/// with which nobody has agreed who drives where (assumed).
constexpr double kRolling = 0.8;
constexpr double kInTheWay = 0.75;
/// A tractor that is called is there after this (assumed).
constexpr Seconds kOnItsWay{600.0};
/// A load is tipped on so much of the length, then the blade spreads it (assumed).
constexpr double kHeap_m = 4.0;
constexpr double kLeastPart_m = 1e-6;
/// Two tractors are in each other's way when they are closer than this, middle to middle along and side to
/// side (assumed).
constexpr double kRoomAlong_m = 7.0;
constexpr double kRoomBeside_m = 0.5;

}  // namespace

Result<void> validate(const Plan& plan, const Lesson& lesson) {
    return firstFailure(
        holdsWithin(plan.layer, Length::fromCentimetres(3), Length::fromCentimetres(60), "layer"),
        holdsWithin(plan.speed, Speed::fromKilometresPerHour(1), Speed::fromKilometresPerHour(15), "speed"),
        holdsWithin(plan.nearWall, Length{}, Length::fromMetres(3), "near_wall"),
        holdsWithin(plan.ramp, Slope::fromRunPerRise(1.5), Slope::fromRunPerRise(10), "ramp"),
        holdsWithin(plan.callTractors.value_or(Seconds{0}).count(), 0.0, lesson.duration.count(),
                    "call_tractors"));
}

LessonRun::LessonRun(Lesson lesson, Plan plan, passes::Pad pad, unsigned threads)
    : m_lesson{std::move(lesson)}, m_plan{plan}, m_pad{std::move(pad)}, m_threads{threads} {
    m_places.resize(m_lesson.tractors.size());
    makeTables();
    makeTracks();
}

Result<LessonRun> LessonRun::start(Lesson lesson, Plan plan, unsigned threads) {
    auto pad = passes::makePad({lesson.pad.length, lesson.pad.width});
    if (!pad) return Unexpected{pad.error()};
    return LessonRun{std::move(lesson), plan, *std::move(pad), threads};
}

void LessonRun::makeTables() {
    m_tables.clear();
    for (const LessonTractor& tractor : m_lesson.tractors) {
        m_tables.emplace_back(passes::Roller{tractor.mass, tractor.trackWidth, m_plan.speed},
                              m_pad.parameters);
    }
}

void LessonRun::makeTracks() {
    m_tracks.clear();
    for (std::size_t i = 0; i < m_lesson.tractors.size(); ++i) {
        m_tracks.emplace_back(m_pad.shape, m_plan.pattern, m_plan.nearWall,
                              static_cast<std::uint64_t>(m_lesson.seed) + i);
    }
}

Result<void> LessonRun::change(Plan plan) {
    if (auto valid = validate(plan, m_lesson); !valid) return valid;
    const bool otherTracks = plan.pattern != m_plan.pattern || plan.nearWall != m_plan.nearWall;
    m_plan = plan;
    makeTables();
    if (otherTracks) makeTracks();
    return {};
}

bool LessonRun::isSomebodyOnFoot(Seconds at) const noexcept {
    return std::any_of(m_lesson.peopleOnFoot.begin(), m_lesson.peopleOnFoot.end(),
                       [&](const Stretch& stretch) { return stretch.from <= at && at < stretch.to; });
}

std::size_t LessonRun::tractorsAt(Seconds at) const noexcept {
    const bool called = m_plan.callTractors && at >= *m_plan.callTractors + kOnItsWay;
    return called ? m_lesson.tractors.size() : static_cast<std::size_t>(m_lesson.atFirst);
}

Result<void> LessonRun::advance(std::chrono::seconds time) {
    m_passes.clear();
    std::size_t pressed = 0;
    const auto pressRest = [&] {
        passes::press(m_pad, std::span{m_passes}.subspan(pressed), m_tables, m_threads);
        pressed = m_passes.size();
    };
    for (std::chrono::seconds done{0}; done < time && !isOver(); ++done) {
        while (m_nextLoad < m_lesson.deliveries.size() &&
               m_lesson.deliveries[m_nextLoad].at <= m_facts.elapsed) {
            pressRest();
            if (auto tipped = tip(m_lesson.deliveries[m_nextLoad++]); !tipped) return tipped;
        }
        roll(Seconds{1.0});
        m_facts.elapsed += Seconds{1.0};
    }
    pressRest();
    return {};
}

void LessonRun::roll(Seconds time) {
    m_facts.tractors = tractorsAt(m_facts.elapsed);
    const bool onFoot = m_facts.onFoot = isSomebodyOnFoot(m_facts.elapsed);
    if (m_pad.layers.empty()) return;
    const auto rolled = [&](Seconds so) {
        m_facts.rolled += so;
        if (onFoot) m_facts.beside += so;
    };
    if (onFoot && m_plan.stopForPeople) return;
    if (m_hand) {
        const Seconds driven = rollByHand(time);
        rolled(driven);
        if (driven.count() > 0.0 && isInTheWay()) m_facts.close += driven;
    }
    double share = kRolling;
    if (!m_plan.oneWay) share *= std::pow(kInTheWay, static_cast<double>(m_facts.tractors) - 1.0);
    for (std::size_t i = m_hand ? 1 : 0; i < m_facts.tractors; ++i) {
        const auto roller = static_cast<std::uint32_t>(i);
        const Length distance = Length::fromMetres(m_plan.speed.si() * share * time.count());
        m_tracks[i].add(m_passes, m_tables[i].roller(), roller, distance);
        m_places[i] = {m_passes.back().x1_m, m_passes.back().y1_m};
        rolled(time * share);
    }
}

Seconds LessonRun::rollByHand(Seconds time) {
    const Length driven = m_hand->go(m_passes, Length::fromMetres(m_plan.speed.si() * time.count()));
    m_places[0] = m_hand->place();
    return Seconds{driven.si() / m_plan.speed.si()};
}

bool LessonRun::isInTheWay() const noexcept {
    const double wide_m = m_tables[0].roller().width().si() + kRoomBeside_m;
    return std::any_of(m_places.begin() + 1, m_places.end(), [&](const auto& other) {
        return other && std::abs(other->x_m - m_places[0]->x_m) < kRoomAlong_m &&
               std::abs(other->y_m - m_places[0]->y_m) < wide_m;
    });
}

void LessonRun::take() {
    if (!m_hand) m_hand.emplace(m_pad.shape, m_tables[0].roller());
}

void LessonRun::steerTo(passes::GroundPoint goal) {
    take();
    m_hand->goTo(goal);
}

void LessonRun::halt() {
    take();
    m_hand->halt();
}

Result<void> LessonRun::tip(const Delivery& load) {
    const LessonPad& pad = m_lesson.pad;
    const double length_m = pad.length.si(), width_m = pad.width.si();
    const double perMetre_kg = width_m * m_plan.layer.si() * pad.loose.si();
    double left_m = (load.mass * pad.dryMatter).kilograms() / perMetre_kg;
    while (left_m > kLeastPart_m) {
        if (m_pad.layers.empty() || m_front_m >= length_m) {
            if (auto begun = passes::beginLayer(m_pad, {pad.dryMatter, pad.loose}); !begun) return begun;
            m_facts.layerBegins.push_back(m_facts.elapsed);
            m_front_m = 0.0;
        }
        const double part_m = std::min(left_m, length_m - m_front_m);
        const double end_m = m_front_m + part_m;
        passes::tip(m_pad, {m_front_m, std::min(end_m, m_front_m + kHeap_m), 0.0, width_m},
                    DryMass::fromKilograms(part_m * perMetre_kg));
        passes::blade(m_pad, {m_front_m, end_m, 0.0, width_m}, m_plan.layer, passes::Direction::outward);
        m_front_m = length_m - end_m > kLeastPart_m ? end_m : length_m;
        left_m -= part_m;
    }
    m_facts.tipped += load.mass;
    ++m_facts.loads;
    return {};
}

Result<LessonRun> runLesson(Lesson lesson, const Plan& plan, unsigned threads) {
    if (auto valid = validate(plan, lesson); !valid) return Unexpected{valid.error()};
    auto run = LessonRun::start(std::move(lesson), plan, threads);
    if (!run) return run;
    while (!run->isOver()) {
        if (auto advanced = run->advance(std::chrono::minutes{1}); !advanced)
            return Unexpected{advanced.error()};
    }
    return run;
}

}  // namespace treadwell::practice
