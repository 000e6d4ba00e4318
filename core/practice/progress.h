#pragma once

#include "core/base/instant.h"
#include "core/practice/lesson.h"

#include <filesystem>

namespace treadwell::practice {

/// How a trainee did in one lesson.
struct LessonDone {
    std::string lesson;   ///< its id
    double best = 0.0;    ///< score of 100
    bool byHand = false;  ///< the best one
    int runs = 0;
    Instant at{};  ///< of the best one

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("at_us", self.at);
        visit("best", self.best);
        visit("by_hand", self.byHand);
        visit("lesson", self.lesson);
        visit("runs", self.runs);
    }
};

struct Trainee {
    std::string name;
    std::vector<LessonDone> done;  ///< in the order of their first run

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("done", self.done);
        visit("name", self.name);
    }

    /// Null where the lesson was never run to its end.
    [[nodiscard]] const LessonDone* of(std::string_view lesson) const noexcept;
};

/// How the trainees of this machine do. It belongs to no season: a file beside the settings, that can be
/// deleted whole or name by name.
struct Progress {
    std::vector<Trainee> trainees;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("trainees", self.trainees);
    }

    /// Null where nobody is called so.
    [[nodiscard]] const Trainee* called(std::string_view name) const noexcept;
    /// Somebody new; nothing where the name is known.
    void add(const std::string& name);
    /// With all that was noted of them.
    void remove(std::string_view name);
    /// A lesson run to its end, by somebody who is added where not known.
    void note(const std::string& name, std::string_view lesson, double score, bool byHand, Instant now);
};

inline constexpr int kProgressVersion = 1;
/// In the folder where this machine keeps what belongs to no season.
inline constexpr std::string_view kProgressFile = "practice.json";

/// None is nobody. A file that cannot be read is an error and stays as it is: those of readFile() and of
/// fileFromJson(), with the file as place.
[[nodiscard]] Result<Progress> readProgress(const std::filesystem::path& file);
/// Errors: those of writeFileAtomically().
[[nodiscard]] Result<void> writeProgress(const std::filesystem::path& file, const Progress& progress);

}  // namespace treadwell::practice
