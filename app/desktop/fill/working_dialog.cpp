#include "app/desktop/fill/working_dialog.h"

#include <QDialogButtonBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace treadwell::fill {

QString workingText(const density::Estimate& estimate, const density::Doubts& doubts, const Speech& speech) {
    QString text;
    for (const density::WorkingStep& step : estimate.working) {
        text += speech.say(step.what) + u'\n';
        text += QStringLiteral("    ") + QString::fromStdString(step.formula) + u'\n';
        const std::string_view citation = step.source.citation;
        if (!citation.empty()) {
            text += QStringLiteral("    ") +
                    QString::fromUtf8(citation.data(), static_cast<qsizetype>(citation.size())) + u'\n';
        }
    }
    if (!doubts.parts.empty()) text += u'\n';
    for (const density::Doubt& doubt : doubts.parts) text += speech.say(doubt.what) + u'\n';
    if (!doubts.next.empty()) text += u'\n';
    for (const density::Narrowing& narrowing : doubts.next) text += speech.say(narrowing.what) + u'\n';
    if (!estimate.warnings.empty()) text += u'\n';
    for (const Message& warning : estimate.warnings) text += speech.say(warning) + u'\n';
    return text;
}

WorkingDialog::WorkingDialog(const density::Estimate& estimate, const density::Doubts& doubts,
                             const Speech& speech, QWidget* parent)
    : QDialog{parent} {
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("The working"));
    resize(820, 560);
    auto* text = new QPlainTextEdit{workingText(estimate, doubts, speech)};
    text->setReadOnly(true);
    text->setAccessibleName(tr("The working"));
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    auto* layout = new QVBoxLayout{this};
    layout->addWidget(text);
    layout->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

}  // namespace treadwell::fill
