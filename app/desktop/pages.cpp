#include "app/desktop/pages.h"

#include "app/desktop/fill/fill_page.h"
#include "app/desktop/samples/samples_page.h"

#include <QCoreApplication>

namespace treadwell {

namespace {

template <typename Widget>
QWidget* makePage(desk::SeasonDesk& desk, const settings::Appearance& appearance) {
    return new Widget{desk, appearance};
}

}  // namespace

std::span<const PageKind> pageKinds() {
    static constexpr std::array kKinds{
        PageKind{Page::fill, [] { return QCoreApplication::translate("Pages", "Fill"); }, fill::fillKeys,
                 makePage<fill::FillPage>},
        PageKind{Page::samples, [] { return QCoreApplication::translate("Pages", "Samples"); },
                 samples_page::samplesKeys, makePage<samples_page::SamplesPage>},
    };
    return kKinds;
}

}  // namespace treadwell
