#include "core/formats/gpx.h"

#include "core/base/number_text.h"
#include "core/formats/codes.h"

#include <expat.h>

#include <algorithm>
#include <cmath>
#include <new>
#include <string>
#include <string_view>

namespace treadwell::formats {

namespace {

/// No value that is read is longer.
constexpr std::size_t kLongestText = 64;

std::string_view withoutPrefix(std::string_view name) {
    return name.substr(name.rfind(':') + 1);  // npos + 1 is 0
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(kBlanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

}  // namespace

class GpxReader::State final {
  public:
    explicit State(FixSink sink) : m_sink{std::move(sink)}, m_parser{XML_ParserCreate(nullptr)} {
        if (m_parser == nullptr) throw std::bad_alloc{};
        XML_SetUserData(m_parser, this);
        XML_SetElementHandler(m_parser, &onBegin, &onEnd);
        XML_SetCharacterDataHandler(m_parser, &onText);
        XML_SetStartDoctypeDeclHandler(m_parser, &onDoctype);
    }
    State(const State&) = delete;
    State& operator=(const State&) = delete;
    ~State() { XML_ParserFree(m_parser); }

    Result<void> take(std::string_view bytes, bool last) {
        // The library counts in int.
        constexpr std::size_t kMost = 1U << 20U;
        do {
            if (m_error) return Unexpected{*m_error};
            const std::string_view part = bytes.substr(0, kMost);
            bytes.remove_prefix(part.size());
            const bool isFinal = last && bytes.empty();
            if (XML_Parse(m_parser, part.data(), static_cast<int>(part.size()), isFinal) != XML_STATUS_OK) {
                if (!m_error)
                    stop(code::gpxUnreadable, {std::string{XML_ErrorString(XML_GetErrorCode(m_parser))}});
            }
        } while (!bytes.empty());
        if (m_error) return Unexpected{*m_error};
        return {};
    }

  private:
    enum class Part : std::uint8_t { none, time, elevation, fix, hdop };

    static Part partCalled(std::string_view name) {
        if (name == "time") return Part::time;
        if (name == "ele") return Part::elevation;
        if (name == "fix") return Part::fix;
        if (name == "hdop") return Part::hdop;
        return Part::none;
    }

    static State& of(void* self) { return *static_cast<State*>(self); }
    static void onBegin(void* self, const XML_Char* name, const XML_Char** attributes) {
        of(self).begin(withoutPrefix(name), attributes);
    }
    static void onEnd(void* self, const XML_Char* name) { of(self).end(withoutPrefix(name)); }
    static void onText(void* self, const XML_Char* text, int size) {
        of(self).text({text, static_cast<std::size_t>(size)});
    }
    static void onDoctype(void* self, const XML_Char* /*name*/, const XML_Char* /*system*/,
                          const XML_Char* /*known*/, int /*internal*/) {
        of(self).stop(code::gpxDoctype, {});
    }

    void stop(Code code, std::vector<Argument> arguments) {
        if (m_error) return;
        m_error = Error{{code, std::move(arguments)},
                        "file",
                        {{},
                         static_cast<std::int64_t>(XML_GetCurrentLineNumber(m_parser)),
                         static_cast<std::int64_t>(XML_GetCurrentColumnNumber(m_parser)) + 1}};
        XML_StopParser(m_parser, XML_FALSE);
    }

    void begin(std::string_view name, const XML_Char** attributes) {
        if (m_error) return;
        ++m_depth;
        if (m_depth == 1 && name != "gpx") return stop(code::gpxRootWrong, {std::string{name.substr(0, 40)}});
        if (m_point == 0) {
            if (name == "trkseg") m_lost = true;
            if (name == "trkpt") beginPoint(attributes);
            return;
        }
        m_part = m_depth == m_point + 1 ? partCalled(name) : Part::none;
        m_text.clear();
    }

    void beginPoint(const XML_Char** attributes) {
        m_point = m_depth;
        m_fix = {};
        m_fault.reset();
        m_hasTime = false;
        std::optional<double> latitude, longitude;
        for (; attributes[0] != nullptr; attributes += 2) {
            const std::string_view name{attributes[0]};
            if (name == "lat") latitude = numberFromText(trimmed(attributes[1]));
            if (name == "lon") longitude = numberFromText(trimmed(attributes[1]));
        }
        m_line = static_cast<std::int64_t>(XML_GetCurrentLineNumber(m_parser));
        if (!latitude || !longitude) {
            m_fault = TrackFault::unreadable;
        } else if (std::abs(*latitude) > 90.0 || std::abs(*longitude) > 180.0) {
            m_fault = TrackFault::outOfRange;
        } else {
            m_fix.latitude_deg = *latitude;
            m_fix.longitude_deg = *longitude;
        }
    }

    void text(std::string_view part) {
        if (m_part != Part::none && m_text.size() <= kLongestText) m_text += part.substr(0, kLongestText + 1);
    }

    void end(std::string_view /*name*/) {
        if (m_error) return;
        if (m_point != 0 && m_depth == m_point + 1) takePart(trimmed(m_text));
        if (m_point == m_depth) endPoint();
        m_part = Part::none;
        --m_depth;
    }

    void takePart(std::string_view text) {
        if (m_part == Part::time) {
            const auto at = instantFromIso8601(text);
            m_hasTime = at.has_value();
            if (at) m_fix.at = *at;
        } else if (m_part == Part::elevation) {
            if (const auto height_m = numberFromText(text)) m_fix.height = Length::fromMetres(*height_m);
        } else if (m_part == Part::hdop) {
            m_fix.hdop = numberFromText(text);
        } else if (m_part == Part::fix) {
            if (text == "2d" || text == "3d") m_fix.quality = FixQuality::autonomous;
            if (text == "dgps" || text == "pps") m_fix.quality = FixQuality::differential;
            if (text == "none") m_noFix = true;
        }
    }

    void endPoint() {
        m_point = 0;
        if (!m_fault && m_noFix) m_fault = TrackFault::noFix;
        if (!m_fault && !m_hasTime) m_fault = TrackFault::noTime;
        if (m_noFix) m_lost = true;
        m_noFix = false;
        if (m_fault) return m_sink.rejected({*m_fault, m_line});
        m_fix.beginsSegment = m_lost;
        m_lost = false;
        m_sink.fix(m_fix);
    }

    FixSink m_sink;
    XML_Parser m_parser;
    std::optional<Error> m_error;
    int m_depth = 0;
    int m_point = 0;  ///< depth of the point that is read, 0 outside
    Part m_part = Part::none;
    std::string m_text;
    Fix m_fix;
    std::int64_t m_line = 0;
    std::optional<TrackFault> m_fault;
    bool m_hasTime = false;
    bool m_noFix = false;
    bool m_lost = true;
};

GpxReader::GpxReader(FixSink sink) : m_state{std::make_unique<State>(std::move(sink))} {}
GpxReader::GpxReader(GpxReader&&) noexcept = default;
GpxReader& GpxReader::operator=(GpxReader&&) noexcept = default;
GpxReader::~GpxReader() = default;

Result<void> GpxReader::take(std::string_view bytes) {
    return bytes.empty() ? Result<void>{} : m_state->take(bytes, false);
}

Result<void> GpxReader::finish() {
    return m_state->take({}, true);
}

}  // namespace treadwell::formats
