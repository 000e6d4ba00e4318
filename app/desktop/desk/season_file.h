#pragma once

#include "core/base/error.h"
#include "core/entries/body.h"
#include "core/season/season.h"

#include <memory>
#include <optional>
#include <vector>

namespace treadwell::desk {

using SeasonPointer = std::shared_ptr<const season::Season>;

/// An entry that lies on the disk, and the season with it.
struct Committed {
    entries::EntryId entry;
    SeasonPointer season;
};

/// What the desk asks of a season's file. All calls come from one thread, the desk's own.
class SeasonFile {
  public:
    virtual ~SeasonFile() = default;
    [[nodiscard]] virtual SeasonPointer season() const = 0;
    [[nodiscard]] virtual bool isWritable() const = 0;
    /// Who else writes the file, or why it cannot be written; none where it can, or was opened for reading.
    [[nodiscard]] virtual std::optional<Message> readOnlyReason() const = 0;
    /// What was found at opening and must be told.
    [[nodiscard]] virtual std::vector<Message> cautions() const = 0;
    [[nodiscard]] virtual Result<Committed> append(const entries::Body& body, Instant happened,
                                                   entries::PersonId author) = 0;
    [[nodiscard]] virtual Result<Committed> takeBack(entries::EntryId entry, entries::PersonId author) = 0;
};

}  // namespace treadwell::desk
