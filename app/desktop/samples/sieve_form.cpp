#include "app/desktop/samples/sieve_form.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "core/base/codes.h"
#include "core/base/number_text.h"
#include "core/samples/codes.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

namespace treadwell::samples_page {

namespace {

constexpr double kHeaviest = 20.0;  // kg
constexpr double kLongest = 0.5;    // m
constexpr std::array kStacks{samples::SieveStack::threeTo4, samples::SieveStack::threeTo118,
                             samples::SieveStack::fiveScreens};

}  // namespace

SieveForm::SieveForm(const settings::Appearance& look, QWidget* parent)
    : Form{look, QStringLiteral("sieveForm"), parent},
      m_stack{addChoice("sieveStack")},
      m_own{new QLineEdit},
      m_way{addChoice("sieveWay")},
      m_before{addBox("sieveBefore", Dimension::dishMass, 0.0, kHeaviest)},
      m_topLength{nullptr},
      m_wet{new QCheckBox},
      m_ranges{new QPushButton} {
    m_own->setObjectName(QStringLiteral("sieveOwn"));
    m_wet->setObjectName(QStringLiteral("sieveWet"));
    addRow(m_own);
    for (std::size_t i = 0; i < kMostParts; ++i) {
        const std::string place = std::to_string(i);
        m_masses[i] = addBox(("sieveMass" + place).c_str(), Dimension::dishMass, 0.0, kHeaviest);
        m_parts[i] = addBox(("sievePart" + place).c_str(), Dimension::share, 0.0, 1.0);
    }
    m_topLength = addBox("sieveTopLength", Dimension::chopLength, 0.0, kLongest);
    addRow(m_wet);
    m_ranges->setObjectName(QStringLiteral("sieveRanges"));
    addRow(m_ranges);
    connect(m_ranges, &QPushButton::clicked, this, &SieveForm::rangesAsked);
    for (QComboBox* choice : {m_stack, m_way})
        connect(choice, &QComboBox::currentIndexChanged, this, &SieveForm::showStack);
    connect(m_own, &QLineEdit::textEdited, this, &SieveForm::showStack);
    connect(m_wet, &QCheckBox::toggled, this, &SieveForm::follow);
    SieveForm::retranslate();
    showStack();
    for (const auto& boxes : {m_masses, m_parts}) {
        for (widgets::QuantitySpinBox* box : boxes)
            connect(box, &widgets::QuantitySpinBox::siEdited, this, &SieveForm::tellEdited);
    }
}

bool SieveForm::byPercent() const {
    return m_way->currentIndex() == 1;
}

std::vector<Length> SieveForm::openings() const {
    const auto index = static_cast<std::size_t>(std::max(0, m_stack->currentIndex()));
    if (index < kStacks.size()) {
        const auto known = samples::openingsOf(kStacks[index]);
        return {known.begin(), known.end()};
    }
    std::vector<Length> own;
    QString text = m_own->text();
    for (const QString& word : text.replace(u',', u'.').split(u' ', Qt::SkipEmptyParts)) {
        const auto millimetres = numberFromText(word.toStdString());
        if (!millimetres || own.size() + 1 == kMostParts) return {};
        own.push_back(Length::fromMillimetres(*millimetres));
    }
    return own;
}

void SieveForm::showStack() {
    showRow(m_own, m_stack->currentIndex() == static_cast<int>(kStacks.size()));
    showRow(m_before, !byPercent());
    const std::size_t sieves = openings().size();
    for (std::size_t i = 0; i < kMostParts; ++i) {
        const bool used = sieves > 0 && i <= sieves;
        showRow(m_masses[i], used && !byPercent());
        showRow(m_parts[i], used && byPercent());
    }
    retranslate();
    follow();
    tellEdited();
}

void SieveForm::retranslate() {
    setItems(m_stack, {tr("19, 8, 4 mm and pan"), tr("19, 8, 1.18 mm and pan"), tr("Five screens and pan"),
                       tr("Other sieves")});
    setItems(m_way, {tr("Weights"), tr("Percent")});
    setTitle(m_stack, tr("Sieves"));
    setTitle(m_own, tr("Openings in mm, widest first"));
    setTitle(m_way, tr("Given as"));
    setTitle(m_before, tr("Sample before sieving"));
    const std::vector<Length> sieves = openings();
    for (std::size_t i = 0; i < kMostParts; ++i) {
        const QString title = i < sieves.size()
                                  ? tr("On %1").arg(appearance().units().text(sieves[i].chopAmount()))
                                  : tr("In the pan");
        setTitle(m_masses[i], title);
        setTitle(m_parts[i], title);
    }
    setTitle(m_topLength, tr("Length on the top sieve"));
    setTitle(m_wet, QString{});
    m_wet->setText(tr("Wet from rain or dew"));
    m_wet->setAccessibleName(m_wet->text());
    setTitle(m_ranges, QString{});
    m_ranges->setText(tr("What it should be …"));
    m_ranges->setAccessibleName(m_ranges->text());
    setRecordText(tr("Record the sieve test"));
}

entries::SieveTest SieveForm::test() const {
    entries::SieveTest test;
    test.field = field();
    test.openings = openings();
    test.wet = m_wet->isChecked();
    for (std::size_t i = 0; !test.openings.empty() && i <= test.openings.size(); ++i) {
        if (byPercent()) {
            test.parts.push_back(m_parts[i]->quantity<Share>());
        } else {
            test.masses.push_back(m_masses[i]->quantity<AsFedMass>());
        }
    }
    if (!byPercent() && m_before->si() > 0.0) test.before = m_before->quantity<AsFedMass>();
    if (m_topLength->si() > 0.0) test.topLength = m_topLength->quantity<Length>();
    return test;
}

Result<entries::Body> SieveForm::body() const {
    return test();
}

QString SieveForm::running() const {
    const settings::DisplayUnits& units = appearance().units();
    const entries::SieveTest now = test();
    if (now.openings.empty()) return tr("Give the openings from the widest down, as 19 8 4.");
    QStringList parts;
    if (byPercent()) {
        Share sum;
        for (const Share part : now.parts) sum += part;
        parts << tr("Together %1.").arg(units.text(sum));
        if (std::abs(sum.fraction() - 1.0) > 0.01) return parts.front();
    } else {
        AsFedMass sum;
        for (const AsFedMass mass : now.masses) sum += mass;
        parts << tr("Together %1.").arg(units.text(Amount{Dimension::dishMass, sum.si()}));
        if (!(sum > AsFedMass{})) return parts.front();
    }
    const auto read = entries::partsOf(now);
    const fill::Speech speech{units, FarmZone{}};
    if (!read) {
        parts << speech.say(read.error());
    } else {
        for (const Message& remark : read->remarks) parts << speech.say(remark) + u'.';
    }
    return parts.join(u' ');
}

void SieveForm::tellEdited() {
    const auto read = entries::partsOf(test());
    emit edited(read ? std::optional{*read} : std::nullopt);
}

void SieveForm::clear() {
    Form::clear();
    m_wet->setChecked(false);
    tellEdited();
}

}  // namespace treadwell::samples_page
