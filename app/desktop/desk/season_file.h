#pragma once

#include "core/base/error.h"
#include "core/entries/body.h"
#include "core/session/proposal.h"
#include "core/session/standing.h"

#include <filesystem>
#include <map>
#include <memory>
#include <span>
#include <string>
#include <variant>

namespace treadwell::desk {

using SeasonPointer = std::shared_ptr<const season::Season>;

/// Names of people; entries hold their ids alone.
using People = std::map<entries::PersonId, std::string>;

/// To know how copies stand, to choose a place for them (an empty one: none), or to have one at once.
struct CopyNow {};
using CopyWish = std::variant<std::monostate, std::filesystem::path, CopyNow>;

/// What the desk asks of a season's file. All calls come from one thread, the desk's own.
class SeasonFile {
  public:
    virtual ~SeasonFile() = default;
    [[nodiscard]] virtual SeasonPointer season() const = 0;
    [[nodiscard]] virtual session::Standing standing() const = 0;
    /// Empty where they cannot be read: nobody's name is needed to work.
    [[nodiscard]] virtual People people() const = 0;
    /// Of the whole file, as printed sheets carry it.
    [[nodiscard]] virtual Hash head() const = 0;
    /// Gives somebody a name who has none yet.
    [[nodiscard]] virtual Result<entries::PersonId> addPerson(const std::string& name) = 0;
    /// All of them or none, once they lie on the disk.
    [[nodiscard]] virtual Result<void> record(std::span<const session::Proposal> proposals,
                                              entries::PersonId author) = 0;
    [[nodiscard]] virtual Result<void> takeBack(entries::EntryId entry, entries::PersonId author) = 0;
    /// Whether another program has written since, and whether the disk is well again.
    virtual void lookAgain() = 0;
    /// The time is the machine's with this added, somebody says; nothing where its clock is right.
    virtual void clockIsOffBy(std::chrono::microseconds off) = 0;
    /// Goes on writing where another program, which had the file, has ended; where it cannot, or yet another
    /// has it, the standing says so. Errors: those of session::Session::open.
    [[nodiscard]] virtual Result<void> takeOver() = 0;
    /// How the copies after each day's close stand once the wish is fulfilled (session::copiesStand). Errors:
    /// fileUnwritable, secondPlaceFailed.
    [[nodiscard]] virtual Result<Message> copies(const CopyWish& wish) = 0;
};

}  // namespace treadwell::desk
