#include "app/desktop/samples/dry_matter_form.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QComboBox>
#include <algorithm>

namespace treadwell::samples_page {

namespace {

constexpr double kHeaviestDish = 10.0;  // kg

}  // namespace

DryMatterForm::DryMatterForm(const settings::Appearance& look, QWidget* parent)
    : Form{look, QStringLiteral("dryMatterForm"), parent},
      m_bias{samples::learnBias({}).value()},
      m_way{addChoice("sampleWay")},
      m_load{addChoice("sampleLoad")},
      m_dish{addBox("sampleDish", Dimension::dishMass, 0.0, kHeaviestDish)},
      m_wet{addBox("sampleWet", Dimension::dishMass, 0.0, kHeaviestDish)},
      m_dry{addBox("sampleDry", Dimension::dishMass, 0.0, kHeaviestDish)},
      m_reading{addBox("sampleReading", Dimension::dryMatter, 0.0, 1.0)} {
    connect(m_way, &QComboBox::currentIndexChanged, this, &DryMatterForm::showWay);
    DryMatterForm::retranslate();
    showWay();
}

void DryMatterForm::setMeterBias(const samples::MeterBias& bias) {
    m_bias = bias;
    if (way() == Way::meter) follow();
}

void DryMatterForm::setLoads(const std::vector<LoadToSample>& loads) {
    if (loads == m_loads) return;
    const LoadToSample* before = load();
    const auto chosen = before == nullptr ? std::nullopt : std::optional{before->entry};
    m_loads = loads;
    showLoads();
    const auto still =
        std::ranges::find_if(m_loads, [&](const LoadToSample& each) { return chosen == each.entry; });
    m_load->setCurrentIndex(still == m_loads.end() ? 0 : static_cast<int>(still - m_loads.begin()) + 1);
}

void DryMatterForm::showLoads() {
    QStringList names{tr("the field, no load in particular")};
    for (const LoadToSample& each : m_loads) names << each.name;
    setItems(m_load, names);
}

const LoadToSample* DryMatterForm::load() const {
    const int at = m_load->currentIndex() - 1;
    return at < 0 || at >= std::ssize(m_loads) ? nullptr : &m_loads[static_cast<std::size_t>(at)];
}

DryMatterForm::Way DryMatterForm::way() const {
    return static_cast<Way>(std::max(0, m_way->currentIndex()));
}

void DryMatterForm::showWay() {
    m_weighings.clear();
    const bool meter = way() == Way::meter;
    for (QWidget* row : {m_dish, m_wet, m_dry}) showRow(row, !meter);
    showRow(m_reading, meter);
    retranslate();
    follow();
}

void DryMatterForm::retranslate() {
    setItems(m_way, {tr("Dish, dried in an oven"), tr("Microwave, step by step"), tr("Meter")});
    setTitle(m_way, tr("How"));
    setTitle(m_load, tr("Taken from"));
    showLoads();
    setTitle(m_dish, tr("Empty dish"));
    setTitle(m_wet, tr("With the fresh sample"));
    setTitle(m_dry, way() == Way::microwave ? tr("After this step") : tr("After drying"));
    setTitle(m_reading, tr("The meter reads"));
    setRecordText(tr("Record the sample"));
}

Result<AsFedMass> DryMatterForm::wetNet() const {
    return samples::netOfDish(m_wet->quantity<AsFedMass>(), m_dish->quantity<AsFedMass>());
}

Result<DryMass> DryMatterForm::dryNet() const {
    return samples::netOfDish(m_dry->quantity<AsFedMass>(), m_dish->quantity<AsFedMass>())
        .map([](AsFedMass net) { return DryMass::fromSi(net.si()); });
}

Result<samples::DryingStep> DryMatterForm::step() const {
    return wetNet().and_then([this](AsFedMass wet) { return samples::nextDryingStep(wet, m_weighings); });
}

Result<entries::Body> DryMatterForm::body() const {
    entries::DryMatterSample sample;
    sample.field = field();
    if (const LoadToSample* taken = load()) {
        sample.load = taken->entry;
        if (taken->field) sample.field = taken->field;
    }
    if (way() == Way::meter) {
        sample.method = entries::DryMatterMethod::meter;
        sample.dryMatter = m_reading->quantity<DryMatter>();
        return sample;
    }
    const auto wet = wetNet();
    if (!wet) return Unexpected{wet.error()};
    const auto dry =
        way() == Way::microwave && !m_weighings.empty() ? Result<DryMass>{m_weighings.back()} : dryNet();
    if (!dry) return Unexpected{dry.error()};
    const auto dryMatter = samples::dryMatterOfDish(*wet, *dry);
    if (!dryMatter) return Unexpected{dryMatter.error()};
    sample.method =
        way() == Way::microwave ? entries::DryMatterMethod::microwave : entries::DryMatterMethod::oven;
    sample.wet = *wet;
    sample.dry = *dry;
    sample.dryMatter = *dryMatter;
    return sample;
}

std::optional<QString> DryMatterForm::notYet() const {
    if (way() != Way::microwave) return std::nullopt;
    const auto now = step();
    if (!now || now->isDry) return std::nullopt;
    return tr("the sample is not dry yet: %1").arg(stepText());
}

void DryMatterForm::finish() {
    if (way() != Way::microwave) return Form::finish();
    if (const auto done = step(); done && done->isDry) return Form::finish();
    const auto net = dryNet();
    const auto refuse = [this](const Error& error) {
        tellRefused(fill::Speech{appearance().units(), FarmZone{}}.say(error));
    };
    if (!net) return refuse(net.error());
    m_weighings.push_back(*net);
    if (const auto next = step(); !next) {
        m_weighings.pop_back();
        return refuse(next.error());
    }
    m_dry->setSi(0.0);
    m_dry->selectAll();
    follow();
}

void DryMatterForm::clear() {
    m_weighings.clear();
    const double dish = m_dish->si();
    m_load->setCurrentIndex(0);
    Form::clear();
    m_dish->setSi(dish);  // the next sample lies in the same dish
}

QString DryMatterForm::running() const {
    switch (way()) {
        case Way::dish:
            return dishText();
        case Way::microwave:
            return stepText();
        case Way::meter:
            break;
    }
    return meterText();
}

QString DryMatterForm::dishText() const {
    const auto wet = wetNet();
    if (!wet || !(m_wet->si() > 0.0)) return tr("Weigh the dish, then the fresh sample in it.");
    const QString fresh =
        tr("%1 fresh").arg(appearance().units().text(Amount{Dimension::dishMass, wet->si()}));
    const auto dry = dryNet();
    const auto dryMatter = dry ? samples::dryMatterOfDish(*wet, *dry) : Unexpected{dry.error()};
    if (!(m_dry->si() > 0.0) || !dryMatter) return fresh;
    return tr("%1, dry matter %2").arg(fresh, appearance().units().text(*dryMatter));
}

QString DryMatterForm::stepText() const {
    const auto now = step();
    if (!now) {
        if (!(m_wet->si() > 0.0)) return tr("Weigh the dish, then about 100 g of fresh sample in it.");
        return fill::Speech{appearance().units(), FarmZone{}}.say(now.error());
    }
    QStringList parts;
    if (now->isDry) {
        parts << tr("Dry: %1 dry matter. Record it.").arg(appearance().units().text(*now->dryMatter));
    } else {
        parts << tr("Step %1: heat for %2 s, weigh, press Enter.")
                     .arg(m_weighings.size() + 1)
                     .arg(static_cast<int>(now->heat.count()));
        if (now->dryMatter) parts << tr("At most %1 so far.").arg(appearance().units().text(*now->dryMatter));
    }
    if (now->lastLoss) {
        parts << tr("The last step took %1 off.")
                     .arg(appearance().units().text(Amount{Dimension::dishMass, now->lastLoss->si()}));
    }
    if (now->small) parts << tr("Less than 80 g: the last gram counts for more than a point.");
    return parts.join(u' ');
}

QString DryMatterForm::meterText() const {
    const settings::DisplayUnits& units = appearance().units();
    const auto corrected = samples::corrected(m_reading->quantity<DryMatter>(), m_bias);
    const QString learnt =
        m_bias.pairs == 0
            ? tr("No dish was taken beside the meter yet: it may be off by %1.").arg(units.text(m_bias.sd))
            : tr("It reads %1 (+-%2) too much, by %n dish(es) beside it.", "", static_cast<int>(m_bias.pairs))
                  .arg(units.text(m_bias.bias), units.text(m_bias.sd));
    if (!(m_reading->si() > 0.0) || !corrected) return learnt;
    return tr("%1 The crop has %2.").arg(learnt, units.text(corrected->mean));
}

}  // namespace treadwell::samples_page
