#pragma once

#include "core/plan/seals.h"
#include "core/season/season.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace treadwell::plan {

/// In the order in which they are done.
enum class SealStep : std::uint8_t { wallSheets, treatment, barrierFilm, sheet, weights, edgesSealed };

constexpr std::array<std::string_view, 6> enumTexts(SealStep /*step*/) noexcept {
    return {"wallSheets", "treatment", "barrierFilm", "sheet", "weights", "edgesSealed"};
}

/// One step of covering one silo, and how far it is done.
struct SealTask {
    std::string silo;
    std::optional<farm::SiloId> id;  ///< none where the farm has no silo of the plan's name
    Length length;                   ///< of that silo
    SealStep step = SealStep::sheet;
    LocalDay due{};                ///< side sheets hang before the first load, the rest follows the last
    std::optional<Area> area;      ///< of sheets
    std::optional<double> litres;  ///< of treatment
    std::optional<std::int64_t> tyres;
    Share done;                 ///< of the silo's length
    std::optional<Instant> at;  ///< when the last of it was done
};

/// What is to be done in the order of `seals`, the first silo begun on `begins`, and what the season's
/// entries up to `now` say is done: cover and surface_treatment. A step that the plan does not have is left
/// out.
[[nodiscard]] std::vector<SealTask> sealingList(const std::vector<Seal>& seals, LocalDay begins,
                                                const season::Season& season, Instant now);

/// The entry that says a step is done over a stretch; for the treatment with its product and the planned
/// litres' part. Errors: planSiloUnknown where the farm has no such silo; those of entries::validate().
[[nodiscard]] Result<entries::Body> doneEntry(const SealTask& task, const entries::Stretch& stretch,
                                              const std::string& product);

}  // namespace treadwell::plan
