#pragma once

#include "core/base/instant.h"

namespace treadwell::desk {

/// A machine's clock, and by how much somebody says that it is off. For one thread.
class CorrectedClock final : public Clock {
  public:
    explicit CorrectedClock(const Clock& machine) : m_machine{machine} {}

    [[nodiscard]] Instant now() const override { return m_machine.now() + m_off; }
    [[nodiscard]] std::chrono::microseconds elapsed() const override { return m_machine.elapsed(); }

    void correctBy(std::chrono::microseconds off) { m_off = off; }
    /// What makes it show `right` now.
    [[nodiscard]] std::chrono::microseconds correctionTo(Instant right) const {
        return right - m_machine.now();
    }

  private:
    const Clock& m_machine;
    std::chrono::microseconds m_off{0};
};

}  // namespace treadwell::desk
