#include "app/desktop/samples/lines_panel.h"

#include "app/desktop/widgets/caution_mark.h"

#include <QLabel>
#include <QVBoxLayout>

namespace treadwell::samples_page {

LinesPanel::LinesPanel(const settings::Appearance& appearance, const QString& name, QWidget* parent)
    : QFrame{parent}, m_appearance{appearance}, m_title{new QLabel}, m_rows{new QVBoxLayout} {
    setObjectName(name);
    setProperty("edged", true);
    auto* layout = new QVBoxLayout{this};
    layout->addWidget(m_title);
    layout->addLayout(m_rows);
    layout->addStretch(1);
    layout->setSpacing(4);
    m_rows->setSpacing(2);
    connect(&appearance, &settings::Appearance::changed, this, &LinesPanel::follow);
    follow();
}

void LinesPanel::setTitle(const QString& title) {
    m_title->setText(title);
    setAccessibleName(title);
}

void LinesPanel::setLines(const Lines& lines) {
    if (lines == m_lines) return;
    m_lines = lines;
    write();
}

QString LinesPanel::text() const {
    QStringList texts;
    for (const Line& line : m_lines) texts << line.text;
    return texts.join(u'\n');
}

void LinesPanel::follow() {
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    write();
}

void LinesPanel::write() {
    while (QLayoutItem* row = m_rows->takeAt(0)) {
        delete row->widget();
        delete row;
    }
    const int side = fontMetrics().height();
    for (const Line& line : m_lines) {
        auto* row = new QWidget;
        auto* layout = new QHBoxLayout{row};
        layout->setContentsMargins(0, 0, 0, 0);
        auto* text = new QLabel{line.text};
        text->setTextFormat(Qt::PlainText);
        text->setWordWrap(true);
        if (line.caution) {
            auto* mark = new QLabel;
            mark->setPixmap(
                widgets::cautionMark(m_appearance.theme()).pixmap(QSize{side, side}, devicePixelRatioF()));
            mark->setAccessibleName(tr("Caution"));
            layout->addWidget(mark, 0, Qt::AlignTop);
        }
        layout->addWidget(text, 1);
        m_rows->addWidget(row);
    }
    setAccessibleDescription(text());
}

}  // namespace treadwell::samples_page
