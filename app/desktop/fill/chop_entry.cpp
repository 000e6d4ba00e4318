#include "app/desktop/fill/chop_entry.h"

#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/fill/narrow.h"
#include "app/desktop/widgets/caution_mark.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "core/samples/particle_size.h"
#include "core/season/sampled.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <utility>

namespace treadwell::fill {

namespace {

constexpr double kHeaviestPartKilograms = 5.0;

const season::Dated<entries::SieveTest>* lastTest(const season::Season& season, Instant now) {
    const auto days = season.days();
    for (auto day = days.rbegin(); day != days.rend(); ++day) {
        const auto& tests = (*day)->records.of<entries::SieveTest>();
        for (auto test = tests.rbegin(); test != tests.rend(); ++test) {
            if (test->at <= now) return &*test;
        }
    }
    return nullptr;
}

QString sizeText(const entries::SieveTest& test, const Speech& speech) {
    const auto parts = entries::partsOf(test);
    if (!parts) return speech.say(parts.error());
    const auto size = samples::logNormalSize(*parts);
    return size ? speech.units().text(Amount{Dimension::chopLength, size->geometricMean.si()})
                : speech.say(size.error());
}

}  // namespace

bool chopIsOverdue(const season::Season& season, Instant now) {
    const season::Day* day = season.day(season.zone().dayOf(now));
    if (day == nullptr || day->loads.empty() || day->loads.front().at > now) return false;
    const auto* test = lastTest(season, now);
    return test == nullptr || test->at < day->begin;
}

ChopEntry::ChopEntry(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_grid{new QGridLayout{this}},
      m_mark{new QLabel},
      m_last{new QLabel},
      m_record{new QPushButton} {
    m_grid->setContentsMargins(4, 0, 0, 0);
    m_last->setWordWrap(true);
    for (std::size_t part = 0; part < kParts; ++part) {
        m_titles[part] = new QLabel;
        m_boxes[part] = new widgets::QuantitySpinBox{appearance, Dimension::dishMass};
        m_boxes[part]->setObjectName(QStringLiteral("sieve%1").arg(part + 1));
        m_boxes[part]->setSiRange(0.0, kHeaviestPartKilograms);
        connect(m_boxes[part]->findChild<QLineEdit*>(), &QLineEdit::returnPressed, this, [this, part] {
            QWidget* next = part + 1 < kParts ? static_cast<QWidget*>(m_boxes[part + 1]) : m_record;
            next->setFocus(Qt::TabFocusReason);
            if (part + 1 < kParts) m_boxes[part + 1]->selectAll();
        });
        connect(m_boxes[part], &widgets::QuantitySpinBox::siEdited, this,
                [this] { m_record->setEnabled(true); });
    }
    place();
    m_record->setObjectName(QStringLiteral("recordChop"));
    m_record->setEnabled(false);
    connect(m_record, &QPushButton::clicked, this, &ChopEntry::record);
    connect(&appearance, &settings::Appearance::changed, this, &ChopEntry::followLook);
    retranslate();
    followLook();
}

/// The sieves in a row with the button at its end, or with less room, two by two above it.
void ChopEntry::place() {
    const bool narrow = isNarrow(*this, m_appearance);
    if (std::exchange(m_narrow, narrow) == narrow) return;
    while (QLayoutItem* item = m_grid->takeAt(0)) delete item;
    const int columns = static_cast<int>(narrow ? kParts / 2 : kParts);
    m_grid->addWidget(m_mark, 0, 0);
    m_grid->addWidget(m_last, 0, 1, 1, columns + 1);
    for (int part = 0; part < static_cast<int>(kParts); ++part) {
        const int row = 1 + 2 * (part / columns), column = 1 + part % columns;
        m_grid->addWidget(m_titles[static_cast<std::size_t>(part)], row, column);
        m_grid->addWidget(m_boxes[static_cast<std::size_t>(part)], row + 1, column);
    }
    if (narrow) {
        m_grid->addWidget(m_record, 5, 1, 1, columns);
    } else {
        m_grid->addWidget(m_record, 2, columns + 1);
    }
    m_grid->setRowStretch(3, narrow ? 0 : 1);
    m_grid->setRowStretch(6, 1);
}

QSize ChopEntry::minimumSizeHint() const {
    // As narrow as its button, which then stands below the sieves.
    const int side = m_mark->sizeHint().width() + 2 * m_grid->horizontalSpacing();
    return {m_record->sizeHint().width() + side, m_grid->totalMinimumSize().height()};
}

void ChopEntry::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

void ChopEntry::follow(const season::Season& season, Instant now) {
    const auto* test = lastTest(season, now);
    const bool overdue = chopIsOverdue(season, now);
    m_mark->setVisible(overdue);
    if (test == nullptr) {
        m_last->setText(tr("No chop sieved yet."));
    } else {
        const QString text = tr("Mean length %1, %2")
                                 .arg(sizeText(test->what, Speech{m_appearance.units(), season.zone()}),
                                      ageText(now - test->at));
        m_last->setText(overdue ? tr("%1 – none sieved today").arg(text) : text);
    }
    setAccessibleDescription(m_last->text());
}

void ChopEntry::record() {
    entries::SieveTest test;
    for (const Length opening : samples::kChopBounds) test.openings.push_back(opening);
    for (widgets::QuantitySpinBox* box : m_boxes) {
        if (box->isWrong()) {
            emit refused(tr("The sieve test is not recorded: %1").arg(box->echo()));
            return;
        }
        test.masses.push_back(AsFedMass::fromSi(box->si()));
    }
    if (const auto valid = validate(test); !valid) {
        emit refused(tr("The sieve test is not recorded: %1")
                         .arg(Speech{m_appearance.units(), FarmZone{}}.say(valid.error())));
        return;
    }
    for (widgets::QuantitySpinBox* box : m_boxes) box->setSi(0.0);
    m_record->setEnabled(false);
    emit recorded(test);
}

void ChopEntry::retranslate() {
    const settings::DisplayUnits& units = m_appearance.units();
    for (std::size_t part = 0; part < kParts; ++part) {
        const QString name =
            part < samples::kChopBounds.size()
                ? tr("on %1").arg(units.text(Amount{Dimension::chopLength, samples::kChopBounds[part].si()}))
                : tr("in the pan");
        m_titles[part]->setText(name);
        m_boxes[part]->setAccessibleName(tr("Mass %1").arg(name));
    }
    m_record->setText(tr("Record the sieve test"));
    setAccessibleName(tr("Chop"));
}

void ChopEntry::followLook() {
    m_record->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    const int side = fontMetrics().height();
    m_mark->setPixmap(
        widgets::cautionMark(m_appearance.theme()).pixmap(QSize{side, side}, devicePixelRatioF()));
    retranslate();
}

void ChopEntry::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::fill
