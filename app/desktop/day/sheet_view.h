#pragma once

#include "app/desktop/settings/appearance.h"
#include "app/words/document_table.h"
#include "core/review/document.h"

#include <QTextBrowser>
#include <optional>

class QTextCursor;

namespace treadwell::day_page {

/// A document on the screen: the sections, tables and bars of its paper in the words of words::inWords, to be
/// scrolled, read aloud and copied from.
class SheetView final : public QTextBrowser {
    Q_OBJECT

  public:
    explicit SheetView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Where the same document comes again nothing moves.
    void setSheet(const review::Document& sheet, const words::Style& style);
    /// Instead of a document, why there is none.
    void setReason(const QString& reason);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void writeAgain();
    void write();
    void writeBlock(QTextCursor& cursor, const review::Block& block);
    void writeTable(QTextCursor& cursor, const review::Table& table);
    void writeBand(QTextCursor& cursor, const words::TableInWords& words,
                   const std::vector<std::size_t>& columns);
    void writeChart(QTextCursor& cursor, const review::Series& series);

    const settings::Appearance& m_appearance;
    std::optional<review::Document> m_sheet;
    words::Style m_style;
    QString m_written;  ///< by what words and look
    int m_charts = 0;
};

}  // namespace treadwell::day_page
