#pragma once

#include "app/desktop/fill/say.h"
#include "core/density/movement.h"

#include <deque>
#include <memory>

namespace treadwell::fill {

/// Half an hour back: long enough for some loads, short enough to be remembered.
inline constexpr std::chrono::minutes kMovementSpan{30};

/// Remembers what was known, so that what moved a reading is told even where a late entry changed the past.
class MovementWatch {
  public:
    using SeasonPointer = std::shared_ptr<const season::Season>;

    void note(const SeasonPointer& season, Instant now);
    void forget() { m_known.clear(); }
    /// The readings half an hour before `now` as they were then known, or as those first noted knew them.
    [[nodiscard]] density::Readings before(farm::SiloId silo, Instant now);

  private:
    struct Known {
        Instant at;
        SeasonPointer season;
    };
    std::deque<Known> m_known;  ///< by time; the first holds for all before the second
    density::ReadingsHistory m_history;
};

/// `−6 in 30 min: loads came faster, the last 6 of them: 60 t/h → 75 t/h`; where more moved it than one
/// thing, their sum and the largest. Empty where nothing can be compared.
[[nodiscard]] QString movementText(const std::optional<density::Movement>& movement, const Speech& speech);

}  // namespace treadwell::fill
