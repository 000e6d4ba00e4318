#pragma once

#include "core/session/session.h"
#include "tests/support/hand_clock.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <string>

namespace treadwell::session {

using testing_support::HandClock;

class SessionTest : public testing::Test {
  protected:
    SessionTest() {
        std::string name = (std::filesystem::temp_directory_path() / "treadwell.XXXXXX").string();
        m_folder = ::mkdtemp(name.data());
        m_files = {m_folder / "season.treadwell", m_folder / "state"};
    }
    ~SessionTest() override { std::filesystem::remove_all(m_folder); }

    Session created() {
        auto session = Session::create(m_files, {"Two Creeks", "America/Sao_Paulo"}, m_author, m_clock);
        EXPECT_TRUE(session) << toText(session.error().code());
        return std::move(*session);
    }

    Session opened() {
        auto session = Session::open(m_files, m_clock);
        EXPECT_TRUE(session) << toText(session.error().code());
        return std::move(*session);
    }

    /// Tipped `minutes` after the start, and recorded then.
    Result<entries::Header> load(Session& session, double tonnes, int minutes = 0) {
        return session.propose(testing_support::someLoad(tonnes),
                               m_clock.time + std::chrono::minutes{minutes}, m_author);
    }

    std::filesystem::path m_folder;
    Files m_files;
    HandClock m_clock{testing_support::at("2026-09-15T14:00:00Z")};
    entries::PersonId m_author = testing_support::idOf<entries::PersonTag>(7);
};

/// Of all loads that stand.
inline double tonnesIn(const Session& session) {
    double tonnes = 0;
    for (const auto& day : session.snapshot()->days()) {
        for (const auto& tipped : day->loads) tonnes += tipped.load.mass.tonnes();
    }
    return tonnes;
}

inline std::vector<Code> codesOf(const std::vector<Message>& messages) {
    std::vector<Code> codes;
    for (const Message& message : messages) codes.push_back(message.code);
    return codes;
}

}  // namespace treadwell::session
