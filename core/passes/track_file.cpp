#include "core/passes/track_file.h"

#include "core/formats/gpx.h"
#include "core/formats/nmea.h"

#include <numeric>
#include <vector>

namespace treadwell::passes {

namespace {

constexpr std::size_t kPiece = 1U << 16U;

/// The next bytes; none at the end.
std::string_view nextPiece(std::istream& in, std::vector<char>& piece) {
    in.read(piece.data(), static_cast<std::streamsize>(piece.size()));
    return {piece.data(), static_cast<std::size_t>(in.gcount())};
}

bool looksLikeXml(std::string_view bytes) {
    constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
    if (bytes.starts_with(kByteOrderMark)) bytes.remove_prefix(kByteOrderMark.size());
    const std::size_t first = bytes.find_first_not_of(" \t\r\n");
    return first != std::string_view::npos && bytes[first] == '<';
}

}  // namespace

std::int64_t TrackFaults::total() const noexcept {
    return std::accumulate(count.begin(), count.end(), std::int64_t{0});
}

Result<TrackFile> readTrack(std::istream& in, const std::function<void(const formats::Fix&)>& take) {
    TrackFile file{TrackFormat::nmea, {}};
    const formats::FixSink sink{take, [&](const formats::Rejected& rejected) {
                                    const auto fault = static_cast<std::size_t>(rejected.fault);
                                    if (file.faults.count[fault]++ == 0) {
                                        file.faults.firstLine[fault] = rejected.line;
                                    }
                                }};
    std::vector<char> piece(kPiece);
    std::string_view bytes = nextPiece(in, piece);
    if (looksLikeXml(bytes)) {
        file.format = TrackFormat::gpx;
        formats::GpxReader reader{sink};
        for (; !bytes.empty(); bytes = nextPiece(in, piece)) {
            if (const auto taken = reader.take(bytes); !taken) return Unexpected{taken.error()};
        }
        if (const auto whole = reader.finish(); !whole) return Unexpected{whole.error()};
        return file;
    }
    formats::NmeaReader reader{sink};
    for (; !bytes.empty(); bytes = nextPiece(in, piece)) reader.take(bytes);
    reader.finish();
    return file;
}

}  // namespace treadwell::passes
