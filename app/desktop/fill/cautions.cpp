#include "app/desktop/fill/cautions.h"

#include <QCoreApplication>
#include <algorithm>

namespace treadwell::fill {

std::vector<widgets::CautionView> cautionsAt(const density::Readings& readings, const Speech& speech) {
    std::vector<widgets::CautionView> cautions;
    for (const density::SiloReading* reading : {&readings.layer, &readings.today, &readings.silo}) {
        if (!reading->estimate) continue;
        for (const Message& warning : reading->estimate->warnings) {
            const widgets::CautionView view{
                speech.say(warning),
                QCoreApplication::translate("FillPresenter", "the estimate's own limits")};
            if (std::find(cautions.begin(), cautions.end(), view) == cautions.end()) cautions.push_back(view);
        }
    }
    return cautions;
}

}  // namespace treadwell::fill
