#include "app/desktop/day/sheet_view.h"

#include "app/desktop/report/pieces.h"
#include "app/words/document_table.h"

#include <QImage>
#include <QPainter>
#include <QScrollBar>
#include <QTextCursor>
#include <QTextTable>
#include <cmath>

namespace treadwell::day_page {

namespace {

constexpr double kTitleScale = 1.5;
constexpr double kHeadingScale = 1.15;
constexpr int kChartWidth = 640;  // pixels
constexpr int kCellPadding = 3;
constexpr double kAboveHeading = 14.0;

QString textOf(const std::string& text) {
    return QString::fromStdString(text);
}

/// A space would be broken at, and a number is read with its unit.
QString headingOf(const words::TableInWords& table, std::size_t column) {
    const QString heading = textOf(table.headings[column]);
    return table.units[column].empty() ? heading : heading + u'\n' + textOf(table.units[column]);
}

}  // namespace

SheetView::SheetView(const settings::Appearance& appearance, QWidget* parent)
    : QTextBrowser{parent}, m_appearance{appearance} {
    setOpenLinks(false);
    setTabChangesFocus(true);
    setUndoRedoEnabled(false);
    setObjectName(QStringLiteral("sheet"));
    connect(&appearance, &settings::Appearance::changed, this, &SheetView::write);
}

void SheetView::setSheet(const review::Document& sheet, const words::Style& style) {
    const bool same = m_sheet == sheet && m_style.units == style.units &&
                      m_style.decimalSign == style.decimalSign &&
                      textOf(words::inWords(sheet.title, style)) == m_written;
    if (same) return;
    const bool another = !m_sheet || !(m_sheet->title == sheet.title);
    m_sheet = sheet;
    m_style = style;
    const int place = verticalScrollBar()->value();
    write();
    if (!another) verticalScrollBar()->setValue(place);
}

void SheetView::setReason(const QString& reason) {
    m_sheet.reset();
    setPlainText(reason);
}

void SheetView::write() {
    if (!m_sheet) return;
    clear();
    m_charts = 0;
    m_written = textOf(words::inWords(m_sheet->title, m_style));
    setAccessibleName(m_written);
    // As one edit, or every cell of every table lays the document out again.
    QTextCursor cursor{document()};
    cursor.beginEditBlock();
    const double size = font().pointSizeF();
    const auto line = [&](const QString& text, double scale, double above) {
        QTextBlockFormat block;
        block.setTopMargin(above);
        QTextCharFormat format;
        format.setFontWeight(QFont::Bold);
        format.setFontPointSize(size * scale);
        cursor.insertBlock(block, format);
        cursor.insertText(text, format);
    };
    line(m_written, kTitleScale, 0.0);
    for (const review::Section& section : m_sheet->sections) {
        line(textOf(words::inWords(Message{section.title, {}}, m_style)), kHeadingScale, kAboveHeading);
        for (const review::Block& block : section.blocks) writeBlock(cursor, block);
    }
    cursor.endEditBlock();
    moveCursor(QTextCursor::Start);
}

void SheetView::writeBlock(QTextCursor& cursor, const review::Block& block) {
    if (const auto* message = std::get_if<Message>(&block)) {
        cursor.insertBlock(QTextBlockFormat{}, QTextCharFormat{});
        cursor.insertText(textOf(words::inWords(*message, m_style)));
    } else if (const auto* table = std::get_if<review::Table>(&block)) {
        writeTable(cursor, *table);
    } else {
        writeChart(cursor, std::get<review::Series>(block));
    }
}

void SheetView::writeTable(QTextCursor& cursor, const review::Table& table) {
    const words::TableInWords words = words::inWords(table, m_style);
    QTextTableFormat format;
    format.setHeaderRowCount(1);
    format.setCellPadding(kCellPadding);
    format.setCellSpacing(0);
    format.setBorderCollapse(true);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorder(1.0);
    format.setBorderBrush(m_appearance.theme().outline);
    format.setTopMargin(4.0);
    const int columns = static_cast<int>(words.headings.size());
    cursor.insertBlock(QTextBlockFormat{}, QTextCharFormat{});
    QTextTable* grid = cursor.insertTable(static_cast<int>(words.rows.size()) + 1, columns, format);
    QTextCharFormat bold;
    bold.setFontWeight(QFont::Bold);
    const auto fill = [&](int row, int column, const QString& text, const QTextCharFormat& as) {
        QTextCursor cell = grid->cellAt(row, column).firstCursorPosition();
        QTextBlockFormat block;
        block.setAlignment(words.numbers[static_cast<std::size_t>(column)] ? Qt::AlignRight : Qt::AlignLeft);
        cell.setBlockFormat(block);
        cell.insertText(text, as);
    };
    for (int column = 0; column < columns; ++column) {
        const auto at = static_cast<std::size_t>(column);
        fill(0, column, headingOf(words, at), bold);
        for (std::size_t row = 0; row < words.rows.size(); ++row)
            fill(static_cast<int>(row) + 1, column, textOf(words.rows[row][at]), {});
    }
    cursor.movePosition(QTextCursor::End);
}

void SheetView::writeChart(QTextCursor& cursor, const review::Series& series) {
    const settings::Theme& theme = m_appearance.theme();
    const double ratio = devicePixelRatioF();
    QImage probe{1, 1, QImage::Format_ARGB32_Premultiplied};
    const report::Press press{probe, kChartWidth, m_style, {theme.ink, theme.densityFill}};
    const std::vector<report::Piece> pieces = press.chart(series);
    if (pieces.empty()) return;
    double height = 0.0;
    for (const report::Piece& piece : pieces) height += piece.height;
    QImage image{QSize{static_cast<int>(kChartWidth * ratio), static_cast<int>(std::ceil(height * ratio))},
                 QImage::Format_ARGB32_Premultiplied};
    image.setDevicePixelRatio(ratio);
    image.fill(Qt::transparent);
    {
        QPainter painter{&image};
        painter.setRenderHint(QPainter::Antialiasing);
        double top = 0.0;
        for (const report::Piece& piece : pieces) {
            piece.draw(painter, top);
            top += piece.height;
        }
    }
    const QString name = QStringLiteral("chart:%1").arg(m_charts++);
    document()->addResource(QTextDocument::ImageResource, QUrl{name}, image);
    QTextImageFormat format;
    format.setName(name);
    format.setWidth(kChartWidth);
    format.setHeight(height);
    cursor.insertBlock(QTextBlockFormat{}, QTextCharFormat{});
    cursor.insertImage(format);
}

}  // namespace treadwell::day_page
