#include "app/desktop/practice/practice_page.h"

#include "app/desktop/practice/certificate_file.h"
#include "app/desktop/practice/cut_view.h"
#include "app/desktop/practice/pad_view.h"
#include "app/desktop/practice/plan_form.h"
#include "app/desktop/practice/real_day_view.h"
#include "app/desktop/practice/trainee_bar.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/distribution_view.h"
#include "app/desktop/widgets/message_bar.h"
#include "core/base/atomic_file.h"
#include "core/practice/shipped.h"

#include <QElapsedTimer>
#include <QEvent>
#include <QFileDialog>
#include <QLabel>
#include <QLayout>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>

namespace treadwell::practice_page {

namespace {

constexpr std::chrono::milliseconds kTick{40};
/// The page's thread belongs to the lesson for no longer than this at a time.
constexpr std::chrono::milliseconds kSlice{12};
constexpr std::chrono::seconds kLongestStep{10};
constexpr int kResultEvery = 10;  // ticks

}  // namespace

PracticePage::PracticePage(desk::SeasonDesk& desk, const settings::Appearance& look,
                           const std::filesystem::path& folder, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{look},
      m_lessons{practice::shippedLessons()},
      m_messages{new widgets::MessageBar{look}},
      m_lessonsTab{new QPushButton},
      m_realTab{new QPushButton},
      m_choices{new QStackedWidget},
      m_views{new QStackedWidget},
      m_real{new RealDayView{desk, look}},
      m_trainee{new TraineeBar{look, folder / practice::kProgressFile}},
      m_list{new QListWidget},
      m_story{new QLabel},
      m_open{new QPushButton},
      m_certificate{new QPushButton},
      m_clock{new QLabel},
      m_next{new QLabel},
      m_pad{new PadView{look}},
      m_cut{new CutView{look}},
      m_go{new QPushButton},
      m_again{new QPushButton},
      m_pace{new widgets::ChoiceBox{look}},
      m_hint{new QLabel},
      m_plan{new PlanForm{look}},
      m_density{new widgets::DistributionView{look}},
      m_parts{new samples_page::LinesPanel{look, QStringLiteral("practiceParts")}},
      m_wrong{new samples_page::LinesPanel{look, QStringLiteral("practiceWrong")}},
      m_cautions{new samples_page::LinesPanel{look, QStringLiteral("practiceCautions")}} {
    layOut();
    m_tick.setInterval(kTick);
    connectAll();
    retranslate();
    m_list->setCurrentRow(0);
}

void PracticePage::connectAll() {
    connect(m_realTab, &QPushButton::toggled, this, &PracticePage::showRealDay);
    connect(m_real, &RealDayView::failed, this, &PracticePage::tell);
    connect(m_real, &RealDayView::lessonMade, this, [this](const QString& file) {
        openLesson(file);
        m_lessonsTab->click();
    });
    connect(m_list, &QListWidget::currentRowChanged, this, &PracticePage::begin);
    connect(m_trainee, &TraineeBar::changed, this, &PracticePage::fillLessons);
    connect(m_trainee, &TraineeBar::failed, this, &PracticePage::tell);
    connect(m_open, &QPushButton::clicked, this, &PracticePage::askLesson);
    connect(m_certificate, &QPushButton::clicked, this, &PracticePage::askCertificate);
    connect(m_go, &QPushButton::clicked, this, [this] { run(!m_tick.isActive()); });
    connect(m_again, &QPushButton::clicked, this, &PracticePage::begin);
    connect(m_plan, &PlanForm::edited, this, &PracticePage::applyPlan);
    connect(m_plan, &PlanForm::callAsked, this, &PracticePage::call);
    connect(m_pad, &PadView::goalAsked, this, &PracticePage::steer);
    connect(m_pad, &PadView::haltAsked, this, [this] {
        m_run->halt();
        draw();
    });
    connect(&m_tick, &QTimer::timeout, this, [this] { pass(kTick); });
    connect(&m_appearance, &settings::Appearance::changed, this, &PracticePage::retranslate);
}

void PracticePage::showRealDay(bool real) {
    run(false);
    m_choices->setCurrentIndex(real ? 1 : 0);
    m_views->setCurrentIndex(real ? 1 : 0);
}

fill::Speech PracticePage::speech() const {
    return {m_appearance.units(), m_desk.season()->zone()};
}

const practice::Lesson& PracticePage::lesson() const {
    return m_lessons[static_cast<std::size_t>(std::max(0, m_list->currentRow()))];
}

void PracticePage::fillLessons() {
    const auto rows = lessonRows(m_lessons, m_trainee->trainee(), lessonLanguage(m_appearance.units()));
    const int held = m_list->currentRow();
    const QSignalBlocker quiet{m_list};
    m_list->clear();
    for (const LessonRow& row : rows) {
        auto* item = new QListWidgetItem{row.title + u'\n' + row.done, m_list};
        item->setData(Qt::UserRole, row.id);
        item->setSizeHint({0, std::max(m_appearance.pixels(settings::kControlMillimetres),
                                       2 * m_list->fontMetrics().height() + 8)});
    }
    m_list->setCurrentRow(held);
    m_certificate->setEnabled(m_trainee->trainee() != nullptr && !m_trainee->trainee()->done.empty());
}

void PracticePage::begin() {
    run(false);
    m_debrief.reset();
    m_due = Seconds{0.0};
    m_plan->setLesson(lesson());
    auto started = practice::LessonRun::start(lesson(), m_plan->plan());
    if (!started) return tell(started.error());
    m_run.emplace(*std::move(started));
    const practice::LessonText& text = lesson().text(lessonLanguage(m_appearance.units()));
    m_story->setText(QString::fromStdString(text.story + "\n\n" + text.goal));
    m_wrong->hide();
    m_plan->show();
    draw();
    tellResult();
}

void PracticePage::run(bool on) {
    if (on && m_run && m_run->isOver()) begin();
    on ? m_tick.start() : m_tick.stop();
    m_go->setText(on ? tr("Pause") : m_run && m_run->isOver() ? tr("Once more") : tr("Start"));
}

void PracticePage::pass(std::chrono::milliseconds real) {
    if (!m_run || m_run->isOver()) return;
    const double pace = m_pace->currentData().toDouble();
    // What the machine cannot keep up with is left out, so that nothing piles up.
    m_due = std::min(m_due + Seconds{real} * pace, Seconds{kTick} * pace + Seconds{1.0});
    QElapsedTimer busy;
    busy.start();
    while (m_due >= Seconds{1.0} && !m_run->isOver() && busy.elapsed() < kSlice.count()) {
        const auto step =
            std::min(kLongestStep, std::chrono::seconds{static_cast<std::int64_t>(m_due.count())});
        if (const auto advanced = m_run->advance(step); !advanced) {
            run(false);
            return tell(advanced.error());
        }
        m_due -= step;
    }
    if (m_run->isOver()) return finish();
    draw();
    if (++m_ticks % kResultEvery == 0) tellResult();
}

void PracticePage::steer(passes::GroundPoint goal) {
    if (m_run->isOver()) return;
    m_run->steerTo(goal);
    if (!m_tick.isActive()) run(true);
    draw();
}

void PracticePage::applyPlan() {
    if (!m_run) return;
    if (const auto changed = m_run->change(m_plan->plan()); !changed) tell(changed.error());
}

void PracticePage::call() {
    m_plan->setCalled(m_run->facts().elapsed);
    applyPlan();
}

void PracticePage::finish() {
    run(false);
    m_debrief = practice::debriefOf(*m_run);
    m_trainee->note(m_run->lesson().id, m_debrief->score, m_run->hand() != nullptr, m_desk.now());
    m_go->setText(tr("Once more"));
    m_plan->hide();
    m_wrong->show();
    draw();
    tellResult();
}

/// The cut follows the tractor that is watched; before there is one it lies in the middle.
void PracticePage::draw() {
    if (!m_run) return;
    const RunClock clock = clockOf(*m_run);
    m_clock->setText(clock.time);
    m_next->setText(clock.next);
    const auto& first = m_run->places().front();
    const Length cut =
        m_debrief || !first ? m_run->lesson().pad.length * 0.5 : Length::fromMetres(first->x_m);
    m_pad->setScene(sceneOf(*m_run, m_debrief ? &*m_debrief : nullptr, cut));
    m_cut->setCut(cutOf(*m_run, cut), m_run->lesson().goal.density);
}

void PracticePage::tellResult() {
    if (!m_run) return;
    const practice::Debrief debrief = m_debrief ? *m_debrief : practice::debriefOf(*m_run);
    const ResultView result = resultOf(*m_run, debrief, speech());
    m_density->setView(result.density);
    m_parts->setTitle((m_debrief ? tr("Result: %1") : tr("So far: %1")).arg(result.score));
    m_parts->setVisible(!result.parts.empty());
    m_parts->setLines(result.parts);
    m_wrong->setLines(result.wrong);
    m_cautions->setLines(result.cautions);
    fitSide();
}

/// Lines that wrap take their height from the width: without being told, the scroll area would squeeze them.
void PracticePage::fitSide() {
    QWidget* side = m_parts->parentWidget();
    side->layout()->activate();
    side->setMinimumHeight(side->layout()->totalHeightForWidth(side->width()));
}

void PracticePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitSide();
}

void PracticePage::retranslate() {
    m_lessonsTab->setText(tr("Lessons"));
    m_realTab->setText(tr("A real day"));
    m_open->setText(tr("Open a lesson"));
    m_certificate->setText(tr("Certificate"));
    m_again->setText(tr("From the start"));
    m_list->setAccessibleName(tr("Lessons"));
    m_pad->setAccessibleName(tr("Plan of the practice pad"));
    m_cut->setAccessibleName(tr("The pad cut from wall to wall"));
    m_pace->setAccessibleName(tr("Pace"));
    for (int i = 0; i < m_pace->count(); ++i) {
        m_pace->setItemText(i, tr("%1 ×", "times as fast")
                                   .arg(m_appearance.units().locale().toString(m_pace->itemData(i).toInt())));
    }
    m_hint->setText(tr(
        "Start lets the tractors follow the plan. Touch the pad, or use the arrow keys on it, to drive the "
        "first one yourself; the space bar lets it stand."));
    m_wrong->setTitle(tr("What went wrong, and where"));
    m_cautions->setTitle(tr("Cautions"));
    run(m_tick.isActive());
    fillLessons();
    if (!m_run) return;
    const practice::LessonText& text = lesson().text(lessonLanguage(m_appearance.units()));
    m_story->setText(QString::fromStdString(text.story + "\n\n" + text.goal));
    draw();
    tellResult();
}

void PracticePage::openLesson(const QString& file) {
    const auto bytes = readFile(file.toStdString());
    if (!bytes) return tell(bytes.error());
    auto read = practice::lessonFromJson(*bytes);
    if (!read) {
        Error error = read.error();
        error.place.file = file.toStdString();
        return tell(error);
    }
    m_lessons.push_back(*std::move(read));
    fillLessons();
    m_list->setCurrentRow(static_cast<int>(m_lessons.size()) - 1);
}

void PracticePage::askLesson() {
    auto* dialog = new QFileDialog{this, tr("Open a lesson"), {}, QStringLiteral("*.json")};
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QFileDialog::fileSelected, this, &PracticePage::openLesson);
    dialog->open();
}

void PracticePage::saveCertificate(const QString& file) {
    const practice::Trainee* trainee = m_trainee->trainee();
    if (trainee == nullptr) return;
    const auto written = writeCertificate(*trainee, m_lessons, m_appearance.units(), m_desk.season()->zone(),
                                          m_desk.now(), file.toStdString());
    if (!written) return tell(written.error());
    m_messages->post(widgets::Weight::note, tr("The certificate lies in %1").arg(file));
}

void PracticePage::askCertificate() {
    auto* dialog = new QFileDialog{this, tr("Certificate of practice"), {}, QStringLiteral("*.pdf")};
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    connect(dialog, &QFileDialog::fileSelected, this, &PracticePage::saveCertificate);
    dialog->open();
}

void PracticePage::tell(const Error& error) {
    m_messages->post(widgets::Weight::error, speech().say(error));
}

void PracticePage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

void PracticePage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    run(false);
}

std::vector<std::pair<QString, QString>> practiceKeys() {
    return {
        {QStringLiteral("← →"), PracticePage::tr("Drive the first tractor to the back wall, to the mouth")},
        {QStringLiteral("↑ ↓"), PracticePage::tr("Change its track while it drives")},
        {PracticePage::tr("Space"), PracticePage::tr("Let it stand")}};
}

}  // namespace treadwell::practice_page
