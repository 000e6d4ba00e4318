#include "app/desktop/settings/theme.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QStandardPaths>
#include <clocale>

// Neither locale nor zone is pinned: the suite must pass in any of them.
int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QApplication application{argc, argv};
    std::setlocale(LC_NUMERIC, "C");  // QApplication has set it from the environment
    treadwell::settings::applyTheme(application,
                                    treadwell::settings::themeOf(treadwell::settings::Look::light));
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
