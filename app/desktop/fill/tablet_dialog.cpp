#include "app/desktop/fill/tablet_dialog.h"

#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>

namespace treadwell::fill {

namespace {

constexpr int kTabletColumns = 3;

}  // namespace

TabletDialog::TabletDialog(const settings::Appearance& look, const desk::People& people, bool onShift,
                           QWidget* parent)
    : Sheet{look, tr("Who holds the tablet?"), parent}, m_name{new QLineEdit} {
    auto* known = new QWidget;
    auto* grid = new QGridLayout{known};
    grid->setContentsMargins(0, 0, 0, 0);
    int place = 0;
    for (const auto& [id, name] : people) {
        const QString text = QString::fromStdString(name);
        auto* button = new QPushButton{QString{text}.replace(QStringLiteral("&"), QStringLiteral("&&"))};
        button->setMinimumHeight(look.pixels(settings::kYardButtonMillimetres));
        grid->addWidget(button, place / kTabletColumns, place % kTabletColumns);
        ++place;
        connect(button, &QPushButton::clicked, this, [this, text] {
            emit taken(text);
            accept();
        });
    }
    if (!people.empty()) addRow(tr("Known"), known);
    m_name->setObjectName(QStringLiteral("newName"));
    addRow(tr("New name"), m_name);
    if (onShift) {
        auto* end = new QPushButton{tr("My shift ends")};
        end->setObjectName(QStringLiteral("endShift"));
        addRow({}, end);
        connect(end, &QPushButton::clicked, this, [this] {
            emit shiftEnded();
            accept();
        });
    }
    addDecision(tr("I hold the tablet"));
}

void TabletDialog::record() {
    const QString name = m_name->text().trimmed();
    if (name.isEmpty()) return refuse(tr("Touch a name, or write one."));
    emit taken(name);
    accept();
}

}  // namespace treadwell::fill
