#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/formats/scale_profile.h"
#include "core/quantity/mass.h"

#include <array>
#include <optional>
#include <regex>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::formats {

/// `untold`: the scale does not say whether it stands still.
enum class ScaleState : std::uint8_t { stable, motion, overload, underload, untold };

constexpr std::array<std::string_view, 5> enumTexts(ScaleState /*state*/) noexcept {
    return {"stable", "motion", "overload", "underload", "untold"};
}

enum class WeightKind : std::uint8_t { gross, net, tare, untold };

constexpr std::array<std::string_view, 4> enumTexts(WeightKind /*kind*/) noexcept {
    return {"gross", "net", "tare", "untold"};
}

/// What one frame says. A weight is always there where the state is stable, in motion or untold.
struct ScaleReading {
    ScaleState state = ScaleState::untold;
    WeightKind kind = WeightKind::untold;
    std::optional<AsFedMass> weight;
    std::optional<AsFedMass> tare;  ///< where the frame tells it beside the weight

    friend bool operator==(const ScaleReading&, const ScaleReading&) = default;
};

/// One frame as it came, with what it says or why it says nothing. Errors: frameUnreadable, frameCut,
/// frameTooLong, frameSumWrong.
struct ScaleFrame {
    std::string raw;
    Result<ScaleReading> reading;
};

/// Longest line that can be a frame.
inline constexpr std::size_t kLongestFrame = 64;

/// Parts a scale's bytes into frames. Every byte but line ends stands in exactly one frame's `raw`, and the
/// frames are the same however the bytes arrive. What stands before the first line end, or follows too long a
/// line, may be the tail of a frame and is never read as one.
class ScaleFrames {
  public:
    explicit ScaleFrames(const ScaleProfile& profile);

    [[nodiscard]] std::vector<ScaleFrame> take(std::string_view bytes);

    /// Bytes of a frame that is not yet whole.
    [[nodiscard]] const std::string& pending() const noexcept { return m_pending; }

  private:
    void takeOfLine(char byte, std::vector<ScaleFrame>& frames);
    void takeOfBlock(char byte, std::vector<ScaleFrame>& frames);
    [[nodiscard]] Result<ScaleReading> readLine() const;
    ScaleFrame cut(Result<ScaleReading> reading);

    const ScaleProfile& m_profile;
    std::regex m_pattern;
    std::string m_pending;
    bool m_mayBeTail = true;
};

/// Control and foreign characters as `<0D>`, the rest as it stands: how raw bytes are shown.
[[nodiscard]] std::string shownBytes(std::string_view bytes);

}  // namespace treadwell::formats
