#include "app/desktop/practice/trainee_bar.h"

#include "app/desktop/widgets/choice_box.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTimer>

namespace treadwell::practice_page {

TraineeBar::TraineeBar(const settings::Appearance& look, std::filesystem::path file, QWidget* parent)
    : QWidget{parent},
      m_file{std::move(file)},
      m_names{new widgets::ChoiceBox{look}},
      m_new{new QPushButton},
      m_forget{new QPushButton} {
    m_writer.setMaxThreadCount(1);  // so that the last writing stands
    m_names->setObjectName(QStringLiteral("practiceTrainee"));
    m_new->setObjectName(QStringLiteral("practiceNewTrainee"));
    m_forget->setObjectName(QStringLiteral("practiceForget"));
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_names, 1);
    row->addWidget(m_new);
    row->addWidget(m_forget);
    for (QWidget* widget :
         {static_cast<QWidget*>(m_names), static_cast<QWidget*>(m_new), static_cast<QWidget*>(m_forget)})
        widget->setMinimumHeight(look.pixels(settings::kControlMillimetres));
    m_names->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    auto read = practice::readProgress(m_file);
    if (read) {
        m_progress = *std::move(read);
    } else {
        m_unreadable = read.error();
        QTimer::singleShot(0, this, [this] { emit failed(*m_unreadable); });
    }
    connect(m_names, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_chosen = index <= 0 ? std::string{} : m_names->currentText().toStdString();
        m_forget->setEnabled(index > 0);
        emit changed();
    });
    connect(m_new, &QPushButton::clicked, this, &TraineeBar::askName);
    connect(m_forget, &QPushButton::clicked, this, &TraineeBar::askForget);
    retranslate();
}

const practice::Trainee* TraineeBar::trainee() const {
    return m_chosen.empty() ? nullptr : m_progress.called(m_chosen);
}

void TraineeBar::fill() {
    const QSignalBlocker quiet{m_names};
    m_names->clear();
    m_names->addItem(tr("Nobody named"));
    for (const practice::Trainee& trainee : m_progress.trainees)
        m_names->addItem(QString::fromStdString(trainee.name));
    const int chosen = m_chosen.empty() ? 0 : m_names->findText(QString::fromStdString(m_chosen));
    m_names->setCurrentIndex(std::max(0, chosen));
    m_forget->setEnabled(m_names->currentIndex() > 0);
}

void TraineeBar::choose(const QString& name) {
    m_chosen = name.simplified().toStdString();
    if (!m_chosen.empty() && m_progress.called(m_chosen) == nullptr) {
        m_progress.add(m_chosen);
        write();
    }
    fill();
    emit changed();
}

void TraineeBar::note(const std::string& lesson, double score, bool byHand, Instant now) {
    if (m_chosen.empty()) return;
    m_progress.note(m_chosen, lesson, score, byHand, now);
    write();
    emit changed();
}

void TraineeBar::forgetChosen() {
    m_progress.remove(m_chosen);
    m_chosen.clear();
    write();
    fill();
    emit changed();
}

void TraineeBar::write() {
    if (m_unreadable) return emit failed(*m_unreadable);
    m_writer.start([this, file = m_file, progress = m_progress] {
        const auto written = practice::writeProgress(file, progress);
        if (written) return;
        QMetaObject::invokeMethod(
            this, [this, error = written.error()] { emit failed(error); }, Qt::QueuedConnection);
    });
}

void TraineeBar::askName() {
    auto* asked = new QInputDialog{this};
    asked->setAttribute(Qt::WA_DeleteOnClose);
    asked->setWindowTitle(tr("Who practises"));
    asked->setLabelText(tr("The name stays on this machine until it is deleted."));
    connect(asked, &QInputDialog::textValueSelected, this, &TraineeBar::choose);
    asked->open();
}

void TraineeBar::askForget() {
    auto* box = new QMessageBox{
        QMessageBox::Question, tr("Delete progress"),
        tr("Delete %1 and all that was practised, for good?").arg(QString::fromStdString(m_chosen)),
        QMessageBox::Cancel, this};
    box->setAttribute(Qt::WA_DeleteOnClose);
    QPushButton* forget = box->addButton(tr("Delete"), QMessageBox::DestructiveRole);
    connect(forget, &QPushButton::clicked, this, &TraineeBar::forgetChosen);
    box->open();
}

void TraineeBar::retranslate() {
    m_names->setAccessibleName(tr("Who practises"));
    m_new->setText(tr("New"));
    m_forget->setText(tr("Delete"));
    fill();
}

void TraineeBar::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::practice_page
