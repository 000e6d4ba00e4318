#pragma once

#include "core/entries/body.h"

#include <memory>
#include <vector>

namespace treadwell::season {

using EntryPointer = std::shared_ptr<const entries::Entry>;

/// One fact with its history: the entry that stated it and what corrected or took it back. The correction
/// with the highest (lamport, device) speaks; a void beats every correction.
class Fact {
  public:
    explicit Fact(EntryPointer stated);

    /// The same fact with one more correction or void; one that is already there adds nothing.
    [[nodiscard]] Fact with(EntryPointer change) const;

    [[nodiscard]] const entries::Entry& stated() const noexcept { return *m_stated; }
    [[nodiscard]] const EntryPointer& statedPointer() const noexcept { return m_stated; }
    [[nodiscard]] entries::EntryId id() const noexcept { return m_stated->header.id; }
    [[nodiscard]] Instant happened() const noexcept { return m_speaking->header.happened; }
    [[nodiscard]] const entries::Body& body() const noexcept { return m_speaking->body; }
    [[nodiscard]] bool isVoid() const noexcept { return m_void; }
    [[nodiscard]] bool isCorrected() const noexcept { return m_speaking != m_stated; }
    /// What was changed, in no order.
    [[nodiscard]] const std::vector<EntryPointer>& changes() const noexcept { return m_changes; }

  private:
    EntryPointer m_stated;
    EntryPointer m_speaking;
    std::vector<EntryPointer> m_changes;
    bool m_void = false;
};

using FactPointer = std::shared_ptr<const Fact>;

/// The order of facts: when they happened as last corrected, then as stated.
[[nodiscard]] bool factBefore(const Fact& a, const Fact& b) noexcept;

}  // namespace treadwell::season
