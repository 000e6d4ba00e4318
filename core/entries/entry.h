#pragma once

#include "core/base/hash.h"
#include "core/base/instant.h"
#include "core/base/uuid.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell::entries {

using EntryId = Id<struct EntryTag>;
using DeviceId = Id<struct DeviceTag>;
using PersonId = Id<struct PersonTag>;

/// Who, when and about what: the part of an entry that every kind has.
struct Header {
    EntryId id;
    DeviceId device;
    std::int64_t deviceSequence = 0;  ///< 1, 2, 3... on one device
    std::int64_t lamport = 0;         ///< larger than that of every entry its writer had seen
    PersonId author;
    std::string kind;
    int kindVersion = 1;
    Instant happened;
    Instant recorded;
    int utcOffsetMinutes = 0;       ///< of the farm's wall clock when it was recorded
    std::optional<EntryId> target;  ///< a void's victim; on any other kind the entry that this one corrects

    friend bool operator==(const Header&, const Header&) = default;
};

/// An entry as the journal keeps it: the payload is canonical JSON and is hashed as it stands.
struct StoredEntry {
    Header header;
    std::string payload;
    Hash hash{};

    friend bool operator==(const StoredEntry&, const StoredEntry&) = default;
};

/// SHA-256 over a tag, the device's previous hash (zeros at its start), the header and the payload.
[[nodiscard]] Hash entryHash(const Hash& previous, const Header& header, std::string_view payload);

/// The one order of facts, the same on every machine: happened, lamport, device, device sequence.
[[nodiscard]] bool happenedBefore(const Header& a, const Header& b) noexcept;

}  // namespace treadwell::entries
