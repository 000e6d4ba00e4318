#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/settings/appearance.h"
#include "core/season/season.h"

#include <QScrollArea>
#include <QTimer>
#include <map>
#include <optional>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace treadwell::fill {

/// A load of the day as the list shows it.
struct LoadRow {
    entries::EntryId entry;
    QString what;  ///< `10:24 Amsel, 12.4 t`
    QString who;   ///< `10:24 Amsel`
    AsFedMass mass;
    QString about;  ///< field, silo where there are several, and how much of it is a guess
    friend bool operator==(const LoadRow&, const LoadRow&) = default;
};

/// All loads of the day, the newest first.
[[nodiscard]] std::vector<LoadRow> loadsToday(const season::Season& season, Instant now,
                                              const Speech& speech);

/// The day's loads, each to be corrected or taken back with one touch. The mass goes up and down by a tenth
/// while its button is held, and is given on once it has stood still.
class DayLoads final : public QScrollArea {
    Q_OBJECT

  public:
    explicit DayLoads(const settings::Appearance& appearance, QWidget* parent = nullptr);
    void setLoads(const std::vector<LoadRow>& loads);

  signals:
    void correctRequested(treadwell::entries::EntryId load);
    void takeBackRequested(treadwell::entries::EntryId load);
    void massCorrected(treadwell::entries::EntryId load, treadwell::AsFedMass mass);

  protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    /// A mass on its way up or down.
    struct Stepping {
        entries::EntryId entry;
        AsFedMass mass;
    };

    /// A row of the list; what it shows is not known where words, units or look have changed.
    struct Row {
        std::optional<LoadRow> shown;
        QWidget* widget = nullptr;
    };

    void refresh();
    void follow();
    void insert(int place, QWidget* row);
    void putAway(QWidget* row, QWidget* successor);
    [[nodiscard]] QWidget* makeRow(const LoadRow& load);
    [[nodiscard]] QString faceOf(const LoadRow& load) const;
    void step(const LoadRow& load, int direction);
    void giveStepped();

    const settings::Appearance& m_appearance;
    QLabel* m_none;
    QVBoxLayout* m_list = nullptr;
    std::vector<LoadRow> m_loads;
    std::map<entries::EntryId, Row> m_rows;
    std::optional<Stepping> m_stepping;
    QTimer m_still;
};

}  // namespace treadwell::fill
