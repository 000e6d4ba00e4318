#include "app/desktop/widgets/density_gauge.h"

#include "app/desktop/widgets/distribution_view.h"

#include <QButtonGroup>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <utility>

namespace treadwell::widgets {

namespace {

constexpr double kNumberSize = 3.2;
constexpr double kChanceSize = 1.3;
constexpr double kNarrowMillimetres = 120.0;

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
      m_grid{new QGridLayout{this}},
      m_number{new QLabel},
      m_band{new QLabel},
      m_chance{new QLabel},
      m_movedLabel{new QLabel},
      m_distribution{new DistributionView{appearance}},
      m_working{new QPushButton},
      m_buttons{} {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setVerticalSpacing(2);
    m_grid->addWidget(m_number, 0, 0, 2, 1);
    m_grid->addWidget(m_band, 0, 1);
    m_grid->addWidget(m_chance, 1, 1);
    m_grid->addWidget(m_movedLabel, 2, 0, 1, 3);
    m_grid->addWidget(m_distribution, 3, 0, 1, 3);
    m_band->setWordWrap(true);
    m_chance->setWordWrap(true);
    m_movedLabel->setWordWrap(true);
    m_number->setObjectName(QStringLiteral("densityNumber"));
    m_movedLabel->setObjectName(QStringLiteral("moved"));
    m_grid->setRowStretch(3, 1);
    m_grid->setColumnStretch(1, 1);
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
    m_grid->addLayout(readings, 4, 0, 1, 3);
    place();
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
    const QString text = m_narrow ? QStringLiteral("%1\n%2\n(%3–%4)") : tr("%1\n%2 (%3–%4)");
    return text.arg(readingName(reading), number(shown->density.median()), number(shown->density.low80()),
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
        const int lines = m_narrow ? 3 : 2;
        button->setMinimumHeight(
            std::max(control, lines * fontMetrics().lineSpacing() + fontMetrics().height()));
    }
    refresh();
}

/// Beside the number, or where that would leave its words no room, at the foot.
void DensityGauge::place() {
    m_grid->removeWidget(m_working);
    if (m_narrow) {
        m_grid->addWidget(m_working, 5, 0, 1, 3);
    } else {
        m_grid->addWidget(m_working, 0, 2, 2, 1, Qt::AlignRight | Qt::AlignVCenter);
    }
}

void DensityGauge::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool narrow = width() < m_appearance.pixels(kNarrowMillimetres);
    if (std::exchange(m_narrow, narrow) != narrow) {
        place();
        fit();
    }
    m_movedLabel->setMinimumHeight(std::max(0, m_movedLabel->heightForWidth(width())));
}

void DensityGauge::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) fit();
}

}  // namespace treadwell::widgets
