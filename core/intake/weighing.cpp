#include "core/intake/weighing.h"

#include "core/intake/codes.h"

namespace treadwell::intake {

std::optional<Weighing> SteadyWeight::take(const formats::ScaleFrame& frame, Instant now) {
    const bool isWeight = frame.reading && (frame.reading->state == formats::ScaleState::stable ||
                                            frame.reading->state == formats::ScaleState::untold);
    if (!isWeight) {
        m_reading.reset();
        return std::nullopt;
    }
    if (m_reading != *frame.reading || now - m_last > kLongestGap || now < m_last) {
        m_reading = *frame.reading;
        m_first = now;
        m_count = 0;
        m_frames.clear();
    }
    m_last = now;
    ++m_count;
    m_frames += toIso8601(now) + ' ' + frame.raw + '\n';
    const bool lasts = m_reading->state == formats::ScaleState::stable || now - m_first >= kLongestGap;
    if (m_count < kSteadyFrames || !lasts) return std::nullopt;
    return Weighing{*m_reading, now, {sha256(m_frames), m_frames}};
}

Result<entries::Load> loadOf(const Weighing& weighing, entries::Load known, std::optional<AsFedMass> tare) {
    const formats::ScaleReading& reading = weighing.reading;
    const AsFedMass weight = reading.weight.value_or(AsFedMass{});
    if (reading.kind == formats::WeightKind::tare)
        return fail(code::scaleShowsTare, "weight", weight.amount());
    if (reading.kind == formats::WeightKind::net) tare = AsFedMass{};
    if (!tare && reading.kind == formats::WeightKind::gross) tare = reading.tare;
    if (!tare) return fail(code::scaleTareNeeded, "tare", weight.amount());
    known.mass = weight - *tare;
    if (!(known.mass > AsFedMass{})) return fail(code::scaleNetNegative, "weight", known.mass.amount());
    known.source = entries::MassSource::weighed;
    known.evidence = weighing.evidence.hash;
    if (auto valid = entries::validate(known); !valid) return Unexpected{valid.error()};
    return known;
}

}  // namespace treadwell::intake
