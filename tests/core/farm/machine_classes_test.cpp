#include "core/farm/machine_classes.h"

#include <gtest/gtest.h>

namespace treadwell::farm {
namespace {

TEST(MachineClasses, EveryClassMakesAMachineThatIsValid) {
    for (std::size_t i = 0; i < enumTexts(TractorClass{}).size(); ++i) {
        const Tractor tractor = hired(TractorId{}, "hired", static_cast<TractorClass>(i));
        EXPECT_TRUE(validate(tractor));
        EXPECT_FALSE(tractor.massKnown);
    }
    for (std::size_t i = 0; i < enumTexts(TruckClass{}).size(); ++i) {
        EXPECT_TRUE(validate(hired(TruckId{}, "hired", static_cast<TruckClass>(i))));
    }
}

TEST(MachineClasses, AHeavierClassWeighsMore) {
    EXPECT_LT(massOf(TractorClass::medium), massOf(TractorClass::large));
    EXPECT_LT(massOf(TractorClass::large), massOf(TractorClass::heavy));
    EXPECT_LT(massOf(TractorClass::heavy), massOf(TractorClass::articulated));
    EXPECT_LT(usualLoadOf(TruckClass::smallTrailer), usualLoadOf(TruckClass::trailer));
    EXPECT_LT(usualLoadOf(TruckClass::trailer), usualLoadOf(TruckClass::largeTrailer));
    EXPECT_LT(usualLoadOf(TruckClass::largeTrailer), usualLoadOf(TruckClass::lorry));
}

}  // namespace
}  // namespace treadwell::farm
