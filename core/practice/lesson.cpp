#include "core/practice/lesson.h"

#include "core/crop/crop.h"
#include "core/practice/file.h"
#include "core/quantity/range.h"

#include <algorithm>
#include <cmath>

namespace treadwell::practice {

namespace {

constexpr std::string_view kFallback = "en";

Seconds minutes(double value) {
    return Seconds{value * 60.0};
}

Result<void> validatePad(const LessonPad& pad) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    const auto density = [](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); };
    return firstFailure(
        holdsWithin(pad.length, metres(5), metres(100), "pad.length_m"),
        holdsWithin(pad.width, metres(4), metres(40), "pad.width_m"),
        holdsWithin(pad.dryMatter, DryMatter::fromPercent(15), DryMatter::fromPercent(60), "pad.dry_matter"),
        holdsWithin(pad.loose, density(60), density(200), "pad.loose_kg_dm_m3"));
}

Result<void> validateGoal(const LessonGoal& goal) {
    const auto density = [](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); };
    return firstFailure(holdsWithin(goal.density, density(100), density(400), "goal.density_kg_dm_m3"),
                        holdsWithin(goal.threePasses, Share::fromFraction(0), Share::fromFraction(1),
                                    "goal.three_passes_share"),
                        holdsWithin(goal.variation, 0.005, 1.0, "goal.variation"));
}

Result<void> validateMachines(const Lesson& lesson) {
    const auto count = static_cast<double>(lesson.tractors.size());
    auto result = firstFailure(holdsWithin(count, 1.0, 6.0, "tractors"),
                               holdsWithin(double(lesson.atFirst), 1.0, count, "tractors_at_first"));
    for (std::size_t i = 0; result && i < lesson.tractors.size(); ++i) {
        const std::string place = "tractors[" + std::to_string(i) + "].";
        result = firstFailure(holdsWithin(lesson.tractors[i].mass, MachineMass::fromTonnes(1),
                                          MachineMass::fromTonnes(60), place + "mass_kg"),
                              holdsWithin(lesson.tractors[i].trackWidth, Length::fromMetres(0.3),
                                          Length::fromMetres(3), place + "track_width_m"));
    }
    return result;
}

Result<void> validateTimes(const Lesson& lesson) {
    const double duration_s = lesson.duration.count();
    auto result = holdsWithin(duration_s, 60.0, 12.0 * 3600.0, "duration_s");
    double before_s = 0.0;
    for (std::size_t i = 0; result && i < lesson.deliveries.size(); ++i) {
        const Delivery& load = lesson.deliveries[i];
        const std::string place = "deliveries[" + std::to_string(i) + "].";
        result = firstFailure(
            holdsWithin(load.at.count(), 0.0, duration_s, place + "at_s"),
            holdsWithin(load.mass, AsFedMass::fromTonnes(0.5), AsFedMass::fromTonnes(60), place + "mass_kg"));
        if (result && load.at.count() < before_s) return fail(code::lessonOrderWrong, place + "at_s");
        before_s = load.at.count();
    }
    for (std::size_t i = 0; result && i < lesson.peopleOnFoot.size(); ++i) {
        const Stretch& stretch = lesson.peopleOnFoot[i];
        const std::string place = "people_on_foot[" + std::to_string(i) + "].";
        result =
            firstFailure(holdsWithin(stretch.from.count(), 0.0, duration_s, place + "from_s"),
                         holdsWithin(stretch.to.count(), stretch.from.count(), duration_s, place + "to_s"));
    }
    return result;
}

}  // namespace

const LessonText& Lesson::text(std::string_view language) const noexcept {
    const auto in = [&](std::string_view wanted) {
        return std::find_if(texts.begin(), texts.end(),
                            [&](const LessonText& text) { return text.language == wanted; });
    };
    const auto found = in(language);
    return found == texts.end() ? *in(kFallback) : *found;
}

Result<void> validate(const Lesson& lesson) {
    const auto checked = firstFailure(validatePad(lesson.pad), validateGoal(lesson.goal),
                                      validateMachines(lesson), validateTimes(lesson));
    if (!checked) return checked;
    if (lesson.deliveries.empty()) return fail(code::lessonOrderWrong, "deliveries");
    for (const LessonText& text : lesson.texts) {
        if (text.language == kFallback && !text.title.empty()) return {};
    }
    return fail(code::lessonTextMissing, "texts");
}

Result<Lesson> lessonFromJson(std::string_view json) {
    auto lesson = fileFromJson<Lesson>(json, kLessonFormat, kLessonVersion);
    if (!lesson) return lesson;
    if (auto valid = validate(*lesson); !valid) return Unexpected{valid.error()};
    return lesson;
}

std::string toJson(const Lesson& lesson) {
    return fileToJson(lesson, kLessonFormat, kLessonVersion);
}

Result<Lesson> lessonFromDay(const season::Season& season, const season::Day& day, const farm::Silo& silo,
                             LessonText text) {
    Lesson lesson;
    lesson.id = toIso8601(day.date);
    lesson.texts.push_back(std::move(text));
    lesson.pad = {Length::fromMetres(30), silo.width, day.farm().rules.dryMatterLow,
                  crop::factsOf(crop::Crop::maize).loose};
    lesson.goal = {day.farm().rules.minimumDensity, Share::fromFraction(0.9), 0.1};
    DryMass dry;
    AsFedMass mass;
    std::optional<Instant> first;
    for (const season::LoadTipped& load : day.loads) {
        if (load.load.silo != silo.id) continue;
        if (!first) first = load.at;
        lesson.deliveries.push_back({load.at - *first, load.load.mass});
        dry += load.dryMass();
        mass += load.load.mass;
        lesson.pad.loose = crop::factsOf(day.farm().cropOf(load.load.field)).loose;
    }
    if (mass > AsFedMass{}) lesson.pad.dryMatter = dry / mass;
    const Seconds last = lesson.deliveries.empty() ? Seconds{0} : lesson.deliveries.back().at;
    lesson.duration = last + minutes(15);
    for (const auto& [id, packed] : season::packingOn(day, silo.id, day.begin, day.end)) {
        const auto known = season.farm().tractors.find(id);
        if (known == season.farm().tractors.end()) continue;
        lesson.tractors.push_back({known->second.name, known->second.mass, known->second.trackWidth});
    }
    lesson.atFirst = std::max(1, static_cast<int>(lesson.tractors.size()));
    lesson.cautions = {attention::Caution::peopleOnFoot, attention::Caution::rampSlope};
    if (auto valid = validate(lesson); !valid) return Unexpected{valid.error()};
    return lesson;
}

}  // namespace treadwell::practice
