#pragma once

#include "core/attention/cautions.h"
#include "core/farm/machines.h"
#include "core/season/season.h"

#include <span>

namespace treadwell::practice {

/// What a trainee reads, in one language.
struct LessonText {
    std::string language;  ///< as `en` or `pt_BR`
    std::string title;
    std::string story;  ///< what happens
    std::string goal;   ///< what to reach

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("goal", self.goal);
        visit("language", self.language);
        visit("story", self.story);
        visit("title", self.title);
    }
};

struct LessonTractor {
    std::string name;
    MachineMass mass;
    Length trackWidth = Length::fromMetres(1.4);

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("mass_kg", self.mass);
        visit("name", self.name);
        visit("track_width_m", self.trackWidth);
    }
};

/// A load that is tipped, counted from the lesson's begin.
struct Delivery {
    Seconds at{};
    AsFedMass mass;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("at_s", self.at);
        visit("mass_kg", self.mass);
    }
};

/// A stretch of the lesson.
struct Stretch {
    Seconds from{};
    Seconds to{};

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("from_s", self.from);
        visit("to_s", self.to);
    }
};

/// The part of a silo that is packed.
struct LessonPad {
    Length length;
    Length width;
    DryMatter dryMatter;
    DryDensity loose;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("dry_matter", self.dryMatter);
        visit("length_m", self.length);
        visit("loose_kg_dm_m3", self.loose);
        visit("width_m", self.width);
    }
};

/// What counts as full marks.
struct LessonGoal {
    DryDensity density;      ///< as rolled
    Share threePasses;       ///< of the surface
    double variation = 0.1;  ///< standard deviation over mean of the columns' density, at most

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("density_kg_dm_m3", self.density);
        visit("three_passes_share", self.threePasses);
        visit("variation", self.variation);
    }
};

/// A lesson as its file gives it. Tractors beyond `atFirst` come only when they are called.
struct Lesson {
    std::string id;
    int order = 1;
    int atFirst = 1;
    std::int64_t seed = 1;
    bool dark = false;
    Seconds duration{};
    LessonPad pad;
    LessonGoal goal;
    std::vector<LessonTractor> tractors;
    std::vector<Delivery> deliveries;
    std::vector<Stretch> peopleOnFoot;
    std::vector<attention::Caution> cautions;  ///< that belong to it
    std::vector<LessonText> texts;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("cautions", self.cautions);
        visit("dark", self.dark);
        visit("deliveries", self.deliveries);
        visit("duration_s", self.duration);
        visit("goal", self.goal);
        visit("id", self.id);
        visit("order", self.order);
        visit("pad", self.pad);
        visit("people_on_foot", self.peopleOnFoot);
        visit("seed", self.seed);
        visit("texts", self.texts);
        visit("tractors", self.tractors);
        visit("tractors_at_first", self.atFirst);
    }

    /// In `language`, else in English.
    [[nodiscard]] const LessonText& text(std::string_view language) const noexcept;
};

inline constexpr std::string_view kLessonFormat = "treadwell lesson";
inline constexpr int kLessonVersion = 1;

/// Duration 1 min to 12 h; pad 5-100 m by 4-40 m, 15-60 % dry matter, loose 60-200 kg DM/m3; goals 100-400 kg
/// DM/m3, 0-100 %, 0.005-1; 1-6 tractors of 1-60 t; loads of 0.5-60 t in order and within the duration; an
/// English text. Errors: valueNotFinite, valueOutOfRange, lessonOrderWrong, lessonTextMissing with the field.
[[nodiscard]] Result<void> validate(const Lesson& lesson);

/// A lesson's file: JSON with `format` "treadwell lesson" and `version`, and the fields above in SI. Errors:
/// those of PayloadDocument and PayloadReader, fieldUnknown, lessonVersion, those of validate().
[[nodiscard]] Result<Lesson> lessonFromJson(std::string_view json);
[[nodiscard]] std::string toJson(const Lesson& lesson);

/// A lesson of what was delivered to a silo on a day, with the tractors that packed there, on a pad as wide
/// as the silo. `text` says it in the trainer's words. Errors: those of validate().
[[nodiscard]] Result<Lesson> lessonFromDay(const season::Season& season, const season::Day& day,
                                           const farm::Silo& silo, LessonText text);

}  // namespace treadwell::practice
