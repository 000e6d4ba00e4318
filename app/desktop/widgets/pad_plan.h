#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/instant.h"
#include "core/base/uuid.h"
#include "core/quantity/fraction.h"
#include "core/quantity/mass.h"

#include <QWidget>
#include <array>
#include <cstdint>
#include <vector>

namespace treadwell::widgets {

class TractorChip;

enum class Zone : std::uint8_t { packing, spreading, away };
inline constexpr std::array kZones{Zone::packing, Zone::spreading, Zone::away};

struct TractorView {
    Uuid id;
    QString name;
    MachineMass mass;
    bool massKnown = true;  ///< else that of its class
    Zone zone = Zone::away;
    Share share = Share::fromFraction(1.0);  ///< of its time, counted in packing
    Seconds running{0.0};                    ///< in this zone without a break
    bool pending = false;                    ///< the last move is not committed yet
};

/// The silo pad in plan with the tractors as named chips: packing in the silo, spreading at its mouth, or
/// away. A chip is dragged, or picked with a click and put with a second one, or moved with the arrow keys;
/// one that packs has a button for its share of the time. Where there is no room for the zones side by side
/// the plan stands upright, and they lie one below the other.
class PadPlan final : public QWidget {
    Q_OBJECT

  public:
    explicit PadPlan(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setTractors(const std::vector<TractorView>& tractors);
    /// What is drawn, said in words.
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QRect zoneRect(Zone zone) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// From this width on the zones lie side by side.
    [[nodiscard]] static int lyingWidth(const settings::Appearance& appearance);

  signals:
    /// Asked for by the user; the chip moves when setTractors() says so.
    void tractorMoved(treadwell::Uuid id, treadwell::widgets::Zone zone, treadwell::Share share);
    /// By a long press or the key M: somebody knows what the tractor weighs.
    void massRequested(treadwell::Uuid id);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    [[nodiscard]] Zone zoneAt(QPoint place) const;
    [[nodiscard]] bool isUpright() const { return width() < lyingWidth(m_appearance); }
    [[nodiscard]] int columnsIn(Zone zone) const;
    [[nodiscard]] int neededHeight(Zone zone) const;
    [[nodiscard]] int titleHeight() const;
    [[nodiscard]] int neededHeight() const;
    TractorChip* addChip();
    void layOut();
    void pick(TractorChip* chip);
    void moveTo(TractorChip* chip, Zone zone);
    void paintSilo(QPainter& painter) const;
    void paintZones(QPainter& painter) const;

    const settings::Appearance& m_appearance;
    std::vector<TractorChip*> m_chips;
    TractorChip* m_picked = nullptr;
    TractorChip* m_dragged = nullptr;
};

[[nodiscard]] QString zoneName(Zone zone);

}  // namespace treadwell::widgets
