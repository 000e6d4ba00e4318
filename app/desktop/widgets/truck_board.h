#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/instant.h"
#include "core/base/uuid.h"
#include "core/quantity/mass.h"

#include <QTimer>
#include <QWidget>
#include <optional>
#include <vector>

class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace treadwell::widgets {

class TruckButton;

struct TruckView {
    Uuid id;
    QString name;
    std::optional<AsFedMass> usualLoad;  ///< what a touch logs
    std::optional<Instant> lastLoad;     ///< orders the board
    int pending = 0;                     ///< loads logged and not committed yet
};

/// A large button a truck, the last one to bring a load first: a touch logs its load, the arrow beside it or
/// a long press asks for the details. The undo of the last load stands below.
class TruckBoard final : public QWidget {
    Q_OBJECT

  public:
    explicit TruckBoard(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// While a touch is fresh the order stays, so that no button slides under the finger.
    void setTrucks(const std::vector<TruckView>& trucks);
    /// Names the load that undo takes back, `Truck 3, 18.4 t`; none where there is nothing to undo.
    void setUndo(const std::optional<QString>& lastLoad);
    [[nodiscard]] std::vector<Uuid> order() const;

  signals:
    void loadRequested(treadwell::Uuid truck);
    void detailRequested(treadwell::Uuid truck);
    void undoRequested();

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    TruckButton* addButton(const TruckView& truck);
    void arrange();
    void refresh();
    void keepWidth();
    void fitGaps();

    const settings::Appearance& m_appearance;
    std::vector<TruckButton*> m_buttons;  ///< as shown, from the top
    std::optional<QString> m_lastLoad;
    QTimer m_freshTouch;
    QVBoxLayout* m_list;
    QScrollArea* m_scroll;
    QPushButton* m_undo;
};

}  // namespace treadwell::widgets
