#include "app/desktop/widgets/truck_button.h"

#include "app/desktop/widgets/long_press.h"

#include <QHBoxLayout>
#include <QMouseEvent>
#include <QStyleOptionButton>
#include <QStylePainter>
#include <chrono>

namespace treadwell::widgets {

namespace {

constexpr double kNameSize = 1.4;
constexpr double kFaceMillimetres = 48.0;

}  // namespace

TruckFace::TruckFace(const settings::Appearance& appearance) : m_appearance{appearance} {
    m_held.setSingleShot(true);
    m_held.setInterval(kLongPress);
    connect(&m_held, &QTimer::timeout, this, [this] {
        setDown(false);  // the release is no touch any more
        emit longPressed();
    });
}

void TruckFace::setTruck(const TruckView& truck) {
    m_truck = truck;
    setAccessibleName(tr("Log a load of %1").arg(truck.name));
    const QString pending = pendingText();
    setAccessibleDescription(
        pending.isEmpty() ? loadText()
                          : tr("%1, %2", "usual load and what is being saved").arg(loadText(), pending));
    update();
}

QString TruckFace::loadText() const {
    if (!m_truck.usualLoad) return tr("no usual load known");
    return tr("usually %1").arg(m_appearance.units().text(*m_truck.usualLoad));
}

QString TruckFace::pendingText() const {
    if (m_truck.pending <= 0) return {};
    return tr("saving %1", "loads that wait for their commit").arg(m_truck.pending);
}

void TruckFace::paintEvent(QPaintEvent*) {
    QStylePainter painter{this};
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);

    const settings::Theme& theme = m_appearance.theme();
    painter.setPen(isDown() ? theme.onAccent : theme.ink);
    const int gap = m_appearance.pixels(settings::kGapMillimetres);
    const QRect inside = rect().adjusted(gap, 0, -gap, 0);
    QFont nameFont = font();
    nameFont.setBold(true);
    nameFont.setPointSizeF(font().pointSizeF() * kNameSize);
    const QFontMetrics name{nameFont};
    const QFontMetrics small{font()};
    const int top = inside.center().y() - (name.height() + small.height()) / 2;
    const QRect nameRow{inside.left(), top, inside.width(), name.height()};
    const QRect loadRow{inside.left(), top + name.height(), inside.width(), small.height()};

    const QString pending = pendingText();
    const int pendingWidth = pending.isEmpty() ? 0 : small.horizontalAdvance(pending) + gap;
    painter.setFont(nameFont);
    painter.drawText(nameRow, Qt::AlignVCenter,
                     name.elidedText(m_truck.name, Qt::ElideRight, nameRow.width()));
    painter.setFont(font());
    painter.drawText(loadRow, Qt::AlignVCenter,
                     small.elidedText(loadText(), Qt::ElideRight, loadRow.width() - pendingWidth));
    painter.drawText(loadRow, Qt::AlignVCenter | Qt::AlignRight, pending);
}

void TruckFace::mousePressEvent(QMouseEvent* event) {
    QPushButton::mousePressEvent(event);
    if (isDown()) m_held.start();
}

void TruckFace::mouseReleaseEvent(QMouseEvent* event) {
    m_held.stop();
    QPushButton::mouseReleaseEvent(event);
}

TruckButton::TruckButton(const settings::Appearance& appearance, const TruckView& truck)
    : m_appearance{appearance}, m_face{new TruckFace{appearance}}, m_details{new QToolButton} {
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_face, 1);
    layout->addWidget(m_details);
    m_face->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_details->setText(QString{u'▸'});
    connect(m_face, &QPushButton::clicked, this, &TruckButton::loadRequested);
    connect(m_face, &TruckFace::longPressed, this, &TruckButton::detailRequested);
    connect(m_details, &QToolButton::clicked, this, &TruckButton::detailRequested);
    setTruck(truck);
}

void TruckButton::setTruck(const TruckView& truck) {
    m_truck = truck;
    m_face->setTruck(truck);
    const int height = m_appearance.pixels(settings::kYardButtonMillimetres);
    m_face->setFixedHeight(height);
    m_face->setMinimumWidth(m_appearance.pixels(kFaceMillimetres));
    m_details->setFixedSize(m_appearance.pixels(settings::kControlMillimetres), height);
    m_details->setAccessibleName(tr("Details of a load of %1").arg(truck.name));
    m_details->setToolTip(m_details->accessibleName());
    layout()->setSpacing(m_appearance.pixels(settings::kGapMillimetres));
}

}  // namespace treadwell::widgets
