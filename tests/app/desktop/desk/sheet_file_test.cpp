#include "app/desktop/desk/sheet_file.h"

#include "core/base/atomic_file.h"
#include "core/review/codes.h"
#include "tests/support/season_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace treadwell::desk {
namespace {

class StillClock final : public Clock {
  public:
    Instant now() const override { return testing_support::at("2026-09-15T18:00:00Z"); }
};

TEST(SheetFile, IsWrittenFromTheSeasonsFile) {
    const QTemporaryDir folder;
    const std::filesystem::path here{folder.path().toStdString()};
    const session::Files files{here / "season.treadwell", here / "state"};
    std::filesystem::create_directory(files.stateFolder);
    const StillClock clock;
    {
        auto made = session::Session::create(files, {"Lindenhof", "Etc/UTC"}, {}, clock);
        ASSERT_TRUE(made);
        ASSERT_TRUE(made->propose(entries::SiloDefined{testing_support::someSilo()}, clock.now(), {}));
        ASSERT_TRUE(made->propose(testing_support::someLoad(12), clock.now(), {}));
    }
    const std::filesystem::path pdf = here / "sheet.pdf";
    ASSERT_TRUE(writeSheet(files, clock, {}, pdf));
    const auto bytes = readFile(pdf.string());
    ASSERT_TRUE(bytes);
    EXPECT_THAT(*bytes, testing::StartsWith("%PDF-"));
    SheetWanted wanted;
    wanted.day = LocalDay{std::chrono::year{2027}, std::chrono::January, std::chrono::day{1}};
    EXPECT_EQ(writeSheet(files, clock, wanted, pdf).error().code(), code::dayUnknown);
    EXPECT_EQ(writeSheet(files, clock, {}, here / "nowhere" / "sheet.pdf").error().code(),
              code::fileUnwritable);
}

}  // namespace
}  // namespace treadwell::desk
