#include "app/desktop/practice/certificate_file.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/report/pdf_report.h"
#include "core/base/atomic_file.h"
#include "core/review/certificate.h"

namespace treadwell::practice_page {

std::string lessonLanguage(const settings::DisplayUnits& units) {
    return units.locale().language() == QLocale::Portuguese ? "pt_BR" : "en";
}

Result<void> writeCertificate(const practice::Trainee& trainee, std::span<const practice::Lesson> lessons,
                              const settings::DisplayUnits& units, const FarmZone& zone, Instant now,
                              const std::filesystem::path& pdf) {
    const auto document = review::certificateOf(trainee, lessons, lessonLanguage(units), now);
    const auto paper = units.system() == UnitSystem::us ? report::Paper::letter : report::Paper::a4;
    return writeFileAtomically(pdf, report::pdfOf(document, fill::styleOf(units, zone), paper).toStdString());
}

}  // namespace treadwell::practice_page
