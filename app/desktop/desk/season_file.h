#pragma once

#include "core/base/error.h"
#include "core/entries/body.h"
#include "core/season/season.h"
#include "core/session/standing.h"

#include <memory>

namespace treadwell::desk {

using SeasonPointer = std::shared_ptr<const season::Season>;

/// What the desk asks of a season's file. All calls come from one thread, the desk's own.
class SeasonFile {
  public:
    virtual ~SeasonFile() = default;
    [[nodiscard]] virtual SeasonPointer season() const = 0;
    [[nodiscard]] virtual session::Standing standing() const = 0;
    /// The entry, once it lies on the disk.
    [[nodiscard]] virtual Result<entries::EntryId> append(const entries::Body& body, Instant happened,
                                                          entries::PersonId author) = 0;
    [[nodiscard]] virtual Result<entries::EntryId> takeBack(entries::EntryId entry,
                                                            entries::PersonId author) = 0;
    /// Whether another program has written since, and whether the disk is well again.
    virtual void lookAgain() = 0;
    virtual void clockIsRight() = 0;
};

}  // namespace treadwell::desk
