#pragma once

#include "app/desktop/settings/display_units.h"
#include "core/base/farm_zone.h"
#include "core/practice/progress.h"

#include <span>

namespace treadwell::practice_page {

/// A trainee's certificate of practice as a PDF, on the paper of the units' country. Errors: fileUnwritable.
[[nodiscard]] Result<void> writeCertificate(const practice::Trainee& trainee,
                                            std::span<const practice::Lesson> lessons,
                                            const settings::DisplayUnits& units, const FarmZone& zone,
                                            Instant now, const std::filesystem::path& pdf);

/// The language of lessons on this screen.
[[nodiscard]] std::string lessonLanguage(const settings::DisplayUnits& units);

}  // namespace treadwell::practice_page
