#include "app/desktop/fill/heights_entry.h"

#include "app/desktop/fill/narrow.h"
#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "core/density/measured.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <utility>

namespace treadwell::fill {

namespace {

constexpr int kColumns = 6;
constexpr int kNarrowColumns = 3;
constexpr double kBoxEdgeMillimetres = 8.0;                // edges of a field, and the mark of what is wrong
constexpr Length kAboveTheWall = Length::fromMetres(0.5);  // that a surface may reach: density::surfaceOf
constexpr Length kLaserUsually = Length::fromMetres(6);
constexpr Length kLaserHighest = Length::fromMetres(15);

}  // namespace

HeightsEntry::HeightsEntry(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_grid{new QGridLayout{this}},
      m_instrument{new widgets::ChoiceBox{appearance}},
      m_laserAt{new widgets::QuantitySpinBox{appearance, Dimension::length}},
      m_laserTitle{new QLabel},
      m_mean{new QLabel},
      m_trouble{new QLabel},
      m_record{new QPushButton} {
    m_grid->setContentsMargins(4, 0, 0, 0);
    m_grid->setVerticalSpacing(1);
    for (std::size_t place = 0; place < kPlaces; ++place) {
        m_titles[place] = new QLabel;
        m_boxes[place] = new widgets::QuantitySpinBox{appearance, Dimension::length};
        m_boxes[place]->setObjectName(QStringLiteral("height%1").arg(place + 1));
        connect(m_boxes[place]->findChild<QLineEdit*>(), &QLineEdit::returnPressed, this,
                [this, place] { goOn(place); });
        connect(m_boxes[place], &widgets::QuantitySpinBox::siEdited, this, [this, place] {
            m_read.insert(place);
            tell();
        });
        connect(m_boxes[place], &widgets::QuantitySpinBox::echoChanged, this, &HeightsEntry::tell);
    }
    place();
    m_mean->setWordWrap(true);
    m_trouble->setWordWrap(true);
    m_laserAt->setObjectName(QStringLiteral("laserHeight"));
    m_instrument->setObjectName(QStringLiteral("heightsInstrument"));
    m_record->setObjectName(QStringLiteral("recordHeights"));
    m_laserAt->setSiRange(1.0, kLaserHighest.si());
    m_laserAt->setQuantity(kLaserUsually);
    connect(m_instrument, &QComboBox::currentIndexChanged, this, &HeightsEntry::startAnew);
    connect(m_laserAt, &widgets::QuantitySpinBox::siEdited, this, &HeightsEntry::startAnew);
    connect(m_record, &QPushButton::clicked, this, &HeightsEntry::record);
    connect(&appearance, &settings::Appearance::changed, this, &HeightsEntry::followLook);
    retranslate();
    followLook();
}

/// Two rows of places between the instrument and the button, or with less room, one below the other.
void HeightsEntry::place() {
    const bool narrow = isNarrow(*this, m_appearance);
    if (std::exchange(m_narrow, narrow) == narrow) return;
    while (QLayoutItem* item = m_grid->takeAt(0)) delete item;
    const int columns = narrow ? kNarrowColumns : kColumns;
    const int rows = 2 * static_cast<int>(kPlaces) / columns;
    const int top = narrow ? 1 : 0, left = narrow ? 0 : 1;
    m_grid->addWidget(m_instrument, narrow ? 0 : 1, 0);
    m_grid->addWidget(m_laserTitle, narrow ? 0 : 2, narrow ? 1 : 0);
    m_grid->addWidget(m_laserAt, narrow ? 0 : 3, narrow ? 2 : 0);
    for (int place = 0; place < static_cast<int>(kPlaces); ++place) {
        const int row = top + 2 * (place / columns), column = left + place % columns;
        m_grid->addWidget(m_titles[static_cast<std::size_t>(place)], row, column);
        m_grid->addWidget(m_boxes[static_cast<std::size_t>(place)], row + 1, column);
    }
    m_grid->addWidget(m_trouble, top + rows, 0, 1, left + columns);
    if (narrow) {
        m_grid->addWidget(m_mean, top + rows + 1, 0, 1, columns);
        m_grid->addWidget(m_record, top + rows + 2, 0, 1, columns);
    } else {
        m_grid->addWidget(m_mean, 0, left + columns, 3, 1);
        m_grid->addWidget(m_record, 3, left + columns);
    }
    m_grid->setColumnStretch(kColumns + 1, narrow ? 0 : 1);
    m_grid->setRowStretch(rows + 1, narrow ? 0 : 1);
}

int HeightsEntry::boxWidth() const {
    const QString longest = m_appearance.units().text(kLaserHighest);
    return fontMetrics().horizontalAdvance(longest) + m_appearance.pixels(kBoxEdgeMillimetres);
}

QSize HeightsEntry::minimumSizeHint() const {
    const int spacing = std::max(0, m_grid->horizontalSpacing());
    const int narrowest = kNarrowColumns * (boxWidth() + spacing) + m_grid->contentsMargins().left();
    return {narrowest, m_grid->totalMinimumSize().height()};
}

void HeightsEntry::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

bool HeightsEntry::byLaser() const {
    return m_instrument->currentIndex() == 1;
}

void HeightsEntry::setSilo(const farm::Silo& silo, const season::Season& season, Instant now) {
    m_measured.clear();
    const Speech speech{m_appearance.units(), season.zone()};
    if (const auto surveys = density::measuredIn(season, silo, now); !surveys.empty()) {
        for (const Message& message : density::messagesOf(surveys.back()))
            m_measured += (m_measured.isEmpty() ? QString{} : QStringLiteral("\n")) + speech.say(message);
    }
    if (!(silo == m_silo)) {
        m_silo = silo;
        // The middle of twelve equal parts of the floor.
        for (std::size_t place = 0; place < kPlaces; ++place)
            m_along[place] = silo.length * ((static_cast<double>(place) + 0.5) / kPlaces);
        startAnew();
    }
    retranslate();
}

void HeightsEntry::startAnew() {
    m_read.clear();
    m_laserAt->setVisible(byLaser());
    m_laserTitle->setVisible(byLaser());
    setRanges();
    tell();
}

void HeightsEntry::setRanges() {
    const double highest = (m_silo.wallHeight + m_silo.crown + kAboveTheWall).si();
    for (widgets::QuantitySpinBox* box : m_boxes) {
        const double laser = m_laserAt->si();
        const double low = byLaser() ? std::max(0.0, laser - highest) : 0.0,
                     high = byLaser() ? laser : highest;
        box->setSiRange(low, high);
        m_range = m_appearance.units().rangeText({Dimension::length, low}, {Dimension::length, high});
        box->setSi(byLaser() ? laser : 0.0);
    }
}

Length HeightsEntry::heightAt(std::size_t place) const {
    const Length read = m_boxes[place]->quantity<Length>();
    return byLaser() ? m_laserAt->quantity<Length>() - read : read;
}

std::vector<entries::HeightReading> HeightsEntry::readings() const {
    std::vector<entries::HeightReading> readings;
    for (const std::size_t place : m_read)
        readings.push_back({m_along[place], m_silo.width * 0.5, std::max(Length{}, heightAt(place))});
    return readings;
}

std::optional<Length> HeightsEntry::mean() const {
    if (m_read.empty()) return std::nullopt;
    Length sum;
    for (const std::size_t place : m_read) sum += heightAt(place);
    return sum / static_cast<double>(m_read.size());
}

void HeightsEntry::goOn(std::size_t place) {
    if (m_boxes[place]->isWrong()) {
        m_boxes[place]->selectAll();
        return;
    }
    m_read.insert(place);  // Enter on a 0 that was not touched means 0
    tell();
    if (place + 1 == kPlaces) {
        m_record->setFocus(Qt::TabFocusReason);
        return;
    }
    m_boxes[place + 1]->setFocus(Qt::TabFocusReason);
    m_boxes[place + 1]->selectAll();
}

void HeightsEntry::takeFocus() {
    m_boxes[0]->setFocus(Qt::ShortcutFocusReason);
    m_boxes[0]->selectAll();
}

void HeightsEntry::record() {
    const std::vector<entries::HeightReading> read = readings();
    const auto surface = density::surfaceOf(m_silo, read);
    if (!surface) {
        emit refused(tr("The heights are not recorded: %1")
                         .arg(Speech{m_appearance.units(), FarmZone{}}.say(surface.error())));
        return;
    }
    startAnew();
    emit recorded(read);
}

void HeightsEntry::tell() {
    const settings::DisplayUnits& units = m_appearance.units();
    m_record->setEnabled(!m_read.empty());
    QString text = m_measured;
    if (const auto mean = this->mean())
        text = tr("Mean %1 of %2 heights").arg(units.text(*mean)).arg(m_read.size());
    m_mean->setText(text);
    m_mean->setAccessibleName(text);
    QString trouble;
    for (std::size_t place = 0; place < kPlaces && trouble.isEmpty(); ++place) {
        if (!m_boxes[place]->isWrong()) continue;
        trouble = tr("Height at %1: %2 (here it can be %3)")
                      .arg(units.text(m_along[place]), m_boxes[place]->echo(), m_range);
    }
    m_trouble->setText(trouble);
    m_trouble->setVisible(!trouble.isEmpty());
}

void HeightsEntry::retranslate() {
    const QSignalBlocker quiet{m_instrument};
    const int chosen = std::max(0, m_instrument->currentIndex());
    m_instrument->clear();
    m_instrument->addItems({tr("Staff"), tr("Laser")});
    m_instrument->setCurrentIndex(chosen);
    m_instrument->setAccessibleName(tr("What the heights are read with"));
    m_laserTitle->setText(tr("laser hangs at"));
    m_laserAt->setAccessibleName(tr("Height of the laser above the floor"));
    m_record->setText(tr("Record the heights"));
    const settings::DisplayUnits& units = m_appearance.units();
    for (std::size_t place = 0; place < kPlaces; ++place) {
        const QString where = units.text(m_along[place]);
        m_titles[place]->setText(tr("at %1").arg(where));
        m_boxes[place]->setAccessibleName(
            byLaser() ? tr("Distance below the laser, %1 from the back wall").arg(where)
                      : tr("Height of the crop, %1 from the back wall").arg(where));
    }
    m_laserAt->setVisible(byLaser());
    m_laserTitle->setVisible(byLaser());
    setAccessibleName(tr("Heights of the crop"));
    tell();
}

void HeightsEntry::followLook() {
    const int high = m_appearance.pixels(settings::kControlMillimetres);
    m_instrument->setMinimumHeight(high);
    m_record->setMinimumHeight(high);
    for (widgets::QuantitySpinBox* box : m_boxes) box->setMinimumWidth(boxWidth());
    retranslate();
}

void HeightsEntry::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::fill
