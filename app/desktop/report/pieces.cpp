#include "app/desktop/report/pieces.h"

#include "app/words/document_table.h"

#include <QPainter>
#include <cmath>
#include <utility>

namespace treadwell::report {

namespace {

constexpr double kPointsPerInch = 72.0;
constexpr double kGap_pt = 6.0;
constexpr double kHairline_pt = 0.6;

QString textOf(const std::string& text) {
    return QString::fromStdString(text);
}

/// A word that can be broken anywhere where it is wider than the line.
QString parted(QString word, const QFontMetricsF& metrics, double width) {
    if (metrics.horizontalAdvance(word) <= width) return word;
    for (qsizetype i = word.size() - 1; i > 0; --i) {
        if (!word[i].isLowSurrogate()) word.insert(i, QChar{0x200B});
    }
    return word;
}

}  // namespace

QString inLines(const QString& text, const QFontMetricsF& metrics, double width) {
    const auto fits = [&](const QString& line) { return metrics.horizontalAdvance(line) < width; };
    QStringList lines;
    for (const QString& given : text.split(u'\n')) {
        QStringList words;
        for (const QString& word : given.split(u' ')) {
            const bool isUnit = !words.isEmpty() && !words.back().isEmpty() &&
                                words.back().back().isDigit() && !word.isEmpty() && !word.front().isDigit();
            const QString both = isUnit ? words.back() + u' ' + word : word;
            if (isUnit && fits(both)) {
                words.back() = both;
            } else {
                words += word;
            }
        }
        QString line = parted(words.takeFirst(), metrics, width);
        for (const QString& word : words) {
            const QString longer = line + u' ' + word;
            if (fits(longer)) {
                line = longer;
            } else {
                lines += std::exchange(line, parted(word, metrics, width));
            }
        }
        lines += line;
    }
    return lines.join(u'\n');
}

Press::Press(QPaintDevice& device, double width, const words::Style& style, const Ink& ink)
    : m_device{device},
      m_width{width},
      m_dotsPerPoint{device.logicalDpiY() / kPointsPerInch},
      m_style{style},
      m_ink{ink} {
    // The one family that comes with the program, so that every paper has the same letters.
    const auto make = [](double size, bool bold) {
        QFont font{QStringLiteral("DejaVu Sans")};
        font.setPointSizeF(size);
        font.setBold(bold);
        font.setLetterSpacing(QFont::AbsoluteSpacing, 0.1);  // no ligatures, which nobody's search finds
        return font;
    };
    m_fonts = {make(14, true), make(10.5, true), make(8.5, false), make(7, false), make(7, true)};
}

Piece Press::paragraph(const QString& whole, Voice voice, double above, bool withNext) const {
    const QFontMetricsF metrics{font(voice), &m_device};
    const QString text = inLines(whole, metrics, m_width);
    constexpr int kFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
    const QRectF needed = metrics.boundingRect(QRectF{0, 0, m_width, 1e7}, kFlags, text);
    const double height = needed.height();
    return {points(above) + height,
            withNext,
            {},
            [this, text, voice, offset = points(above), height](QPainter& painter, double top) {
                painter.setFont(font(voice));
                painter.setPen(m_ink.line);
                painter.drawText(QRectF{0, top + offset, m_width, height + 1}, kFlags, text);
            }};
}

std::vector<Piece> Press::pieces(const review::Document& document) const {
    std::vector<Piece> pieces{
        paragraph(textOf(words::inWords(document.title, m_style)), Voice::title, 0, true)};
    for (const review::Section& section : document.sections) {
        const std::string title = words::inWords(Message{section.title, {}}, m_style);
        pieces.push_back(paragraph(textOf(title), Voice::heading, 9, true));
        const review::Block* before = nullptr;
        for (const review::Block& block : section.blocks) {
            // What a sentence says of a table stands on the table's page.
            if (before != nullptr && std::holds_alternative<Message>(*before) &&
                std::holds_alternative<review::Table>(block))
                pieces.back().withNext = true;
            addBlock(pieces, block);
            before = &block;
        }
        pieces.back().withNext = false;
    }
    return pieces;
}

void Press::addBlock(std::vector<Piece>& pieces, const review::Block& block) const {
    if (const auto* message = std::get_if<Message>(&block)) {
        pieces.push_back(paragraph(textOf(words::inWords(*message, m_style)), Voice::text, 2, false));
    } else if (const auto* table = std::get_if<review::Table>(&block)) {
        addTable(pieces, *table);
    } else if (const auto& series = std::get<review::Series>(block); !series.points.empty()) {
        for (Piece& piece : chart(series)) pieces.push_back(std::move(piece));
    }
}

void Press::drawFoot(QPainter& painter, double top, const QString& title, std::size_t page,
                     std::size_t pages) const {
    painter.setFont(font(Voice::table));
    painter.setPen(QPen{Qt::black, points(kHairline_pt)});
    painter.drawLine(QPointF{0, top}, QPointF{m_width, top});
    const QRectF line{0, top + points(3), m_width, footHeight()};
    painter.drawText(line, Qt::AlignLeft | Qt::AlignTop, title);
    painter.drawText(line, Qt::AlignRight | Qt::AlignTop, QStringLiteral("%1 / %2").arg(page).arg(pages));
}

double Press::footHeight() const {
    return points(14);
}

}  // namespace treadwell::report
