#include "app/desktop/fill/radio.h"

#include <QCoreApplication>
#include <QStringList>

namespace treadwell::fill {

namespace {

struct RadioText {
    Q_DECLARE_TR_FUNCTIONS(Radio)
};

QStringList namesOf(const season::Season& season, const season::Rolling& rolling, farm::Activity activity) {
    QStringList names;
    for (const season::TractorNow& now : rolling.tractors) {
        if (now.activity != activity || now.silo != rolling.silo) continue;
        names << QString::fromStdString(season.farm().tractors.at(now.tractor).name);
    }
    return names;
}

}  // namespace

QString radioText(const season::Season& season, const density::Readings& readings, const Speech& speech) {
    const settings::DisplayUnits& units = speech.units();
    const QString comma = QStringLiteral(", ");
    QStringList parts;
    const QStringList packing = namesOf(season, readings.rolling, farm::Activity::packing);
    const QStringList spreading = namesOf(season, readings.rolling, farm::Activity::spreading);
    parts << (packing.isEmpty() ? RadioText::tr("Nobody packs")
                                : RadioText::tr("%1 packing", "names of tractors").arg(packing.join(comma)));
    if (!spreading.isEmpty())
        parts << RadioText::tr("%1 spreading", "names of tractors").arg(spreading.join(comma));
    if (readings.rolling.paused) parts << RadioText::tr("pause");
    if (const auto& estimate = readings.layer.estimate) {
        const density::Distribution& density = estimate->density;
        parts << RadioText::tr("%1 (%2), target %3, chance %4", "density, its band, target, chance of it")
                     .arg(units.text(density.median()),
                          units.numberText(density.low80().amount()) + u'–' +
                              units.numberText(density.high80().amount()),
                          units.numberText(estimate->target.density.amount()),
                          units.chanceText(estimate->chance));
    } else if (readings.layer.reason) {
        parts << speech.say(*readings.layer.reason);
    }
    return parts.join(QStringLiteral("; "));
}

}  // namespace treadwell::fill
