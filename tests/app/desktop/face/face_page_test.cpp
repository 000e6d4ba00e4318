// Drives the Face page on a real season file with clicks and keys, and looks at what came into it.
#include "app/desktop/face/face_page.h"

#include "app/desktop/day/sheet_view.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "tests/app/desktop/form_window.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTabWidget>

namespace treadwell {
namespace {

using namespace std::chrono_literals;

class FaceWindow : public FormWindow {
  protected:
    FaceWindow() {
        auto session = session::Session::open(m_files, m_clock);
        EXPECT_TRUE(session);
        EXPECT_TRUE(
            session->propose(testing_support::someWork(1, farm::Activity::packing), m_clock.time, {}));
        std::vector<session::Proposal> loads;
        for (int i = 0; i < 100; ++i)
            loads.push_back({testing_support::someLoad(14), m_clock.time + i * 6min, {}});
        EXPECT_TRUE(session->importAll(loads, {}));
        m_clock.time += std::chrono::days{100};
    }

    void openFace() {
        open();
        m_window->showPage(Page::face);
        QCoreApplication::processEvents();
    }
    void addCores(int count) {
        auto session = session::Session::open(m_files, m_clock);
        for (int i = 0; i < count; ++i) {
            entries::Core core;
            core.silo = testing_support::idOf<farm::SiloTag>(1);
            core.along = Length::fromMetres(20);
            core.across = Length::fromMetres(2.0 + 5.0 * (i % 3));
            core.height = Length::fromMetres(0.3 + 0.5 * (i / 3));
            core.density = DryDensity::fromKilogramsPerCubicMetre(240.0 - 10.0 * (i / 3) + 3.0 * (i % 3));
            EXPECT_TRUE(session->propose(core, m_clock.time, {}));
        }
    }
    QString sheet(const char* name) { return named<day_page::SheetView>(name)->toPlainText(); }
};

TEST_F(FaceWindow, TakesACoreWithPositionDepthToolAndOrigin) {
    openFace();
    EXPECT_TRUE(named<samples_page::LinesPanel>("faceCautions")->text().contains(u"face"))
        << "the stay-back distance stands beside the form";
    EXPECT_FALSE(box("coreDiameter")->isVisible()) << "loose material first, which has no density";
    named<QComboBox>("coreOrigin")->setCurrentIndex(2);
    type("coreAlong", "20");
    typeOn("4");
    typeOn("1.2");
    typeOn("5.08");
    typeOn("30.48");
    typeOn("453.6");
    typeOn("34");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !today().records.of<entries::Core>().empty(); }));
    const entries::Core& core = today().records.of<entries::Core>()[0].what;
    EXPECT_EQ(core.origin, entries::CoreOrigin::machineCorer);
    EXPECT_NEAR(core.along.metres(), 20, 1e-9);
    EXPECT_NEAR(core.depth->metres(), 1.2, 1e-9);
    // 50.8 mm x 304.8 mm hold 6.178e-4 m3; 453.6 g are 734.2 kg/m3 as fed (derived), 34 % of it dry.
    EXPECT_NEAR(core.dryDensity()->si(), 734.2 * 0.34, 0.1);
    EXPECT_TRUE(QTest::qWaitFor([&] { return sheet("faceSheet").contains(u"250"); }))
        << sheet("faceSheet").toStdString();
}

TEST_F(FaceWindow, RefusesACoreWithoutItsDensity) {
    openFace();
    named<QComboBox>("coreOrigin")->setCurrentIndex(2);
    QTest::mouseClick(named<QPushButton>("coreFormRecord"), Qt::LeftButton);
    EXPECT_TRUE(running("coreForm").startsWith(u"Not recorded:")) << running("coreForm").toStdString();
}

TEST_F(FaceWindow, DrawsTheFaceBetweenItsCoresAndReadsItByPointAndKey) {
    addCores(12);
    openFace();
    auto* map = m_window->findChild<widgets::FaceMapView*>();
    EXPECT_TRUE(map->sentence().contains(u"12 core")) << map->sentence().toStdString();
    QTest::mouseClick(map, Qt::LeftButton, {}, map->pixelOf(3).toPoint());
    EXPECT_TRUE(map->sentence().contains(u"80 % band")) << map->sentence().toStdString();
    EXPECT_TRUE(map->sentence().contains(u"predicted"));
    const QString before = map->sentence();
    QTest::keyClick(map, Qt::Key_Up);
    EXPECT_NE(map->sentence(), before);
    QTest::keyClick(map, Qt::Key_Down);
    EXPECT_EQ(map->sentence(), before);
    EXPECT_TRUE(sheet("faceSheet").contains(u"20.00"));
    EXPECT_EQ(named<QComboBox>("faces")->count(), 2);
}

TEST_F(FaceWindow, TheLogOfWhatWasFedIsThePlan) {
    openFace();
    QTest::keyClick(m_window.get(), Qt::Key_F3);
    EXPECT_TRUE(sheet("feedSheet").contains(u"are not known")) << sheet("feedSheet").toStdString();
    type("removedMass", "24");
    typeOn("34");
    typeOn("59");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !today().records.of<entries::FeedRemoved>().empty(); }));
    EXPECT_NEAR(today().records.of<entries::FeedRemoved>()[0].what.face->metres(), 59, 1e-9);
    QTest::keyClick(m_window.get(), Qt::Key_F5);
    type("planLoss", "10");  // looser than the survey that tells losses reached
    EXPECT_TRUE(QTest::qWaitFor([&] { return sheet("feedSheet").contains(u"The last day with feed"); }))
        << sheet("feedSheet").toStdString();
    const QString before = sheet("feedSheet");
    type("planPerDay", "48");
    EXPECT_TRUE(QTest::qWaitFor([&] { return sheet("feedSheet") != before; })) << "asked, and not recorded";
    EXPECT_EQ(today().records.of<entries::FeedRemoved>().size(), 1u);
}

// More than 5 K above the core: Borreani & Tabacco 2010, J. Dairy Sci. 93:2620 (published).
TEST_F(FaceWindow, WarnsOfAFaceThatHeats) {
    openFace();
    QTest::keyClick(m_window.get(), Qt::Key_F4);
    QTest::mouseClick(named<QPushButton>("warmthFormRecord"), Qt::LeftButton);
    EXPECT_TRUE(running("warmthForm").contains(u"read both temperatures"));
    type("warmBehind", "31");
    typeOn("24");
    EXPECT_TRUE(running("warmthForm").contains(u"the face heats")) << running("warmthForm").toStdString();
    typeOn("3");
    typeOn("2");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !today().records.of<entries::FaceTemperature>().empty(); }));
    EXPECT_NEAR(today().records.of<entries::FaceTemperature>()[0].what.behindFace.celsius(), 31, 1e-9);
    EXPECT_TRUE(QTest::qWaitFor([&] { return sheet("feedSheet").contains(u"the face heats"); }))
        << sheet("feedSheet").toStdString();
}

TEST_F(FaceWindow, FollowsLanguageUnitsAndLook) {
    addCores(12);
    openFace();
    m_window->setLanguage(QStringLiteral("pt_BR"));
    m_window->setUnits(UnitSystem::us);
    QCoreApplication::processEvents();
    EXPECT_EQ(named<QPushButton>("coreFormRecord")->text(), QStringLiteral("Registrar a amostra"));
    EXPECT_TRUE(m_window->findChild<widgets::FaceMapView*>()->sentence().contains(u"ft"));
    for (const settings::Look look : {settings::Look::dark, settings::Look::outdoor, settings::Look::light}) {
        m_window->setLook(look);
        EXPECT_FALSE(m_window->grab().isNull());
    }
}

TEST_F(FaceWindow, NothingIsWiderThanItsPlace) {
    for (const auto& [language, look, units] :
         {std::tuple{"en", settings::Look::light, UnitSystem::metric},
          std::tuple{"pt_BR", settings::Look::light, UnitSystem::metric},
          std::tuple{"en", settings::Look::outdoor, UnitSystem::us},
          std::tuple{"pt_BR", settings::Look::outdoor, UnitSystem::us}}) {
        openFace();
        m_window->setLanguage(QLatin1String{language});
        m_window->setLook(look);
        m_window->setUnits(units);
        for (int tab = 0; tab < 4; ++tab) {
            named<QTabWidget>("faceTabs")->setCurrentIndex(tab);
            QCoreApplication::processEvents();
            for (const QScrollArea* area : m_window->findChildren<QScrollArea*>()) {
                if (!area->isVisible()) continue;
                EXPECT_LE(area->widget()->minimumSizeHint().width(), area->viewport()->width())
                    << language << ' ' << enumText(look) << ", tab " << tab;
            }
        }
        close();
    }
}

}  // namespace
}  // namespace treadwell
