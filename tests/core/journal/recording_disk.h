#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace treadwell::testing_support {

/// What SQLite has asked of a disk, in order.
struct DiskAction {
    enum class Kind : std::uint8_t { write, truncate, sync, erase, acknowledge } kind;
    std::string file;
    std::int64_t offset = 0;  ///< of truncate: the new size; of acknowledge: how many entries
    std::string bytes;
};

/// Stands between SQLite and its files, as its default VFS, and writes down what would change a disk
/// (sqlite.org/vfs.html, "VFS shims"). Only one at a time.
class RecordingDisk {
  public:
    RecordingDisk();
    ~RecordingDisk();
    RecordingDisk(const RecordingDisk&) = delete;
    RecordingDisk& operator=(const RecordingDisk&) = delete;

    void acknowledge(std::int64_t entries) {
        actions.push_back({DiskAction::Kind::acknowledge, {}, entries, {}});
    }

    std::vector<DiskAction> actions;
    bool recording = true;
};

using DiskContent = std::map<std::string, std::string>;

/// What the disk holds after `action`.
void apply(DiskContent& disk, const DiskAction& action);

}  // namespace treadwell::testing_support
