// A whole day at the silo, told by what people touch: morning, a shower, a truck that breaks down, a hired
// tractor, a drier field, dusk, and the end of the shift.
#include "app/desktop/widgets/advice_line.h"
#include "app/desktop/widgets/density_gauge.h"
#include "tests/app/desktop/fill/fill_window.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QToolButton>

namespace treadwell {
namespace {

using testing_support::idOf;

class WholeDay : public FillWindow {
  protected:
    WholeDay() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        farm::Truck other;
        other.id = idOf<farm::TruckTag>(8);
        other.name = "Biber";
        other.usualLoad = AsFedMass::fromTonnes(13.6);
        std::vector<session::Proposal> farm{
            {entries::TruckDefined{other}, m_clock.time, {}},
            {entries::TractorDefined{testing_support::someTractor(2, 9)}, m_clock.time, {}}};
        for (std::uint8_t i = 1; i <= 2; ++i) {
            farm::Field field;
            field.id = idOf<farm::FieldTag>(i);
            field.name = i == 1 ? "Long field" : "Mill field";
            farm.push_back({entries::FieldDefined{field}, m_clock.time, {}});
        }
        EXPECT_TRUE(session->importAll(farm, {}));
        m_clock.time = at("2026-09-16T10:30:00Z");  // 07:30 on the farm's wall
    }

    widgets::TruckFace* truck(const char* name) {
        for (auto* button : m_window->findChildren<widgets::TruckButton*>()) {
            if (button->truck().name == QLatin1String{name}) return button->findChild<widgets::TruckFace*>();
        }
        return nullptr;
    }
    widgets::TractorChip* chip(const char* name) {
        for (auto* each : m_window->findChildren<widgets::TractorChip*>()) {
            if (each->tractor().name == QLatin1String{name}) return each;
        }
        return nullptr;
    }
    QPushButton* button(const char* text) {
        for (auto* each : m_window->findChildren<QPushButton*>()) {
            if (each->isVisible() && each->text().startsWith(QLatin1String{text})) return each;
        }
        return nullptr;
    }
    void touch(const char* text) {
        ASSERT_NE(button(text), nullptr) << text;
        QTest::mouseClick(button(text), Qt::LeftButton);
    }
    /// Until what was asked lies on the disk.
    void settle(std::function<bool()> there) {
        ASSERT_TRUE(QTest::qWaitFor(there));
        QCoreApplication::processEvents();
    }
    void load(const char* name) {
        const std::size_t before = today().loads.size();
        QTest::mouseClick(truck(name), Qt::LeftButton);
        settle([&] { return today().loads.size() == before + 1; });
    }
    /// Loads in turn, so many minutes apart.
    void loads(int count, int minutes, std::vector<const char*> names) {
        for (int i = 0; i < count; ++i) {
            m_clock.time += std::chrono::minutes{minutes};
            load(names[static_cast<std::size_t>(i) % names.size()]);
        }
    }
    void put(const char* name, widgets::Zone zone) {
        while (chip(name)->tractor().zone != zone) {
            const int way = static_cast<int>(zone) - static_cast<int>(chip(name)->tractor().zone);
            QTest::keyClick(chip(name), way < 0 ? Qt::Key_Left : Qt::Key_Right);
            settle([&] { return !chip(name)->tractor().pending; });
            m_clock.time += 1s;
        }
    }
    void sample(const char* percent) {
        const std::size_t before = today().samples.size();
        type(named<widgets::QuantitySpinBox>("dryMatterPercent"), percent);
        settle([&] { return today().samples.size() == before + 1; });
    }
    QString gauge() { return m_window->findChild<widgets::DensityGauge*>()->sentence(); }
};

TEST_F(WholeDay, FromTheFirstLoadToTheEndOfTheShift) {
    open();
    // Morning.
    press("tablet");
    QTest::keyClicks(named<QLineEdit>("newName"), QStringLiteral("Ana"));
    press("record");
    settle([&] { return named<QPushButton>("tablet")->text().startsWith(u"Ana"); });
    touch("Long field");
    sample("34.5");
    put("Tractor 1", widgets::Zone::packing);
    put("Tractor 2", widgets::Zone::spreading);
    EXPECT_TRUE(gauge().contains(QStringLiteral("no density")) ||
                gauge().contains(QStringLiteral("No load")));
    loads(8, 7, {"Amsel", "Biber"});
    EXPECT_TRUE(gauge().contains(QStringLiteral("80 %"))) << gauge().toStdString();

    // A shower: deliveries stand still, and the pace is not called slow for it.
    m_clock.time += 5min;
    press("pause");
    settle([&] { return today().pauses.size() == 1; });
    m_clock.time += 40min;
    press("pause");
    settle([&] { return today().pauses[0].end.has_value(); });

    // A truck breaks down; its last load was touched by mistake.
    loads(2, 7, {"Amsel", "Biber"});
    press("undo");
    settle([&] { return today().loads.size() == 9; });
    loads(3, 12, {"Amsel"});

    // Noon: a tractor and a truck are hired, and the supervisor catches up with what came meanwhile.
    press("hire");
    touch("Heavy tractor");
    press("record");
    settle([&] { return chip("Hired 1") != nullptr; });
    m_clock.time += 1min;
    press("hire");
    touch("Large trailer");
    press("record");
    settle([&] { return truck("Hired truck 1") != nullptr; });
    m_clock.time += 44min;
    press("catchUp");
    named<QSpinBox>("catchUpCount")->setValue(5);
    press("record");
    settle([&] { return today().loads.size() == 17; });

    // The harvester goes to a drier field.
    touch("Mill field");
    sample("38.2");
    loads(4, 5, {"Hired truck 1", "Amsel"});
    EXPECT_NEAR(today().loads.back().dryMatter.percent(), 38.2, 1e-9);
    EXPECT_NEAR(today().loads.front().dryMatter.percent(), 34.5, 1e-9);

    // Dusk: the look for the dark, the crew's language, and the words for the radio.
    m_window->setLook(settings::Look::dark);
    press("language");
    QCoreApplication::processEvents();
    press("radio");
    EXPECT_TRUE(
        m_window->findChild<widgets::MessageBar*>()->shownText().contains(QStringLiteral("na compactação")));
    m_window->setLook(settings::Look::light);
    press("language");
    QCoreApplication::processEvents();

    // The end: the tractors leave and the shift is over.
    for (const char* name : {"Tractor 1", "Tractor 2", "Hired 1"}) put(name, widgets::Zone::away);
    press("tablet");
    press("endShift");
    settle([&] { return named<QPushButton>("tablet")->text() != u"Ana"; });
    const season::Day day = today();
    close();

    const auto again = session::Session::open(m_files, m_clock, session::Purpose::reading);
    ASSERT_TRUE(again);
    const season::Day& kept = *again->snapshot()->days().back();
    EXPECT_EQ(kept.loads, day.loads) << "all of it lies in the file";
    EXPECT_EQ(kept.loads.size(), 21u);
    EXPECT_EQ(kept.pauses.size(), 1u);
    for (const season::WorkSpan& span : kept.work)
        EXPECT_TRUE(span.end || span.activity == farm::Activity::away);
    ASSERT_FALSE(kept.shifts.empty());
    EXPECT_TRUE(kept.shifts.back().end);
}

}  // namespace
}  // namespace treadwell
