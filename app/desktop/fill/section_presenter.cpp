#include "app/desktop/fill/section_presenter.h"

#include "app/desktop/settings/dates.h"
#include "core/density/weak_places.h"

#include <QDate>

namespace treadwell::fill {

QString spanText(const FarmZone& zone, Instant begin, Instant end, const QLocale& locale) {
    const auto dayText = [&](Instant at) {
        return locale.toString(settings::dateOf(zone.dayOf(at)), QStringLiteral("d MMM")) + u' ';
    };
    const QString from = dayText(begin) + QString::fromStdString(clockText(zone, begin));
    const QString clock = QString::fromStdString(clockText(zone, end));
    return from + u'–' + (zone.dayOf(begin) == zone.dayOf(end) ? clock : dayText(end) + clock);
}

widgets::Section sectionAt(const season::Season& season, const density::Readings& readings,
                           const Speech& speech) {
    widgets::Section section;
    if (readings.silo.reason) section.reason = speech.say(*readings.silo.reason);
    if (!readings.layers || !readings.silo.estimate) return section;
    const density::SiloLayers& layers = *readings.layers;
    auto field = density::fieldOf(season, layers, density::Filled::asItLies);
    if (!field) return section;
    section.field = std::make_shared<const density::Field>(std::move(*field));
    LocalDay last{};
    int days = 0;
    for (const density::LayerFacts& facts : layers.layers) {
        const packing::Layer& layer = *facts.layer;
        const LocalDay day = season.zone().dayOf(layer.begin);
        if (!section.layers.empty() && day != last) ++days;
        last = day;
        section.layers.push_back(
            {layer.number, spanText(season.zone(), layer.begin, layer.end, speech.units().locale()), days});
    }
    section.length = std::max(layers.silo.length, section.field->whole().high.along);
    section.width = layers.silo.width;
    section.wall = layers.silo.wallHeight;
    section.planned = layers.silo.plannedDepth;
    section.target = readings.silo.estimate->target.density;
    return section;
}

}  // namespace treadwell::fill
