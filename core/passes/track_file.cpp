#include "core/passes/track_file.h"

#include "core/formats/gpx.h"
#include "core/formats/nmea.h"

#include <numeric>
#include <vector>

namespace treadwell::passes {

namespace {

constexpr std::size_t kPiece = 1U << 16U;

/// The file piece by piece, each shown to whoever wants to see the bytes.
class Pieces {
  public:
    Pieces(std::istream& in, const TakeBytes& see) : m_in(in), m_see(see), m_piece(kPiece) {}

    /// Empty at the end.
    std::string_view next() {
        m_in.read(m_piece.data(), static_cast<std::streamsize>(m_piece.size()));
        const std::string_view bytes{m_piece.data(), static_cast<std::size_t>(m_in.gcount())};
        m_stopped = m_see && !bytes.empty() && !m_see(bytes);
        return m_stopped ? std::string_view{} : bytes;
    }
    [[nodiscard]] bool stopped() const noexcept { return m_stopped; }

  private:
    std::istream& m_in;
    const TakeBytes& m_see;
    std::vector<char> m_piece;
    bool m_stopped = false;
};

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

Result<TrackFile> readTrack(std::istream& in, const TakeFix& take, const TakeBytes& see) {
    TrackFile file{TrackFormat::nmea, {}};
    const formats::FixSink sink{take, [&](const formats::Rejected& rejected) {
                                    const auto fault = static_cast<std::size_t>(rejected.fault);
                                    if (file.faults.count[fault]++ == 0) {
                                        file.faults.firstLine[fault] = rejected.line;
                                    }
                                }};
    Pieces pieces{in, see};
    std::string_view bytes = pieces.next();
    if (looksLikeXml(bytes)) {
        file.format = TrackFormat::gpx;
        formats::GpxReader reader{sink};
        for (; !bytes.empty(); bytes = pieces.next()) {
            if (const auto taken = reader.take(bytes); !taken) return Unexpected{taken.error()};
        }
        if (pieces.stopped()) return file;
        if (const auto whole = reader.finish(); !whole) return Unexpected{whole.error()};
        return file;
    }
    formats::NmeaReader reader{sink};
    for (; !bytes.empty(); bytes = pieces.next()) reader.take(bytes);
    if (!pieces.stopped()) reader.finish();
    return file;
}

}  // namespace treadwell::passes
