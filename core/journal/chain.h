#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"

#include <SQLiteCpp/Database.h>

#include <map>
#include <string>

namespace treadwell::journal {

/// The last entry of a device.
struct Head {
    std::int64_t sequence = 0;
    Hash hash{};

    friend bool operator==(const Head&, const Head&) = default;
};

using Heads = std::map<entries::DeviceId, Head>;

/// In what way a place of a file is not as it was written.
enum class Fault : std::uint8_t {
    altered,     ///< the entry, or one before it, does not give its hash
    missing,     ///< entries of its device are not there before it
    unreadable,  ///< the row cannot be read
    structure,   ///< every entry is whole, and something about them is not
};

/// The first place at which a file is not as it was written.
struct BrokenPlace {
    Fault fault = Fault::altered;
    std::int64_t row = 0;       ///< of the table; 0 for the structure
    entries::DeviceId device;   ///< of the entry, where it could be read
    std::int64_t sequence = 0;  ///< of the entry, where it could be read
    std::string reason;         ///< in SQLite's words, where it is SQLite that found it

    [[nodiscard]] Message message() const;
    friend bool operator==(const BrokenPlace&, const BrokenPlace&) = default;
};

/// Whether `entry` follows the last of its device, which it then becomes; the fault where it does not.
[[nodiscard]] std::optional<Fault> faultOf(Heads& heads, const entries::StoredEntry& entry);

/// The last entry of every device; costs the same in a season of any length. SQLite::Exception where it
/// cannot be read.
[[nodiscard]] Heads headsOf(const SQLite::Database& database);

/// What a printed sheet carries so that it can be held against the file: SHA-256 over the sorted
/// (device, sequence, hash) of each device's last entry, which stands for its whole chain.
[[nodiscard]] Hash headHash(const Heads& heads);

}  // namespace treadwell::journal
