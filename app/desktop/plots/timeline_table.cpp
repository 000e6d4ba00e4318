#include "app/desktop/plots/timeline_table.h"

#include <algorithm>

namespace treadwell::plots {

namespace {

template <class... Cases>
struct Overloaded : Cases... {
    using Cases::operator()...;
};
template <class... Cases>
Overloaded(Cases...) -> Overloaded<Cases...>;

}  // namespace

TimelineTable::TimelineTable(const settings::Appearance& appearance, QObject* parent)
    : QAbstractTableModel{parent}, m_appearance{appearance} {
    connect(&appearance, &settings::Appearance::changed, this, [this] {
        emit headerDataChanged(Qt::Horizontal, 0, columns - 1);
        if (!m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
    });
}

std::vector<TimelineTable::Row> TimelineTable::rowsOf(const TimelineView& view) {
    std::vector<Row> rows;
    const auto mark = [&rows](const auto& each, Instant at) { rows.push_back({at, each, {}, {}}); };
    for (const DeliveryMark& each : view.deliveries) mark(each, each.at);
    for (const SampleMark& each : view.samples) mark(each, each.at);
    for (const Pause& each : view.pauses) mark(each, each.from);
    for (const AdviceMark& each : view.advice) mark(each, each.at);
    for (const RatePoint& each : view.rates) rows.push_back({each.at, {}, each, {}});
    for (const DensityPoint& each : view.densities) rows.push_back({each.at, {}, {}, each});
    std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) { return a.at < b.at; });
    // What was read at one moment stands in one row, with what happened then.
    std::vector<Row> joined;
    for (Row& row : rows) {
        const bool isReading = row.rates || row.density;
        if (isReading && !joined.empty() && joined.back().at == row.at) {
            if (row.rates) joined.back().rates = row.rates;
            if (row.density) joined.back().density = row.density;
        } else {
            joined.push_back(std::move(row));
        }
    }
    return joined;
}

void TimelineTable::setView(const TimelineView& view) {
    std::vector<Row> rows = rowsOf(view);
    m_zone = view.zone;
    const auto differs = std::mismatch(m_rows.begin(), m_rows.end(), rows.begin(), rows.end()).first;
    const int same = static_cast<int>(differs - m_rows.begin());
    // What lies before the first difference stays; the rest goes and comes anew.
    if (same < rowCount()) {
        beginRemoveRows({}, same, rowCount() - 1);
        m_rows.resize(static_cast<std::size_t>(same));
        endRemoveRows();
    }
    const int after = static_cast<int>(rows.size());
    if (same == after) return;
    beginInsertRows({}, same, after - 1);
    m_rows = std::move(rows);
    endInsertRows();
}

int TimelineTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int TimelineTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant TimelineTable::headerData(int section, Qt::Orientation side, int role) const {
    if (side != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const settings::DisplayUnits& units = m_appearance.units();
    const auto withUnit = [&units](const QString& name, Dimension dimension) {
        return tr("%1, %2", "name, unit").arg(name, units.symbol(dimension));
    };
    switch (section) {
        case time:
            return tr("Hour");
        case what:
            return tr("What happened");
        case delivered:
            return withUnit(tr("Delivery"), Dimension::asFedRate);
        case capacity:
            return withUnit(tr("Capacity"), Dimension::asFedRate);
        case density:
            return withUnit(tr("Density"), Dimension::dryDensity);
        case band:
            return tr("80 % band");
        default:
            return {};
    }
}

QVariant TimelineTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role == Qt::TextAlignmentRole && index.column() >= delivered)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    return text(m_rows[static_cast<std::size_t>(index.row())], index.column());
}

QString TimelineTable::whatText(const What& happened) const {
    const settings::DisplayUnits& units = m_appearance.units();
    return std::visit(
        Overloaded{
            [](std::monostate) { return QString{}; },
            [&](const DeliveryMark& mark) { return tr("load %1").arg(units.text(mark.mass)); },
            [&](const SampleMark& mark) { return tr("dry matter %1").arg(units.text(mark.dryMatter)); },
            [&](const Pause& pause) {
                return tr("pause until %1").arg(QString::fromStdString(clockText(m_zone, pause.to)));
            },
            [](const AdviceMark& mark) { return adviceName(mark.decision); }},
        happened);
}

QString TimelineTable::text(const Row& row, int column) const {
    const settings::DisplayUnits& units = m_appearance.units();
    const auto number = [&units](const auto& quantity) {
        return quantity ? units.numberText(quantity->amount()) : QString{};
    };
    switch (column) {
        case time:
            return QString::fromStdString(clockText(m_zone, row.at));
        case what:
            return whatText(row.what);
        case delivered:
            return row.rates ? units.numberText(row.rates->delivered.amount()) : QString{};
        case capacity:
            return row.rates ? number(row.rates->capacity) : QString{};
        case density:
            return row.density ? number(row.density->median) : QString{};
        case band:
            if (!row.density || !row.density->low80 || !row.density->high80) return {};
            return number(row.density->low80) + u'–' + number(row.density->high80);
        default:
            return {};
    }
}

}  // namespace treadwell::plots
