#include "app/desktop/widgets/density_gauge.h"

#include "app/desktop/widgets/distribution_view.h"

#include <QButtonGroup>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

namespace treadwell::widgets {

namespace {

constexpr double kNumberSize = 3.2;
constexpr double kChanceSize = 1.3;

std::size_t placeOf(Reading reading) {
    return static_cast<std::size_t>(reading);
}

QFont sized(QFont font, double factor) {
    font.setBold(true);
    font.setPointSizeF(font.pointSizeF() * factor);
    return font;
}

}  // namespace

DensityGauge::DensityGauge(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_number{new QLabel},
      m_band{new QLabel},
      m_chance{new QLabel},
      m_movedLabel{new QLabel},
      m_distribution{new DistributionView{appearance}},
      m_working{new QPushButton},
      m_buttons{} {
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(2);
    grid->addWidget(m_number, 0, 0, 2, 1);
    grid->addWidget(m_band, 0, 1);
    grid->addWidget(m_chance, 1, 1);
    grid->addWidget(m_working, 0, 2, 2, 1, Qt::AlignRight | Qt::AlignVCenter);
    grid->addWidget(m_movedLabel, 2, 0, 1, 3);
    grid->addWidget(m_distribution, 3, 0, 1, 3);
    m_chance->setWordWrap(true);
    m_movedLabel->setWordWrap(true);
    m_movedLabel->setObjectName(QStringLiteral("moved"));
    grid->setRowStretch(3, 1);
    grid->setColumnStretch(1, 1);
    auto* readings = new QHBoxLayout;
    auto* group = new QButtonGroup{this};
    for (const Reading reading : kReadings) {
        auto* button = new QPushButton;
        button->setCheckable(true);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
        group->addButton(button);
        readings->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, reading] {
            select(reading);
            emit readingSelected(reading);
        });
        m_buttons[placeOf(reading)] = button;
    }
    grid->addLayout(readings, 4, 0, 1, 3);
    connect(m_working, &QPushButton::clicked, this, [this] { emit workingRequested(m_selected); });
    connect(&appearance, &settings::Appearance::changed, this, &DensityGauge::fit);
    for (GaugeView& view : m_views) view = tr("No load yet.");
    fit();
}

void DensityGauge::setViews(std::array<GaugeView, kReadings.size()> views) {
    m_views = std::move(views);
    refresh();
}

void DensityGauge::setMoved(std::array<QString, kReadings.size()> moved) {
    m_moved = std::move(moved);
    tellMoved();
}

void DensityGauge::tellMoved() {
    m_movedLabel->setText(m_moved[placeOf(m_selected)]);
    m_movedLabel->setMinimumHeight(std::max(0, m_movedLabel->heightForWidth(width())));
    m_distribution->setAccessibleDescription(sentence());
}

void DensityGauge::select(Reading reading) {
    m_selected = reading;
    refresh();
}

QString readingName(Reading reading) {
    switch (reading) {
        case Reading::layerNow:
            return DensityGauge::tr("Layer now");
        case Reading::today:
            return DensityGauge::tr("Today");
        case Reading::silo:
            break;
    }
    return DensityGauge::tr("Silo");
}

QString DensityGauge::sentence() const {
    const GaugeView& view = m_views[placeOf(m_selected)];
    if (const QString* reason = std::get_if<QString>(&view)) {
        return tr("%1: no density. %2").arg(readingName(m_selected), *reason);
    }
    const GaugeDensity& shown = std::get<GaugeDensity>(view);
    const settings::DisplayUnits& units = m_appearance.units();
    const QString now =
        tr("%1: %2, 80 % band %3, %4 chance of reaching %5")
            .arg(readingName(m_selected), units.text(shown.density.median()),
                 units.rangeText(shown.density.low80().amount(), shown.density.high80().amount()),
                 units.chanceText(shown.chance), units.text(shown.target));
    const QString& moved = m_moved[placeOf(m_selected)];
    return moved.isEmpty() ? now : now + QStringLiteral(". ") + moved;
}

QString DensityGauge::shortText(Reading reading) const {
    const GaugeDensity* shown = std::get_if<GaugeDensity>(&m_views[placeOf(reading)]);
    if (shown == nullptr) return tr("%1\nnone yet").arg(readingName(reading));
    const settings::DisplayUnits& units = m_appearance.units();
    const auto number = [&units](DryDensity density) { return units.numberText(density.amount()); };
    return tr("%1\n%2 (%3–%4)")
        .arg(readingName(reading), number(shown->density.median()), number(shown->density.low80()),
             number(shown->density.high80()));
}

QString DensityGauge::bandText(const GaugeDensity& shown) const {
    const settings::DisplayUnits& units = m_appearance.units();
    const auto range = [&units](const density::Distribution& density) {
        return units.rangeText(density.low80().amount(), density.high80().amount());
    };
    const QString band = tr("%1: 80 % band %2").arg(readingName(m_selected), range(shown.density));
    if (!shown.asItLies) return band;
    const auto number = [&units](DryDensity density) { return units.numberText(density.amount()); };
    return band + QStringLiteral("; ") +
           tr("as it lies now %1 (%2–%3)")
               .arg(number(shown.asItLies->median()), number(shown.asItLies->low80()),
                    number(shown.asItLies->high80()));
}

void DensityGauge::refresh() {
    const GaugeView& view = m_views[placeOf(m_selected)];
    const settings::DisplayUnits& units = m_appearance.units();
    const GaugeDensity* shown = std::get_if<GaugeDensity>(&view);
    m_number->setText(shown ? units.numberText(shown->density.median().amount()) : QString{u'–'});
    m_band->setText(shown ? bandText(*shown) : readingName(m_selected));
    m_chance->setText(
        shown ? tr("%1 chance of %2").arg(units.chanceText(shown->chance), units.text(shown->target))
              : QString{});
    m_working->setText(tr("Show the working"));
    m_working->setEnabled(shown != nullptr);
    m_distribution->setView(view);
    m_distribution->setAccessibleName(tr("Packed density"));
    tellMoved();
    for (const Reading reading : kReadings) {
        QPushButton* button = m_buttons[placeOf(reading)];
        button->setText(shortText(reading));
        button->setChecked(reading == m_selected);
    }
}

void DensityGauge::fit() {
    m_number->setFont(sized(font(), kNumberSize));
    m_chance->setFont(sized(font(), kChanceSize));
    const int control = m_appearance.pixels(settings::kControlMillimetres);
    m_working->setMinimumHeight(control);
    for (QPushButton* button : m_buttons) {
        button->setMinimumHeight(std::max(control, 2 * fontMetrics().lineSpacing() + fontMetrics().height()));
    }
    refresh();
}

void DensityGauge::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_movedLabel->setMinimumHeight(std::max(0, m_movedLabel->heightForWidth(width())));
}

void DensityGauge::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) fit();
}

}  // namespace treadwell::widgets
