#pragma once

#include "app/desktop/settings/appearance.h"

#include <QScrollArea>
#include <vector>

namespace treadwell::widgets {

struct CautionView {
    QString text;
    QString source;  ///< who says so; empty where nobody has to be named
    friend bool operator==(const CautionView&, const CautionView&) = default;
};

/// What matters now, each caution with its source. Quiet: nothing blinks, moves or has to be put away.
class CautionPanel final : public QScrollArea {
    Q_OBJECT

  public:
    explicit CautionPanel(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setCautions(const std::vector<CautionView>& cautions);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void refresh();

    const settings::Appearance& m_appearance;
    std::vector<CautionView> m_cautions;
};

}  // namespace treadwell::widgets
