#include "app/desktop/plan/scenario_cards.h"

#include "app/desktop/plan/plan_presenter.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace treadwell::plan_page {

namespace {

constexpr int kCardWidth = 270;  // pixels, at least

QStringList figuresOf(const plan::Summary& summary, const settings::DisplayUnits& units) {
    return {ScenarioCards::tr("%1 come in, %2 days of harvest", "rate, days")
                .arg(units.text(summary.delivery), units.locale().toString(summary.days, 'f', 1)),
            ScenarioCards::tr("Density %1", "median and band")
                .arg(densityText(summary.density, summary.low80, summary.high80, units)),
            ScenarioCards::tr("Chance of the target %1").arg(units.chanceText(summary.chance)),
            ScenarioCards::tr("Chance of room %1, left over %2", "chance, mass")
                .arg(units.chanceText(summary.fits), units.text(summary.leftOver)),
            ScenarioCards::tr("Expected loss %1").arg(units.text(summary.loss)),
            ScenarioCards::tr("The hour costs %1; %2 are left of a t DM", "cost, money")
                .arg(units.text(summary.hour), moneyText(summary.margin_per_t_dm, units))};
}

QLabel* labelOf(const QString& text, bool bold) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    if (bold) {
        QFont font = label->font();
        font.setBold(true);
        label->setFont(font);
    }
    return label;
}

}  // namespace

ScenarioCards::ScenarioCards(const settings::Appearance& appearance, QWidget* parent)
    : QScrollArea{parent}, m_appearance{appearance} {
    setObjectName(QStringLiteral("scenarioCards"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
}

void ScenarioCards::setCards(const Compared& compared, std::size_t current, const QString& adopted,
                             const fill::Speech& speech, bool writable) {
    m_current = current;
    m_adopted = adopted;
    m_writable = writable;
    m_texts.clear();
    setAccessibleName(tr("Plans side by side"));
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout{row};
    layout->setContentsMargins(0, 0, 0, 0);
    for (std::size_t i = 0; i < compared.summaries.size(); ++i)
        layout->addWidget(cardOf(compared, i, speech), 1, Qt::AlignTop);
    const bool focused = isAncestorOf(focusWidget());
    // A button of the one before may be the one that was touched.
    if (QWidget* old = takeWidget()) old->deleteLater();
    setWidget(row);
    if (focused) setFocus();
}

QString ScenarioCards::textOf(std::size_t card) const {
    return m_texts.value(static_cast<int>(card));
}

QWidget* ScenarioCards::cardOf(const Compared& compared, std::size_t index, const fill::Speech& speech) {
    const QString name = QString::fromStdString(compared.inputs[index].name);
    QStringList texts;
    if (name == m_adopted) texts << tr("This is the season's plan.");
    const auto& found = compared.summaries[index];
    if (!found) {
        texts << speech.say(found.error());
    } else {
        texts << figuresOf(*found, speech.units());
        if (index > 0 && compared.summaries[0]) {
            texts << tr("Against %1:").arg(QString::fromStdString(compared.inputs[0].name));
            for (const Message& difference : plan::differencesOf(*compared.summaries[0], *found))
                texts << speech.say(difference);
        }
    }
    auto* card = new QFrame;
    card->setProperty("edged", true);
    card->setObjectName(QStringLiteral("scenarioCard%1").arg(index));
    card->setMinimumWidth(kCardWidth);
    card->setAccessibleName(name);
    card->setAccessibleDescription(texts.join(u'\n'));
    auto* layout = new QVBoxLayout{card};
    layout->addWidget(labelOf(name, true));
    for (const QString& text : texts) layout->addWidget(labelOf(text, false));
    layout->addStretch(1);
    const auto addButton = [&](const QString& text, const QString& key) {
        auto* button = new QPushButton{text};
        button->setObjectName(key + QString::number(index));
        button->setAccessibleName(tr("%1: %2", "button, plan").arg(text, name));
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
        layout->addWidget(button);
        return button;
    };
    QPushButton* look = addButton(tr("Look at it"), QStringLiteral("lookAt"));
    look->setEnabled(index != m_current);
    connect(look, &QPushButton::clicked, this, [this, index] { emit chosen(index); });
    QPushButton* adopt = addButton(tr("Adopt as the season's plan"), QStringLiteral("adopt"));
    adopt->setEnabled(m_writable && found.has_value());
    connect(adopt, &QPushButton::clicked, this, [this, index] { emit adoptRequested(index); });
    m_texts << name + u'\n' + texts.join(u'\n');
    return card;
}

}  // namespace treadwell::plan_page
