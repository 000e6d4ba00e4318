#include "app/desktop/copies_dialog.h"

#include "app/desktop/fill/say.h"
#include "core/session/codes.h"

#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QVBoxLayout>

namespace treadwell {

namespace {

constexpr int kWidth = 520;

QLabel* sentence() {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

}  // namespace

CopiesDialog::CopiesDialog(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent)
    : QDialog{parent},
      m_desk{desk},
      m_appearance{appearance},
      m_state{sentence()},
      m_refusal{sentence()},
      m_choose{addButton("choosePlace", tr("Choose a folder…"))},
      m_copyNow{addButton("copyNow", tr("Make a copy now"))},
      m_forget{addButton("forgetPlace", tr("Make no more copies"))} {
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Copies after the day's close"));
    setMinimumWidth(kWidth);
    auto* layout = new QVBoxLayout{this};
    for (QLabel* label : {m_state, m_refusal}) layout->addWidget(label);
    layout->addStretch(1);
    auto* leave = addButton("leave", tr("Close"));
    for (QPushButton* button : {m_choose, m_copyNow, m_forget, leave}) layout->addWidget(button);
    connect(m_choose, &QPushButton::clicked, this, &CopiesDialog::chooseFolder);
    connect(m_copyNow, &QPushButton::clicked, this, [this] { wish(desk::CopyNow{}); });
    connect(m_forget, &QPushButton::clicked, this, [this] { wish(std::filesystem::path{}); });
    connect(leave, &QPushButton::clicked, this, &QDialog::accept);
    m_refusal->hide();
    ask({});
}

QString CopiesDialog::said() const {
    return m_refusal->isHidden() ? m_state->text() : m_state->text() + u'\n' + m_refusal->text();
}

QPushButton* CopiesDialog::addButton(const char* name, const QString& text) {
    auto* button = new QPushButton{text};
    button->setObjectName(QLatin1String{name});
    button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    return button;
}

void CopiesDialog::chooseFolder() {
    auto* chooser = new QFileDialog{this, tr("A folder for the copies, such as a stick")};
    chooser->setAttribute(Qt::WA_DeleteOnClose);
    chooser->setFileMode(QFileDialog::Directory);
    chooser->setOption(QFileDialog::ShowDirsOnly);
    connect(chooser, &QFileDialog::fileSelected, this, [this](const QString& folder) {
        wish(std::filesystem::path{QFile::encodeName(folder).toStdString()});
    });
    chooser->open();
}

void CopiesDialog::wish(const desk::CopyWish& wish) {
    m_refusal->hide();
    ask(wish);
}

/// The disk may be slow, and the dialog gone when it answers.
void CopiesDialog::ask(const desk::CopyWish& wish) {
    for (QPushButton* button : {m_choose, m_copyNow, m_forget}) button->setEnabled(false);
    m_desk.askForCopies(wish, [asking = QPointer{this}](const Result<Message>& stand) {
        if (asking) asking->tell(stand);
    });
}

void CopiesDialog::tell(const Result<Message>& stand) {
    const fill::Speech speech{m_appearance.units(), m_desk.season()->zone()};
    if (!stand) {
        m_refusal->setText(speech.say(stand.error()));
        m_refusal->show();
        return ask({});  // the place may be another matter now
    }
    const bool chosen = stand->code != code::copiesNone;
    m_state->setText(speech.say(*stand));
    m_choose->setText(chosen ? tr("Choose another folder…") : tr("Choose a folder…"));
    m_choose->setEnabled(true);
    m_copyNow->setEnabled(chosen);
    m_forget->setEnabled(chosen);
}

}  // namespace treadwell
