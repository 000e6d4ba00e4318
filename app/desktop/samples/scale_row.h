#pragma once

#include "app/desktop/settings/appearance.h"
#include "app/scale/line.h"
#include "core/intake/weighing.h"

#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>

class QLabel;
class QPushButton;

namespace treadwell::samples_page {

/// A scale on a wire beside the forms: what it shows, and the button that takes the weight into the field in
/// hand once it stands still. Reads without waiting; a place that does not answer is waited for elsewhere.
class ScaleRow final : public QWidget {
    Q_OBJECT

  public:
    explicit ScaleRow(const settings::Appearance& appearance, QWidget* parent = nullptr);
    void listen(const scale::LineSettings& settings, const formats::ScaleProfile& profile);
    /// Gives the weight that stands still on; nothing happens without one.
    void take();

  signals:
    void taken(treadwell::AsFedMass weight);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct Opening;

    void ask();
    void hear();
    void hang(const Error& error);
    void retranslate();
    void tell();

    const settings::Appearance& m_appearance;
    std::shared_ptr<Opening> m_opening;
    std::optional<scale::Line> m_line;
    std::optional<formats::ScaleFrames> m_frames;
    intake::SteadyWeight m_steady;
    std::optional<AsFedMass> m_shown;  ///< as last told
    bool m_stands = false;
    std::optional<Error> m_lost;
    QTimer m_tick;
    QPushButton* m_choose;
    QPushButton* m_take;
    QLabel* m_says;
};

}  // namespace treadwell::samples_page
