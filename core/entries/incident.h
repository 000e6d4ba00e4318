#pragma once

#include "core/base/codes.h"
#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/farm/machines.h"
#include "core/farm/silo.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell::entries {

enum class IncidentSort : std::uint8_t {
    nearMiss,
    injury,
    tippedOver,
    slid,
    stuck,
    collision,
    breakdown,
    fire,
    gas,
    spill,
    wallMoved,
    other
};

constexpr std::array<std::string_view, 12> enumTexts(IncidentSort /*sort*/) noexcept {
    return {"nearMiss",  "injury", "tippedOver", "slid",  "stuck",     "collision",
            "breakdown", "fire",   "gas",        "spill", "wallMoved", "other"};
}

/// Something went wrong, or nearly did.
struct Incident {
    static constexpr std::string_view kKind = "incident";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    IncidentSort sort = IncidentSort::other;
    std::string text;  ///< what happened, without anybody's name; may be empty where the sort says it
    std::optional<farm::SiloId> silo;
    std::optional<farm::TractorId> tractor;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("silo", self.silo);
        visit("sort", self.sort);
        visit("text", self.text);
        visit("tractor", self.tractor);
    }
    friend bool operator==(const Incident&, const Incident&) = default;
};

/// What happened is told: what is of no sort that has a name, in words.
[[nodiscard]] inline Result<void> validate(const Incident& entry) {
    if (entry.sort == IncidentSort::other && entry.text.empty()) return fail(code::textEmpty, "text");
    return {};
}

}  // namespace treadwell::entries
