#include "core/practice/progress.h"

#include "core/base/atomic_file.h"
#include "core/practice/file.h"

namespace treadwell::practice {

namespace {

constexpr std::string_view kFormat = "treadwell progress";

auto find(auto& trainees, std::string_view name) {
    return std::find_if(trainees.begin(), trainees.end(),
                        [&](const Trainee& trainee) { return trainee.name == name; });
}

}  // namespace

const LessonDone* Trainee::of(std::string_view lesson) const noexcept {
    const auto found =
        std::find_if(done.begin(), done.end(), [&](const LessonDone& each) { return each.lesson == lesson; });
    return found == done.end() ? nullptr : &*found;
}

const Trainee* Progress::called(std::string_view name) const noexcept {
    const auto found = find(trainees, name);
    return found == trainees.end() ? nullptr : &*found;
}

void Progress::add(const std::string& name) {
    if (called(name) == nullptr) trainees.push_back({name, {}});
}

void Progress::remove(std::string_view name) {
    std::erase_if(trainees, [&](const Trainee& trainee) { return trainee.name == name; });
}

void Progress::note(const std::string& name, std::string_view lesson, double score, bool byHand,
                    Instant now) {
    add(name);
    Trainee& trainee = *find(trainees, name);
    auto done = std::find_if(trainee.done.begin(), trainee.done.end(),
                             [&](const LessonDone& each) { return each.lesson == lesson; });
    if (done == trainee.done.end())
        done = trainee.done.insert(done, LessonDone{std::string{lesson}, -1.0, false, 0, now});
    ++done->runs;
    if (score <= done->best) return;
    done->best = score;
    done->byHand = byHand;
    done->at = now;
}

Result<Progress> readProgress(const std::filesystem::path& file) {
    if (!std::filesystem::exists(file)) return Progress{};
    const auto bytes = readFile(file);
    if (!bytes) return Unexpected{bytes.error()};
    auto progress = fileFromJson<Progress>(*bytes, kFormat, kProgressVersion);
    if (progress) return progress;
    Error error = progress.error();
    error.place.file = file.string();
    return Unexpected{error};
}

Result<void> writeProgress(const std::filesystem::path& file, const Progress& progress) {
    return writeFileAtomically(file, fileToJson(progress, kFormat, kProgressVersion));
}

}  // namespace treadwell::practice
