#include "core/journal/chain.h"

#include "core/journal/codes.h"
#include "core/journal/row.h"

#include <SQLiteCpp/Statement.h>

namespace treadwell::journal {

using entries::DeviceId;

Message BrokenPlace::message() const {
    switch (fault) {
        case Fault::altered:
            return {code::entryAltered, {row, device.value.text(), sequence}};
        case Fault::missing:
            return {code::entriesMissing, {row, device.value.text(), sequence}};
        case Fault::unreadable:
            return {code::rowUnreadable, {row, reason}};
        case Fault::structure:
            break;
    }
    return {code::structureBroken, {reason}};
}

std::optional<Fault> faultOf(Heads& heads, const entries::StoredEntry& entry) {
    Head& head = heads[entry.header.device];
    const bool next = entry.header.deviceSequence == head.sequence + 1;
    const bool whole = entry.hash == entryHash(head.hash, entry.header, entry.payload);
    head = {entry.header.deviceSequence, entry.hash};
    if (!next) return Fault::missing;
    if (!whole) return Fault::altered;
    return std::nullopt;
}

// Steps from device to device through the index.
Heads headsOf(const SQLite::Database& database) {
    SQLite::Statement next(database, "SELECT min(device) FROM entry WHERE device > ?");
    SQLite::Statement last(
        database, "SELECT device_seq, hash FROM entry WHERE device = ? ORDER BY device_seq DESC LIMIT 1");
    Heads heads;
    for (std::string device;;) {
        next.bind(1, device.data(), static_cast<int>(device.size()));
        next.executeStep();
        if (next.getColumn(0).isNull()) return heads;
        DeviceId id;
        readBytes(next.getColumn(0), id.value.bytes);
        std::string found = next.getColumn(0).getString();
        if (found <= device) throw SQLite::Exception("the index of devices is out of order");
        device = std::move(found);
        next.reset();
        last.bind(1, device.data(), static_cast<int>(device.size()));
        if (!last.executeStep()) throw SQLite::Exception("the index of devices names one without entries");
        Head& head = heads[id];
        head.sequence = last.getColumn(0).getInt64();
        readBytes(last.getColumn(1), head.hash);
        last.reset();
    }
}

Hash headHash(const Heads& heads) {
    Sha256 hasher;
    hasher.add("treadwell heads 1");
    for (const auto& [device, head] : heads) {
        hasher.add(device.value.bytes).add(head.sequence).add(head.hash);
    }
    return hasher.finish();
}

}  // namespace treadwell::journal
