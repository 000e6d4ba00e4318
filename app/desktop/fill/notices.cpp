#include "app/desktop/fill/notices.h"

#include "core/advice/wording.h"

#include <QCoreApplication>
#include <QStringList>
#include <array>

namespace treadwell::fill {

namespace {

struct NoticeText {
    Q_DECLARE_TR_FUNCTIONS(Notices)
};

constexpr std::size_t kMostToMeasure = 3;

// In the order of the sections. NoticeText::tr() in a member of Notices would go into a context of its own.
constexpr std::array kTitles{QT_TRANSLATE_NOOP("Notices", "Now"),
                             QT_TRANSLATE_NOOP("Notices", "Makes the answer surer"),
                             QT_TRANSLATE_NOOP("Notices", "Missing"),
                             QT_TRANSLATE_NOOP("Notices", "Assumed"),
                             QT_TRANSLATE_NOOP("Notices", "What came of advice"),
                             QT_TRANSLATE_NOOP("Notices", "Cautions"),
                             QT_TRANSLATE_NOOP("Notices", "Known")};

/// What would narrow the band most, first.
std::vector<widgets::Notice> toMeasure(const density::Readings& readings, const Speech& speech) {
    std::vector<widgets::Notice> notices;
    for (const density::Narrowing& next : density::doubtsOf(readings, readings.layer).next) {
        if (notices.size() == kMostToMeasure) break;
        notices.push_back({speech.say(next.what)});
    }
    return notices;
}

std::vector<widgets::Notice> standing(const std::vector<attention::GroundNow>& grounds,
                                      attention::Standing wanted, const Speech& speech) {
    std::vector<widgets::Notice> notices;
    for (const attention::GroundNow& ground : grounds) {
        if (ground.standing == wanted) notices.push_back({speech.say(ground.message)});
    }
    return notices;
}

QString cameOf(const advice::LookedBack& looked, const season::Season& season, const Speech& speech) {
    QStringList actions;
    for (const Message& action : advice::actionsNamed(looked.what.advice)) actions << speech.say(action);
    const settings::DisplayUnits& units = speech.units();
    const bool followed = looked.what.decision == entries::AdviceDecision::accepted;
    const auto clock = [&](Instant at) { return QString::fromStdString(clockText(season.zone(), at)); };
    const QString said =
        (followed
             ? NoticeText::tr("%1 done: %2, %3 → %4 expected", "time, advice, density before and after")
             : NoticeText::tr("%1 declined: %2, %3 → %4 expected", "time, advice, density before and after"))
            .arg(clock(looked.at), actions.join(QStringLiteral(", ")),
                 units.numberText(looked.what.before.amount()), units.text(looked.what.after));
    if (looked.came)
        return NoticeText::tr("%1; %2 at %3", "what was said, the density then, time")
            .arg(said, units.text(*looked.came), clock(looked.lookedAt));
    return NoticeText::tr("%1; shows from %2", "what was said, time").arg(said, clock(looked.lookedAt));
}

}  // namespace

std::vector<widgets::Notice> Notices::adviceToday(const season::Season& season,
                                                  const season::Rolling& rolling, const Speech& speech) {
    const season::Day* day = season.day(season.zone().dayOf(rolling.at));
    const std::size_t decided = day == nullptr ? 0 : day->records.of<entries::AdviceDecided>().size();
    const bool holds = m_lookedFor == rolling.silo && m_decided == decided && rolling.at >= m_lookedAt &&
                       rolling.at - m_lookedAt < std::chrono::minutes{1};
    if (!holds) {
        m_lookedBack = advice::lookBack(season, rolling.silo, rolling.at, m_history);
        m_lookedFor = rolling.silo;
        m_lookedAt = rolling.at;
        m_decided = decided;
    }
    std::vector<widgets::Notice> notices;
    for (const advice::LookedBack& looked : m_lookedBack) notices.push_back({cameOf(looked, season, speech)});
    return notices;
}

std::vector<widgets::Notice> Notices::matters(const season::Season& season, const density::Readings& readings,
                                              const Speech& speech) {
    std::vector<widgets::Notice> notices;
    std::set<QString> there;
    for (const attention::MatterNow& matter : attention::mattersAt(season, readings)) {
        const std::string_view name = enumText(matter.matter);
        const QString key = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
        there.insert(key);
        if (m_putAway.contains(key)) continue;
        notices.push_back({speech.say(matter.message), {}, true, key});
    }
    std::erase_if(m_putAway, [&](const QString& key) { return !there.contains(key); });
    return notices;
}

std::vector<widgets::NoticeSection> Notices::at(const season::Season& season,
                                                const density::Readings& readings,
                                                const std::vector<attention::CautionNow>& cautions,
                                                const Speech& speech) {
    const auto grounds = attention::groundsAt(season, readings);
    using attention::Standing;
    std::vector<widgets::NoticeSection> sections;
    for (auto& notices :
         {matters(season, readings, speech), toMeasure(readings, speech),
          standing(grounds, Standing::missing, speech), standing(grounds, Standing::assumed, speech),
          adviceToday(season, readings.rolling, speech), cautionNotices(cautions, readings, speech),
          standing(grounds, Standing::known, speech)}) {
        sections.push_back({QCoreApplication::translate("Notices", kTitles[sections.size()]), notices});
    }
    return sections;
}

}  // namespace treadwell::fill
