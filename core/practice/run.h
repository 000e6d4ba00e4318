#pragma once

#include "core/passes/rest.h"
#include "core/passes/tracks_laid.h"
#include "core/practice/hand.h"
#include "core/practice/lesson.h"

namespace treadwell::practice {

/// What a trainee decides before, or while, the lesson runs.
struct Plan {
    Length layer = Length::fromCentimetres(15);
    passes::Pattern pattern = passes::Pattern::wholeWidth;
    Speed speed = Speed::fromKilometresPerHour(4);
    Length nearWall = passes::kOverhang;  ///< outer tyre to the wall
    Slope ramp = Slope::fromRunPerRise(3);
    std::optional<Seconds> callTractors;  ///< when those that wait are called
    bool oneWay = true;                   ///< tractors agree on who drives where
    bool stopForPeople = true;            ///< everybody stands while somebody is on foot
    bool lights = true;
};

/// Layer 3-60 cm, speed 1-15 km/h, near the wall 0-3 m, ramp 1:1.5 to 1:10, a call within the lesson. Errors:
/// valueNotFinite, valueOutOfRange.
[[nodiscard]] Result<void> validate(const Plan& plan, const Lesson& lesson);

/// What happened with whom while the lesson ran.
struct RunFacts {
    Seconds elapsed{};
    Seconds rolled{};  ///< of all tractors together
    Seconds beside{};  ///< rolled while somebody was on foot
    Seconds close{};   ///< the tractor driven by hand in the way of another
    AsFedMass tipped;
    std::size_t loads = 0;
    bool onFoot = false;       ///< somebody, now
    std::size_t tractors = 0;  ///< at work by now
    std::vector<Seconds> layerBegins;
};

/// A lesson while it runs: loads come by its clock and are spread by the blade; tractors roll as the plan
/// says, or a trainee drives one. The same plan and steps of any size give the same pad on any number of
/// threads.
class LessonRun final {
  public:
    /// A lesson and a plan that validate() has passed. Errors: those of makePad().
    [[nodiscard]] static Result<LessonRun> start(Lesson lesson, Plan plan, unsigned threads = 1);

    /// Lets the clock run on by whole seconds, at most to the lesson's end.
    [[nodiscard]] Result<void> advance(std::chrono::seconds time);
    /// A trainee takes the first tractor, which leaves the plan's pattern for good, and drives to a point.
    void steerTo(passes::GroundPoint goal);
    /// Takes it and stands.
    void halt();
    /// Changes the plan from now on. Errors: those of validate().
    [[nodiscard]] Result<void> change(Plan plan);

    [[nodiscard]] bool isOver() const noexcept { return m_facts.elapsed >= m_lesson.duration; }
    [[nodiscard]] const Lesson& lesson() const noexcept { return m_lesson; }
    [[nodiscard]] const Plan& plan() const noexcept { return m_plan; }
    [[nodiscard]] const RunFacts& facts() const noexcept { return m_facts; }
    [[nodiscard]] const passes::Pad& pad() const noexcept { return m_pad; }
    /// The tractor driven by hand; null while none is.
    [[nodiscard]] const HandDriven* hand() const noexcept { return m_hand ? &*m_hand : nullptr; }
    /// The middle of each tractor that has rolled, in the order of the lesson's tractors.
    [[nodiscard]] const std::vector<std::optional<passes::GroundPoint>>& places() const noexcept {
        return m_places;
    }

  private:
    LessonRun(Lesson lesson, Plan plan, passes::Pad pad, unsigned threads);
    [[nodiscard]] Result<void> tip(const Delivery& load);
    [[nodiscard]] bool isSomebodyOnFoot(Seconds at) const noexcept;
    [[nodiscard]] std::size_t tractorsAt(Seconds at) const noexcept;
    void roll(Seconds time);
    [[nodiscard]] Seconds rollByHand(Seconds time);
    [[nodiscard]] bool isInTheWay() const noexcept;
    void take();
    void makeTables();
    void makeTracks();

    Lesson m_lesson;
    Plan m_plan;
    passes::Pad m_pad;
    unsigned m_threads;
    std::vector<passes::PressTable> m_tables;
    std::vector<passes::TrackLayer> m_tracks;
    std::vector<passes::WheelPass> m_passes;
    std::vector<std::optional<passes::GroundPoint>> m_places;
    std::optional<HandDriven> m_hand;
    RunFacts m_facts;
    std::size_t m_nextLoad = 0;
    double m_front_m = 0.0;  ///< of the newest layer, from the back
};

/// Runs a lesson to its end by a plan.
[[nodiscard]] Result<LessonRun> runLesson(Lesson lesson, const Plan& plan, unsigned threads = 1);

}  // namespace treadwell::practice
