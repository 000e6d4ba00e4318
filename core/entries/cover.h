#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/entries/stretch.h"
#include "core/farm/silo.h"

#include <array>
#include <string_view>

namespace treadwell::entries {

/// A step of closing a silo, or what befell its cover afterwards.
enum class CoverStep : std::uint8_t { wallSheets, barrierFilm, sheet, weights, edgesSealed, damaged, mended };

constexpr std::array<std::string_view, 7> enumTexts(CoverStep /*step*/) noexcept {
    return {"wallSheets", "barrierFilm", "sheet", "weights", "edgesSealed", "damaged", "mended"};
}

/// A step of covering is done, over the whole silo or a stretch of it.
struct Cover {
    static constexpr std::string_view kKind = "cover";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::SiloId silo;
    CoverStep step = CoverStep::sheet;
    Stretch stretch;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("silo", self.silo);
        visit("step", self.step);
        Stretch::fields(visit, self.stretch);
    }
    friend bool operator==(const Cover&, const Cover&) = default;
};

[[nodiscard]] inline Result<void> validate(const Cover& entry) {
    return validate(entry.stretch);
}

}  // namespace treadwell::entries
