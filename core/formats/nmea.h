#pragma once

#include "core/formats/fix.h"

#include <string>

namespace treadwell::formats {

/// Longest sentence that is read; RTK positions run beyond the standard's 82 characters.
inline constexpr std::size_t kLongestSentence = 256;

/// Reads NMEA 0183 as it comes, in constant memory: GGA gives position and quality, RMC and ZDA the date, of
/// any talker; RMC alone gives positions where the file has no GGA. Other sentences are passed over. A
/// checksum that is there must hold. A time of day more than 12 h before the date's last means that midnight
/// (UTC) has passed. The same bytes give the same fixes in whatever pieces they come.
class NmeaReader final {
  public:
    explicit NmeaReader(FixSink sink) : m_sink{std::move(sink)} {}

    void take(std::string_view bytes);
    /// The file ends: reads what is left without a line end.
    void finish();

  private:
    using Fields = std::array<std::string_view, 24>;

    /// A fix that has to wait for the next sentence: for its date, or for a better one of the same moment.
    struct Waiting {
        Fix fix;
        std::chrono::microseconds timeOfDay;
        bool hasDate;
    };

    void takeLine(std::string_view line);
    void finishLine();
    void takeSentence(std::string_view body, bool checked);
    void takeGga(const Fields& fields, bool checked);
    void takeRmc(const Fields& fields, bool checked);
    void takeZda(const Fields& fields);
    void setDate(std::chrono::sys_days date, std::chrono::microseconds timeOfDay);
    [[nodiscard]] Instant instantOf(std::chrono::microseconds timeOfDay);
    void settleWaiting(std::optional<std::chrono::microseconds> replacedAt);
    void give(Fix fix);
    void reject(TrackFault fault) { m_sink.rejected({fault, m_line}); }

    FixSink m_sink;
    std::string m_pending;
    std::int64_t m_line = 0;
    bool m_tooLong = false;
    bool m_hasGga = false;
    bool m_lost = true;  ///< no fix since the begin, or since the receiver lost its position
    std::optional<Waiting> m_waiting;
    std::optional<std::chrono::sys_days> m_date;
    std::chrono::microseconds m_timeOfDay{};  ///< for which m_date was last known to be right
};

}  // namespace treadwell::formats
