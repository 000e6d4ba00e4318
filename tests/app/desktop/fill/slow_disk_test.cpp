// The Fill page while the disk takes its time, and when it fails: no touch waits, none is lost in silence.
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/widgets/tractor_chip.h"
#include "app/desktop/widgets/truck_button.h"
#include "tests/app/desktop/slow_file.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

namespace treadwell::fill {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

farm::Truck truckCalled(const char* name, std::uint8_t number, double tonnes) {
    farm::Truck truck;
    truck.id = idOf<farm::TruckTag>(number);
    truck.name = name;
    truck.usualLoad = AsFedMass::fromTonnes(tonnes);
    return truck;
}

struct SlowPage : testing::Test {
    SlowPage() {
        SeasonMaker maker;
        const Instant morning = clock.time - 4h;
        maker.add(entries::SiloDefined{someSilo()}, morning);
        maker.add(entries::TractorDefined{someTractor(1, 14)}, morning);
        maker.add(entries::TruckDefined{truckCalled("Amsel", 1, 12.4)}, morning);
        maker.add(entries::TruckDefined{truckCalled("Biber", 2, 13.6)}, morning);
        entries::Load before = someLoad(11);
        before.truck = idOf<farm::TruckTag>(2);
        maker.add(before, clock.time - 10min);
        desk = std::make_unique<desk::SeasonDesk>(std::make_unique<SlowFile>(disk, std::move(maker)), clock);
        page = std::make_unique<FillPage>(*desk, appearance);
    }
    ~SlowPage() override { disk.release(); }

    widgets::TruckButton* truck(const char* name) {
        for (auto* button : page->findChildren<widgets::TruckButton*>()) {
            if (button->truck().name == QLatin1String{name}) return button;
        }
        return nullptr;
    }
    void touch(const char* name) {
        QTest::mouseClick(truck(name)->findChild<widgets::TruckFace*>(), Qt::LeftButton);
    }
    void undo() { QTest::mouseClick(page->findChild<QPushButton*>(QStringLiteral("undo")), Qt::LeftButton); }
    [[nodiscard]] const std::vector<season::LoadTipped>& loads() const {
        return desk->season()->days().back()->loads;
    }
    [[nodiscard]] QString message() const { return page->findChild<widgets::MessageBar*>()->shownText(); }

    HandClock clock{at("2026-09-15T14:00:00Z")};
    Disk disk;
    settings::Appearance appearance;
    std::unique_ptr<desk::SeasonDesk> desk;
    std::unique_ptr<FillPage> page;
};

TEST_F(SlowPage, ShowsALoadAsPendingUntilItIsOnTheDisk) {
    disk.hold();
    touch("Amsel");
    touch("Amsel");
    EXPECT_EQ(truck("Amsel")->truck().pending, 2);
    EXPECT_EQ(truck("Biber")->truck().pending, 0);
    EXPECT_EQ(loads().size(), 1u);
    disk.release();
    ASSERT_TRUE(QTest::qWaitFor([this] { return loads().size() == 3; }));
    EXPECT_TRUE(QTest::qWaitFor([this] { return truck("Amsel")->truck().pending == 0; }));
}

TEST_F(SlowPage, ShowsAMovedTractorAtOnceAndAsPending) {
    disk.hold();
    auto* chip = page->findChild<widgets::TractorChip*>();
    QTest::keyClick(chip, Qt::Key_Left);
    EXPECT_EQ(chip->tractor().zone, widgets::Zone::spreading);
    EXPECT_TRUE(chip->tractor().pending);
    disk.release();
    EXPECT_TRUE(QTest::qWaitFor([chip] { return !chip->tractor().pending; }));
    EXPECT_EQ(chip->tractor().zone, widgets::Zone::spreading);
}

// Undo means the load that was just touched, not the one before it that already lies on the disk.
TEST_F(SlowPage, UndoTakesBackTheLoadThatIsOnItsWay) {
    disk.hold();
    touch("Amsel");
    undo();
    disk.release();
    ASSERT_TRUE(QTest::qWaitFor([this] {
        const season::Day& day = *desk->season()->days().back();
        return std::any_of(day.facts.begin(), day.facts.end(),
                           [](const auto& fact) { return fact->isVoid(); });
    }));
    ASSERT_EQ(loads().size(), 1u);
    EXPECT_EQ(loads().front().load.truck, idOf<farm::TruckTag>(2));
}

TEST_F(SlowPage, SaysThatALoadCouldNotBeSaved) {
    disk.fail();
    touch("Amsel");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !message().isEmpty(); }));
    EXPECT_TRUE(message().contains(QStringLiteral("load"))) << message().toStdString();
    EXPECT_EQ(truck("Amsel")->truck().pending, 0);
    EXPECT_EQ(loads().size(), 1u);
}

TEST_F(SlowPage, RecordsEachCautionOnceADayAndOnlyWhenItIsInSight) {
    page->refresh();
    QTest::qWait(20);
    EXPECT_EQ(disk.writes(), 0) << "nobody sees the page";
    page->show();
    page->refresh();
    const auto shown = [this] {
        return desk->season()->days().back()->records.of<entries::CautionShown>().size();
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown() > 3; }));
    ASSERT_TRUE(QTest::qWaitFor([&] { return disk.writes() == static_cast<int>(shown()); }));
    const int writes = disk.writes();
    page->refresh();
    QTest::qWait(50);
    EXPECT_EQ(disk.writes(), writes);
}

}  // namespace
}  // namespace treadwell::fill
