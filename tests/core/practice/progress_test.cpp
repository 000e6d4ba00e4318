#include "core/practice/progress.h"

#include "core/base/atomic_file.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>
#include <unistd.h>

namespace treadwell::practice {
namespace {

using testing_support::at;

class ProgressFile : public testing::Test {
  protected:
    ~ProgressFile() override { std::filesystem::remove(file); }
    const std::filesystem::path file =
        std::filesystem::temp_directory_path() / ("treadwell-progress-" + std::to_string(getpid()) + ".json");
};

TEST_F(ProgressFile, IsNobodyUntilSomebodyPractises) {
    EXPECT_TRUE(readProgress(file).value().trainees.empty());
}

TEST_F(ProgressFile, KeepsTheBestRunOfEachLessonAndCountsAll) {
    Progress progress;
    progress.note("Ana", "layer", 60, false, at("2026-02-01T10:00:00Z"));
    progress.note("Ana", "layer", 82, true, at("2026-02-02T10:00:00Z"));
    progress.note("Ana", "layer", 70, false, at("2026-02-03T10:00:00Z"));
    progress.note("Ana", "wall", 0, false, at("2026-02-03T11:00:00Z"));
    progress.note("Bo", "layer", 50, false, at("2026-02-03T12:00:00Z"));
    ASSERT_TRUE(writeProgress(file, progress));
    const Progress again = readProgress(file).value();
    ASSERT_EQ(again.trainees.size(), 2);
    const LessonDone* layer = again.called("Ana")->of("layer");
    ASSERT_NE(layer, nullptr);
    EXPECT_EQ(layer->best, 82);
    EXPECT_TRUE(layer->byHand);
    EXPECT_EQ(layer->runs, 3);
    EXPECT_EQ(layer->at, at("2026-02-02T10:00:00Z"));
    EXPECT_EQ(again.called("Ana")->of("wall")->best, 0);
    EXPECT_EQ(again.called("Ana")->of("speed"), nullptr);
    EXPECT_EQ(std::filesystem::status(file).permissions() & std::filesystem::perms::others_all,
              std::filesystem::perms::none);
}

TEST_F(ProgressFile, ForgetsSomebodyWhole) {
    Progress progress;
    progress.note("Ana", "layer", 60, false, at("2026-02-01T10:00:00Z"));
    progress.add("Bo");
    progress.add("Bo");
    progress.remove("Ana");
    ASSERT_TRUE(writeProgress(file, progress));
    EXPECT_EQ(readFile(file).value().find("Ana"), std::string::npos);
    EXPECT_EQ(readProgress(file).value().trainees.size(), 1);
}

TEST_F(ProgressFile, ABrokenOneIsAnErrorAndStays) {
    ASSERT_TRUE(writeFileAtomically(file, "{\"format\":"));
    const auto read = readProgress(file);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().place.file, file.string());
    EXPECT_EQ(readFile(file).value(), "{\"format\":");
}

}  // namespace
}  // namespace treadwell::practice
