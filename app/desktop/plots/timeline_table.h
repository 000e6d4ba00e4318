#pragma once

#include "app/desktop/plots/timeline.h"

#include <QAbstractTableModel>

namespace treadwell::plots {

/// The timeline's data as rows in order of time: each moment with what happened then, rates, density and
/// band. A refresh leaves the rows before the first difference, so that a reader keeps
/// the place.
class TimelineTable final : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { time, what, delivered, capacity, density, band, columns };

    explicit TimelineTable(const settings::Appearance& appearance, QObject* parent = nullptr);

    void setView(const TimelineView& view);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation side, int role) const override;

  private:
    using What = std::variant<std::monostate, DeliveryMark, SampleMark, Pause, AdviceMark>;
    struct Row {
        Instant at;
        What what;
        std::optional<RatePoint> rates;
        std::optional<DensityPoint> density;
        friend bool operator==(const Row&, const Row&) = default;
    };

    [[nodiscard]] static std::vector<Row> rowsOf(const TimelineView& view);
    [[nodiscard]] QString whatText(const What& happened) const;
    [[nodiscard]] QString text(const Row& row, int column) const;

    const settings::Appearance& m_appearance;
    FarmZone m_zone;
    std::vector<Row> m_rows;
};

}  // namespace treadwell::plots
