#pragma once

#include "app/desktop/report/flow.h"
#include "app/words/words.h"
#include "core/review/document.h"

#include <QColor>
#include <QFont>
#include <QFontMetricsF>
#include <QPaintDevice>

namespace treadwell::report {

/// A text in lines of `width` dots: broken at blanks alone, so that a unit is not parted at its stroke, and
/// not behind a number, which is read with its unit. A word that is wider can be broken anywhere.
[[nodiscard]] QString inLines(const QString& text, const QFontMetricsF& metrics, double width);

/// Paper is black on white; a screen has its own.
struct Ink {
    QColor line = Qt::black;
    QColor fill = QColor{200, 200, 200};
};

/// What lies between a document and its pages: letters and lengths in dots of the paper's device.
class Press {
  public:
    /// `device` must outlive this; `width` of the text in its dots.
    Press(QPaintDevice& device, double width, const words::Style& style, const Ink& ink = {});

    /// The document in pieces, in their order.
    [[nodiscard]] std::vector<Piece> pieces(const review::Document& document) const;

    /// Its bars by the hour alone; nothing of a series without a value above 0.
    [[nodiscard]] std::vector<Piece> chart(const review::Series& series) const;

    /// A line that stands on every page, at its foot.
    void drawFoot(QPainter& painter, double top, const QString& title, std::size_t page,
                  std::size_t pages) const;
    [[nodiscard]] double footHeight() const;

  private:
    enum class Voice { title, heading, text, table, tableHead };

    [[nodiscard]] const QFont& font(Voice voice) const noexcept {
        return m_fonts[static_cast<std::size_t>(voice)];
    }
    [[nodiscard]] double points(double count) const noexcept { return count * m_dotsPerPoint; }
    [[nodiscard]] Piece paragraph(const QString& text, Voice voice, double above, bool withNext) const;
    void addBlock(std::vector<Piece>& pieces, const review::Block& block) const;
    void addTable(std::vector<Piece>& pieces, const review::Table& table) const;

    QPaintDevice& m_device;
    double m_width;
    double m_dotsPerPoint;
    words::Style m_style;
    Ink m_ink;
    std::vector<QFont> m_fonts;
};

}  // namespace treadwell::report
