#include "app/desktop/pages.h"

#include "app/desktop/day/day_page.h"
#include "app/desktop/face/face_page.h"
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/practice/practice_page.h"
#include "app/desktop/samples/samples_page.h"
#include "core/session/state_folder.h"

#include <QCoreApplication>

namespace treadwell {

namespace {

template <typename Widget>
QWidget* makePage(desk::SeasonDesk& desk, const settings::Appearance& appearance) {
    return new Widget{desk, appearance};
}

QWidget* makePracticePage(desk::SeasonDesk& desk, const settings::Appearance& appearance) {
    // Where there is no such folder nothing can be kept, and each writing says so.
    return new practice_page::PracticePage{desk, appearance, session::stateFolder().value_or("/dev/null")};
}

}  // namespace

std::span<const PageKind> pageKinds() {
    static constexpr std::array kKinds{
        PageKind{Page::plan, [] { return QCoreApplication::translate("Pages", "Plan"); }, plan_page::planKeys,
                 makePage<plan_page::PlanPage>},
        PageKind{Page::fill, [] { return QCoreApplication::translate("Pages", "Fill"); }, fill::fillKeys,
                 makePage<fill::FillPage>},
        PageKind{Page::day, [] { return QCoreApplication::translate("Pages", "Day"); }, day_page::dayKeys,
                 makePage<day_page::DayPage>},
        PageKind{Page::samples, [] { return QCoreApplication::translate("Pages", "Samples"); },
                 samples_page::samplesKeys, makePage<samples_page::SamplesPage>},
        PageKind{Page::face, [] { return QCoreApplication::translate("Pages", "Face"); }, face_page::faceKeys,
                 makePage<face_page::FacePage>},
        PageKind{Page::practice, [] { return QCoreApplication::translate("Pages", "Practice"); },
                 practice_page::practiceKeys, makePracticePage},
    };
    return kKinds;
}

}  // namespace treadwell
