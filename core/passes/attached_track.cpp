#include "core/passes/attached_track.h"

#include "core/base/codes.h"
#include "core/base/hash.h"
#include "core/formats/text_encoding.h"
#include "core/passes/codes.h"

#include <algorithm>
#include <fstream>
#include <system_error>

namespace treadwell::passes {

namespace {

Unexpected unreadable(const std::filesystem::path& file, int error) {
    return fail(code::fileUnreadable, "file", file.string(), std::generic_category().message(error));
}

Error inFile(Error error, const std::filesystem::path& file) {
    error.place.file = file.string();
    return error;
}

}  // namespace

Result<entries::TrackAttached> lookAtTrack(const std::filesystem::path& file, farm::TractorId tractor) {
    std::error_code none;
    // A pipe would be waited for.
    if (std::filesystem::exists(file, none) && !std::filesystem::is_regular_file(file, none))
        return unreadable(file, EINVAL);
    std::ifstream in{file, std::ios::binary};
    if (!in) return unreadable(file, errno);
    const std::filesystem::path whole = std::filesystem::absolute(file).lexically_normal();
    if (!formats::isUtf8(whole.string())) return unreadable(file, EILSEQ);
    entries::TrackAttached track;
    track.tractor = tractor;
    track.file = whole.filename().string();
    track.place = whole.parent_path().string();
    Sha256 hash;
    const auto read = readTrack(
        in,
        [&](const formats::Fix& fix) {
            track.begin = track.fixes == 0 ? fix.at : std::min(track.begin, fix.at);
            track.end = track.fixes == 0 ? fix.at : std::max(track.end, fix.at);
            ++track.fixes;
        },
        [&](std::string_view bytes) {
            hash.add(bytes);
            track.bytes += static_cast<std::int64_t>(bytes.size());
            return true;
        });
    if (!read) return Unexpected{inFile(read.error(), file)};
    if (in.bad()) return unreadable(file, EIO);
    if (track.fixes == 0) return fail(code::trackWithoutFixes, "file", file.string());
    track.sha256 = hash.finish();
    return track;
}

Result<Attaching> attachingOf(const season::Season& season, entries::TrackAttached track) {
    for (const auto& known : attachedTracks(season, Instant::max())) {
        if (known.what.sha256 != track.sha256) continue;
        if (known.what == track) return fail(code::trackAttachedAlready, "file", track.file);
        return Attaching{std::move(track), known.entry};
    }
    return Attaching{std::move(track), std::nullopt};
}

std::vector<season::Dated<entries::TrackAttached>> attachedTracks(const season::Season& season, Instant now) {
    std::vector<season::Dated<entries::TrackAttached>> tracks;
    for (const auto& day : season.days()) {
        for (const auto& track : day->records.of<entries::TrackAttached>()) {
            if (track.what.begin <= now) tracks.push_back(track);
        }
    }
    std::stable_sort(tracks.begin(), tracks.end(),
                     [](const auto& a, const auto& b) { return a.what.begin < b.what.begin; });
    return tracks;
}

std::filesystem::path pathOf(const entries::TrackAttached& track) {
    return std::filesystem::path{track.place} / track.file;
}

Result<TrackFile> readAttached(const entries::TrackAttached& track, const TakeFix& take,
                               const TakeBytes& goOn) {
    const std::filesystem::path file = pathOf(track);
    std::error_code none;
    if (!std::filesystem::is_regular_file(file, none))
        return fail(code::trackGone, "file", track.file, track.place);
    std::ifstream in{file, std::ios::binary};
    if (!in) return unreadable(file, errno);
    Sha256 hash;
    bool stopped = false;
    const TakeBytes see = [&](std::string_view bytes) {
        hash.add(bytes);
        stopped = goOn && !goOn(bytes);
        return !stopped;
    };
    const auto read = readTrack(in, take, see);
    if (stopped) return read;
    // Whatever cannot be read in a file that is another one is nobody's fault.
    std::array<char, 1U << 14U> rest{};
    while (in.read(rest.data(), rest.size()), in.gcount() > 0)
        hash.add(std::string_view{rest.data(), static_cast<std::size_t>(in.gcount())});
    if (in.bad()) return unreadable(file, EIO);
    if (hash.finish() != track.sha256) return fail(code::trackChanged, "file", track.file, track.place);
    if (!read) return Unexpected{inFile(read.error(), file)};
    return read;
}

}  // namespace treadwell::passes
