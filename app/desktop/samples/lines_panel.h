#pragma once

#include "app/desktop/samples/samples_presenter.h"

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace treadwell::samples_page {

/// A title and what there is to say under it, a mark before what needs care.
class LinesPanel final : public QFrame {
    Q_OBJECT

  public:
    LinesPanel(const settings::Appearance& appearance, const QString& name, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setLines(const Lines& lines);
    [[nodiscard]] QString text() const;

  private:
    void follow();
    void write();

    const settings::Appearance& m_appearance;
    Lines m_lines;
    QLabel* m_title;
    QVBoxLayout* m_rows;
};

}  // namespace treadwell::samples_page
