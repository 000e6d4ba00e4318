#include "app/desktop/fill/movement_watch.h"

#include <QCoreApplication>
#include <cmath>
#include <stdexcept>

namespace treadwell::fill {

namespace {

constexpr double kLeastMove = 0.01;  ///< of the density

struct MovementText {
    Q_DECLARE_TR_FUNCTIONS(MovementText)
};

QString signedText(DryDensity change, const settings::DisplayUnits& units) {
    const QString number = units.numberText(DryDensity::fromSi(std::abs(change.si())).amount());
    return (change < DryDensity{} ? QChar{u'−'} : QChar{u'+'}) + number;
}

}  // namespace

void MovementWatch::note(const SeasonPointer& season, Instant now) {
    if (!m_known.empty() && now < m_known.back().at) m_known.clear();  // the clock went back
    if (m_known.empty() || m_known.back().season != season) m_known.push_back({now, season});
    while (m_known.size() > 1 && m_known[1].at <= now - kMovementSpan) m_known.pop_front();
}

density::Readings MovementWatch::before(farm::SiloId silo, Instant now) {
    if (m_known.empty()) throw std::logic_error("no season has been noted");
    return m_history.at(*m_known.front().season, silo, now - kMovementSpan);
}

QString movementText(const std::optional<density::Movement>& movement, const Speech& speech) {
    if (!movement) return {};
    const settings::DisplayUnits& units = speech.units();
    const auto minutes = static_cast<int>(kMovementSpan.count());
    const auto tells = [&](const density::Move& move) {
        return std::abs(move.change / movement->after) >= kLeastMove;
    };
    if (movement->moves.empty() || !tells(movement->moves.front()))
        return MovementText::tr("Steady for %1 min.").arg(minutes);
    const density::Move& first = movement->moves.front();
    const QString cause = MovementText::tr("%1: %2", "change, cause")
                              .arg(signedText(first.change, units), speech.say(first.what));
    const bool alone = movement->moves.size() == 1 || !tells(movement->moves[1]);
    if (alone) return MovementText::tr("In %1 min %2").arg(minutes).arg(cause);
    return MovementText::tr("In %1 min %2, first %3")
        .arg(minutes)
        .arg(signedText(movement->change(), units), cause);
}

}  // namespace treadwell::fill
