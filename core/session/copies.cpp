#include "core/session/copies.h"

#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/base/number_text.h"
#include "core/session/codes.h"

#include <unistd.h>

#include <algorithm>
#include <map>
#include <string>

namespace treadwell::session {

namespace {

/// `2026-09-15T140000Z`: without the colons, which some sticks refuse.
std::string stampOf(Instant now) {
    std::string stamp = toIso8601(now);
    std::erase(stamp, ':');
    return stamp;
}

bool isStamp(std::string_view text) {
    return text.size() >= 18 && text[10] == 'T' && text.back() == 'Z' && isDigit(text[0]) &&
           std::all_of(text.begin() + 11, text.end() - 1, [](char c) { return isDigit(c) || c == '.'; });
}

/// The copies of a season in a folder by the time in their names.
std::map<std::string, std::filesystem::path> copiesIn(const std::filesystem::path& folder,
                                                      const std::filesystem::path& season) {
    const std::string begin = season.stem().string() + '-';
    const std::string end = season.extension().string();
    std::map<std::string, std::filesystem::path> copies;
    std::error_code failed;
    for (const auto& entry : std::filesystem::directory_iterator(folder, failed)) {
        const std::string name = entry.path().filename().string();
        if (name.size() < begin.size() + end.size()) continue;
        if (!name.starts_with(begin) || !name.ends_with(end)) continue;
        std::string middle = name.substr(begin.size(), name.size() - begin.size() - end.size());
        if (isStamp(middle)) copies.emplace(std::move(middle), entry.path());
    }
    return copies;
}

/// None where the name tells no time that there is.
std::optional<Instant> instantOf(std::string stamp) {
    for (const std::size_t colon : {13U, 16U}) {
        if (stamp.size() > colon) stamp.insert(colon, ":");
    }
    return instantFromIso8601(stamp);
}

}  // namespace

Result<std::filesystem::path> backUpInto(const journal::Journal& journal, const std::filesystem::path& folder,
                                         Instant now, int keep) {
    if (keep < 1)
        return fail(code::valueOutOfRange, "copies", std::int64_t{keep}, std::int64_t{1}, std::int64_t{1000});
    const std::string stamp = stampOf(now);
    const std::filesystem::path copy =
        folder / (journal.path().stem().string() + '-' + stamp + journal.path().extension().string());
    if (const auto made = journal.backupTo(copy); !made) return tl::unexpected(made.error());
    auto others = copiesIn(folder, journal.path());
    others.erase(stamp);  // the one just made stays whatever the clock has called it
    for (; others.size() >= static_cast<std::size_t>(keep); others.erase(others.begin())) {
        std::error_code failed;
        std::filesystem::remove(others.begin()->second, failed);
    }
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

Message copiesStand(const std::filesystem::path& stateFolder,
                    const std::optional<std::filesystem::path>& season) {
    const auto place = secondPlace(stateFolder);
    if (!place) return {code::copiesNone, {}};
    std::error_code unknown;
    if (!std::filesystem::is_directory(*place, unknown)) return {code::copiesAway, {place->string()}};
    if (::access(place->c_str(), W_OK | X_OK) != 0) return {code::copiesRefused, {place->string()}};
    if (!season) return {code::copiesGo, {place->string()}};
    const auto copies = copiesIn(*place, *season);
    const auto newest = copies.empty() ? std::nullopt : instantOf(copies.rbegin()->first);
    if (!newest) return {code::copiesNotYet, {place->string()}};
    return {code::copiesNewest, {place->string(), *newest}};
}

Result<void> chooseSecondPlace(const std::filesystem::path& stateFolder, const std::filesystem::path& place) {
    return writeFileAtomically(stateFolder / "second-place", place.string() + '\n');
}

}  // namespace treadwell::session
