#include "core/session/copies.h"

#include "core/base/atomic_file.h"
#include "core/base/codes.h"

#include <algorithm>
#include <string>
#include <vector>

namespace treadwell::session {

namespace {

/// `2026-09-15T140000Z`: without the colons, which some sticks refuse.
std::string stampOf(Instant now) {
    std::string stamp = toIso8601(now);
    std::erase(stamp, ':');
    return stamp;
}

bool isStamp(std::string_view text) {
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    return text.size() >= 18 && text[10] == 'T' && text.back() == 'Z' && digit(text[0]) &&
           std::all_of(text.begin() + 11, text.end() - 1, [&](char c) { return digit(c) || c == '.'; });
}

void removeOldest(const std::filesystem::path& made, const std::string& begin, const std::string& end,
                  int keep) {
    std::vector<std::filesystem::path> others;
    std::error_code failed;
    for (const auto& entry : std::filesystem::directory_iterator(made.parent_path(), failed)) {
        const std::string name = entry.path().filename().string();
        if (entry.path() == made || name.size() < begin.size() + end.size()) continue;
        if (!name.starts_with(begin) || !name.ends_with(end)) continue;
        const std::string_view middle{name.data() + begin.size(), name.size() - begin.size() - end.size()};
        if (isStamp(middle)) others.push_back(entry.path());
    }
    std::sort(others.begin(), others.end());
    // The one just made stays whatever the clock has called it.
    for (std::size_t i = 0; i + static_cast<std::size_t>(keep) <= others.size(); ++i) {
        std::filesystem::remove(others[i], failed);
    }
}

}  // namespace

Result<std::filesystem::path> backUpInto(const journal::Journal& journal, const std::filesystem::path& folder,
                                         Instant now, int keep) {
    if (keep < 1)
        return fail(code::valueOutOfRange, "copies", std::int64_t{keep}, std::int64_t{1}, std::int64_t{1000});
    const std::string begin = journal.path().stem().string() + '-';
    const std::string end = journal.path().extension().string();
    const std::filesystem::path copy = folder / (begin + stampOf(now) + end);
    if (const auto made = journal.backupTo(copy); !made) return tl::unexpected(made.error());
    removeOldest(copy, begin, end, keep);
    return copy;
}

Result<void> restore(const std::filesystem::path& copy, const std::filesystem::path& season, Instant now) {
    auto journal = journal::Journal::open(copy, journal::Access::read, now);
    if (!journal) return tl::unexpected(journal.error());
    if (const auto broken = journal->verify())
        return Unexpected{Error{broken->message(), "file", {copy.string(), 0, 0}}};
    return journal->backupTo(season);
}

std::optional<std::filesystem::path> secondPlace(const std::filesystem::path& stateFolder) {
    auto content = readFile(stateFolder / "second-place");
    if (!content) return std::nullopt;
    while (content->ends_with('\n')) content->pop_back();
    if (content->empty()) return std::nullopt;
    return std::filesystem::path{*content};
}

Result<void> chooseSecondPlace(const std::filesystem::path& stateFolder, const std::filesystem::path& place) {
    return writeFileAtomically(stateFolder / "second-place", place.string() + '\n');
}

}  // namespace treadwell::session
