#pragma once

#include "core/base/descriptor.h"
#include "core/base/error.h"
#include "core/entries/entry.h"

#include <filesystem>
#include <optional>

namespace treadwell::session {

/// As whom this machine writes into a season, and how far it got there. It stands outside the season's file:
/// a file that is behind it is an older copy, and to go on writing as the same device would fork its chain.
struct Remembered {
    entries::DeviceId device;
    std::int64_t sequence = 0;
    Hash hash{};

    friend bool operator==(const Remembered&, const Remembered&) = default;
};

/// None where nothing, or nothing readable, is remembered: a new device is right then.
[[nodiscard]] std::optional<Remembered> recall(const std::filesystem::path& memory);

/// Keeps the memory up with the journal.
class DeviceMemory {
  public:
    /// Writes all of it, synced. Error: fileUnwritable.
    [[nodiscard]] static Result<DeviceMemory> start(const std::filesystem::path& memory,
                                                    const Remembered& remembered);

    /// After a commit. Not synced, for that would cost as much as the commit: after a power cut the memory
    /// may be behind the file, which does no harm and is made good at the next start.
    void follow(std::int64_t sequence, const Hash& hash);

    [[nodiscard]] entries::DeviceId device() const noexcept { return m_device; }

  private:
    DeviceMemory(Descriptor file, entries::DeviceId device) : m_file(std::move(file)), m_device(device) {}

    Descriptor m_file;
    entries::DeviceId m_device;
};

}  // namespace treadwell::session
