#include "app/desktop/widgets/caution_panel.h"

#include "app/desktop/widgets/caution_mark.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>

namespace treadwell::widgets {

namespace {

QLabel* wrappedLabel(const QString& text) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

}  // namespace

CautionPanel::CautionPanel(const settings::Appearance& appearance, QWidget* parent)
    : QScrollArea{parent}, m_appearance{appearance} {
    setProperty("edged", true);
    setWidgetResizable(true);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);  // it takes what is left and scrolls
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(&appearance, &settings::Appearance::changed, this, &CautionPanel::refresh);
    refresh();
}

void CautionPanel::setCautions(const std::vector<CautionView>& cautions) {
    if (cautions == m_cautions) return;  // a rebuilt list would lose place and selection
    m_cautions = cautions;
    refresh();
}

void CautionPanel::refresh() {
    setAccessibleName(tr("Cautions"));
    auto* page = new QWidget;
    auto* grid = new QGridLayout{page};
    grid->setColumnStretch(1, 1);
    const int side = fontMetrics().height();
    int row = 0;
    for (const CautionView& caution : m_cautions) {
        auto* mark = new QLabel;
        mark->setPixmap(cautionMark(m_appearance.theme()).pixmap(QSize{side, side}, devicePixelRatioF()));
        QLabel* text = wrappedLabel(caution.text);
        grid->addWidget(mark, row, 0, Qt::AlignTop);
        grid->addWidget(text, row, 1);
        if (!caution.source.isEmpty()) {
            QLabel* source = wrappedLabel(tr("Source: %1").arg(caution.source));
            QPalette quiet = source->palette();
            quiet.setColor(QPalette::WindowText, m_appearance.theme().quietInk);
            source->setPalette(quiet);
            text->setAccessibleDescription(source->text());
            grid->addWidget(source, row + 1, 1);
        }
        grid->setRowMinimumHeight(row + 2, side / 2);
        row += 3;
    }
    if (m_cautions.empty())
        grid->addWidget(wrappedLabel(tr("No cautions from what is known now.")), row++, 1);
    grid->setRowStretch(row, 1);
    setWidget(page);
}

void CautionPanel::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::widgets
