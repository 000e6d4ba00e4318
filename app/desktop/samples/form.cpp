#include "app/desktop/samples/form.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/caution_mark.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <iterator>

namespace treadwell::samples_page {

namespace {

bool canTake(const widgets::QuantitySpinBox* box) {
    return !box->isHidden() && box->isEnabled();
}

void takeInHand(widgets::QuantitySpinBox* box) {
    box->setFocus(Qt::TabFocusReason);
    box->selectAll();
}

}  // namespace

Form::Form(const settings::Appearance& appearance, const QString& name, QWidget* parent)
    : QFrame{parent},
      m_appearance{appearance},
      m_grid{new QGridLayout},
      m_mark{new QLabel},
      m_running{new QLabel},
      m_record{new QPushButton} {
    setObjectName(name);
    auto* layout = new QVBoxLayout{this};
    auto* line = new QHBoxLayout;
    line->addWidget(m_mark, 0, Qt::AlignTop);
    line->addWidget(m_running, 1);
    layout->addLayout(m_grid);
    layout->addLayout(line);
    layout->addWidget(m_record);
    layout->addStretch(1);
    m_grid->setColumnStretch(1, 1);
    m_running->setTextFormat(Qt::PlainText);
    m_running->setWordWrap(true);
    m_running->setObjectName(name + QStringLiteral("Running"));
    m_record->setObjectName(name + QStringLiteral("Record"));
    m_mark->hide();
    connect(m_record, &QPushButton::clicked, this, &Form::record);
    connect(&appearance, &settings::Appearance::changed, this, &Form::followLook);
    followLook();
}

widgets::QuantitySpinBox* Form::addBox(const char* name, Dimension dimension, double lowest, double highest) {
    auto* box = new widgets::QuantitySpinBox{m_appearance, dimension};
    box->setObjectName(QLatin1String{name});
    box->setSiRange(lowest, highest);
    m_boxes.push_back(box);
    addRow(box);
    connect(box, &widgets::QuantitySpinBox::siEdited, this, &Form::follow);
    connect(box, &widgets::QuantitySpinBox::echoChanged, this, &Form::follow);
    connect(box->findChild<QLineEdit*>(), &QLineEdit::returnPressed, this, [this, box] { goOn(box); });
    return box;
}

QComboBox* Form::addChoice(const char* name) {
    auto* box = new widgets::ChoiceBox{m_appearance};
    box->setObjectName(QLatin1String{name});
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    addRow(box);
    return box;
}

void Form::addRow(QWidget* widget) {
    auto* title = new QLabel;
    title->setBuddy(widget);
    title->setWordWrap(true);  // bold letters are wide
    const int row = static_cast<int>(m_rows.size());
    m_grid->addWidget(title, row, 0);
    m_grid->addWidget(widget, row, 1);
    m_rows.emplace_back(widget, title);
    widget->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
}

void Form::setTitle(QWidget* row, const QString& title) {
    const auto found = std::ranges::find(m_rows, row, &std::pair<QWidget*, QLabel*>::first);
    found->second->setText(title);
    row->setAccessibleName(title);
}

void Form::showRow(QWidget* row, bool visible) {
    const auto found = std::ranges::find(m_rows, row, &std::pair<QWidget*, QLabel*>::first);
    row->setVisible(visible);
    found->second->setVisible(visible);
}

void Form::setItems(QComboBox* box, const QStringList& texts) {
    const QSignalBlocker quiet{box};
    const int chosen = std::max(0, box->currentIndex());
    box->clear();
    box->addItems(texts);
    box->setCurrentIndex(chosen);
}

void Form::setRecordText(const QString& text) {
    m_record->setText(text);
}

void Form::follow() {
    m_mark->hide();
    m_running->setText(running());
    m_running->setAccessibleName(m_running->text());
}

void Form::tellRefused(const QString& why) {
    m_mark->show();
    m_running->setText(tr("Not recorded: %1").arg(why));
    m_running->setAccessibleName(m_running->text());
}

const widgets::QuantitySpinBox* Form::wrongBox() const {
    const auto found = std::ranges::find_if(
        m_boxes, [](const widgets::QuantitySpinBox* box) { return !box->isHidden() && box->isWrong(); });
    return found == m_boxes.end() ? nullptr : *found;
}

void Form::goOn(QWidget* from) {
    const auto at = std::ranges::find(m_boxes, from);
    const auto next = std::find_if(std::next(at), m_boxes.end(), canTake);
    if (next == m_boxes.end()) return finish();
    takeInHand(*next);
}

std::vector<widgets::QuantitySpinBox*> Form::weighedBoxes() const {
    std::vector<widgets::QuantitySpinBox*> boxes;
    std::ranges::copy_if(m_boxes, std::back_inserter(boxes), [](const widgets::QuantitySpinBox* box) {
        return canTake(box) && box->dimension() == Dimension::dishMass;
    });
    return boxes;
}

void Form::takeWeight(AsFedMass weight) {
    const auto boxes = weighedBoxes();
    auto box = std::ranges::find_if(boxes, [](const auto* each) { return each->hasFocus(); });
    if (box == boxes.end())
        box = std::ranges::find_if(boxes, [](const auto* each) { return each->si() == 0; });
    if (box == boxes.end()) return tellRefused(tr("no field here waits for a weight"));
    if (weight < AsFedMass{}) return tellRefused(tr("the scale shows less than nothing: set it to zero"));
    (*box)->takeSi(weight.si());
    (*box)->setFocus(Qt::OtherFocusReason);
    if (const auto next = std::next(box); next != boxes.end()) takeInHand(*next);
}

void Form::finish() {
    record();
}

void Form::record() {
    if (const auto* wrong = wrongBox()) {
        return tellRefused(QStringLiteral("%1: %2").arg(wrong->accessibleName(), wrong->echo()));
    }
    if (const auto why = notYet()) return tellRefused(*why);
    auto entry = body();
    if (entry) {
        const auto valid = entries::validate(*entry);
        if (!valid) entry = Unexpected{valid.error()};
    }
    if (!entry) return tellRefused(fill::Speech{m_appearance.units(), FarmZone{}}.say(entry.error()));
    emit recorded(*entry);
    clear();
    follow();
}

void Form::clear() {
    for (widgets::QuantitySpinBox* box : m_boxes) box->setSi(0.0);
    for (widgets::QuantitySpinBox* box : m_boxes) {
        if (box->isHidden()) continue;
        box->setFocus(Qt::OtherFocusReason);
        box->selectAll();
        break;
    }
}

void Form::followLook() {
    const int side = fontMetrics().height();
    m_mark->setPixmap(
        widgets::cautionMark(m_appearance.theme()).pixmap(QSize{side, side}, devicePixelRatioF()));
    m_record->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
}

void Form::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() != QEvent::LanguageChange) return;
    retranslate();
    follow();
}

}  // namespace treadwell::samples_page
