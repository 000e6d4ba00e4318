#include "app/desktop/practice/plan_form.h"

#include "app/desktop/practice/practice_presenter.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/step_field.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

namespace treadwell::practice_page {

namespace {

/// A touch changes a value by this, in the units shown.
constexpr double kStep = 0.5;
constexpr double kStepToWall_m = 0.1;

}  // namespace

PlanForm::PlanForm(const settings::Appearance& look, QWidget* parent)
    : QWidget{parent}, m_appearance{look}, m_grid{new QGridLayout{this}} {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setVerticalSpacing(4);
    m_grid->setColumnStretch(1, 1);
    m_layer = addBox("practiceLayer", Dimension::layerThickness, 0.03, 0.60);
    m_pattern = new widgets::ChoiceBox{look};
    m_pattern->setObjectName(QStringLiteral("practicePattern"));
    m_pattern->setMinimumHeight(look.pixels(settings::kControlMillimetres));
    m_pattern->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_patternTitle = new QLabel;
    m_patternTitle->setBuddy(m_pattern);
    m_grid->addWidget(m_patternTitle, m_grid->rowCount(), 0);
    m_grid->addWidget(m_pattern, m_grid->rowCount() - 1, 1);
    for (const std::string_view name : enumTexts(passes::Pattern{}))
        m_pattern->addItem(QString{}, QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
    connect(m_pattern, &QComboBox::currentIndexChanged, this, &PlanForm::edited);
    constexpr double kKmh = 1.0 / 3.6;
    m_speed = addBox("practiceSpeed", Dimension::speed, 1 * kKmh, 15 * kKmh);
    m_nearWall = addBox("practiceNearWall", Dimension::length, 0.0, 3.0);
    m_ramp = addBox("practiceRamp", Dimension::slope, 1.5, 10.0);
    m_oneWay = addSwitch("practiceOneWay");
    m_stopForPeople = addSwitch("practiceStop");
    m_lights = addSwitch("practiceLights");
    m_call = new QPushButton;
    m_call->setObjectName(QStringLiteral("practiceCall"));
    m_call->setMinimumHeight(look.pixels(settings::kControlMillimetres));
    m_grid->addWidget(m_call, m_grid->rowCount(), 0, 1, 2);
    connect(m_call, &QPushButton::clicked, this, &PlanForm::callAsked);
    connect(&look, &settings::Appearance::changed, this, &PlanForm::followUnits);
    retranslate();
}

widgets::QuantitySpinBox* PlanForm::addBox(const char* name, Dimension dimension, double lowest,
                                           double highest) {
    auto* box = new widgets::QuantitySpinBox{m_appearance, dimension};
    box->setObjectName(QLatin1String{name});
    box->setSiRange(lowest, highest);
    auto* field = new widgets::StepField{m_appearance, box};
    auto* title = new QLabel;
    title->setWordWrap(true);
    title->setBuddy(box);
    m_titles.push_back(title);
    const int row = m_grid->rowCount();
    m_grid->addWidget(title, row, 0);
    m_grid->addWidget(field, row, 1);
    connect(box, &widgets::QuantitySpinBox::siEdited, this, &PlanForm::edited);
    return box;
}

QPushButton* PlanForm::addSwitch(const char* name) {
    auto* button = new QPushButton;
    button->setObjectName(QLatin1String{name});
    button->setCheckable(true);
    button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    m_grid->addWidget(button, m_grid->rowCount(), 0, 1, 2);
    connect(button, &QPushButton::toggled, this, [this] {
        retranslate();
        emit edited();
    });
    return button;
}

void PlanForm::setLesson(const practice::Lesson& lesson) {
    const practice::Plan plan;
    const QSignalBlocker quiet{this};
    m_layer->setQuantity(plan.layer);
    m_pattern->setCurrentIndex(static_cast<int>(plan.pattern));
    m_speed->setQuantity(plan.speed);
    m_nearWall->setQuantity(plan.nearWall);
    m_ramp->setQuantity(plan.ramp);
    // Whoever agrees, stops and switches on has to think of it.
    for (QPushButton* button : {m_oneWay, m_stopForPeople, m_lights}) button->setChecked(false);
    m_oneWay->setVisible(lesson.tractors.size() > 1);
    m_stopForPeople->setVisible(!lesson.peopleOnFoot.empty());
    m_lights->setVisible(lesson.dark);
    m_call->setVisible(lesson.tractors.size() > static_cast<std::size_t>(lesson.atFirst));
    setCalled(std::nullopt);
    followUnits();
}

/// Values in other units stand as they would be typed there, and go on in handy steps.
void PlanForm::followUnits() {
    const settings::DisplayUnits& units = m_appearance.units();
    const std::array boxes{std::pair{m_layer, Dimension::layerThickness},
                           std::pair{m_speed, Dimension::speed}, std::pair{m_nearWall, Dimension::length},
                           std::pair{m_ramp, Dimension::slope}};
    for (const auto& [box, dimension] : boxes) {
        box->setSi(units.rounded({dimension, box->si()}).si);
        box->setSingleStep(kStep);
    }
    if (units.system() == UnitSystem::metric) m_layer->setSingleStep(1.0);
    if (units.system() == UnitSystem::metric) m_nearWall->setSingleStep(kStepToWall_m);
    tellCalled();
}

void PlanForm::setCalled(std::optional<Seconds> at) {
    m_called = at;
    m_call->setEnabled(!at);
    tellCalled();
}

practice::Plan PlanForm::plan() const {
    practice::Plan plan;
    plan.layer = m_layer->quantity<Length>();
    plan.pattern = static_cast<passes::Pattern>(m_pattern->currentIndex());
    plan.speed = m_speed->quantity<Speed>();
    plan.nearWall = m_nearWall->quantity<Length>();
    plan.ramp = m_ramp->quantity<Slope>();
    plan.callTractors = m_called;
    plan.oneWay = m_oneWay->isChecked();
    plan.stopForPeople = m_stopForPeople->isChecked();
    plan.lights = m_lights->isChecked();
    return plan;
}

void PlanForm::retranslate() {
    const std::array titles{tr("Layer"), tr("Speed"), tr("To the wall"), tr("Ramp")};
    const std::array boxes{m_layer, m_speed, m_nearWall, m_ramp};
    for (std::size_t i = 0; i < titles.size(); ++i) {
        m_titles[i]->setText(titles[i]);
        static_cast<widgets::StepField*>(boxes[i]->parentWidget())->setName(titles[i]);
    }
    m_patternTitle->setText(tr("Tracks"));
    m_pattern->setAccessibleName(tr("Tracks"));
    const std::array patterns{tr("whole width"), tr("the middle"), tr("as it comes")};
    for (std::size_t i = 0; i < patterns.size(); ++i)
        m_pattern->setItemText(static_cast<int>(i), patterns[i]);
    m_oneWay->setText(m_oneWay->isChecked() ? tr("Agreed who drives where") : tr("Agree who drives where"));
    m_stopForPeople->setText(m_stopForPeople->isChecked() ? tr("All stand while somebody is on foot")
                                                          : tr("Let all stand while somebody is on foot"));
    m_lights->setText(m_lights->isChecked() ? tr("All lights are on") : tr("Switch on all lights"));
    tellCalled();
}

void PlanForm::tellCalled() {
    m_call->setText(m_called ? tr("Called at %1").arg(clockText(*m_called)) : tr("Call the next tractor"));
}

void PlanForm::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::practice_page
