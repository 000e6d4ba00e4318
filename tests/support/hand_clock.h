#pragma once

#include "core/base/instant.h"

namespace treadwell::testing_support {

/// Stands still until it is moved.
class HandClock final : public Clock {
  public:
    explicit HandClock(Instant at) : time{at} {}
    [[nodiscard]] Instant now() const override { return time; }
    Instant time;
};

}  // namespace treadwell::testing_support
