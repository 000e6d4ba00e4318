#pragma once

#include "app/desktop/fill/say.h"
#include "core/advice/from_season.h"
#include "core/advice/voice.h"
#include "core/entries/advice_decided.h"

namespace treadwell::fill {

/// What advice has to say at a moment, and on what it stands.
struct AdviceState {
    advice::Voice voice;
    std::optional<advice::AdviceSituation> situation;
    std::optional<advice::Advice> advice;

    /// The candidate that is being said; null while silent.
    [[nodiscard]] const advice::Candidate* said() const noexcept;
};

/// The next state: `before` hears the advice of these readings.
[[nodiscard]] AdviceState adviceAt(const season::Season& season, const density::Readings& readings,
                                   const advice::Voice& before);

/// What would be said by now to one who has listened for the last half hour, so that a page that opens late
/// says the same as one that was open.
[[nodiscard]] advice::Voice voiceAt(const season::Season& season, farm::SiloId silo, Instant now);

/// Whether somebody has accepted or declined what is said since it came up.
[[nodiscard]] bool isDecided(const season::Season& season, farm::SiloId silo, const advice::Voice& voice,
                             Instant now);
/// Whether it is recorded that this was shown since it came up.
[[nodiscard]] bool isRecorded(const season::Season& season, farm::SiloId silo, const advice::Voice& voice,
                              Instant now);

/// What to do, then effect and cost; none while silent.
[[nodiscard]] std::optional<QString> sentenceOf(const AdviceState& state, const Speech& speech);

/// Why nothing is to be changed: all is well, or nothing at hand helps, or too little is known; none while a
/// change is being weighed.
[[nodiscard]] std::optional<QString> silenceOf(const AdviceState& state, const density::Readings& readings,
                                               const Speech& speech);

/// For the journal; the state must have something said (std::logic_error).
[[nodiscard]] entries::AdviceDecided decisionOn(const AdviceState& state, farm::SiloId silo,
                                                entries::AdviceDecision decision);

}  // namespace treadwell::fill
