#include "app/desktop/face/face_forms.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "core/face/feeding.h"

#include <QCheckBox>
#include <QComboBox>

namespace treadwell::face_page {

namespace {

constexpr double kLongest_m = 500.0;
constexpr double kWidest_m = 100.0;
constexpr double kDeepest_m = 12.0;
constexpr double kHeaviest_kg = 5'000.0;
constexpr Temperature kUnread = Temperature::fromCelsius(20);

template <class Q>
std::optional<Q> given(const widgets::QuantitySpinBox* box) {
    if (box->isHidden() || !(box->si() > 0.0)) return std::nullopt;
    return box->quantity<Q>();
}

}  // namespace

CoreForm::CoreForm(const settings::Appearance& look, QWidget* parent)
    : SiloForm{look, QStringLiteral("coreForm"), parent},
      m_origin{addChoice("coreOrigin")},
      m_along{addBox("coreAlong", Dimension::length, 0.0, kLongest_m)},
      m_across{addBox("coreAcross", Dimension::length, 0.0, kWidest_m)},
      m_depth{addBox("coreDepth", Dimension::length, 0.0, kDeepest_m)},
      m_diameter{addBox("coreDiameter", Dimension::layerThickness, 0.0, 0.5)},
      m_length{addBox("coreLength", Dimension::layerThickness, 0.0, 3.0)},
      m_volume{addBox("coreVolume", Dimension::volume, 0.0, 10.0)},
      m_mass{addBox("coreMass", Dimension::dishMass, 0.0, kHeaviest_kg)},
      m_dryMatter{addBox("coreDryMatter", Dimension::dryMatter, 0.0, 1.0)},
      m_density{addBox("coreDensity", Dimension::dryDensity, 0.0, 900.0)} {
    connect(m_origin, &QComboBox::currentIndexChanged, this, &CoreForm::showWay);
    CoreForm::retranslate();
    showWay();
}

void CoreForm::retranslate() {
    setItems(m_origin, {tr("Loose, from the loader's bucket"), tr("Block, cut by machine"),
                        tr("Corer on a machine"), tr("Face balance over days")});
    setTitle(m_origin, tr("From"));
    setTitle(m_along, tr("From the back wall"));
    setTitle(m_across, tr("From the left wall"));
    setTitle(m_depth, tr("Below the surface"));
    setTitle(m_diameter, tr("Corer, inside"));
    setTitle(m_length, tr("Hole, deep"));
    setTitle(m_volume, tr("Block"));
    setTitle(m_mass, tr("Weighed"));
    setTitle(m_dryMatter, tr("Dry matter"));
    setTitle(m_density, tr("Density"));
    setRecordText(tr("Record the core"));
}

void CoreForm::showWay() {
    const auto origin = static_cast<entries::CoreOrigin>(std::max(0, m_origin->currentIndex()));
    using enum entries::CoreOrigin;
    for (QWidget* row : {m_diameter, m_length}) showRow(row, origin == machineCorer);
    showRow(m_volume, origin == blockCut);
    showRow(m_mass, origin == machineCorer || origin == blockCut);
    showRow(m_dryMatter, origin != faceBalance);
    showRow(m_density, origin == faceBalance);
    follow();
}

entries::Core CoreForm::core() const {
    entries::Core core;
    core.silo = silo();
    core.origin = static_cast<entries::CoreOrigin>(std::max(0, m_origin->currentIndex()));
    core.along = m_along->quantity<Length>();
    core.across = m_across->quantity<Length>();
    core.depth = m_depth->quantity<Length>();
    core.diameter = given<Length>(m_diameter);
    core.length = given<Length>(m_length);
    core.volume = given<Volume>(m_volume);
    core.mass = given<AsFedMass>(m_mass);
    core.dryMatter = given<DryMatter>(m_dryMatter);
    core.density = given<DryDensity>(m_density);
    return core;
}

Result<entries::Body> CoreForm::body() const {
    return core();
}

QString CoreForm::running() const {
    const entries::Core core = this->core();
    if (core.origin == entries::CoreOrigin::loaderRemoved)
        return tr("Loose material tells dry matter and chop, no density.");
    if (!entries::validate(core)) return tr("Position, then what gives the density.");
    const auto density = core.dryDensity();
    return density ? tr("It makes %1.").arg(appearance().units().text(*density)) : QString{};
}

RemovalForm::RemovalForm(const settings::Appearance& look, QWidget* parent)
    : SiloForm{look, QStringLiteral("removalForm"), parent},
      m_mass{addBox("removedMass", Dimension::asFedMass, 0.0, AsFedMass::fromTonnes(5'000).si())},
      m_dryMatter{addBox("removedDryMatter", Dimension::dryMatter, 0.0, 1.0)},
      m_face{addBox("removedFace", Dimension::length, 0.0, kLongest_m)},
      m_empty{new QCheckBox} {
    m_empty->setObjectName(QStringLiteral("removedAll"));
    addRow(m_empty);
    connect(m_empty, &QCheckBox::toggled, m_face, &QWidget::setDisabled);
    RemovalForm::retranslate();
    follow();
}

void RemovalForm::retranslate() {
    setTitle(m_mass, tr("Fed since the last time"));
    setTitle(m_dryMatter, tr("Its dry matter"));
    setTitle(m_face, tr("The face now, from the back wall"));
    setTitle(m_empty, tr("All is out"));
    setRecordText(tr("Record what was fed"));
}

Result<entries::Body> RemovalForm::body() const {
    return entries::FeedRemoved{silo(), m_mass->quantity<AsFedMass>(), given<DryMatter>(m_dryMatter),
                                m_empty->isChecked() ? std::optional{Length{}} : given<Length>(m_face)};
}

void RemovalForm::clear() {
    SiloForm::clear();
    m_empty->setChecked(false);
}

QString RemovalForm::running() const {
    return tr("What is left at nothing was not measured.");
}

WarmthForm::WarmthForm(const settings::Appearance& look, QWidget* parent)
    : SiloForm{look, QStringLiteral("warmthForm"), parent},
      m_behind{addBox("warmBehind", Dimension::temperature, Temperature::fromCelsius(-20).si(),
                      Temperature::fromCelsius(90).si())},
      m_core{addBox("warmCore", Dimension::temperature, Temperature::fromCelsius(-20).si(),
                    Temperature::fromCelsius(90).si())},
      m_across{addBox("warmAcross", Dimension::length, 0.0, kWidest_m)},
      m_height{addBox("warmHeight", Dimension::length, 0.0, kDeepest_m)} {
    connect(m_behind, &widgets::QuantitySpinBox::siEdited, this, [this] {
        m_behindRead = true;
        follow();
    });
    connect(m_core, &widgets::QuantitySpinBox::siEdited, this, [this] {
        m_coreRead = true;
        follow();
    });
    setUnread();
    WarmthForm::retranslate();
    follow();
}

void WarmthForm::setUnread() {
    m_behindRead = m_coreRead = false;
    for (widgets::QuantitySpinBox* box : {m_behind, m_core}) box->setSi(kUnread.si());
}

void WarmthForm::retranslate() {
    setTitle(m_behind, tr("20 cm behind the face"));
    setTitle(m_core, tr("In the core"));
    setTitle(m_across, tr("From the left wall"));
    setTitle(m_height, tr("Above the floor"));
    setRecordText(tr("Record the temperatures"));
}

std::optional<QString> WarmthForm::notYet() const {
    if (!m_behindRead || !m_coreRead) return tr("read both temperatures");
    return std::nullopt;
}

Result<entries::Body> WarmthForm::body() const {
    return entries::FaceTemperature{silo(), m_behind->quantity<Temperature>(),
                                    m_core->quantity<Temperature>(), given<Length>(m_across),
                                    given<Length>(m_height)};
}

QString WarmthForm::running() const {
    if (notYet()) return tr("More than 5 °C above the core and the face heats.");
    return face::heats(m_behind->quantity<Temperature>(), m_core->quantity<Temperature>())
               ? tr("More than 5 °C above the core: the face heats.")
               : tr("Not more than 5 °C above the core.");
}

void WarmthForm::clear() {
    SiloForm::clear();
    setUnread();
}

}  // namespace treadwell::face_page
