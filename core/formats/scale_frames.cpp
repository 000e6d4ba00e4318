#include "core/formats/scale_frames.h"

#include "core/base/number_text.h"
#include "core/formats/codes.h"
#include "core/formats/mass_unit.h"

#include <algorithm>
#include <cmath>

namespace treadwell::formats {

namespace {

template <class Meaning>
struct Word {
    std::string_view word;
    Meaning meaning;
};

constexpr std::array<Word<ScaleState>, 7> kStatusWords{{{"ST", ScaleState::stable},
                                                        {"US", ScaleState::motion},
                                                        {"OL", ScaleState::overload},
                                                        {"UL", ScaleState::underload},
                                                        {"?", ScaleState::motion},
                                                        {" ", ScaleState::stable},
                                                        {"", ScaleState::stable}}};
constexpr std::array<Word<WeightKind>, 7> kKindWords{{{"GS", WeightKind::gross},
                                                      {"GR", WeightKind::gross},
                                                      {"G", WeightKind::gross},
                                                      {"NT", WeightKind::net},
                                                      {"N", WeightKind::net},
                                                      {"TR", WeightKind::tare},
                                                      {"T", WeightKind::tare}}};

// The pattern lets no other word through.
template <class Meaning, std::size_t kCount>
Meaning meaningOf(std::string_view word, const std::array<Word<Meaning>, kCount>& words) {
    const auto* known =
        std::find_if(words.begin(), words.end(), [&](const auto& entry) { return entry.word == word; });
    return known == words.end() ? Meaning::untold : known->meaning;
}

bool isMadeOf(std::string_view text, std::string_view characters) {
    return !text.empty() && text.find_first_not_of(characters) == std::string_view::npos;
}

std::string withoutBlanks(std::string_view text) {
    std::string kept{text};
    std::erase(kept, ' ');
    return kept;
}

Unexpected unreadable(std::string_view raw) {
    return fail(code::frameUnreadable, "frame", shownBytes(raw));
}

// Blanks before digits stand for zeros.
std::optional<double> digitsOf(std::string_view text) {
    const std::string digits = withoutBlanks(text);
    if (!isMadeOf(digits, "0123456789")) return std::nullopt;
    return numberFromText(digits);
}

/// Reads a block whose length is right.
class BlockReader {
  public:
    BlockReader(std::string_view raw, const StatusBlock& block) : m_raw(raw), m_block(block) {}

    [[nodiscard]] Result<ScaleReading> read() const {
        if (m_raw.front() != m_block.startByte || m_raw[m_block.end] != m_block.endByte)
            return unreadable(m_raw);
        if (m_block.hasSum && sum() % 128 != 0) return fail(code::frameSumWrong, "frame", shownBytes(m_raw));
        const auto weight = digitsOf(m_raw.substr(m_block.weight, m_block.digits));
        const auto tare = digitsOf(m_raw.substr(m_block.tare, m_block.digits));
        const bool hasBits = isStatus(0) && isStatus(1) && isStatus(2);
        if (!hasBits || !tare || bits(m_block.otherUnit) != 0) return unreadable(m_raw);
        ScaleReading reading{state(), has(m_block.net) ? WeightKind::net : WeightKind::gross, {}, {}};
        const bool isBeyond = has(m_block.outOfRange);
        if (!weight && !isBeyond) return unreadable(m_raw);
        if (weight && !isBeyond) reading.weight = massOf(has(m_block.negative) ? -*weight : *weight);
        if (*tare > 0) reading.tare = massOf(*tare);
        return reading;
    }

  private:
    [[nodiscard]] unsigned byteAt(std::size_t place) const {
        return static_cast<unsigned char>(m_raw[place]);
    }
    // A status byte always has this bit, so that it is never a control character.
    [[nodiscard]] bool isStatus(std::size_t index) const {
        return (byteAt(m_block.status + index) & 0xA0U) == 0x20U;
    }
    [[nodiscard]] unsigned bits(StatusBits bits) const {
        return byteAt(m_block.status + bits.byte) & bits.mask;
    }
    [[nodiscard]] bool has(StatusBits wanted) const { return bits(wanted) != 0; }

    [[nodiscard]] unsigned sum() const {
        unsigned sum = 0;
        for (std::size_t i = 0; i < m_raw.size(); ++i) sum += byteAt(i);
        return sum;
    }
    [[nodiscard]] ScaleState state() const {
        if (has(m_block.outOfRange))
            return has(m_block.negative) ? ScaleState::underload : ScaleState::overload;
        return has(m_block.motion) ? ScaleState::motion : ScaleState::stable;
    }
    [[nodiscard]] AsFedMass massOf(double digits) const {
        const int power = m_block.wholeUnits - static_cast<int>(bits(m_block.decimals));
        const double value = digits * std::pow(10.0, power) * (has(m_block.tenfold) ? 0.1 : 1.0);
        return formats::massOf(value, has(m_block.kilograms) ? MassUnit::kg : MassUnit::lb);
    }

    std::string_view m_raw;
    const StatusBlock& m_block;
};

bool isLineEnd(char byte) {
    return byte == '\r' || byte == '\n' || byte == '\x03' || byte == '\x02';
}

}  // namespace

ScaleFrames::ScaleFrames(const ScaleProfile& profile) : m_profile(profile) {
    if (profile.isBlock()) return;
    m_pattern.imbue(std::locale::classic());
    m_pattern.assign(profile.pattern.begin(), profile.pattern.end());
}

std::vector<ScaleFrame> ScaleFrames::take(std::string_view bytes) {
    std::vector<ScaleFrame> frames;
    for (const char byte : bytes) m_profile.isBlock() ? takeOfBlock(byte, frames) : takeOfLine(byte, frames);
    return frames;
}

ScaleFrame ScaleFrames::cut(Result<ScaleReading> reading) {
    ScaleFrame frame{std::move(m_pending), std::move(reading)};
    m_pending.clear();
    return frame;
}

void ScaleFrames::takeOfLine(char byte, std::vector<ScaleFrame>& frames) {
    if (!isLineEnd(byte)) {
        m_pending += byte;
        if (m_pending.size() <= kLongestFrame) return;
        frames.push_back(cut(fail(code::frameTooLong, "frame", static_cast<std::int64_t>(kLongestFrame))));
        m_mayBeTail = true;
        return;
    }
    if (!m_pending.empty()) {
        Result<ScaleReading> reading = fail(code::frameCut, "frame", shownBytes(m_pending));
        if (!m_mayBeTail) reading = readLine();
        frames.push_back(cut(std::move(reading)));
    }
    m_mayBeTail = false;
}

Result<ScaleReading> ScaleFrames::readLine() const {
    std::smatch match;
    if (!std::regex_match(m_pending, match, m_pattern)) return unreadable(m_pending);
    const auto textOf = [&](FramePart part) -> std::optional<std::string> {
        const auto* place = std::find(m_profile.parts.begin(), m_profile.parts.end(), part);
        if (place == m_profile.parts.end()) return std::nullopt;
        return match[static_cast<std::size_t>(place - m_profile.parts.begin()) + 1].str();
    };
    ScaleReading reading;
    if (const auto status = textOf(FramePart::status)) reading.state = meaningOf(*status, kStatusWords);
    if (const auto kind = textOf(FramePart::kind)) reading.kind = meaningOf(*kind, kKindWords);
    const std::string weight = withoutBlanks(textOf(FramePart::weight).value_or(""));
    const std::string tare = withoutBlanks(textOf(FramePart::tare).value_or(""));
    const auto unit = massUnitFromWord(textOf(FramePart::unit).value_or(""));
    if (isMadeOf(weight, "^")) reading.state = ScaleState::overload;
    if (isMadeOf(weight, "-") || isMadeOf(weight, "_")) reading.state = ScaleState::underload;
    const bool isBeyond = reading.state == ScaleState::overload || reading.state == ScaleState::underload;
    const auto value = numberFromText(weight);
    if (!unit || (!value && !isBeyond)) return unreadable(m_pending);
    if (!isBeyond) reading.weight = massOf(*value, *unit);
    if (const auto known = numberFromText(tare); known && *known > 0) reading.tare = massOf(*known, *unit);
    return reading;
}

// What is no block is put aside up to the next start byte, so that a block after noise is found.
void ScaleFrames::takeOfBlock(char byte, std::vector<ScaleFrame>& frames) {
    const StatusBlock& block = m_profile.block;
    m_pending += byte;
    while (!m_pending.empty()) {
        const bool begins = m_pending.front() == block.startByte;
        if (begins && m_pending.size() < block.size()) return;
        Result<ScaleReading> reading = unreadable(m_pending);
        if (begins) reading = BlockReader{std::string_view{m_pending}.substr(0, block.size()), block}.read();
        const std::size_t next = m_pending.find(block.startByte, 1);
        std::size_t end = std::min(next, m_pending.size());
        if (reading) {
            end = block.size();
        } else if (next == std::string::npos && m_pending.size() < kLongestFrame) {
            return;
        }
        std::string rest = m_pending.substr(end);
        m_pending.resize(end);
        frames.push_back(cut(std::move(reading)));
        m_pending = std::move(rest);
    }
}

std::string shownBytes(std::string_view bytes) {
    constexpr std::string_view kHex = "0123456789ABCDEF";
    std::string shown;
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x20 && byte < 0x7F) {
            shown += c;
        } else {
            shown += {'<', kHex[byte >> 4U], kHex[byte & 0xFU], '>'};
        }
    }
    return shown;
}

}  // namespace treadwell::formats
