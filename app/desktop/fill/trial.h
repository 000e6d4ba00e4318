#pragma once

#include "app/desktop/fill/advice_state.h"
#include "app/desktop/widgets/pad_plan.h"

#include <map>

namespace treadwell::fill {

/// What somebody tries on the pad to see what it would come to; nothing of it is recorded.
class Trial final {
  public:
    void move(farm::TractorId tractor, widgets::Zone zone, Share share);
    void spread(Length layer) { m_layer = layer; }
    void clear();
    [[nodiscard]] bool isEmpty() const noexcept { return m_moves.empty() && !m_layer; }

    /// Where the tractors stand in the trial.
    void show(std::vector<widgets::TractorView>& tractors) const;
    /// The work that makes it real at a silo; a layer and a delivery are for people to change.
    [[nodiscard]] std::vector<entries::TractorWork> work(farm::SiloId silo) const;
    /// The change of the situation; tractors that are not in it are left out.
    [[nodiscard]] advice::Change change(const advice::AdviceSituation& situation,
                                        const season::FarmBook& farm) const;

  private:
    struct Move {
        widgets::Zone zone;
        Share share;
    };
    std::map<farm::TractorId, Move> m_moves;
    std::optional<Length> m_layer;
};

/// The trial that is this change.
[[nodiscard]] Trial trialOf(const advice::Change& change, const advice::AdviceSituation& situation,
                            const season::FarmBook& farm);

/// Effect, cost and chance of a trial in one sentence, or why there is none; what to do to try something
/// while it is empty.
[[nodiscard]] QString sentenceOf(const Trial& trial, const AdviceState& state, const season::FarmBook& farm,
                                 const Speech& speech);

/// A trial that is carried out, for the journal; none without a situation.
[[nodiscard]] std::optional<entries::AdviceDecided> decisionOn(const Trial& trial, const AdviceState& state,
                                                               const season::FarmBook& farm,
                                                               farm::SiloId silo);

}  // namespace treadwell::fill
