#pragma once

#include <QtTest/QTest>

namespace treadwell::testing_support {

/// The one touch screen of a test program. Qt never takes a device back, so each further one would be a leak.
inline QPointingDevice* finger() {
    static QPointingDevice* const device = QTest::createTouchDevice();
    return device;
}

}  // namespace treadwell::testing_support
