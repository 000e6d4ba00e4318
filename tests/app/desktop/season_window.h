#pragma once

#include "app/desktop/desk/session_file.h"
#include "app/desktop/main_window.h"
#include "core/session/session.h"
#include "tests/app/desktop/slow_file.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTest>

namespace treadwell {

/// The window on a real season file with one silo, tractor and truck.
class SeasonWindow : public testing::Test {
  protected:
    SeasonWindow() {
        const std::filesystem::path folder{m_folder.path().toStdString()};
        m_files = {folder / "season.treadwell", folder / "state"};
        auto session = session::Session::create(m_files, {"Two Creeks", "America/Sao_Paulo"}, {}, m_clock);
        EXPECT_TRUE(session);
        farm::Truck truck;
        truck.id = testing_support::idOf<farm::TruckTag>(7);
        truck.name = "Amsel";
        truck.usualLoad = AsFedMass::fromTonnes(12.4);
        for (const entries::Body& body :
             {entries::Body{entries::SiloDefined{testing_support::someSilo()}},
              entries::Body{entries::TractorDefined{testing_support::someTractor(1, 14)}},
              entries::Body{entries::TruckDefined{truck}}}) {
            EXPECT_TRUE(session->propose(body, m_clock.time, {}));
        }
        m_clock.time += std::chrono::hours{1};
    }

    void open() {
        auto file = desk::openSeason(m_files.season, m_files.stateFolder, m_clock);
        ASSERT_TRUE(file);
        m_desk = std::make_unique<desk::SeasonDesk>(std::move(*file), m_clock);
        WindowSettings settings;
        settings.language = QStringLiteral("en");
        m_window = std::make_unique<MainWindow>(*m_desk, settings);
        m_window->resize(1280, 800);
        m_window->show();
        QCoreApplication::processEvents();
    }
    void close() {
        m_window.reset();
        m_desk.reset();
    }
    template <class Widget>
    Widget* named(const char* name) {
        return m_window->findChild<Widget*>(QLatin1String{name});
    }
    const season::Day& today() { return *m_desk->season()->days().back(); }

    QTemporaryDir m_folder;
    testing_support::HandClock m_clock{testing_support::at("2026-09-15T14:00:00Z")};
    session::Files m_files;
    std::unique_ptr<desk::SeasonDesk> m_desk;
    std::unique_ptr<MainWindow> m_window;
};

}  // namespace treadwell
