#include "app/desktop/day/day_page.h"

#include "app/desktop/day/closing_panel.h"
#include "app/desktop/day/sheet_view.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/page_change.h"
#include "app/words/document.h"
#include "core/base/atomic_file.h"
#include "core/review/season_review.h"

#include <QClipboard>
#include <QEvent>
#include <QFileDialog>
#include <QGuiApplication>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace treadwell::day_page {

namespace {

constexpr std::chrono::seconds kTick{60};
constexpr int kSideWidth = 400;  // pixels
constexpr auto kSeason = "season";

QString isoOf(LocalDay day) {
    return QString::fromStdString(toIso8601(day));
}

}  // namespace

DayPage::DayPage(desk::SeasonDesk& desk, const settings::Appearance& look, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{look},
      m_dayTitle{new QLabel},
      m_day{new widgets::ChoiceBox{look}},
      m_paper{new widgets::ChoiceBox{look}},
      m_print{new QPushButton},
      m_copy{new QPushButton},
      m_messages{new widgets::MessageBar{look}},
      m_view{new SheetView{look}},
      m_panel{new ClosingPanel{look}},
      m_side{widgets::scrolled(m_panel)} {
    auto* layout = new QVBoxLayout{this};
    layout->addWidget(m_messages);
    layout->addWidget(makeTools());
    auto* columns = new QHBoxLayout;
    layout->addLayout(columns, 1);
    m_side->setFixedWidth(kSideWidth);
    columns->addWidget(m_view, 1);
    columns->addWidget(m_side);
    connect(m_day, &QComboBox::currentIndexChanged, this, &DayPage::refresh);
    connect(m_panel, &ClosingPanel::answered, this, [this](const std::vector<session::Proposal>& proposals) {
        record(m_desk.propose(proposals), {});
    });
    connect(m_panel, &ClosingPanel::refused, this,
            [this](const QString& why) { m_messages->post(widgets::Weight::caution, why); });
    connect(m_panel, &ClosingPanel::handedOver, this, &DayPage::handOver);
    connect(m_panel, &ClosingPanel::closed, this, &DayPage::close);
    connect(m_panel, &ClosingPanel::reopened, this, [this](const session::Proposal& correction) {
        record(m_desk.propose(std::vector{correction}), tr("The day is open again."));
    });
    connect(&desk, &desk::SeasonDesk::committed, this, &DayPage::settle);
    connect(&desk, &desk::SeasonDesk::failed, this, &DayPage::fail);
    connect(&desk, &desk::SeasonDesk::changed, this, &DayPage::refresh);
    connect(&look, &settings::Appearance::changed, this, [this] {
        followLook();
        refresh();
    });
    connect(&m_tick, &QTimer::timeout, this, &DayPage::refresh);
    m_tick.start(kTick);
    const auto addKey = [this](const QKeySequence& keys, const std::function<void()>& act) {
        connect(new QShortcut{keys, this}, &QShortcut::activated, this, act);
    };
    addKey(QKeySequence{Qt::CTRL | Qt::Key_P}, [this] { print(); });
    addKey(QKeySequence{Qt::CTRL | Qt::Key_S}, [this] { save(m_forms.front().second); });
    addKey(QKeySequence{Qt::CTRL | Qt::Key_M}, [this] { copyMessage(); });
    addKey(QKeySequence{Qt::ALT | Qt::Key_Left}, [this] { step(-1); });
    addKey(QKeySequence{Qt::ALT | Qt::Key_Right}, [this] { step(1); });
    followLook();
    retranslate();
}

QWidget* DayPage::makeTools() {
    auto* tools = new QWidget;
    auto* row = new QHBoxLayout{tools};
    row->setContentsMargins(0, 0, 0, 0);
    m_dayTitle->setBuddy(m_day);
    m_day->setObjectName(QStringLiteral("day"));
    m_paper->setObjectName(QStringLiteral("paper"));
    m_print->setObjectName(QStringLiteral("print"));
    m_copy->setObjectName(QStringLiteral("copyMessage"));
    m_paper->addItems({QStringLiteral("A4"), QStringLiteral("Letter")});
    if (m_appearance.units().system() == UnitSystem::us) m_paper->setCurrentIndex(1);
    const auto chosenPaper = [this] {
        return m_paper->currentIndex() == 0 ? report::Paper::a4 : report::Paper::letter;
    };
    const std::array<Form, 3> forms{Form{QStringLiteral("pdf"),
                                         [this, chosenPaper](const review::Document& sheet) {
                                             return report::pdfOf(sheet, style(), chosenPaper());
                                         }},
                                    Form{QStringLiteral("csv"),
                                         [this](const review::Document& sheet) {
                                             return QByteArray::fromStdString(words::csvText(sheet, style()));
                                         }},
                                    Form{QStringLiteral("json"), [this](const review::Document& sheet) {
                                             JsonWriter json{2};
                                             words::writeJson(json, sheet, style());
                                             return QByteArray::fromStdString(json.text()) + '\n';
                                         }}};
    row->addWidget(m_dayTitle);
    row->addWidget(m_day, 1);
    row->addWidget(m_copy);
    for (const Form& form : forms) {
        auto* button = new QPushButton;
        button->setObjectName(QStringLiteral("save_") + form.suffix);
        connect(button, &QPushButton::clicked, this, [this, form] { save(form); });
        row->addWidget(button);
        m_forms.emplace_back(button, form);
    }
    row->addWidget(m_paper);
    row->addWidget(m_print);
    connect(m_print, &QPushButton::clicked, this, &DayPage::print);
    connect(m_copy, &QPushButton::clicked, this, &DayPage::copyMessage);
    return tools;
}

words::Style DayPage::style() const {
    return fill::styleOf(m_appearance.units(), m_desk.season()->zone());
}

fill::Speech DayPage::speech() const {
    return {m_appearance.units(), m_desk.season()->zone()};
}

std::optional<LocalDay> DayPage::chosenDay() const {
    return dayFromIso8601(m_day->currentData().toString().toStdString());
}

/// The last day until somebody chooses.
void DayPage::fillDays() {
    if (m_daysOf == m_desk.season()) return;
    const QVariant chosen = m_day->currentData();
    const bool wasLast = m_day->currentIndex() <= 0;
    m_daysOf = m_desk.season();
    const QSignalBlocker quiet{m_day};
    m_day->clear();
    for (const DayChoice& choice : daysOf(*m_daysOf, m_appearance.units().locale()))
        m_day->addItem(choice.text, isoOf(choice.day));
    m_day->addItem(tr("The season, its days side by side"), QLatin1String{kSeason});
    const int kept = wasLast ? 0 : m_day->findData(chosen);
    m_day->setCurrentIndex(std::max(0, kept));
}

/// Days stand newest first.
void DayPage::step(int days) {
    const int wanted = m_day->currentIndex() - days;
    if (wanted >= 0 && wanted < m_day->count()) m_day->setCurrentIndex(wanted);
}

void DayPage::refresh() {
    if (!isVisible()) return;
    fillDays();
    const season::Season& season = *m_desk.season();
    const auto date = chosenDay();
    m_sheet.reset();
    if (!date) {
        m_sheet = review::seasonReview(season, m_desk.now());
    } else if (const season::Day* day = season.day(*date)) {
        auto sheet = review::daySheet(season, *date, m_desk.now(), m_desk.originOf(*day));
        if (sheet) m_sheet = *std::move(sheet);
    }
    if (m_sheet) {
        m_view->setSheet(*m_sheet, style());
    } else {
        m_view->setReason(tr("Nothing is recorded yet."));
    }
    m_side->setVisible(date.has_value());
    if (date) m_panel->setDay(m_desk, *date);
    for (QPushButton* button : {m_print, m_copy}) button->setEnabled(m_sheet.has_value());
    for (const auto& [button, form] : m_forms) button->setEnabled(m_sheet.has_value());
    m_copy->setVisible(date.has_value());
}

void DayPage::record(desk::Ticket ticket, const QString& done) {
    m_pending.emplace(ticket, done);
}

void DayPage::settle(desk::Ticket ticket) {
    const auto pending = m_pending.find(ticket);
    if (pending != m_pending.end()) {
        if (!pending->second.isEmpty()) {
            m_messages->post(widgets::Weight::note, pending->second);
            m_panel->clearTexts();
        }
        m_pending.erase(pending);
    }
    if (m_closing == ticket) {
        m_closing.reset();
        tellCopies();
    }
    refresh();
}

void DayPage::fail(desk::Ticket ticket, const Error& error) {
    if (m_pending.erase(ticket) == 0) return;
    m_messages->post(widgets::Weight::error, tr("Not recorded: %1").arg(speech().say(error)));
    refresh();
}

void DayPage::handOver(const session::Proposal& words, const QString& next) {
    record(m_desk.propose(std::vector{words}), next.isEmpty()
                                                   ? tr("The words for the next shift are recorded.")
                                                   : tr("Handed over to %1.").arg(next));
    if (!next.isEmpty()) record(m_desk.takeTablet(next.toStdString()), {});
}

void DayPage::close(const std::vector<session::Proposal>& proposals, const QString& by) {
    m_closing = m_desk.proposeAs(by.toStdString(), proposals);
    record(*m_closing, tr("The day is closed."));
}

void DayPage::tellCopies() {
    m_desk.askForCopies({}, [this](const Result<Message>& stand) {
        m_panel->setCopies(stand ? speech().say(*stand) : speech().say(stand.error()));
    });
}

void DayPage::print() {
    if (!m_sheet) return;
    auto* printer = new QPrinter{QPrinter::HighResolution};
    printer->setPageSize(QPageSize{m_paper->currentIndex() == 0 ? QPageSize::A4 : QPageSize::Letter});
    printer->setDocName(m_view->accessibleName());
    auto* dialog = new QPrintDialog{printer, this};
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QObject::destroyed, this, [printer] { delete printer; });
    connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this,
            [this, sheet = *m_sheet](QPrinter* to) {
                if (!report::printOn(*to, sheet, style()))
                    m_messages->post(widgets::Weight::error, tr("The printer did not take the sheet."));
            });
    dialog->open();
}

void DayPage::save(const Form& form) {
    if (!m_sheet) return;
    const auto date = chosenDay();
    auto* dialog = new QFileDialog{this, tr("Save the sheet")};
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(form.suffix);
    dialog->setNameFilter(QStringLiteral("*.") + form.suffix);
    dialog->selectFile((date ? QStringLiteral("day-sheet-") + isoOf(*date) : QStringLiteral("season")) +
                       u'.' + form.suffix);
    connect(dialog, &QFileDialog::fileSelected, this,
            [this, form](const QString& path) { saveAs(form, path); });
    dialog->open();
}

void DayPage::saveAs(const Form& form, const QString& path) {
    if (!m_sheet) return;
    const auto written = writeFileAtomically(path.toStdString(), form.bytes(*m_sheet).toStdString());
    if (written) {
        m_messages->post(widgets::Weight::note, tr("Saved: %1").arg(path));
    } else {
        m_messages->post(widgets::Weight::error, speech().say(written.error()));
    }
}

void DayPage::copyMessage() {
    if (!m_sheet || !chosenDay()) return;
    QGuiApplication::clipboard()->setText(QString::fromStdString(words::messageText(*m_sheet, style())));
    m_messages->post(widgets::Weight::note, tr("The day's sum is copied: paste it into a message."));
}

void DayPage::retranslate() {
    m_dayTitle->setText(tr("Day"));
    m_day->setAccessibleName(tr("Day"));
    m_paper->setAccessibleName(tr("Paper"));
    m_print->setText(tr("Print"));
    m_copy->setText(tr("Copy message"));
    for (const auto& [button, form] : m_forms) button->setText(tr("Save %1").arg(form.suffix.toUpper()));
    m_daysOf = nullptr;
    refresh();
}

void DayPage::followLook() {
    const int height = m_appearance.pixels(settings::kControlMillimetres);
    for (QWidget* control : std::initializer_list<QWidget*>{m_day, m_paper, m_print, m_copy})
        control->setMinimumHeight(height);
    for (const auto& [button, form] : m_forms) button->setMinimumHeight(height);
}

void DayPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
    tellCopies();
}

void DayPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

std::vector<std::pair<QString, QString>> dayKeys() {
    return {{DayPage::tr("Alt+Left, Alt+Right"), DayPage::tr("The day before, the day after")},
            {QStringLiteral("Ctrl+P"), DayPage::tr("Print the sheet")},
            {QStringLiteral("Ctrl+S"), DayPage::tr("Save it as a PDF")},
            {QStringLiteral("Ctrl+M"), DayPage::tr("Copy its sum for a message")}};
}

}  // namespace treadwell::day_page
