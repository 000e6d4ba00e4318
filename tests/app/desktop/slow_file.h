#pragma once

#include "app/desktop/desk/season_file.h"
#include "core/journal/codes.h"
#include "core/session/codes.h"
#include "tests/support/hand_clock.h"
#include "tests/support/season_maker.h"

#include <condition_variable>
#include <mutex>

namespace treadwell::testing_support {

/// What a test tells a slow file, and what the file tells it; outlives the file.
class Disk {
  public:
    void hold() {
        set([this] { m_held = true; });
    }
    void release() {
        set([this] { m_held = false; });
    }
    void fail() {
        set([this] { m_fails = true; });
    }

    /// Waits while the disk is held; false where it fails.
    bool write() {
        std::unique_lock lock{m_mutex};
        m_changed.wait(lock, [this] { return !m_held; });
        ++m_writes;
        return !m_fails;
    }
    int writes() {
        const std::lock_guard lock{m_mutex};
        return m_writes;
    }

  private:
    template <class Change>
    void set(Change change) {
        {
            const std::lock_guard lock{m_mutex};
            change();
        }
        m_changed.notify_all();
    }

    std::mutex m_mutex;
    std::condition_variable m_changed;
    bool m_held = false;
    bool m_fails = false;
    int m_writes = 0;
};

/// A season in memory behind a disk that can be made to wait or fail.
class SlowFile final : public desk::SeasonFile {
  public:
    SlowFile(Disk& disk, SeasonMaker maker) : m_disk{disk}, m_maker{std::move(maker)} { fold(); }

    desk::SeasonPointer season() const override { return m_season; }
    session::Standing standing() const override {
        session::Standing standing;
        standing.writable = true;
        return standing;
    }
    void lookAgain() override {}
    void clockIsOffBy(std::chrono::microseconds) override {}
    Result<void> takeOver() override { return {}; }
    Result<Message> copies(const desk::CopyWish&) override { return Message{code::copiesNone, {}}; }
    desk::People people() const override { return m_people; }
    Hash head() const override { return {}; }
    Result<entries::PersonId> addPerson(const std::string& name) override {
        const auto id = idOf<entries::PersonTag>(static_cast<std::uint8_t>(m_people.size() + 1));
        m_people[id] = name;
        return id;
    }
    Result<void> record(std::span<const session::Proposal> proposals, entries::PersonId author) override {
        if (!m_disk.write()) return fail(code::journalWriteFailed, "file", std::string{"no space"});
        for (const session::Proposal& each : proposals) {
            m_maker.add(each.body, each.happened, each.target);
            m_maker.entries.back().header.author = author;
            m_season = std::make_shared<const season::Season>(m_season->with(m_maker.entries.back()));
        }
        return {};
    }
    Result<void> takeBack(entries::EntryId entry, entries::PersonId author) override {
        const session::Proposal undo{entries::VoidEntry{}, m_maker.entries.back().header.happened, entry};
        return record({&undo, 1}, author);
    }

  private:
    void fold() { m_season = std::make_shared<const season::Season>(season::Season::fold(m_maker.entries)); }

    Disk& m_disk;
    SeasonMaker m_maker;
    desk::People m_people;
    desk::SeasonPointer m_season;
};

}  // namespace treadwell::testing_support
