#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/density/distribution.h"

#include <QWidget>
#include <optional>
#include <vector>

namespace treadwell::widgets {

/// A piece of a face, at its middle.
struct FacePiece {
    Length across;  ///< from the left wall
    Length up;
    density::Distribution measured;
    std::optional<density::Distribution> predicted;
};

struct FaceSpot {
    Length across;
    Length up;
    DryDensity density;
};

/// A face between its cores, or in words why there is no picture of it.
struct FacePicture {
    QString reason = {};
    Length along = {};
    Length width = {};
    Length height = {};
    std::size_t columns = 0;
    std::vector<FacePiece> pieces = {};  ///< rows from the floor up, each from the left wall to the right
    std::vector<FaceSpot> cores = {};
};

/// Three pictures of a face: what its cores say, how unsure that is between them, and what was predicted. The
/// same colours as a silo's section, darker is denser. A place is read by pointing at it or with the arrow
/// keys.
class FaceMapView final : public QWidget {
    Q_OBJECT

  public:
    explicit FaceMapView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setPicture(FacePicture picture);
    /// The piece with this number is told; held to the picture.
    void pointAt(std::size_t piece);
    /// What is at the piece pointed at; before any, what the pictures show.
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Where the middle of a piece is drawn in the first picture.
    [[nodiscard]] QPointF pixelOf(std::size_t piece) const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    enum class Shown : std::uint8_t { measured, doubt, predicted };

    [[nodiscard]] QRectF area(Shown shown) const;
    [[nodiscard]] QPointF pixelOf(Length across, Length up, const QRectF& area) const;
    /// Between the middles of pieces, straight.
    [[nodiscard]] std::optional<DryDensity> valueAt(Shown shown, double across, double up) const;
    void paintField(QPainter& painter, Shown shown) const;
    void paintDoubt(QPainter& painter) const;
    void paintTitle(QPainter& painter, Shown shown) const;
    void paintMarks(QPainter& painter, Shown shown) const;
    void tell();

    const settings::Appearance& m_appearance;
    FacePicture m_picture;
    std::optional<std::size_t> m_piece;
};

}  // namespace treadwell::widgets
