#include "tests/core/journal/recording_disk.h"

#include <new>
#include <stdexcept>

namespace treadwell::testing_support {

namespace {

using Kind = DiskAction::Kind;

RecordingDisk* theDisk = nullptr;
sqlite3_vfs* theReal = nullptr;
sqlite3_vfs theShim;

/// SQLite gives room for one of these and for a file of the real VFS behind it.
struct ShimFile {
    sqlite3_file base;
    const char* name;  // SQLite keeps it until the file is closed
    [[nodiscard]] sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

sqlite3_file* realOf(sqlite3_file* file) {
    return reinterpret_cast<ShimFile*>(file)->real();
}

void record(Kind kind, const char* path, std::int64_t offset = 0, std::string bytes = {}) {
    if (!theDisk->recording || path == nullptr) return;
    theDisk->actions.push_back({kind, std::filesystem::path{path}.filename(), offset, std::move(bytes)});
}

const char* nameOf(sqlite3_file* file) {
    return reinterpret_cast<ShimFile*>(file)->name;
}

const sqlite3_io_methods& methods() {
    static const sqlite3_io_methods kMethods = [] {
        sqlite3_io_methods m{};
        m.iVersion = 2;  // without memory mapping, which would write past the shim
        m.xClose = [](sqlite3_file* f) { return realOf(f)->pMethods->xClose(realOf(f)); };
        m.xRead = [](sqlite3_file* f, void* to, int size, sqlite3_int64 at) {
            return realOf(f)->pMethods->xRead(realOf(f), to, size, at);
        };
        m.xWrite = [](sqlite3_file* f, const void* from, int size, sqlite3_int64 at) {
            record(Kind::write, nameOf(f), at,
                   {static_cast<const char*>(from), static_cast<std::size_t>(size)});
            return realOf(f)->pMethods->xWrite(realOf(f), from, size, at);
        };
        m.xTruncate = [](sqlite3_file* f, sqlite3_int64 size) {
            record(Kind::truncate, nameOf(f), size);
            return realOf(f)->pMethods->xTruncate(realOf(f), size);
        };
        m.xSync = [](sqlite3_file* f, int flags) {
            record(Kind::sync, nameOf(f));
            return realOf(f)->pMethods->xSync(realOf(f), flags);
        };
        m.xFileSize = [](sqlite3_file* f, sqlite3_int64* size) {
            return realOf(f)->pMethods->xFileSize(realOf(f), size);
        };
        m.xLock = [](sqlite3_file* f, int lock) { return realOf(f)->pMethods->xLock(realOf(f), lock); };
        m.xUnlock = [](sqlite3_file* f, int lock) { return realOf(f)->pMethods->xUnlock(realOf(f), lock); };
        m.xCheckReservedLock = [](sqlite3_file* f, int* held) {
            return realOf(f)->pMethods->xCheckReservedLock(realOf(f), held);
        };
        m.xFileControl = [](sqlite3_file* f, int what, void* argument) {
            return realOf(f)->pMethods->xFileControl(realOf(f), what, argument);
        };
        m.xSectorSize = [](sqlite3_file* f) { return realOf(f)->pMethods->xSectorSize(realOf(f)); };
        // No favours of the disk: any write may be torn.
        m.xDeviceCharacteristics = [](sqlite3_file*) { return 0; };
        m.xShmMap = [](sqlite3_file* f, int page, int size, int extend, void volatile** to) {
            return realOf(f)->pMethods->xShmMap(realOf(f), page, size, extend, to);
        };
        m.xShmLock = [](sqlite3_file* f, int offset, int count, int flags) {
            return realOf(f)->pMethods->xShmLock(realOf(f), offset, count, flags);
        };
        m.xShmBarrier = [](sqlite3_file* f) { realOf(f)->pMethods->xShmBarrier(realOf(f)); };
        m.xShmUnmap = [](sqlite3_file* f, int erase) {
            return realOf(f)->pMethods->xShmUnmap(realOf(f), erase);
        };
        return m;
    }();
    return kMethods;
}

int openFile(sqlite3_vfs* /*shim*/, const char* name, sqlite3_file* file, int flags, int* given) {
    auto* shimmed = new (file) ShimFile{{nullptr}, name};
    const int code = theReal->xOpen(theReal, name, shimmed->real(), flags, given);
    if (shimmed->real()->pMethods != nullptr) shimmed->base.pMethods = &methods();
    return code;
}

int eraseFile(sqlite3_vfs* /*shim*/, const char* name, int syncFolder) {
    record(Kind::erase, name);
    return theReal->xDelete(theReal, name, syncFolder);
}

}  // namespace

RecordingDisk::RecordingDisk() {
    if (theDisk != nullptr) throw std::logic_error("one recording disk at a time");
    theDisk = this;
    theReal = sqlite3_vfs_find(nullptr);
    theShim = *theReal;
    theShim.zName = "recording";
    theShim.szOsFile = static_cast<int>(sizeof(ShimFile)) + theReal->szOsFile;
    theShim.xOpen = openFile;
    theShim.xDelete = eraseFile;
    sqlite3_vfs_register(&theShim, 1);
}

RecordingDisk::~RecordingDisk() {
    sqlite3_vfs_unregister(&theShim);
    sqlite3_vfs_register(theReal, 1);
    theDisk = nullptr;
}

void apply(DiskContent& disk, const DiskAction& action) {
    switch (action.kind) {
        case Kind::write: {
            std::string& content = disk[action.file];
            const auto at = static_cast<std::size_t>(action.offset);
            if (content.size() < at + action.bytes.size()) content.resize(at + action.bytes.size());
            content.replace(at, action.bytes.size(), action.bytes);
            break;
        }
        case Kind::truncate:
            disk[action.file].resize(static_cast<std::size_t>(action.offset));
            break;
        case Kind::erase:
            disk.erase(action.file);
            break;
        case Kind::sync:
        case Kind::acknowledge:
            break;
    }
}

}  // namespace treadwell::testing_support
