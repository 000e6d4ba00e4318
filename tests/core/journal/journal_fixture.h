#pragma once

#include "core/journal/journal.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <vector>

namespace treadwell::journal {

const Instant kNow = testing_support::at("2026-09-15T14:00:00Z");

/// Writes notes as one device would: sequence, lamport and chain go on.
class Writer {
  public:
    explicit Writer(std::uint8_t device = 1, Head head = {}) : m_device(device), m_head(head) {}

    entries::StoredEntry next(const std::string& text = "cover at the north wall") {
        const entries::Body body = entries::Note{text};
        entries::StoredEntry entry;
        entries::Header& header = entry.header;
        header.device = testing_support::idOf<entries::DeviceTag>(m_device);
        header.deviceSequence = ++m_head.sequence;
        header.id.value.bytes[0] = m_device;
        for (int i = 0; i < 8; ++i) {
            header.id.value.bytes[static_cast<std::size_t>(15 - i)] =
                static_cast<std::uint8_t>(header.deviceSequence >> (8 * i));
        }
        header.lamport = header.deviceSequence;
        header.author = testing_support::idOf<entries::PersonTag>(7);
        header.kind = entries::Note::kKind;
        header.happened = kNow + std::chrono::minutes{header.deviceSequence};
        header.recorded = header.happened;
        header.utcOffsetMinutes = -180;
        entry.payload = entries::encode(body);
        entry.hash = m_head.hash = entryHash(m_head.hash, header, entry.payload);
        return entry;
    }

    std::vector<entries::StoredEntry> next(int count) {
        std::vector<entries::StoredEntry> entries;
        for (int i = 0; i < count; ++i) entries.push_back(next("note " + std::to_string(i)));
        return entries;
    }

  private:
    std::uint8_t m_device;
    Head m_head;
};

inline std::vector<entries::StoredEntry> allOf(Journal& journal) {
    std::vector<entries::StoredEntry> all;
    const auto broken = journal.read([&](entries::StoredEntry&& entry) { all.push_back(std::move(entry)); });
    EXPECT_FALSE(broken) << toText(broken->message().code);
    return all;
}

inline std::vector<entries::StoredEntry> allOf(Journal&& journal) {
    return allOf(journal);
}

/// A folder of its own for each test, on a real file system.
class JournalTest : public testing::Test {
  protected:
    JournalTest() {
        std::string name = (std::filesystem::temp_directory_path() / "treadwell.XXXXXX").string();
        m_folder = ::mkdtemp(name.data());
    }
    ~JournalTest() override { std::filesystem::remove_all(m_folder); }

    [[nodiscard]] std::filesystem::path file(const char* name = "season.treadwell") const {
        return m_folder / name;
    }

    Journal created(const char* name = "season.treadwell") {
        auto journal = Journal::create(file(name), kNow);
        EXPECT_TRUE(journal) << toText(journal.error().code());
        return std::move(*journal);
    }

    Journal opened(Access access = Access::write) {
        auto journal = Journal::open(file(), access, kNow);
        EXPECT_TRUE(journal) << toText(journal.error().code());
        return std::move(*journal);
    }

    std::filesystem::path m_folder;
};

}  // namespace treadwell::journal
