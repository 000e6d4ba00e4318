#include "app/desktop/widgets/truck_board.h"

#include "app/desktop/widgets/truck_button.h"

#include <QEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>
#include <chrono>

namespace treadwell::widgets {

namespace {

constexpr std::chrono::milliseconds kTouchIsFresh{2000};

}  // namespace

TruckBoard::TruckBoard(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_list{nullptr},
      m_scroll{new QScrollArea},
      m_undo{new QPushButton} {
    m_undo->setObjectName(QStringLiteral("undo"));
    auto* page = new QWidget;
    m_list = new QVBoxLayout{page};
    m_list->setContentsMargins(0, 0, 0, 0);
    m_list->addStretch(1);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(page);

    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_scroll, 1);
    layout->addWidget(m_undo);

    m_freshTouch.setSingleShot(true);
    m_freshTouch.setInterval(kTouchIsFresh);
    connect(&m_freshTouch, &QTimer::timeout, this, &TruckBoard::arrange);
    connect(m_undo, &QPushButton::clicked, this, &TruckBoard::undoRequested);
    connect(&appearance, &settings::Appearance::changed, this, &TruckBoard::refresh);
    refresh();
}

void TruckBoard::setTrucks(const std::vector<TruckView>& trucks) {
    const auto isGone = [&trucks](const TruckButton* button) {
        return std::none_of(trucks.begin(), trucks.end(),
                            [button](const TruckView& truck) { return truck.id == button->truck().id; });
    };
    for (TruckButton* button : m_buttons) {
        if (!isGone(button)) continue;
        m_list->removeWidget(button);
        button->hide();
        button->deleteLater();
    }
    std::erase_if(m_buttons, isGone);
    for (const TruckView& truck : trucks) {
        const auto held = std::find_if(m_buttons.begin(), m_buttons.end(), [&truck](TruckButton* button) {
            return button->truck().id == truck.id;
        });
        if (held != m_buttons.end()) {
            (*held)->setTruck(truck);
        } else {
            m_buttons.push_back(addButton(truck));
        }
    }
    if (!m_freshTouch.isActive()) arrange();
}

TruckButton* TruckBoard::addButton(const TruckView& truck) {
    auto* button = new TruckButton{m_appearance, truck};
    const Uuid id = truck.id;
    connect(button, &TruckButton::loadRequested, this, [this, id] {
        m_freshTouch.start();
        emit loadRequested(id);
    });
    connect(button, &TruckButton::detailRequested, this, [this, id] { emit detailRequested(id); });
    m_list->insertWidget(static_cast<int>(m_buttons.size()), button);
    return button;
}

void TruckBoard::arrange() {
    std::stable_sort(m_buttons.begin(), m_buttons.end(), [](const TruckButton* a, const TruckButton* b) {
        return a->truck().lastLoad > b->truck().lastLoad;
    });
    QWidget* before = nullptr;
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        TruckButton* button = m_buttons[i];
        if (m_list->indexOf(button) != static_cast<int>(i)) {
            m_list->removeWidget(button);
            m_list->insertWidget(static_cast<int>(i), button);
        }
        if (before != nullptr) QWidget::setTabOrder(before, button);
        before = button;
    }
    keepWidth();
    fitGaps();
}

/// Closer together before any of them must be scrolled to.
void TruckBoard::fitGaps() {
    const auto trucks = static_cast<int>(m_buttons.size());
    const int wide = m_appearance.pixels(settings::kGapMillimetres);
    const int needed = trucks * (m_appearance.pixels(settings::kYardButtonMillimetres) + wide) - wide;
    const bool fits = needed <= m_scroll->viewport()->height();
    m_list->setSpacing(fits ? wide : m_appearance.pixels(settings::kGapMillimetres / 2));
}

void TruckBoard::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitGaps();
}

void TruckBoard::keepWidth() {
    // The area would else let its scroll bar cover the arrows.
    m_scroll->setMinimumWidth(m_scroll->widget()->minimumSizeHint().width() +
                              m_scroll->verticalScrollBar()->sizeHint().width());
}

void TruckBoard::setUndo(const std::optional<QString>& lastLoad) {
    m_lastLoad = lastLoad;
    refresh();
}

std::vector<Uuid> TruckBoard::order() const {
    std::vector<Uuid> ids;
    for (const TruckButton* button : m_buttons) ids.push_back(button->truck().id);
    return ids;
}

void TruckBoard::refresh() {
    setAccessibleName(tr("Trucks"));
    // A name may hold the sign that marks a shortcut.
    QString name = m_lastLoad.value_or(QString{});
    name.replace(QStringLiteral("&"), QStringLiteral("&&"));
    m_undo->setText(m_lastLoad ? tr("Undo: %1").arg(name) : tr("Nothing to undo"));
    m_undo->setEnabled(m_lastLoad.has_value());
    m_undo->setMinimumHeight(m_appearance.pixels(settings::kYardButtonMillimetres));
    layout()->setSpacing(m_appearance.pixels(settings::kGapMillimetres));
    for (TruckButton* button : m_buttons) button->setTruck(TruckView{button->truck()});
    keepWidth();
    fitGaps();
}

void TruckBoard::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::widgets
