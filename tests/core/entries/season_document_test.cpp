#include "core/entries/season_document.h"

#include "core/base/hex.h"
#include "core/entries/body.h"
#include "core/entries/codes.h"
#include "core/journal/codes.h"
#include "tests/support/document_reading.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::entries {
namespace {

using namespace testing_support;

StoredEntry someEntry(std::uint8_t number) {
    StoredEntry entry;
    entry.header.id = idOf<EntryTag>(number);
    entry.header.device = idOf<DeviceTag>(1);
    entry.header.deviceSequence = number;
    entry.header.lamport = number;
    entry.header.author = idOf<PersonTag>(7);
    entry.header.kind = "note";
    entry.header.happened = at("2026-09-15T12:00:00.000001Z");
    entry.header.recorded = at("2026-09-15T12:00:03Z");
    entry.header.utcOffsetMinutes = -180;
    entry.payload = encode(Note{"K\u00E4fer says \"rain\"\n{[,"});
    entry.hash = sha256(std::to_string(number));
    return entry;
}

std::string documentOf(const std::vector<StoredEntry>& entries, const DocumentFrame& frame = {}) {
    DocumentWriter writer;
    for (const StoredEntry& entry : entries) writer.add(entry);
    return writer.finish(frame);
}

TEST(SeasonDocument, ReadsBackAsItWasWritten) {
    StoredEntry voided = someEntry(2);
    voided.header.target = idOf<EntryTag>(1);
    StoredEntry unknown = someEntry(3);
    unknown.header.kind = "moonPhase";
    unknown.header.kindVersion = 12;
    unknown.header.happened = at("1970-01-01T00:00:00Z");
    unknown.payload = R"({"z":{"a":[1e300,-0.5,null,true]},"aé":"\u0001"})";
    const std::vector<StoredEntry> entries{someEntry(1), voided, unknown};
    const DocumentFrame frame{sha256("head"), {{idOf<PersonTag>(7), "Anna \"A\" Feldweg"}}};
    const Read read = readAll(documentOf(entries, frame));
    ASSERT_TRUE(read.frame) << toText(read.frame.error().code()) << ' ' << read.frame.error().field;
    EXPECT_EQ(*read.frame, frame);
    EXPECT_EQ(read.entries, entries);
    EXPECT_TRUE(readAll(documentOf({})).frame) << "a document may hold no entry";
}

TEST(SeasonDocument, BlanksOfAnotherProgramDoNotMatter) {
    const StoredEntry entry = someEntry(1);
    std::string spaced;
    bool inText = false;
    for (const char c : documentOf({entry})) {
        const bool escaped = !spaced.empty() && spaced.back() == '\\';
        if (c == '"' && !escaped) inText = !inText;
        spaced += c;
        if (!inText && (c == '{' || c == ',' || c == ':')) spaced += "\n\t ";
    }
    const Read read = readAll(spaced);
    ASSERT_TRUE(read.frame) << read.frame.error().field;
    EXPECT_EQ(read.entries, std::vector{entry});
}

TEST(SeasonDocument, WhatIsWrongIsNamed) {
    const std::string good = documentOf({someEntry(1)});
    const auto with = [&](std::string_view old, std::string_view changed) {
        std::string json = good;
        const std::size_t place = json.find(old);
        EXPECT_NE(place, std::string::npos) << old;
        return json.replace(place, old.size(), changed);
    };
    struct Case {
        std::string json;
        Code code;
        std::string field;
    };
    const std::vector<Case> cases{
        {"", code::documentUnreadable, ""},
        {"[]", code::documentUnreadable, ""},
        {"{}", code::documentForeign, "format"},
        {good.substr(0, good.size() / 2), code::documentUnreadable, ""},
        {good + "{}", code::documentUnreadable, ""},
        {with("treadwell season", "treadwell farm"), code::documentForeign, "format"},
        {with("\"version\":1,", ""), code::payloadFieldMissing, "version"},
        {with("\"version\":1,", "\"version\":2,"), code::documentNewer, "version"},
        {with("\"head\":", "\"tail\":"), code::fieldUnknown, "tail"},
        {with("\"device_sequence\":1,", ""), code::payloadFieldMissing, "entries[0].device_sequence"},
        {with("\"device_sequence\":1,", "\"device_sequence\":\"1\","), code::payloadFieldWrong,
         "entries[0].device_sequence"},
        {with("\"lamport\":1,", "\"lamport\":1,\"lamport\":1,"), code::payloadFieldWrong,
         "entries[0].lamport"},
        {with("\"lamport\":1,", "\"lamport\":1,\"colour\":1,"), code::fieldUnknown, "entries[0].colour"},
        {with("\"kind_version\":1,", "\"kind_version\":99999999999,"), code::payloadFieldWrong,
         "entries[0].kind_version"},
        {with("2026-09-15T12:00:03Z", "noon"), code::payloadFieldWrong, "entries[0].recorded"},
        {with(toHex(sha256("1")), "00"), code::payloadFieldWrong, "entries[0].hash"},
        {with("\"payload\":{", "\"payload\":[{"), code::payloadFieldWrong, "entries[0].payload"},
    };
    for (const Case& wrong : cases) {
        const Read read = readAll(wrong.json);
        ASSERT_FALSE(read.frame) << wrong.json;
        EXPECT_EQ(read.frame.error().code(), wrong.code)
            << toText(read.frame.error().code()) << ' ' << read.frame.error().field << ' ' << wrong.json;
        if (wrong.code != code::documentUnreadable) {
            EXPECT_EQ(read.frame.error().field, wrong.field);
        }
    }
}

TEST(SeasonDocument, StopsWhereAnEntryIsRefused) {
    int taken = 0;
    const auto refused = readDocument(documentOf({someEntry(1), someEntry(2), someEntry(3)}),
                                      [&](StoredEntry&&) -> Result<void> {
                                          if (++taken == 2) return fail(code::entryOutOfOrder, "entry");
                                          return {};
                                      });
    EXPECT_EQ(refused.error().code(), code::entryOutOfOrder);
    EXPECT_EQ(taken, 2);
}

}  // namespace
}  // namespace treadwell::entries
