#pragma once

class QScrollArea;
class QWidget;

namespace treadwell::widgets {

/// Puts a page into an area in the place of the one before, at the same height. The one before goes later:
/// the button that was touched may be on it.
void changePage(QScrollArea& area, QWidget* page);

/// A page that scrolls up and down alone, without a frame.
[[nodiscard]] QScrollArea* scrolled(QWidget* page);

}  // namespace treadwell::widgets
