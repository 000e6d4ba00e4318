#include "app/desktop/report/pdf_report.h"

#include "app/desktop/report/pieces.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

namespace treadwell::report {

namespace {

constexpr double kMargin_mm = 15.0;
constexpr int kDotsPerInch = 1200;

}  // namespace

bool printOn(QPagedPaintDevice& device, const review::Document& document, const words::Style& style) {
    QPainter painter;
    if (!painter.begin(&device)) return false;
    const Press press{device, static_cast<double>(device.width()), style};
    const std::vector<Piece> pieces = press.pieces(document);
    const double height = static_cast<double>(device.height()) - press.footHeight();
    const auto pages = paginated(pieces, height);
    const QString title = QString::fromStdString(words::inWords(document.title, style));
    for (std::size_t page = 0; page < pages.size(); ++page) {
        if (page > 0 && !device.newPage()) return false;
        for (const Placed& placed : pages[page]) pieces[placed.piece].draw(painter, placed.top);
        press.drawFoot(painter, height, title, page + 1, pages.size());
    }
    return painter.end();
}

QByteArray pdfOf(const review::Document& document, const words::Style& style, Paper paper) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    writer.setResolution(kDotsPerInch);
    writer.setTitle(QString::fromStdString(words::inWords(document.title, style)));
    writer.setPageSize(QPageSize{paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter});
    writer.setPageMargins(QMarginsF{kMargin_mm, kMargin_mm, kMargin_mm, kMargin_mm}, QPageLayout::Millimeter);
    if (!printOn(writer, document, style)) return {};
    return bytes;
}

}  // namespace treadwell::report
