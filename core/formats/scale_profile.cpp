#include "core/formats/scale_profile.h"

#include <algorithm>

namespace treadwell::formats {

namespace {

using enum FramePart;

// A number, or what stands in its place when the scale is beyond its range.
#define TREADWELL_WEIGHT R"(([-+]? *(?:[0-9]+\.?[0-9]*|\.[0-9]+)|[-^_ ]*))"
#define TREADWELL_STATUS "(ST|US|OL|UL)"
#define TREADWELL_UNIT "(kg|t|lb|ton|g)"

// Shapes in which weighbridge indicators commonly talk. Those of text are as printed in descriptions of them;
// the block's bits are a value from memory.
constexpr std::array<ScaleProfile, 8> kProfiles{{
    {"commas",
     "ST,GS,+  12340,kg",
     TREADWELL_STATUS ",(GS|NT|TR)," TREADWELL_WEIGHT ", *" TREADWELL_UNIT " *",
     {status, kind, weight, unit}},
    {"commasShort",
     "ST,GS+  12340kg",
     TREADWELL_STATUS ",(GS|NT|TR)" TREADWELL_WEIGHT " *" TREADWELL_UNIT " *",
     {status, kind, weight, unit}},
    {"commasNumbered",
     "01ST,GS, 12340,kg",
     "[0-9]{2}" TREADWELL_STATUS ",(GS|NT|TR), *" TREADWELL_WEIGHT ", *" TREADWELL_UNIT " *",
     {status, kind, weight, unit}},
    {"commasLong",
     "ST,1, 12340,PT 11860, 0,kg,01/02/26 11:12:13",
     TREADWELL_STATUS ",[0-9]+, *" TREADWELL_WEIGHT ",PT *" TREADWELL_WEIGHT ", *[0-9]+, *" TREADWELL_UNIT
                      ",[0-9/]{8} [0-9:]{8} *",
     {status, weight, tare, unit}},
    {"rightAligned",
     "      12340 kg G",
     " *" TREADWELL_WEIGHT " +" TREADWELL_UNIT " +([GNT]) *([ ?]?) *",
     {weight, unit, kind, status}},
    {"lineFeedFirst",
     " 012340 kg GR",
     " *" TREADWELL_WEIGHT " +" TREADWELL_UNIT " +(GR|NT|TR) *",
     {weight, unit, kind}},
    {"block", "(STX) 3 status bytes, 012340, 000000 (CR)", {}, {}},
    {"blockSummed", "(STX) 3 status bytes, 012340, 000000 (CR) sum", {}, {}, {.hasSum = true}},
}};

}  // namespace

std::span<const ScaleProfile> scaleProfiles() noexcept {
    return kProfiles;
}

const ScaleProfile* scaleProfileNamed(std::string_view name) noexcept {
    const auto* known = std::find_if(kProfiles.begin(), kProfiles.end(),
                                     [&](const ScaleProfile& profile) { return profile.name == name; });
    return known == kProfiles.end() ? nullptr : known;
}

}  // namespace treadwell::formats
