#pragma once

#include "app/cli/weigh.h"
#include "app/scale/line.h"
#include "core/formats/scale_frames.h"

#include <functional>

namespace treadwell::cli {

/// What came over the wire.
struct Heard {
    std::int64_t frames = 0;
    std::int64_t unreadable = 0;
};

/// A scale on a wire that is listened to for a while.
class ScaleLine {
  public:
    [[nodiscard]] static tl::expected<ScaleLine, Failure> open(const WeighOptions& options,
                                                               const words::Style& style);

    /// Hands over each frame with its time until one is taken or the time is over. Errors: scaleLineEnded.
    [[nodiscard]] Result<Heard> listen(const std::function<bool(const formats::ScaleFrame&, Instant)>& take);

    [[nodiscard]] const std::string& place() const noexcept { return m_place; }
    [[nodiscard]] Seconds wait() const noexcept { return m_wait; }

  private:
    ScaleLine(scale::Line line, const formats::ScaleProfile& profile, std::string place, std::string question,
              Seconds wait)
        : m_line(std::move(line)),
          m_frames(profile),
          m_place(std::move(place)),
          m_question(std::move(question)),
          m_wait(wait) {}

    scale::Line m_line;
    formats::ScaleFrames m_frames;
    std::string m_place;
    std::string m_question;  ///< empty for a scale that sends by itself
    Seconds m_wait;
};

}  // namespace treadwell::cli
