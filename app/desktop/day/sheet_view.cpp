#include "app/desktop/day/sheet_view.h"

#include "app/desktop/report/pieces.h"
#include "app/words/table_fit.h"

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QResizeEvent>
#include <QScrollBar>
#include <QTextCursor>
#include <QTextTable>
#include <cmath>

namespace treadwell::day_page {

namespace {

constexpr double kTitleScale = 1.5;
constexpr double kHeadingScale = 1.15;
constexpr int kChartWidth = 640;  // pixels
constexpr int kCellPadding = 2;
constexpr int kCellLines = 2;
constexpr int kRounding = 3;  // pixels by which the layout goes beyond its width
constexpr double kAboveHeading = 14.0;

QString textOf(const std::string& text) {
    return QString::fromStdString(text);
}

/// The unit stands below, whole: neither its blanks nor its strokes break.
QString headingOf(const words::TableInWords& table, std::size_t column) {
    const QString heading = textOf(table.headings[column]);
    if (table.units[column].empty()) return heading;
    return heading + u'\n' +
           textOf(table.units[column]).replace(u' ', QChar{0x00A0}).replace(u'/', QStringLiteral("/\u2060"));
}

/// What the columns ask for in dots, lines between them included, so that none of their words is broken.
words::TableNeeds needsOf(const words::TableInWords& table, const QFont& font) {
    QFont bold = font;
    bold.setBold(true);
    const QFontMetricsF body{font}, head{bold};
    const auto longestWord = [](const QFontMetricsF& metrics, QString text) {
        double longest = 0.0;
        for (const QString& word : text.replace(u'\n', u' ').split(u' '))
            longest = std::max(longest, metrics.horizontalAdvance(word));
        return longest;
    };
    words::TableNeeds needs{.least = {}, .most = {}, .names = table.names};
    for (std::size_t column = 0; column < table.headings.size(); ++column) {
        double least = longestWord(head, headingOf(table, column));
        for (const auto& row : table.rows) {
            const QString text = textOf(row[column]);
            least = std::max(least,
                             table.numbers[column] ? body.horizontalAdvance(text) : longestWord(body, text));
        }
        needs.least.push_back(static_cast<std::size_t>(std::ceil(least)) + 2 * kCellPadding + kCellLines);
    }
    needs.most = needs.least;
    return needs;
}

}  // namespace

SheetView::SheetView(const settings::Appearance& appearance, QWidget* parent)
    : QTextBrowser{parent}, m_appearance{appearance} {
    setOpenLinks(false);
    setTabChangesFocus(true);
    setUndoRedoEnabled(false);
    setWordWrapMode(QTextOption::WordWrap);  // a column is never narrower than its words
    setLineWrapMode(QTextEdit::FixedPixelWidth);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // or its coming would make the page narrower
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

/// Columns stand side by side as width and letters allow.
void SheetView::writeAgain() {
    const int place = verticalScrollBar()->value();
    write();
    verticalScrollBar()->setValue(place);
}

void SheetView::resizeEvent(QResizeEvent* event) {
    QTextBrowser::resizeEvent(event);
    const int width = std::max(1, viewport()->width() - kRounding);
    if (width == lineWrapColumnOrWidth()) return;
    setLineWrapColumnOrWidth(width);
    writeAgain();
}

void SheetView::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::FontChange) writeAgain();
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
    const double width = lineWrapColumnOrWidth() - 2 * document()->documentMargin();
    for (const words::Band& band : words::fittedBands(needsOf(words, document()->defaultFont()),
                                                      static_cast<std::size_t>(std::max(0.0, width)))) {
        writeBand(cursor, words, band.columns);
    }
}

void SheetView::writeBand(QTextCursor& cursor, const words::TableInWords& words,
                          const std::vector<std::size_t>& columns) {
    QTextTableFormat format;
    format.setHeaderRowCount(1);
    format.setCellPadding(kCellPadding);
    format.setCellSpacing(0);
    format.setBorderCollapse(true);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorder(1.0);
    format.setBorderBrush(m_appearance.theme().outline);
    format.setTopMargin(4.0);
    cursor.insertBlock(QTextBlockFormat{}, QTextCharFormat{});
    QTextTable* grid =
        cursor.insertTable(static_cast<int>(words.rows.size()) + 1, static_cast<int>(columns.size()), format);
    QTextCharFormat bold;
    bold.setFontWeight(QFont::Bold);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const std::size_t column = columns[i];
        const auto fill = [&](int row, const QString& text, const QTextCharFormat& as) {
            QTextCursor cell = grid->cellAt(row, static_cast<int>(i)).firstCursorPosition();
            QTextBlockFormat block;
            block.setAlignment(words.numbers[column] ? Qt::AlignRight : Qt::AlignLeft);
            cell.setBlockFormat(block);
            cell.insertText(text, as);
        };
        fill(0, headingOf(words, column), bold);
        for (std::size_t row = 0; row < words.rows.size(); ++row)
            fill(static_cast<int>(row) + 1, textOf(words.rows[row][column]), {});
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
