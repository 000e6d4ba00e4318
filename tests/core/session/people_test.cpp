#include "core/farm/codes.h"
#include "core/journal/codes.h"
#include "core/session/codes.h"
#include "core/session/history.h"
#include "tests/core/session/session_fixture.h"

#include <fstream>
#include <iterator>

namespace treadwell::session {
namespace {

TEST_F(SessionTest, PeopleAreNamedBesideTheEntries) {
    Session session = created();
    const auto anna = session.people().add("Anna Feldweg");
    ASSERT_TRUE(anna);
    EXPECT_EQ(session.people().add("Anna Feldweg").error().code(), code::personNamedTwice);
    EXPECT_EQ(session.people().add("").error().code(), code::nameEmpty);
    ASSERT_TRUE(session.people().rename(*anna, "Anna Grund"));
    ASSERT_TRUE(session.propose(entries::Shift{*anna, true, {}, true, {}}, m_clock.time, *anna));
    const auto people = session.people().all();
    ASSERT_TRUE(people);
    EXPECT_EQ(*people, (std::map<entries::PersonId, std::string>{{*anna, "Anna Grund"}}));
}

TEST_F(SessionTest, AnErasedNameLeavesNoTraceAndTheEntriesStand) {
    const std::string name = "Wilhelmine Quastenberg";
    const std::string other = "Wilhelmine Rohrdommel";
    entries::PersonId person;
    {
        Session session = created();
        person = *session.people().add(name);
        ASSERT_TRUE(session.propose(entries::Note{"rain"}, m_clock.time, person));
        ASSERT_TRUE(session.people().rename(person, other));
        ASSERT_TRUE(session.people().erase(person));
        EXPECT_TRUE(session.people().all()->empty());
        for (const auto& file : std::filesystem::directory_iterator{m_folder}) {
            if (!file.is_regular_file()) continue;
            std::ifstream in{file.path(), std::ios::binary};
            const std::string bytes{std::istreambuf_iterator<char>{in}, {}};
            EXPECT_EQ(bytes.find(name), std::string::npos) << file.path();
            EXPECT_EQ(bytes.find(other), std::string::npos) << file.path();
        }
    }
    const Session session = opened();
    EXPECT_TRUE(session.standing().cautions.empty());
    const auto& notes = session.snapshot()->days().back()->records.of<entries::Note>();
    ASSERT_EQ(notes.size(), 1u);
    EXPECT_EQ(historyOf(*session.snapshot(), notes[0].entry).at(0)->header.author, person);
}

TEST_F(SessionTest, NamesAreNotWrittenIntoAFileOpenForReading) {
    created();
    auto session = Session::open(m_files, m_clock, Purpose::reading);
    ASSERT_TRUE(session);
    EXPECT_EQ(session->people().add("Anna").error().code(), code::journalReadOnly);
    EXPECT_EQ(session->people().erase({}).error().code(), code::journalReadOnly);
}

}  // namespace
}  // namespace treadwell::session
