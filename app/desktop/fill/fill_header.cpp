#include "app/desktop/fill/fill_header.h"

#include "app/desktop/widgets/switch_row.h"
#include "core/season/dry_matter.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

namespace treadwell::fill {

namespace {

constexpr double kSpacingMillimetres = 2.0;

template <class IdType>
QString keyOf(IdType id) {
    return QString::fromStdString(id.value.text());
}

/// What its last sample is believed to say: a meter's without its bias.
std::optional<DryMatter> dryMatterOf(const season::Season& season, farm::FieldId field, Instant now) {
    std::optional<DryMatter> last;
    for (const auto& day : season.days()) {
        for (const season::Sample& sample : day->samples) {
            if (sample.at <= now && season::fieldOf(*day, sample) == field) last = sample.believed.mean;
        }
    }
    return last;
}

}  // namespace

FillHeader::FillHeader(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_first{new QHBoxLayout},
      m_second{new QHBoxLayout},
      m_silos{new widgets::SwitchRow{appearance}},
      m_fields{new widgets::SwitchRow{appearance}},
      m_messages{new widgets::MessageBar{appearance}},
      m_clock{new QLabel},
      m_incident{new QPushButton},
      m_radio{new QPushButton},
      m_tablet{new QPushButton},
      m_language{new QPushButton} {
    m_silos->setObjectName(QStringLiteral("silo"));
    m_fields->setObjectName(QStringLiteral("field"));
    m_tablet->setObjectName(QStringLiteral("tablet"));
    m_incident->setObjectName(QStringLiteral("incident"));
    m_radio->setObjectName(QStringLiteral("radio"));
    m_language->setObjectName(QStringLiteral("language"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addLayout(m_first);
    rows->addLayout(m_second);
    place();
    QSizePolicy policy = m_messages->sizePolicy();
    policy.setRetainSizeWhenHidden(true);  // nothing moves when a message comes
    m_messages->setSizePolicy(policy);
    connect(m_silos, &widgets::SwitchRow::chosen, this, [this](const QString& key) {
        if (const auto id = Uuid::fromText(key.toStdString())) emit siloChosen(farm::SiloId{*id});
    });
    connect(m_incident, &QPushButton::clicked, this, &FillHeader::incidentTouched);
    connect(m_radio, &QPushButton::clicked, this, &FillHeader::radioTouched);
    connect(m_tablet, &QPushButton::clicked, this, &FillHeader::tabletTouched);
    connect(m_language, &QPushButton::clicked, this, &FillHeader::languageTouched);
    connect(&appearance, &settings::Appearance::changed, this, &FillHeader::retranslate);
    retranslate();
}

void FillHeader::setFarm(const season::Season& season, Instant now) {
    std::vector<widgets::SwitchChoice> silos;
    for (const auto& [id, silo] : season.farm().silos)
        silos.push_back({keyOf(id), QString::fromStdString(silo.name), {}});
    m_silos->setChoices(silos);
    m_silos->setVisible(silos.size() > 1);
    std::vector<widgets::SwitchChoice> fields;
    for (const auto& [id, field] : season.farm().fields) {
        const auto dryMatter = dryMatterOf(season, id, now);
        fields.push_back({keyOf(id), QString::fromStdString(field.name),
                          dryMatter ? m_appearance.units().text(*dryMatter) : QStringLiteral("–")});
    }
    if (!fields.empty()) fields.push_back({QString{}, tr("not known"), {}});
    m_fields->setChoices(fields);
    m_fields->setVisible(!fields.empty());
    place();
}

void FillHeader::selectSilo(farm::SiloId silo) {
    m_silos->select(keyOf(silo));
}

void FillHeader::selectField(std::optional<farm::FieldId> field) {
    m_fields->select(field ? keyOf(*field) : QString{});
}

std::optional<farm::FieldId> FillHeader::field() const {
    const auto id = Uuid::fromText(m_fields->key().toStdString());
    return id ? std::optional{farm::FieldId{*id}} : std::nullopt;
}

void FillHeader::nextSilo() {
    m_silos->selectNext();
}

void FillHeader::nextField() {
    m_fields->selectNext();
}

void FillHeader::setClock(const QString& time) {
    m_clock->setText(time);
}

void FillHeader::setHolder(const std::optional<QString>& name, const std::optional<Seconds>& onShift) {
    std::optional<std::chrono::minutes> minutes;
    if (onShift) minutes = std::chrono::floor<std::chrono::minutes>(*onShift);
    if (name == m_holder && minutes == m_onShift && !m_tablet->text().isEmpty()) return;
    m_holder = name;
    m_onShift = minutes;
    retranslate();
}

void FillHeader::retranslate() {
    m_silos->setTitle(tr("Silo"));
    m_fields->setTitle(tr("Field"));
    m_incident->setText(tr("Incident"));
    m_incident->setAccessibleDescription(tr("An accident, or nearly one, a breakdown, a spill"));
    m_radio->setText(tr("Radio"));
    m_radio->setAccessibleDescription(tr("Copies a sentence for the radio or a message, and shows it"));
    QString name = m_holder.value_or(QString{});
    name.replace(QStringLiteral("&"), QStringLiteral("&&"));
    m_tablet->setText(m_holder ? (name.isEmpty() ? tr("name erased") : name) : tr("Who is here?"));
    m_tablet->setAccessibleName(tr("Who holds the tablet: %1").arg(m_tablet->text()));
    m_tablet->setAccessibleDescription({});
    if (m_holder && m_onShift) {
        const QString since = tr("%1 h %2", "hours and minutes on shift")
                                  .arg(m_onShift->count() / 60)
                                  .arg(m_onShift->count() % 60, 2, 10, QChar{u'0'});
        m_tablet->setText(m_tablet->text() + u'\n' + since);
        m_tablet->setAccessibleDescription(tr("on shift for %1").arg(since));
    }
    m_language->setText(tr("Português", "the other language, in itself"));
    m_language->setAccessibleDescription(tr("Changes the language of the screen"));
    for (QPushButton* button : {m_incident, m_radio, m_tablet, m_language})
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    for (QLayout* row : {layout(), static_cast<QLayout*>(m_first), static_cast<QLayout*>(m_second)})
        row->setSpacing(m_appearance.pixels(kSpacingMillimetres));
    updateGeometry();
    place();
}

int FillHeader::widthOf(std::initializer_list<QWidget*> widgets) const {
    int width = 0;
    for (const QWidget* widget : widgets) {
        if (widget->isHidden() && widget != m_messages) continue;
        width += widget->minimumSizeHint().width() + m_appearance.pixels(kSpacingMillimetres);
    }
    return width;
}

QSize FillHeader::minimumSizeHint() const {
    const int wide = std::max(widthOf({m_silos, m_fields}),
                              widthOf({m_messages, m_clock, m_incident, m_radio, m_tablet, m_language}));
    return {wide, layout()->totalMinimumSize().height()};
}

void FillHeader::place() {
    const int all =
        widthOf({m_silos, m_fields, m_messages, m_clock, m_incident, m_radio, m_tablet, m_language});
    const bool inTwo = width() < all;
    if (inTwo == m_inTwo) return;
    m_inTwo = inTwo;
    QHBoxLayout* row = inTwo ? m_second : m_first;
    for (QHBoxLayout* each : {m_first, m_second}) {
        while (QLayoutItem* item = each->takeAt(0)) delete item;
    }
    m_first->addWidget(m_silos);
    m_first->addWidget(m_fields);
    if (inTwo) m_first->addStretch(1);
    row->addWidget(m_messages, 1);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_clock, m_incident, m_radio, m_tablet, m_language})
        row->addWidget(widget);
}

void FillHeader::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

void FillHeader::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::fill
