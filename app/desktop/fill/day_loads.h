#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/settings/appearance.h"
#include "core/season/season.h"

#include <QScrollArea>
#include <vector>

namespace treadwell::fill {

/// A load of the day as the list shows it.
struct LoadRow {
    entries::EntryId entry;
    QString what;   ///< `10:24 Amsel, 12.4 t`
    QString about;  ///< field, silo where there are several, and how much of it is a guess
    friend bool operator==(const LoadRow&, const LoadRow&) = default;
};

/// All loads of the day, the newest first.
[[nodiscard]] std::vector<LoadRow> loadsToday(const season::Season& season, Instant now,
                                              const Speech& speech);

/// The day's loads, each to be corrected or taken back with one touch.
class DayLoads final : public QScrollArea {
    Q_OBJECT

  public:
    explicit DayLoads(const settings::Appearance& appearance, QWidget* parent = nullptr);
    void setLoads(const std::vector<LoadRow>& loads);

  signals:
    void correctRequested(treadwell::entries::EntryId load);
    void takeBackRequested(treadwell::entries::EntryId load);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void refresh();
    [[nodiscard]] QWidget* makeRow(const LoadRow& load);

    const settings::Appearance& m_appearance;
    std::vector<LoadRow> m_loads;
};

}  // namespace treadwell::fill
