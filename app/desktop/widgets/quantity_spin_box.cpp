#include "app/desktop/widgets/quantity_spin_box.h"

#include "app/desktop/widgets/caution_mark.h"
#include "core/base/number_text.h"

#include <QAction>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace treadwell::widgets {

namespace {

// More than any unit shows: a typed number must come back as it was typed.
constexpr int kDecimalsKept = 6;
constexpr double kWidestShown = 99999.0;

QChar decimalSignOf(const QLocale& locale) {
    return locale.decimalPoint() == u"," ? QChar{u','} : QChar{u'.'};
}

struct Typed {
    int signs = 0;  ///< of the decimal point
    std::optional<double> number;
};

Typed readTyped(QString text) {
    text.replace(u',', u'.');
    return {static_cast<int>(text.count(u'.')), numberFromText(text.toStdString())};
}

}  // namespace

QuantitySpinBox::QuantitySpinBox(const settings::Appearance& appearance, Dimension dimension, QWidget* parent)
    : QDoubleSpinBox{parent}, m_appearance{appearance}, m_dimension{dimension}, m_mark{new QAction{this}} {
    m_highestSi = appearance.units().fromShown(dimension, kWidestShown).si;
    setKeyboardTracking(false);
    setButtonSymbols(QAbstractSpinBox::NoButtons);  // too small for a finger; the arrow keys step
    setFocusPolicy(Qt::StrongFocus);
    setDecimals(kDecimalsKept);
    lineEdit()->addAction(m_mark, QLineEdit::TrailingPosition);
    followUnits();
    connect(&appearance, &settings::Appearance::changed, this, &QuantitySpinBox::followUnits);
    connect(lineEdit(), &QLineEdit::textEdited, this, [this](const QString& text) { judge(text); });
    connect(this, &QAbstractSpinBox::editingFinished, this, &QuantitySpinBox::finish);
    connect(this, &QDoubleSpinBox::valueChanged, this, [this](double shown) {
        if (m_following) return;
        m_si = m_appearance.units().fromShown(m_dimension, shown).si;
        settle();
        emit siEdited(m_si);
    });
}

void QuantitySpinBox::setSiRange(double lowest, double highest) {
    if (!std::isfinite(lowest) || !std::isfinite(highest) || lowest > highest) {
        throw std::invalid_argument("a range needs two finite ends in order");
    }
    m_lowestSi = lowest;
    m_highestSi = highest;
    followUnits();
}

void QuantitySpinBox::setSi(double value) {
    if (!std::isfinite(value)) throw std::invalid_argument("only a finite amount can be shown");
    m_si = value;
    followUnits();
}

void QuantitySpinBox::followUnits() {
    m_following = true;
    const settings::DisplayUnits& units = m_appearance.units();
    setSuffix(units.suffix(m_dimension));
    // A value outside the range is shown as it is, never moved to the nearest end.
    setRange(units.shown({m_dimension, std::min(m_lowestSi, m_si)}),
             units.shown({m_dimension, std::max(m_highestSi, m_si)}));
    setSingleStep(std::pow(10.0, -units.decimals(m_dimension)));
    setValue(units.shown({m_dimension, m_si}));
    setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    m_mark->setIcon(cautionMark(m_appearance.theme()));
    m_following = false;
    settle();
}

QString QuantitySpinBox::typedPart(const QString& text) const {
    QString part = text;
    if (!suffix().isEmpty() && part.endsWith(suffix())) part.chop(suffix().size());
    return part.trimmed();
}

QValidator::State QuantitySpinBox::validate(QString& text, int&) const {
    const QString part = typedPart(text);
    const bool readable = std::all_of(part.cbegin(), part.cend(), [](QChar letter) {
        return (letter >= u'0' && letter <= u'9') || letter == u'.' || letter == u',' || letter == u'-';
    });
    if (!readable) return QValidator::Invalid;
    const Typed typed = readTyped(part);
    if (!typed.number || *typed.number < minimum() || *typed.number > maximum()) {
        return QValidator::Intermediate;
    }
    return QValidator::Acceptable;
}

double QuantitySpinBox::valueFromText(const QString& text) const {
    return readTyped(typedPart(text)).number.value_or(value());
}

QString QuantitySpinBox::textFromValue(double value) const {
    const settings::DisplayUnits& units = m_appearance.units();
    QString text = QString::fromStdString(fixedText(value, kDecimalsKept));
    const qsizetype shortest = text.indexOf(u'.') + 1 + units.decimals(m_dimension);
    while (text.endsWith(u'0') && text.size() > shortest) text.chop(1);
    if (text.endsWith(u'.')) text.chop(1);
    return text.replace(u'.', decimalSignOf(units.locale()));
}

void QuantitySpinBox::judge(const QString& text) {
    const QString part = typedPart(text);
    const settings::DisplayUnits& units = m_appearance.units();
    const Typed typed = readTyped(part);
    m_refused = part;
    if (typed.signs > 1) {
        tell(true, tr("“%1” has two decimal signs: write one point or comma").arg(part));
    } else if (!typed.number) {
        tell(true, tr("“%1” is not a number").arg(part));
    } else if (*typed.number < minimum() || *typed.number > maximum()) {
        const QString range = units.rangeText({m_dimension, m_lowestSi}, {m_dimension, m_highestSi});
        tell(true, tr("“%1” is outside %2").arg(part, range));
    } else {
        tell(false, tr("read as %1").arg(textFromValue(*typed.number) + suffix()));
    }
}

void QuantitySpinBox::finish() {
    if (!m_wrong) {
        settle();
        return;
    }
    // The text has gone back to the old value by now; that must not happen in silence.
    tell(true, tr("“%1” was not taken: still %2").arg(m_refused, textFromValue(value()) + suffix()));
}

void QuantitySpinBox::settle() {
    tell(false, textFromValue(value()) + suffix());
}

void QuantitySpinBox::tell(bool wrong, const QString& echo) {
    m_wrong = wrong;
    m_mark->setVisible(wrong);
    m_mark->setToolTip(wrong ? echo : QString{});
    setAccessibleDescription(echo);
    if (m_echo == echo) return;
    m_echo = echo;
    emit echoChanged(echo);
}

void QuantitySpinBox::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QDoubleSpinBox::wheelEvent(event);
    } else {
        event->ignore();  // the page scrolls instead
    }
}

void QuantitySpinBox::changeEvent(QEvent* event) {
    QDoubleSpinBox::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) followUnits();
}

QuantityField::QuantityField(const settings::Appearance& appearance, Dimension dimension, QWidget* parent)
    : QWidget{parent}, m_box{new QuantitySpinBox{appearance, dimension}}, m_echo{new QLabel} {
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_box);
    layout->addWidget(m_echo);
    m_echo->setTextFormat(Qt::PlainText);
    m_echo->setWordWrap(true);
    m_echo->setText(m_box->echo());
    setFocusProxy(m_box);
    connect(m_box, &QuantitySpinBox::echoChanged, m_echo, &QLabel::setText);
}

}  // namespace treadwell::widgets
