#pragma once

#include "core/season/day.h"

#include <span>

namespace treadwell::season {

/// The fold of the journal: a list of immutable local days. A value; copies share their days. The same
/// entries give the same season in whatever order they arrive.
class Season {
  public:
    Season() = default;

    [[nodiscard]] static Season fold(std::span<const entries::Entry> entries);
    /// The same of entries that the season is to share; none may be null.
    [[nodiscard]] static Season foldPointers(std::vector<EntryPointer> entries);

    /// This season and one more entry. Folds anew the day it belongs to and those after it until what they
    /// hand on is unchanged; an entry that is already there changes nothing.
    [[nodiscard]] Season with(const entries::Entry& entry) const;
    [[nodiscard]] Season with(EntryPointer entry) const;
    /// This season and many more, folded once.
    [[nodiscard]] Season withAll(std::span<const EntryPointer> entries) const;

    [[nodiscard]] std::span<const std::shared_ptr<const Day>> days() const noexcept { return m_days; }
    [[nodiscard]] const Day* day(LocalDay date) const noexcept;

    /// The farm as the last day leaves it.
    [[nodiscard]] const FarmBook& farm() const noexcept;
    [[nodiscard]] const FarmZone& zone() const noexcept { return m_zone; }

    /// The fact with this id, or whose history holds it.
    [[nodiscard]] FactPointer fact(entries::EntryId id) const;

    /// Corrections and voids whose target has not arrived.
    [[nodiscard]] std::span<const EntryPointer> waiting() const noexcept { return m_waiting; }

    /// Entries of kinds that this version does not know; kept, and counted aloud.
    [[nodiscard]] std::int64_t unknownKinds() const noexcept;

  private:
    struct Found {
        std::size_t day;
        std::size_t fact;
    };

    [[nodiscard]] std::optional<Found> find(entries::EntryId id) const;
    [[nodiscard]] const Carry& handedTo(std::size_t index) const;
    void place(FactPointer fact);
    void removeFact(Found found);
    void refoldFrom(std::size_t first);
    void refoldAll(std::vector<FactPointer> facts);
    [[nodiscard]] std::vector<FactPointer> allFacts() const;

    std::vector<std::shared_ptr<const Day>> m_days;
    std::vector<EntryPointer> m_waiting;
    FarmZone m_zone;
};

}  // namespace treadwell::season
