#include "app/desktop/plan/sealing_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace treadwell::plan_page {

SealingPanel::SealingPanel(const settings::Appearance& appearance, QWidget* parent)
    : QFrame{parent}, m_appearance{appearance}, m_title{new QLabel}, m_rows{new QVBoxLayout} {
    setObjectName(QStringLiteral("sealingPanel"));
    setProperty("edged", true);
    auto* layout = new QVBoxLayout{this};
    layout->addWidget(m_title);
    layout->addLayout(m_rows);
    m_rows->setSpacing(4);
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_title->setWordWrap(true);
}

void SealingPanel::setTitle(const QString& title) {
    m_title->setText(title);
    setAccessibleName(title);
}

void SealingPanel::setRows(const std::vector<SealRow>& rows, bool writable) {
    while (QLayoutItem* row = m_rows->takeAt(0)) {
        row->widget()->deleteLater();
        row->widget()->hide();
        delete row;
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const SealRow& row = rows[i];
        const bool done = row.isDone();
        auto* line = new QWidget;
        auto* layout = new QHBoxLayout{line};
        layout->setContentsMargins(0, 0, 0, 0);
        auto* text = new QLabel{(done ? QStringLiteral("✓ ") : QString{}) + row.text +
                                (row.done.isEmpty() ? QString{} : QStringLiteral(" – ") + row.done)};
        text->setTextFormat(Qt::PlainText);
        text->setWordWrap(true);
        auto* button = new QPushButton{tr("Done now")};
        button->setObjectName(QStringLiteral("sealDone%1").arg(i));
        button->setAccessibleName(tr("Done now: %1").arg(row.text));
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
        button->setEnabled(writable && !done && row.task.id.has_value());
        layout->addWidget(text, 1);
        layout->addWidget(button);
        m_rows->addWidget(line);
        connect(button, &QPushButton::clicked, this, [this, task = row.task] { emit doneRequested(task); });
    }
}

}  // namespace treadwell::plan_page
