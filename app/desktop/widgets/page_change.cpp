#include "app/desktop/widgets/page_change.h"

#include <QScrollArea>
#include <QScrollBar>

namespace treadwell::widgets {

void changePage(QScrollArea& area, QWidget* page) {
    const int place = area.verticalScrollBar()->value();
    if (QWidget* before = area.takeWidget()) {
        before->hide();
        before->deleteLater();
    }
    area.setWidget(page);
    page->show();
    area.verticalScrollBar()->setValue(place);
}

QScrollArea* scrolled(QWidget* page) {
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(page);
    return area;
}

}  // namespace treadwell::widgets
