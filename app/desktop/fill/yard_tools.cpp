#include "app/desktop/fill/yard_tools.h"

#include <QEvent>
#include <QGridLayout>
#include <QPushButton>

namespace treadwell::fill {

YardTools::YardTools(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_list{new QPushButton},
      m_catchUp{new QPushButton},
      m_hire{new QPushButton},
      m_pause{new QPushButton} {
    m_list->setObjectName(QStringLiteral("dayLoads"));
    m_catchUp->setObjectName(QStringLiteral("catchUp"));
    m_hire->setObjectName(QStringLiteral("hire"));
    m_pause->setObjectName(QStringLiteral("pause"));
    m_list->setCheckable(true);
    m_pause->setCheckable(true);
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->addWidget(m_list, 0, 0);
    grid->addWidget(m_pause, 0, 1);
    grid->addWidget(m_catchUp, 1, 0);
    grid->addWidget(m_hire, 1, 1);
    connect(m_list, &QPushButton::clicked, this, &YardTools::listTouched);
    connect(m_catchUp, &QPushButton::clicked, this, &YardTools::catchUpTouched);
    connect(m_hire, &QPushButton::clicked, this, &YardTools::hireTouched);
    connect(m_pause, &QPushButton::clicked, this, [this] {
        m_pause->setChecked(m_paused.has_value());  // it follows the record, not the touch
        emit pauseTouched();
    });
    connect(&appearance, &settings::Appearance::changed, this, &YardTools::retranslate);
    retranslate();
}

void YardTools::setPaused(const std::optional<QString>& since) {
    m_paused = since;
    retranslate();
}

void YardTools::setListShown(bool shown) {
    m_list->setChecked(shown);
}

void YardTools::retranslate() {
    m_list->setText(tr("Loads today"));
    m_list->setAccessibleDescription(tr("Shows the day's loads in place of the trucks"));
    m_catchUp->setText(tr("Catch up"));
    m_catchUp->setAccessibleDescription(tr("Enters loads that came while nobody logged them"));
    m_hire->setText(tr("Hired"));
    m_hire->setAccessibleDescription(tr("A truck or tractor that the farm does not know yet"));
    m_pause->setText(m_paused ? tr("Go on (%1)", "the pause since").arg(*m_paused) : tr("Pause"));
    m_pause->setAccessibleDescription(tr("Deliveries stand still, or go on"));
    m_pause->setChecked(m_paused.has_value());
    for (QPushButton* button : {m_list, m_catchUp, m_hire, m_pause}) {
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
        button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    }
    static_cast<QGridLayout*>(layout())->setSpacing(m_appearance.pixels(settings::kGapMillimetres) / 2);
}

void YardTools::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::fill
