#pragma once

#include "app/desktop/practice/real_day_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QImage>
#include <QWidget>

namespace treadwell::practice_page {

/// A layer of a real silo in plan, back wall at the left: where it had the passes that are advised, as far as
/// the positions tell, and what each pattern means under it.
class CoverageView final : public QWidget {
    Q_OBJECT

  public:
    explicit CoverageView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setMap(const CoverageMap& map);
    void clear();
    /// What is drawn, said in words.
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    [[nodiscard]] QRectF floorArea() const;
    [[nodiscard]] int legendHeight() const;
    void tell();
    void paintColumns(QPainter& painter) const;
    void paintLegend(QPainter& painter) const;
    void paintCell(QPainter& painter, const QRectF& place, Certainty certainty) const;

    const settings::Appearance& m_appearance;
    std::optional<CoverageMap> m_map;
};

}  // namespace treadwell::practice_page
