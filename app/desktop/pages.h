#pragma once

#include "core/base/enum_text.h"

#include <QString>
#include <span>
#include <vector>

class QWidget;

namespace treadwell {

namespace desk {
class SeasonDesk;
}
namespace settings {
class Appearance;
}

/// The pages, each named by its moment, in the order of the season's work: planning, filling, closing the
/// day, samples, opening the silo, training.
enum class Page : std::uint8_t { plan, fill, day, samples, face, practice };
constexpr std::array<std::string_view, 6> enumTexts(Page /*page*/) noexcept {
    return {"plan", "fill", "day", "samples", "face", "practice"};
}

/// A page as the window needs it; the page itself listens to desk and appearance.
struct PageKind {
    Page page;
    QString (*name)();                                   ///< in the language in force
    std::vector<std::pair<QString, QString>> (*keys)();  ///< each key and what it does
    QWidget* (*make)(desk::SeasonDesk& desk, const settings::Appearance& appearance);
};

/// One of each Page, in its order.
[[nodiscard]] std::span<const PageKind> pageKinds();

}  // namespace treadwell
