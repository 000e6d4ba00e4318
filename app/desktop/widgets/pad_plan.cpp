#include "app/desktop/widgets/pad_plan.h"

#include "app/desktop/widgets/tractor_chip.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadwell::widgets {

namespace {

constexpr std::array kZoneParts{0.58, 0.21, 0.21};  // of the width; none may be narrower than a chip
constexpr int kWall = 10;
constexpr int kZoneEdge = 6;  // of a zone, right of its chips

std::size_t placeOf(Zone zone) {
    return static_cast<std::size_t>(zone);
}

/// Where the chips of a zone begin, from its left.
int chipsFrom(const settings::Appearance& appearance, Zone zone) {
    const int gap = appearance.pixels(settings::kGapMillimetres);
    return zone == Zone::packing ? kWall + gap : gap;
}

}  // namespace

QString zoneName(Zone zone) {
    switch (zone) {
        case Zone::packing:
            return PadPlan::tr("Packing");
        case Zone::spreading:
            return PadPlan::tr("Spreading");
        case Zone::away:
            break;
    }
    return PadPlan::tr("Away");
}

PadPlan::PadPlan(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent}, m_appearance{appearance} {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    const auto follow = [this] {
        for (TractorChip* chip : m_chips) chip->setTractor(TractorView{chip->tractor()});
        layOut();
    };
    connect(&appearance, &settings::Appearance::changed, this, follow);
    layOut();
}

void PadPlan::setTractors(const std::vector<TractorView>& tractors) {
    const auto isGone = [&tractors](const TractorChip* chip) {
        return std::none_of(tractors.begin(), tractors.end(),
                            [chip](const TractorView& tractor) { return tractor.id == chip->tractor().id; });
    };
    for (TractorChip* chip : m_chips) {
        if (!isGone(chip)) continue;
        if (chip == m_picked) m_picked = nullptr;
        if (chip == m_dragged) m_dragged = nullptr;
        chip->hide();
        chip->deleteLater();
    }
    std::erase_if(m_chips, isGone);
    for (const TractorView& tractor : tractors) {
        const auto held = std::find_if(m_chips.begin(), m_chips.end(), [&tractor](const TractorChip* chip) {
            return chip->tractor().id == tractor.id;
        });
        TractorChip* chip = held != m_chips.end() ? *held : addChip();
        chip->setTractor(tractor);
    }
    layOut();
}

TractorChip* PadPlan::addChip() {
    auto* chip = new TractorChip{m_appearance, this};
    m_chips.push_back(chip);
    connect(chip, &TractorChip::clicked, this, [this, chip] { pick(m_picked == chip ? nullptr : chip); });
    connect(chip, &TractorChip::dragging, this, [this, chip] {
        pick(nullptr);
        m_dragged = chip;
        update();
    });
    connect(chip, &TractorChip::dropped, this, [this, chip](QPoint place) {
        m_dragged = nullptr;
        moveTo(chip, zoneAt(place));
    });
    connect(chip, &TractorChip::zoneAsked, this, [this, chip](int direction) {
        const int zone = static_cast<int>(chip->tractor().zone) + direction;
        if (zone >= 0 && zone < static_cast<int>(kZones.size())) moveTo(chip, static_cast<Zone>(zone));
    });
    connect(chip, &TractorChip::shareAsked, this,
            [this, chip](Share share) { emit tractorMoved(chip->tractor().id, Zone::packing, share); });
    connect(chip, &TractorChip::massAsked, this, [this, chip] { emit massRequested(chip->tractor().id); });
    chip->show();
    return chip;
}

QRect PadPlan::zoneRect(Zone zone) const {
    if (isUpright()) {
        // What is left over is the silo's.
        int top = zone == Zone::packing ? 0 : height() - neededHeight(Zone::away);
        if (zone == Zone::spreading) top -= neededHeight(Zone::spreading);
        const int high = zone == Zone::packing
                             ? height() - neededHeight(Zone::away) - neededHeight(Zone::spreading)
                             : neededHeight(zone);
        return {0, top, width(), high};
    }
    double left = 0.0;
    for (std::size_t i = 0; i < placeOf(zone); ++i) left += kZoneParts[i];
    const int from = static_cast<int>(left * width());
    const int to = static_cast<int>((left + kZoneParts[placeOf(zone)]) * width());
    return {from, 0, to - from, height()};
}

Zone PadPlan::zoneAt(QPoint place) const {
    for (const Zone zone : kZones) {
        const QRect area = zoneRect(zone);
        if (isUpright() ? place.y() < area.bottom() : place.x() < area.right()) return zone;
    }
    return Zone::away;
}

int PadPlan::lyingWidth(const settings::Appearance& appearance) {
    double width = 0.0;
    for (const Zone zone : kZones) {
        const int chip = TractorChip::sizeIn(appearance, zone).width();
        width = std::max(width, (chipsFrom(appearance, zone) + chip + kZoneEdge) / kZoneParts[placeOf(zone)]);
    }
    return static_cast<int>(std::ceil(width));
}

QSize PadPlan::minimumSizeHint() const {
    const int chip = TractorChip::sizeIn(m_appearance, Zone::packing).width();
    return {chipsFrom(m_appearance, Zone::packing) + chip + kWall + kZoneEdge, minimumHeight()};
}

QSize PadPlan::sizeHint() const {
    return minimumSizeHint().expandedTo({720, 0});
}

int PadPlan::columnsIn(Zone zone) const {
    const int gap = m_appearance.pixels(settings::kGapMillimetres);
    const int wide = isUpright() ? width() - kWall : static_cast<int>(kZoneParts[placeOf(zone)] * width());
    const int room = wide - chipsFrom(m_appearance, zone) - kZoneEdge + gap;
    return std::max(1, room / (TractorChip::sizeIn(m_appearance, zone).width() + gap));
}

int PadPlan::titleHeight() const {
    return kWall + 6 + fontMetrics().height() + 4;
}

int PadPlan::neededHeight(Zone zone) const {
    const int gap = m_appearance.pixels(settings::kGapMillimetres);
    const auto count = static_cast<int>(std::ranges::count_if(
        m_chips, [zone](const TractorChip* chip) { return chip->tractor().zone == zone; }));
    const int rows = std::max(1, (count + columnsIn(zone) - 1) / columnsIn(zone));
    return titleHeight() + rows * (TractorChip::sizeIn(m_appearance, zone).height() + gap) + kWall;
}

int PadPlan::neededHeight() const {
    int highest = 0, together = 0;
    for (const Zone zone : kZones) {
        highest = std::max(highest, neededHeight(zone));
        together += neededHeight(zone);
    }
    return isUpright() ? together : highest;
}

void PadPlan::layOut() {
    const int gap = m_appearance.pixels(settings::kGapMillimetres);
    for (const Zone zone : kZones) {
        const QRect area = zoneRect(zone);
        const QSize size = TractorChip::sizeIn(m_appearance, zone);
        int place = 0;
        for (TractorChip* chip : m_chips) {
            if (chip->tractor().zone != zone) continue;
            const int column = place % columnsIn(zone);
            const int row = place / columnsIn(zone);
            ++place;
            if (chip == m_dragged) continue;  // it is in the user's hand
            chip->move(area.left() + chipsFrom(m_appearance, zone) + column * (size.width() + gap),
                       area.top() + titleHeight() + row * (size.height() + gap));
        }
    }
    setMinimumHeight(neededHeight());
    updateGeometry();
    setAccessibleName(tr("Plan of the silo pad"));
    setAccessibleDescription(sentence());
    update();
}

void PadPlan::pick(TractorChip* chip) {
    if (m_picked != nullptr) m_picked->setPicked(false);
    m_picked = chip;
    if (m_picked != nullptr) m_picked->setPicked(true);
    update();
}

void PadPlan::moveTo(TractorChip* chip, Zone zone) {
    pick(nullptr);
    layOut();
    const TractorView& tractor = chip->tractor();
    if (zone != tractor.zone) emit tractorMoved(tractor.id, zone, tractor.share);
}

QString PadPlan::sentence() const {
    QStringList parts;
    for (const Zone zone : kZones) {
        QStringList names;
        for (const TractorChip* chip : m_chips) {
            const TractorView& tractor = chip->tractor();
            if (tractor.zone != zone) continue;
            const QString share = m_appearance.units().text(tractor.share);
            names << (zone == Zone::packing ? tr("%1 at %2", "tractor and share").arg(tractor.name, share)
                                            : tractor.name);
        }
        const QString list = names.isEmpty() ? tr("none") : names.join(QStringLiteral(", "));
        parts << tr("%1: %2.", "zone and its tractors").arg(zoneName(zone), list);
    }
    return parts.join(u' ');
}

void PadPlan::mousePressEvent(QMouseEvent* event) {
    if (m_picked != nullptr && event->button() == Qt::LeftButton) {
        moveTo(m_picked, zoneAt(event->position().toPoint()));
    }
}

void PadPlan::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_picked != nullptr) {
        pick(nullptr);
    } else {
        QWidget::keyPressEvent(event);
    }
}

void PadPlan::resizeEvent(QResizeEvent*) {
    layOut();
}

void PadPlan::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        for (TractorChip* chip : m_chips) chip->setTractor(TractorView{chip->tractor()});
        layOut();
    }
}

void PadPlan::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    paintSilo(painter);
    paintZones(painter);
}

void PadPlan::paintSilo(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    const QRect silo = zoneRect(Zone::packing);
    const QRect mouth = zoneRect(Zone::spreading);
    painter.fillRect(silo.united(mouth), theme.panel);
    // Slope lines at the mouth: the ramp that the blade pushes the crop up.
    painter.setPen(QPen{theme.outline, theme.lineWidth, Qt::DotLine});
    for (int i = 1; i <= 3; ++i) {
        const int x = mouth.left() + i * mouth.width() / 4, y = mouth.top() + i * mouth.height() / 4;
        if (isUpright()) {
            painter.drawLine(kWall + 4, y, width() - kWall - 4, y);
        } else {
            painter.drawLine(x, kWall + 4, x, height() - kWall - 4);
        }
    }
    // The walls stand on three sides of the silo and end with the ramp.
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush{theme.outline, theme.bold ? Qt::SolidPattern : Qt::Dense3Pattern});
    const int end = isUpright() ? mouth.bottom() - mouth.height() / 4 : mouth.right() - mouth.width() / 4;
    if (isUpright()) {
        painter.drawRect(0, 0, width(), kWall);
        painter.drawRect(0, 0, kWall, end);
        painter.drawRect(width() - kWall, 0, kWall, end);
    } else {
        painter.drawRect(0, 0, kWall, height());
        painter.drawRect(0, 0, end, kWall);
        painter.drawRect(0, height() - kWall, end, kWall);
    }
}

void PadPlan::paintZones(QPainter& painter) const {
    const settings::Theme& theme = m_appearance.theme();
    QFont bold = font();
    bold.setBold(true);
    for (const Zone zone : kZones) {
        const bool walled = isUpright() && zone != Zone::away;
        const int left = walled || zone == Zone::packing ? kWall + 2 : 2;
        const QRect area =
            zoneRect(zone).adjusted(left, kWall + 2, walled ? -kWall - 2 : -2, isUpright() ? -2 : -kWall - 2);
        const bool offered =
            m_dragged != nullptr || (m_picked != nullptr && m_picked->tractor().zone != zone);
        if (offered) {
            painter.setPen(QPen{theme.accent, theme.lineWidth + 1.0, Qt::DashLine});
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(area, 8.0, 8.0);
        } else if (zone == Zone::away) {
            painter.setPen(QPen{theme.outline, theme.lineWidth, Qt::DotLine});
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(area, 8.0, 8.0);
        }
        painter.setPen(theme.ink);
        painter.setFont(bold);
        const QRect title = area.adjusted(8, 2, -8, 0);
        const bool asks = offered && m_picked != nullptr;
        const QString text = asks ? tr("Put here: %1", "zone").arg(zoneName(zone)) : zoneName(zone);
        const QString fitting = QFontMetrics{bold}.elidedText(text, Qt::ElideMiddle, title.width());
        painter.fillRect(QRect{title.topLeft(), QFontMetrics{bold}.size(0, fitting)},
                         zone == Zone::away ? theme.ground : theme.panel);
        painter.drawText(title, Qt::AlignLeft | Qt::AlignTop, fitting);
    }
}

}  // namespace treadwell::widgets
