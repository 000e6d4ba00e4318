#include "app/cli/scale_line.h"

#include "core/base/number_text.h"

#include <chrono>

namespace treadwell::cli {

namespace {

using std::chrono::steady_clock;

/// Between two questions; a scale that is asked faster than it answers falls behind.
constexpr std::chrono::seconds kBetweenQuestions{1};
constexpr std::chrono::milliseconds kGlance{100};
constexpr std::int64_t kLongestWait = 3600;

std::string profileNames() {
    std::string names;
    for (const formats::ScaleProfile& profile : formats::scaleProfiles())
        names += (names.empty() ? "" : ", ") + std::string{profile.name};
    return names;
}

tl::expected<scale::LineSettings, Failure> settingsFrom(const WeighOptions& options) {
    scale::LineSettings settings;
    settings.place = options.line;
    if (settings.place.empty()) return misusedLine("--line: give a device, or host and port");
    if (options.baud) {
        const auto baud = integerFromText(*options.baud);
        if (!baud || *baud < 1 || *baud > 115200)
            return misusedLine("--baud: \"" + *options.baud + "\" is no speed of a line: write it like 9600");
        settings.baud = static_cast<int>(*baud);
    }
    if (options.characters) {
        const auto characters = enumFromText<scale::Characters>(*options.characters);
        if (!characters) return misusedLine("--characters: use 8N1 or 7E1");
        settings.characters = *characters;
    }
    return settings;
}

/// `ENQ` is the control character of that name; any other word is sent with a line end.
std::string questionFrom(const std::optional<std::string>& ask) {
    if (!ask) return {};
    return *ask == "ENQ" ? std::string{'\x05'} : *ask + '\r';
}

}  // namespace

tl::expected<ScaleLine, Failure> ScaleLine::open(const WeighOptions& options, const words::Style& style) {
    const formats::ScaleProfile* profile = formats::scaleProfileNamed(options.profile);
    if (profile == nullptr)
        return misusedLine("--profile: \"" + options.profile + "\" is not known: use one of " +
                           profileNames());
    const auto settings = settingsFrom(options);
    if (!settings) return tl::unexpected{settings.error()};
    std::int64_t seconds = 30;
    if (options.wait) {
        const auto given = integerFromText(*options.wait);
        if (!given || *given < 1 || *given > kLongestWait)
            return misusedLine("--wait: \"" + *options.wait + "\" is no number of seconds from 1 to 3600");
        seconds = *given;
    }
    auto line = scale::Line::open(*settings);
    if (!line) return failed(line.error(), style);
    return ScaleLine{std::move(*line), *profile, options.line, questionFrom(options.ask),
                     std::chrono::seconds{seconds}};
}

Result<Heard> ScaleLine::listen(const std::function<bool(const formats::ScaleFrame&, Instant)>& take) {
    const SystemClock clock;
    Heard heard;
    const auto end = steady_clock::now() + std::chrono::duration_cast<steady_clock::duration>(m_wait);
    auto nextQuestion = steady_clock::now();
    while (steady_clock::now() < end) {
        if (!m_question.empty() && steady_clock::now() >= nextQuestion) {
            if (const auto asked = m_line.ask(m_question); !asked) return Unexpected{asked.error()};
            nextQuestion = steady_clock::now() + kBetweenQuestions;
        }
        const auto bytes = m_line.read(kGlance);
        if (!bytes) return Unexpected{bytes.error()};
        for (const formats::ScaleFrame& frame : m_frames.take(*bytes)) {
            ++heard.frames;
            if (!frame.reading) ++heard.unreadable;
            if (take(frame, clock.now())) return heard;
        }
    }
    return heard;
}

}  // namespace treadwell::cli
