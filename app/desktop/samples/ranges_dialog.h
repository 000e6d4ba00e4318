#pragma once

#include "app/desktop/fill/sheet.h"
#include "core/samples/chop.h"

#include <array>
#include <functional>

class QComboBox;

namespace treadwell::widgets {
class QuantitySpinBox;
}

namespace treadwell::samples_page {

/// What samples of a crop behind a processor should hold on this farm. The ranges in force stand there to be
/// changed.
class RangesDialog final : public fill::Sheet {
    Q_OBJECT

  public:
    using InForce = std::function<samples::ChopRanges(crop::Crop, samples::Processor)>;

    RangesDialog(const settings::Appearance& appearance, crop::Crop crop, samples::Processor processor,
                 InForce inForce, QWidget* parent);

  signals:
    void recorded(const treadwell::samples::ChopRanges& ranges);

  protected:
    void record() override;

  private:
    static constexpr std::size_t kParts = samples::kChopBounds.size() + 1;
    struct Ends {
        widgets::QuantitySpinBox* low;
        widgets::QuantitySpinBox* high;
    };

    void addPart(std::size_t part);
    void showInForce();
    [[nodiscard]] samples::ChopRanges typed() const;

    InForce m_inForce;
    QComboBox* m_crop;
    QComboBox* m_processor;
    std::array<Ends, kParts> m_parts{};
};

}  // namespace treadwell::samples_page
