#include "app/desktop/practice/real_day_view.h"

#include "app/desktop/fill/id_box.h"
#include "app/desktop/practice/bands_view.h"
#include "app/desktop/practice/certificate_file.h"
#include "app/desktop/practice/coverage_view.h"
#include "app/desktop/practice/place_form.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/choice_box.h"
#include "core/base/atomic_file.h"

#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>

namespace treadwell::practice_page {

RealDayView::RealDayView(desk::SeasonDesk& desk, const settings::Appearance& look, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{look},
      m_choices{new QWidget{this}},
      m_silo{new widgets::ChoiceBox{look}},
      m_day{new widgets::ChoiceBox{look}},
      m_list{new QListWidget},
      m_tractor{new widgets::ChoiceBox{look}},
      m_attach{new QPushButton},
      m_lesson{new QPushButton},
      m_place{new PlaceForm{look}},
      m_state{new QLabel},
      m_map{new CoverageView{look}},
      m_layers{new QTableWidget},
      m_wrong{new samples_page::LinesPanel{look, QStringLiteral("dayWrong")}},
      m_files{new samples_page::LinesPanel{look, QStringLiteral("dayFiles")}},
      m_opinionTitle{new QLabel},
      m_bands{new BandsView{look}},
      m_opinionText{new QLabel} {
    makeChoices();
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeMiddle(), 1);
    layout->addWidget(makeSide());
    connectAll();
    retranslate();
}

void RealDayView::connectAll() {
    connect(m_silo, &QComboBox::currentIndexChanged, this, &RealDayView::fillDays);
    connect(m_day, &QComboBox::currentIndexChanged, this, &RealDayView::fillTracks);
    connect(m_list, &QListWidget::itemChanged, this, [this](const QListWidgetItem* item) {
        const Hash& hash = m_tracks[static_cast<std::size_t>(m_list->row(item))].track.sha256;
        item->checkState() == Qt::Checked ? static_cast<void>(m_leftOut.erase(hash))
                                          : static_cast<void>(m_leftOut.insert(hash));
        ask();
    });
    connect(m_layers, &QTableWidget::currentCellChanged, this, &RealDayView::showLayer);
    connect(m_attach, &QPushButton::clicked, this, &RealDayView::askTrack);
    connect(m_lesson, &QPushButton::clicked, this, &RealDayView::askLesson);
    connect(m_place, &PlaceForm::failed, this, &RealDayView::failed);
    connect(m_place, &PlaceForm::placed, this, [this](const farm::SiloPlace& place) {
        const auto silo = fill::chosenIn<farm::SiloId>(*m_silo);
        if (silo) propose(entries::SiloPlaced{*silo, place}, m_desk.now());
    });
    connect(&m_work, &TrackWork::progressed, this,
            [this](int percent) { m_state->setText(tr("Reading the tracks: %1 %").arg(percent)); });
    connect(&m_work, &TrackWork::driven, this, [this](auto driven) {
        m_driven = std::move(driven);
        showDriven(*m_driven);
    });
    connect(&m_work, &TrackWork::replayed, this, [this](auto opinion) {
        m_opinion = std::move(opinion);
        showOpinion(*m_opinion);
    });
    connect(&m_work, &TrackWork::lookedAt, this, [this](const auto& attaching) { take(*attaching); });
    connect(&m_desk, &desk::SeasonDesk::committed, this, &RealDayView::follow);
    connect(&m_desk, &desk::SeasonDesk::changed, this, &RealDayView::follow);
    connect(&m_desk, &desk::SeasonDesk::failed, this, [this](desk::Ticket ticket, const Error& error) {
        if (m_asked.erase(ticket) > 0) emit failed(error);
    });
    connect(&m_appearance, &settings::Appearance::changed, this, &RealDayView::retranslate);
}

fill::Speech RealDayView::speech() const {
    return {m_appearance.units(), m_desk.season()->zone()};
}

const season::Day* RealDayView::day() const {
    const int row = m_day->currentIndex();
    return row < 0 ? nullptr : m_desk.season()->day(m_days[static_cast<std::size_t>(row)].day);
}

/// Only while it is seen: what is not looked at is not read.
void RealDayView::follow() {
    if (!isVisible() || m_shown == m_desk.season()) return;
    m_shown = m_desk.season();
    const auto silo = fill::chosenIn<farm::SiloId>(*m_silo);
    const auto tractor = fill::chosenIn<farm::TractorId>(*m_tractor);
    {
        const QSignalBlocker quietSilo{m_silo};
        m_silo->clear();
        fill::fillBox(*m_silo, m_shown->farm().silos, silo);
        m_tractor->clear();
        fill::fillBox(*m_tractor, m_shown->farm().tractors, tractor);
    }
    m_silo->setVisible(m_silo->count() > 1);
    m_attach->setEnabled(m_tractor->count() > 0);
    fillDays();
}

void RealDayView::fillDays() {
    const auto silo = fill::chosenIn<farm::SiloId>(*m_silo);
    const QVariant held = m_day->currentData();
    m_days = silo ? recordedDays(*m_desk.season(), *silo, m_desk.now(), m_appearance.units())
                  : std::vector<DayRow>{};
    {
        const QSignalBlocker quiet{m_day};
        m_day->clear();
        for (const DayRow& row : m_days) {
            m_day->addItem(row.text, QString::fromStdString(toIso8601(row.day)));
            if (m_day->itemData(m_day->count() - 1) == held) m_day->setCurrentIndex(m_day->count() - 1);
        }
    }
    m_lesson->setEnabled(!m_days.empty());
    fillTracks();
}

void RealDayView::fillTracks() {
    m_tracks = day() == nullptr ? std::vector<TrackRow>{} : trackRows(*m_desk.season(), *day());
    {
        const QSignalBlocker quiet{m_list};
        m_list->clear();
        for (const TrackRow& row : m_tracks) {
            auto* item = new QListWidgetItem{row.text, m_list};
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
            item->setCheckState(m_leftOut.contains(row.track.sha256) ? Qt::Unchecked : Qt::Checked);
            item->setSizeHint({0, std::max(m_appearance.pixels(settings::kControlMillimetres),
                                           2 * m_list->fontMetrics().height() + 8)});
        }
    }
    ask();
}

void RealDayView::ask() {
    m_driven.reset();
    m_opinion.reset();
    const auto silo = fill::chosenIn<farm::SiloId>(*m_silo);
    const bool placed = silo && m_desk.season()->farm().places.contains(*silo);
    m_place->setVisible(silo && !placed);
    showSilent();
    if (!silo || day() == nullptr) return;
    DayQuestion question{
        m_desk.season(), *silo, m_days[static_cast<std::size_t>(m_day->currentIndex())].at, {}};
    for (const TrackRow& row : m_tracks) {
        if (placed && !m_leftOut.contains(row.track.sha256)) question.tracks.push_back(row.track);
    }
    if (!question.tracks.empty()) m_state->setText(tr("Reading the tracks"));
    m_opinionText->setText(tr("The day is being replayed."));
    m_work.ask(std::move(question));
}

/// Nothing has been read yet, and why.
void RealDayView::showSilent() {
    m_map->clear();
    m_layers->setRowCount(0);
    m_wrong->hide();
    m_files->hide();
    m_bands->setBands({}, {});
    m_opinionText->setText({});
    if (m_days.empty()) {
        m_state->setText(tr("No crop was tipped here yet: there is no day to look back on."));
    } else if (m_tracks.empty()) {
        m_state->setText(tr("No track of this day is attached: choose the tractor and attach its file."));
    } else if (!m_place->isHidden()) {
        m_state->setText(tr("A track can be laid once it is recorded where the silo lies."));
    } else {
        m_state->setText(tr("No track is chosen."));
    }
    fitSide();
}

void RealDayView::showDriven(const Result<Driven>& driven) {
    if (!driven) {
        m_state->setText(speech().say(driven.error()));
        return;
    }
    const auto rows = passesRows(*driven, m_appearance.units());
    {
        const QSignalBlocker quiet{m_layers};
        m_layers->setRowCount(static_cast<int>(rows.size()));
        for (int i = 0; i < m_layers->rowCount(); ++i) {
            // The newest layer stands first, as it lies.
            const PassesRow& row = rows[rows.size() - 1 - static_cast<std::size_t>(i)];
            const std::array texts{row.number, row.passes, row.enough, row.noTyre, row.verdict};
            for (std::size_t k = 0; k < texts.size(); ++k) {
                auto* item = new QTableWidgetItem{texts[k]};
                QFont bold = m_layers->font();
                bold.setBold(row.tooFew || bold.bold());
                item->setFont(bold);
                item->setData(Qt::UserRole, static_cast<qulonglong>(row.layer));
                m_layers->setItem(i, static_cast<int>(k), item);
            }
        }
        m_layers->setCurrentCell(rows.empty() ? -1 : 0, 0);
    }
    m_wrong->setLines(findingLines(*driven, speech()));
    m_wrong->setVisible(!rows.empty());
    m_files->setLines(trackLines(*driven));
    m_files->show();
    showLayer();
    fitSide();
}

void RealDayView::showLayer() {
    const QTableWidgetItem* item =
        m_layers->currentRow() < 0 ? nullptr : m_layers->item(m_layers->currentRow(), 0);
    if (!m_driven || !*m_driven) return;
    if (item == nullptr) {
        m_map->clear();
        m_state->setText(
            tr("No track lies on a layer of this silo: check where it lies, its direction and the clocks."));
        return;
    }
    m_map->setMap(mapOf(**m_driven, item->data(Qt::UserRole).toULongLong()));
    m_state->setText(tr("Layer %1. %2").arg(item->text(), m_map->sentence()));
}

void RealDayView::showOpinion(const Result<Opinion>& opinion) {
    if (!opinion) {
        m_opinionText->setText(speech().say(opinion.error()));
    } else if (day() != nullptr) {
        m_bands->setBands(bandsOf(*opinion, *day()), m_desk.season()->farm().rules.minimumDensity);
        m_opinionText->setText(
            tr("Full bars: the field regression; hatched: the simulation of every wheel pass; dashed: the "
               "density that is wanted. The simulation was fitted to the regression: it is a second opinion "
               "on how the passes were spread, no second measurement."));
    }
    fitSide();
}

void RealDayView::attach(const QString& file) {
    const auto tractor = fill::chosenIn<farm::TractorId>(*m_tractor);
    if (!tractor) return;
    m_attach->setEnabled(false);
    m_state->setText(tr("Reading %1").arg(file));
    m_work.lookAt(m_desk.season(), file.toStdString(), *tractor);
}

void RealDayView::take(const Result<passes::Attaching>& attaching) {
    m_attach->setEnabled(true);
    if (!attaching) {
        ask();
        return emit failed(attaching.error());
    }
    m_leftOut.erase(attaching->track.sha256);
    const LocalDay driven = m_desk.season()->zone().dayOf(attaching->track.begin);
    for (std::size_t i = 0; i < m_days.size(); ++i) {
        if (m_days[i].day == driven) m_day->setCurrentIndex(static_cast<int>(i));
    }
    propose(attaching->track, attaching->track.begin, attaching->target);
}

void RealDayView::propose(entries::Body body, Instant happened, std::optional<entries::EntryId> target) {
    m_asked.insert(m_desk.propose({session::Proposal{std::move(body), happened, target}}));
}

void RealDayView::askTrack() {
    auto* dialog = new QFileDialog{
        this, tr("Attach a track"), {}, tr("Tracks (*.gpx *.nmea *.txt *.log);;All files (*)")};
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QFileDialog::fileSelected, this, &RealDayView::attach);
    dialog->open();
}

void RealDayView::saveLesson(const QString& file) {
    const auto silo = m_desk.season()->farm().silos.find(*fill::chosenIn<farm::SiloId>(*m_silo));
    const std::string title = tr("As it was: %1").arg(m_day->currentText()).toStdString();
    // A lesson needs an English title beside that of the screen.
    const std::string language = lessonLanguage(m_appearance.units());
    const std::string english = language == "en" ? title : "As it was: " + toIso8601(day()->date);
    auto lesson = practice::lessonFromDay(*m_desk.season(), *day(), silo->second, {"en", english, {}, {}});
    if (!lesson) return emit failed(lesson.error());
    if (language != "en") lesson->texts.push_back({language, title, {}, {}});
    const auto written = writeFileAtomically(file.toStdString(), practice::toJson(*lesson) + '\n');
    if (!written) return emit failed(written.error());
    emit lessonMade(file);
}

void RealDayView::askLesson() {
    auto* dialog = new QFileDialog{this, tr("A lesson of this day"), {}, QStringLiteral("*.json")};
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QStringLiteral("json"));
    connect(dialog, &QFileDialog::fileSelected, this, &RealDayView::saveLesson);
    dialog->open();
}

/// Lines that wrap take their height from the width: without being told, the scroll area would squeeze them.
void RealDayView::fitSide() {
    QWidget* side = m_wrong->parentWidget();
    side->layout()->activate();
    side->setMinimumHeight(side->layout()->totalHeightForWidth(side->width()));
}

void RealDayView::retranslate() {
    m_silo->setAccessibleName(tr("Silo"));
    m_day->setAccessibleName(tr("Day"));
    m_list->setAccessibleName(tr("Tracks of the day"));
    m_tractor->setAccessibleName(tr("Tractor of the track"));
    m_attach->setText(tr("Attach its track"));
    m_lesson->setText(tr("A lesson of this day"));
    m_layers->setAccessibleName(tr("Passes over each layer"));
    m_layers->setHorizontalHeaderLabels(
        {tr("Layer"), tr("Passes"), tr("Three or more"), tr("No tyre"), tr("Rule: three")});
    m_wrong->setTitle(tr("What went wrong, and where"));
    m_files->setTitle(tr("The tracks"));
    m_opinionTitle->setText(tr("Simulation beside the regression: %1, with the 80 % band")
                                .arg(m_appearance.units().symbol(Dimension::dryDensity)));
    m_shown.reset();
    follow();
}

void RealDayView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

void RealDayView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    follow();
}

void RealDayView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitSide();
}

}  // namespace treadwell::practice_page
