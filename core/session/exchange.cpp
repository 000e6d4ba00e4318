#include "core/session/exchange.h"

#include "core/base/hex.h"
#include "core/entries/season_document.h"
#include "core/journal/build.h"
#include "core/journal/journal.h"
#include "core/session/codes.h"

namespace treadwell::session {

using entries::StoredEntry;
using journal::Heads;
using journal::Journal;

Result<std::string> exportDocument(const std::filesystem::path& season, PeoplesNames names, Instant now) {
    auto journal = Journal::open(season, journal::Access::read, now);
    if (!journal) return tl::unexpected(journal.error());
    entries::DocumentWriter writer;
    Heads heads;
    const auto broken = journal->read([&](StoredEntry&& entry) {
        heads[entry.header.device] = {entry.header.deviceSequence, entry.hash};
        writer.add(entry);
    });
    if (broken) return Unexpected{Error{broken->message(), "", {season.string(), 0, 0}}};
    entries::DocumentFrame frame{journal::headHash(heads), {}};
    if (names == PeoplesNames::included) {
        auto people = journal->people().all();
        if (!people) return tl::unexpected(people.error());
        frame.people = *std::move(people);
    }
    return writer.finish(frame);
}

Result<Hash> restoreDocument(std::string_view document, const std::filesystem::path& season) {
    Hash head{};
    return journal::build(season,
                          [&](const journal::Take& take) -> Result<journal::People> {
                              Heads heads;
                              auto frame = entries::readDocument(document, [&](StoredEntry&& entry) {
                                  heads[entry.header.device] = {entry.header.deviceSequence, entry.hash};
                                  return take(std::move(entry));
                              });
                              if (!frame) return tl::unexpected(frame.error());
                              head = journal::headHash(heads);
                              if (head != frame->head) {
                                  return fail(code::documentHeadDiffers, "head", toHex(frame->head),
                                              toHex(head));
                              }
                              return std::move(frame->people);
                          })
        .map([&] { return head; });
}

}  // namespace treadwell::session
