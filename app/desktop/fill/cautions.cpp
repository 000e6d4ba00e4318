#include "app/desktop/fill/cautions.h"

#include <QCoreApplication>
#include <algorithm>

namespace treadwell::fill {

namespace {

struct CautionText {
    Q_DECLARE_TR_FUNCTIONS(FillPresenter)
};

std::optional<Length> highestFill(const season::Season& season, farm::SiloId silo, Instant now) {
    const auto days = season.days();
    for (auto day = days.rbegin(); day != days.rend(); ++day) {
        const auto& surveys = (*day)->surveys;
        const auto last = std::find_if(surveys.rbegin(), surveys.rend(), [&](const season::Survey& survey) {
            return survey.what.silo == silo && survey.at <= now && !survey.what.readings.empty();
        });
        if (last == surveys.rend()) continue;
        return std::max_element(last->what.readings.begin(), last->what.readings.end(),
                                [](const auto& a, const auto& b) { return a.height < b.height; })
            ->height;
    }
    return std::nullopt;
}

QString sourceText(const Source& source) {
    if (source.citation.empty()) return CautionText::tr("common practice");
    return QString::fromUtf8(source.citation.data(), static_cast<qsizetype>(source.citation.size()));
}

}  // namespace

std::vector<attention::CautionNow> cautionsAt(const season::Season& season,
                                              const density::Readings& readings) {
    const season::Rolling& rolling = readings.rolling;
    const auto silo = season.farm().silos.find(rolling.silo);
    if (silo == season.farm().silos.end()) return {};
    attention::CautionSituation situation;
    if (rolling.siloIn.loads > 0) {
        situation.lastLoad = rolling.siloIn.last;
        situation.dryMatter = rolling.siloIn.dryMatter();
    }
    situation.highestFill = highestFill(season, rolling.silo, rolling.at);
    situation.longestShift = season::longestShift(season, rolling.at);
    return attention::cautionsFor(silo->second, situation, rolling.at);
}

std::vector<widgets::Notice> cautionNotices(const std::vector<attention::CautionNow>& cautions,
                                            const density::Readings& readings, const Speech& speech) {
    std::vector<widgets::Notice> views;
    const auto add = [&views](const widgets::Notice& view) {
        if (std::find(views.begin(), views.end(), view) == views.end()) views.push_back(view);
    };
    // What is seen comes before what stands at every silo; the doubts about the estimate are of today.
    const auto standing = std::find_if(cautions.begin(), cautions.end(), [](const auto& caution) {
        return caution.weight == attention::Weight::standing;
    });
    const auto say = [&](const attention::CautionNow& caution) {
        add({speech.say(caution.message), sourceText(caution.source), true});
    };
    std::for_each(cautions.begin(), standing, say);
    for (const density::SiloReading* reading : {&readings.layer, &readings.today, &readings.silo}) {
        if (!reading->estimate) continue;
        for (const Message& warning : reading->estimate->warnings) {
            add({speech.say(warning), CautionText::tr("the estimate's own limits"), true});
        }
    }
    std::for_each(standing, cautions.end(), say);
    add({speech.say(attention::standingText()), {}});
    return views;
}

std::vector<entries::CautionShown> unrecorded(const std::vector<attention::CautionNow>& cautions,
                                              const season::Season& season, Instant now) {
    const season::Day* day = season.day(season.zone().dayOf(now));
    const std::vector<season::Dated<entries::CautionShown>> none;
    const auto& notes = day == nullptr ? none : day->records.of<entries::CautionShown>();
    std::vector<entries::CautionShown> shown;
    for (const attention::CautionNow& caution : cautions) {
        const std::string name{enumText(caution.caution)};
        const bool recorded = std::any_of(notes.begin(), notes.end(),
                                          [&](const auto& note) { return note.what.caution == name; });
        if (!recorded) shown.push_back({name});
    }
    return shown;
}

}  // namespace treadwell::fill
