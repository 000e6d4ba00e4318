#include "app/desktop/report/pieces.h"
#include "app/words/document_table.h"
#include "app/words/table_fit.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwell::report {

namespace {

constexpr double kColumnGap_pt = 7.0;
constexpr double kRowGap_pt = 1.6;
constexpr double kBandGap_pt = 6.0;
constexpr double kRule_pt = 0.6;
constexpr double kLongestWord_pt = 80.0;
constexpr double kNarrowest_pt = 24.0;

/// A row ready to be drawn: each cell with its place.
struct Cell {
    double left, width;
    QString text;
    bool toTheRight;
};

constexpr int kWrap = Qt::TextWordWrap;

double longestWord(const QFontMetricsF& metrics, const QString& text) {
    double longest = 0.0;
    for (const QString& word : text.split(QLatin1Char(' ')))
        longest = std::max(longest, metrics.horizontalAdvance(word));
    return longest;
}

/// A unit stands on one line: behind its heading, or below it where there is no room.
std::string headingOf(const std::string& name, const std::string& unit, const QFontMetricsF& metrics,
                      double width) {
    if (unit.empty()) return name;
    const QString whole = QString::fromStdString(name + ", " + unit);
    return name + (metrics.horizontalAdvance(whole) <= width ? ", " : ",\n") + unit;
}

std::size_t dots(double width) {
    return static_cast<std::size_t>(std::ceil(width)) + 1;
}

std::vector<Cell> cellsOf(const words::Band& band, const std::vector<std::string>& texts,
                          const std::vector<bool>& numbers, const QFontMetricsF& metrics, double gap) {
    std::vector<Cell> cells;
    double left = 0.0;
    for (std::size_t i = 0; i < band.columns.size(); ++i) {
        const std::size_t c = band.columns[i];
        const auto width = static_cast<double>(band.widths[i]);
        cells.push_back({left, width, inLines(QString::fromStdString(texts[c]), metrics, width), numbers[c]});
        left += width + gap;
    }
    return cells;
}

double heightOf(const QFontMetricsF& metrics, const std::vector<Cell>& cells) {
    double height = metrics.height();
    for (const Cell& cell : cells) {
        height =
            std::max(height, metrics.boundingRect(QRectF{0, 0, cell.width, 1e7}, kWrap, cell.text).height());
    }
    return height;
}

void drawRow(QPainter& painter, const std::vector<Cell>& cells, double top, double height,
             Qt::Alignment vertical) {
    for (const Cell& cell : cells) {
        const int flags = kWrap | int(vertical) | int(cell.toTheRight ? Qt::AlignRight : Qt::AlignLeft);
        painter.drawText(QRectF{cell.left, top, cell.width, height + 1}, flags, cell.text);
    }
}

}  // namespace

void Press::addTable(std::vector<Piece>& pieces, const review::Table& table) const {
    const words::TableInWords inWords = words::inWords(table, m_style);
    const QFontMetricsF body{font(Voice::table), &m_device};
    const QFontMetricsF head{font(Voice::tableHead), &m_device};
    words::TableNeeds needs{.least = {},
                            .most = {},
                            .names = inWords.names,
                            .gap = dots(points(kColumnGap_pt)),
                            .narrowest = dots(points(kNarrowest_pt))};
    for (std::size_t c = 0; c < inWords.headings.size(); ++c) {
        const QString unit = QString::fromStdString(inWords.units[c]);
        const QString heading = QString::fromStdString(
            headingOf(inWords.headings[c], inWords.units[c], head, std::numeric_limits<double>::max()));
        const QString name = QString::fromStdString(inWords.headings[c] + (unit.isEmpty() ? "" : ","));
        double least = std::max(longestWord(head, name), head.horizontalAdvance(unit)),
               most = std::min(head.horizontalAdvance(heading), 2 * least);
        for (const auto& row : inWords.rows) {
            const QString text = QString::fromStdString(row[c]);
            const double whole = body.horizontalAdvance(text);
            least = std::max(least, inWords.numbers[c]
                                        ? whole
                                        : std::min(longestWord(body, text), points(kLongestWord_pt)));
            most = std::max(most, whole);
        }
        needs.least.push_back(dots(least));
        needs.most.push_back(dots(most));
    }
    for (const words::Band& band : words::fittedBands(needs, static_cast<std::size_t>(m_width))) {
        const double gap = points(kColumnGap_pt) + 1;
        std::vector<std::string> headings = inWords.headings;
        for (std::size_t i = 0; i < band.columns.size(); ++i) {
            const std::size_t c = band.columns[i];
            headings[c] = headingOf(headings[c], inWords.units[c], head, static_cast<double>(band.widths[i]));
        }
        const auto titles = cellsOf(band, headings, inWords.numbers, head, gap);
        const double headHeight = heightOf(head, titles), above = points(kBandGap_pt);
        const std::size_t header = pieces.size();
        pieces.push_back({above + headHeight + points(2 * kRowGap_pt),
                          true,
                          {},
                          [this, titles, headHeight, above](QPainter& painter, double top) {
                              painter.setFont(font(Voice::tableHead));
                              drawRow(painter, titles, top + above, headHeight, Qt::AlignBottom);
                              painter.setPen(QPen{Qt::black, points(kRule_pt)});
                              const double line = top + above + headHeight + points(kRowGap_pt);
                              painter.drawLine(QPointF{0, line}, QPointF{m_width, line});
                          }});
        for (std::size_t r = 0; r < inWords.rows.size(); ++r) {
            const auto cells = cellsOf(band, inWords.rows[r], inWords.numbers, body, gap);
            const double height = heightOf(body, cells);
            // Neither the first row nor the last stands alone on a page.
            const bool first = r == 0 && inWords.rows.size() > 1, last = r + 2 == inWords.rows.size();
            pieces.push_back({height + points(kRowGap_pt), first || last, header,
                              [this, cells, height](QPainter& painter, double top) {
                                  painter.setFont(font(Voice::table));
                                  drawRow(painter, cells, top, height, Qt::AlignTop);
                              }});
        }
    }
}

}  // namespace treadwell::report
