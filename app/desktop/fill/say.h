#pragma once

#include "app/desktop/settings/display_units.h"
#include "app/words/words.h"

namespace treadwell::fill {

/// How the screen puts things into words; for the thread of the screens alone.
[[nodiscard]] words::Style styleOf(const settings::DisplayUnits& units, const FarmZone& zone);

/// What the core has to say, in the language and units of the screen.
class Speech final {
  public:
    Speech(const settings::DisplayUnits& units, FarmZone zone) : m_units{units}, m_zone{std::move(zone)} {}

    [[nodiscard]] QString say(const Message& message) const;
    [[nodiscard]] QString say(const Error& error) const;
    [[nodiscard]] const settings::DisplayUnits& units() const noexcept { return m_units; }

  private:
    const settings::DisplayUnits& m_units;
    FarmZone m_zone;
};

}  // namespace treadwell::fill
