#include "core/session/exchange.h"

#include "core/base/atomic_file.h"
#include "core/journal/build.h"
#include "core/journal/codes.h"
#include "core/journal/journal.h"
#include "core/session/codes.h"
#include "tests/core/session/session_fixture.h"

#include <gmock/gmock.h>

#include <random>

namespace treadwell::session {
namespace {

using entries::StoredEntry;
using journal::Journal;
using testing_support::at;
using testing_support::idOf;

/// A season of many entries by three devices: loads, samples, words with every sort of sign, corrections,
/// voids, and kinds that this version does not know.
std::vector<StoredEntry> longSeason(int count) {
    std::mt19937 random{5};
    const auto below = [&](unsigned n) { return static_cast<unsigned>(random() % n); };
    std::map<entries::DeviceId, journal::Head> heads;
    std::vector<StoredEntry> all;
    const auto farm = entries::SeasonStarted{"Two Creeks", "America/Sao_Paulo"};
    for (int i = 0; i < count; ++i) {
        const unsigned roll = below(10);
        entries::Body body = farm;
        std::optional<entries::EntryId> target;
        if (i > 0 && roll < 5) body = testing_support::someLoad(8 + 0.001 * (below(9000)));
        if (i > 0 && roll == 5)
            body = entries::DryMatterSample{
                DryMatter::fromFraction(0.3 + 1e-6 * (below(90000))), {}, {}, {}, {}};
        if (i > 0 && roll > 5)
            body = entries::Note{"\"Käfer\" \\ \t" + std::string(1, static_cast<char>(below(128))) + " " +
                                 std::to_string(i)};
        if (i > 10 && roll == 8) {
            body = entries::VoidEntry{"twice"};
            target = all[below(static_cast<unsigned>(all.size()))].header.id;
        }
        StoredEntry entry;
        entries::Header& header = entry.header;
        header.id.value.bytes = {static_cast<std::uint8_t>(i >> 16), static_cast<std::uint8_t>(i >> 8),
                                 static_cast<std::uint8_t>(i)};
        header.device = idOf<entries::DeviceTag>(static_cast<std::uint8_t>(1 + below(3)));
        journal::Head& head = heads[header.device];
        header.deviceSequence = ++head.sequence;
        header.lamport = i + 1;
        header.author = idOf<entries::PersonTag>(static_cast<std::uint8_t>(below(4)));
        header.kind = entries::kindOf(body).kind;
        header.happened =
            at("2026-09-01T06:00:00Z") + std::chrono::microseconds{std::int64_t{below(60'000)} * 60'000'001};
        header.recorded = header.happened + std::chrono::microseconds{below(1'000'000)};
        header.utcOffsetMinutes = -180;
        header.target = target;
        entry.payload = entries::encode(body);
        if (i > 0 && roll == 9) {
            header.kind = "moonPhase";
            header.kindVersion = 3;
            entry.payload = R"({"b":[1e-300,-1,{}],"a":"\u0001"})";
        }
        entry.hash = head.hash = entryHash(head.hash, header, entry.payload);
        all.push_back(std::move(entry));
    }
    return all;
}

std::vector<StoredEntry> entriesIn(const std::filesystem::path& file) {
    auto journal = Journal::open(file, journal::Access::read, at("2026-09-15T14:00:00Z"));
    EXPECT_TRUE(journal);
    std::vector<StoredEntry> entries;
    const auto broken = journal->read([&](StoredEntry&& entry) { entries.push_back(std::move(entry)); });
    EXPECT_FALSE(broken);
    return entries;
}

class ExchangeTest : public SessionTest {
  protected:
    Result<void> build(const std::vector<StoredEntry>& entries, const journal::People& people = {}) {
        return journal::build(m_files.season, [&](const journal::Take& take) -> Result<journal::People> {
            for (StoredEntry entry : entries) {
                if (const auto taken = take(std::move(entry)); !taken) return tl::unexpected(taken.error());
            }
            return people;
        });
    }
    std::filesystem::path m_other = m_folder / "other.treadwell";
};

TEST_F(ExchangeTest, AHundredThousandEntriesComeBackHashByHash) {
#ifdef __SANITIZE_ADDRESS__
    constexpr int kEntries = 5'000;  // sanitizers make it some twenty times slower
#else
    constexpr int kEntries = 100'000;
#endif
    const std::vector<StoredEntry> entries = longSeason(kEntries);
    ASSERT_TRUE(build(entries));
    const auto document = exportDocument(m_files.season, PeoplesNames::leftOut, m_clock.time);
    ASSERT_TRUE(document) << toText(document.error().code());
    const auto head = restoreDocument(*document, m_other);
    ASSERT_TRUE(head) << toText(head.error().code()) << ' ' << head.error().field;
    EXPECT_TRUE(entriesIn(m_other) == entries);
    const auto original = Session::open(m_files, m_clock, Purpose::reading);
    const auto restored = Session::open({m_other, m_files.stateFolder}, m_clock, Purpose::reading);
    ASSERT_TRUE(original && restored);
    EXPECT_EQ(restored->head(), original->head());
    EXPECT_EQ(restored->head(), *head);
    EXPECT_EQ(restored->snapshot()->unknownKinds(), original->snapshot()->unknownKinds());
    EXPECT_EQ(tonnesIn(*restored), tonnesIn(*original));
    EXPECT_EQ(*exportDocument(m_other, PeoplesNames::leftOut, m_clock.time), *document);
}

TEST_F(ExchangeTest, NamesGoAlongOnlyWhereTheyAreAskedFor) {
    const journal::People people{{idOf<entries::PersonTag>(1), "Anna Feldweg"}};
    ASSERT_TRUE(build(longSeason(20), people));
    const auto without = exportDocument(m_files.season, PeoplesNames::leftOut, m_clock.time);
    const auto with = exportDocument(m_files.season, PeoplesNames::included, m_clock.time);
    ASSERT_TRUE(without && with);
    EXPECT_EQ(without->find("Anna"), std::string::npos);
    ASSERT_TRUE(restoreDocument(*with, m_other));
    auto restored = Session::open({m_other, m_files.stateFolder}, m_clock, Purpose::reading);
    ASSERT_TRUE(restored);
    EXPECT_EQ(*restored->people().all(), people);
}

TEST_F(ExchangeTest, AChangedDocumentMakesNoFile) {
    ASSERT_TRUE(build(longSeason(30)));
    const std::string document = *exportDocument(m_files.season, PeoplesNames::leftOut, m_clock.time);
    const auto without = [&](std::string_view from, std::string_view to) {
        std::string changed = document;
        const std::size_t begin = changed.rfind(from);
        changed.erase(begin, changed.find(to, begin) - begin);
        return changed;
    };
    // The last entry is gone: every chain still holds, but the head tells.
    const auto shorter = restoreDocument(without(",\n{", "\n]"), m_other);
    ASSERT_FALSE(shorter);
    EXPECT_EQ(shorter.error().code(), code::documentHeadDiffers);
    std::string tampered = document;
    char& digit = tampered[tampered.find("\"mass_kg\":") + 10];
    digit = digit == '9' ? '8' : '9';
    const auto changed = restoreDocument(tampered, m_other);
    ASSERT_FALSE(changed);
    EXPECT_EQ(changed.error().code(), code::entryOutOfOrder);
    EXPECT_FALSE(std::filesystem::exists(m_other));
    const auto occupied = restoreDocument(document, m_files.season);
    EXPECT_EQ(occupied.error().code(), code::journalExists);
    for (const auto& each : std::filesystem::directory_iterator{m_folder}) {
        EXPECT_FALSE(each.path().filename().string().starts_with(m_other.filename().string())) << each.path();
    }
}

TEST_F(ExchangeTest, ARestoredFileGoesOnAsANewDevice) {
    {
        Session session = created();
        ASSERT_TRUE(load(session, 12));
    }
    const std::string document = *exportDocument(m_files.season, PeoplesNames::leftOut, m_clock.time);
    {
        Session session = opened();
        ASSERT_TRUE(load(session, 13));
    }
    ASSERT_TRUE(restoreDocument(document, m_other));
    auto restored = Session::open({m_other, m_files.stateFolder}, m_clock);
    ASSERT_TRUE(restored);
    EXPECT_THAT(codesOf(restored->standing().cautions), testing::ElementsAre(code::deviceRenewed));
    EXPECT_TRUE(load(*restored, 14));
}

}  // namespace
}  // namespace treadwell::session
