#include "app/desktop/samples/order_panel.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/settings/dates.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/step_field.h"
#include "core/samples/dry_matter.h"
#include "core/season/sampled.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

namespace treadwell::samples_page {

namespace {

constexpr AsFedMass kMost = AsFedMass::fromTonnes(90'000);
constexpr int kMostDays = 10;

}  // namespace

OrderPanel::OrderPanel(const settings::Appearance& appearance, QWidget* parent)
    : QFrame{parent},
      m_appearance{appearance},
      m_grid{new QGridLayout},
      m_capacity{addBox()},
      m_change{new QSpinBox},
      m_rain{new QSpinBox},
      m_changeField{addDays(m_change, "orderChange")},
      m_rainField{addDays(m_rain, "orderRain")},
      m_says{new LinesPanel{appearance, QStringLiteral("orderLines")}} {
    setObjectName(QStringLiteral("orderPanel"));
    m_capacity->setObjectName(QStringLiteral("orderCapacity"));
    m_grid->setColumnStretch(1, 1);
    for (int title = 0; title < 3; ++title) m_titles.push_back(new QLabel);
    auto* layout = new QVBoxLayout{this};
    layout->addLayout(m_grid);
    layout->addWidget(m_says);
    layout->addStretch(1);
    connect(&appearance, &settings::Appearance::changed, this, &OrderPanel::reckon);
    place();
    retranslate();
}

widgets::QuantitySpinBox* OrderPanel::addBox() {
    auto* box = new widgets::QuantitySpinBox{m_appearance, Dimension::asFedMass};
    box->setSiRange(0.0, kMost.si());
    box->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    connect(box, &widgets::QuantitySpinBox::siEdited, this, &OrderPanel::reckon);
    connect(box->findChild<QLineEdit*>(), &QLineEdit::returnPressed, this, [this] { focusNextChild(); });
    return box;
}

widgets::StepField* OrderPanel::addDays(QSpinBox* days, const char* name) {
    days->setObjectName(QLatin1String{name});
    days->setRange(0, kMostDays);
    connect(days, &QSpinBox::valueChanged, this, &OrderPanel::reckon);
    return new widgets::StepField{m_appearance, days};
}

void OrderPanel::follow(const season::Season& season, Instant now) {
    m_plan.first = season.zone().dayOf(now);
    m_plan.goalLow = season.farm().rules.dryMatterLow;
    m_plan.goalHigh = season.farm().rules.dryMatterHigh;
    std::vector<Row> rows;
    for (const auto& [id, field] : season.farm().fields) {
        const season::FieldOutlook outlook = season::outlookOf(season, id, now);
        if (!outlook.dryDown) continue;
        const auto held = std::ranges::find(m_rows, id, &Row::field);
        rows.push_back({id,
                        QString::fromStdString(field.name),
                        {*outlook.dryDown, AsFedMass{}, outlook.seen.hybrid.value_or(std::string{})},
                        held == m_rows.end() ? new QLabel : held->title,
                        held == m_rows.end() ? addBox() : held->mass});
    }
    for (const Row& row : m_rows) {
        if (std::ranges::find(rows, row.field, &Row::field) != rows.end()) continue;
        row.title->deleteLater();
        row.mass->deleteLater();
    }
    const bool same = std::ranges::equal(m_rows, rows, {}, &Row::field, &Row::field);
    m_rows = std::move(rows);
    if (!same) place();
    retranslate();
}

void OrderPanel::place() {
    while (QLayoutItem* item = m_grid->takeAt(0)) delete item;
    int row = 0;
    const auto add = [&](QLabel* title, QWidget* widget) {
        m_grid->addWidget(title, row, 0);
        m_grid->addWidget(widget, row, 1);
        title->setBuddy(widget);
        ++row;
    };
    add(m_titles[0], m_capacity);
    for (const Row& each : m_rows) add(each.title, each.mass);
    add(m_titles[1], m_changeField);
    add(m_titles[2], m_rainField);
    QWidget* before = m_capacity;  // what is asked for later comes before the days
    for (const Row& each : m_rows) {
        setTabOrder(before, each.mass);
        before = each.mass;
    }
}

void OrderPanel::retranslate() {
    const std::array names{tr("Cut in a day"), tr("Days a change of hybrid costs"),
                           tr("Days of rain from today on")};
    for (std::size_t i = 0; i < names.size(); ++i) {
        m_titles[i]->setText(names[i]);
        m_titles[i]->setWordWrap(true);
    }
    m_capacity->setAccessibleName(names[0]);
    m_changeField->setName(names[1]);
    m_rainField->setName(names[2]);
    for (const Row& row : m_rows) {
        row.title->setText(tr("%1 will yield", "field").arg(row.name));
        row.title->setWordWrap(true);
        row.mass->setObjectName(QStringLiteral("yield ") + row.name);
        row.mass->setAccessibleName(row.title->text());
    }
    m_says->setTitle(tr("Order of the fields"));
    reckon();
}

void OrderPanel::reckon() {
    if (m_rows.empty()) return m_says->setLines({{tr("No whole plants of a field were sampled yet.")}});
    std::vector<samples::FieldToCut> fields;
    std::vector<QString> names;
    for (const Row& row : m_rows) {
        if (!(row.mass->si() > 0.0)) continue;
        fields.push_back(row.toCut);
        fields.back().mass = row.mass->quantity<AsFedMass>();
        names.push_back(row.name);
    }
    if (fields.empty() || !(m_capacity->si() > 0.0))
        return m_says->setLines({{tr("Give what is cut in a day and what each field will yield.")}});
    samples::HarvestPlan plan = m_plan;
    plan.perDay = m_capacity->quantity<AsFedMass>();
    plan.changeDays = m_change->value();
    for (LocalDay day = plan.first; std::ssize(plan.rainDays) < m_rain->value(); day = dayAfter(day))
        plan.rainDays.push_back(day);
    const settings::DisplayUnits& units = m_appearance.units();
    const fill::Speech speech{units, FarmZone{}};
    const auto order = samples::bestOrder(fields, plan);
    if (!order) return m_says->setLines({{speech.say(order.error()), true}});
    const auto dayText = [&units](LocalDay day) { return settings::dayText(day, units.locale()); };
    Lines lines;
    int place = 0;
    for (const samples::FieldTurn& turn : order->turns) {
        lines.push_back({tr("%1. %2: %3 to %4, %5", "place, field, first and last day, dry matter")
                             .arg(++place)
                             .arg(names[turn.field], dayText(turn.first), dayText(turn.last),
                                  units.text(turn.dryMatter))});
        if (const auto warning = samples::goalWarning(turn.dryMatter, plan.goalLow, plan.goalHigh))
            lines.push_back({speech.say(*warning), true});
    }
    lines.push_back(
        {tr("At the silo %1 by mass; %2 cut outside the goal.", "dry matter, mass")
             .arg(units.text(order->siloMean), units.text(AsFedMass::fromTonnes(order->tonnesOutside)))});
    if (!order->everyOrderTried)
        lines.push_back({tr("More than eight fields: not every order was tried."), true});
    m_says->setLines(lines);
}

void OrderPanel::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::samples_page
