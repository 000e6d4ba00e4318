#include "app/desktop/widgets/choice_box.h"

#include <QPainter>

namespace treadwell::widgets {

namespace {

constexpr double kArrow = 5.0;   // pixels, half its width
constexpr double kInset = 16.0;  // from the right edge

}  // namespace

ChoiceBox::ChoiceBox(const settings::Appearance& appearance, QWidget* parent)
    : QComboBox{parent}, m_appearance{appearance} {}

void ChoiceBox::paintEvent(QPaintEvent* event) {
    QComboBox::paintEvent(event);
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_appearance.theme().ink);
    const QPointF tip{width() - kInset, height() / 2.0 + kArrow / 2.0};
    painter.drawPolygon(QPolygonF{{tip, tip + QPointF{-kArrow, -kArrow}, tip + QPointF{kArrow, -kArrow}}});
}

}  // namespace treadwell::widgets
