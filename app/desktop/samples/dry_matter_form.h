#pragma once

#include "app/desktop/samples/form.h"
#include "app/desktop/samples/samples_presenter.h"
#include "core/samples/dish.h"
#include "core/samples/meter.h"

namespace treadwell::samples_page {

/// A dry-matter sample, of a field or of one load: by a dish before and after drying, by a microwave, which
/// is guided step by step until the loss is under a gram, or by a meter, whose bias is shown beside its
/// reading.
class DryMatterForm final : public Form {
    Q_OBJECT

  public:
    explicit DryMatterForm(const settings::Appearance& appearance, QWidget* parent = nullptr);
    void setMeterBias(const samples::MeterBias& bias);
    /// The loads that the sample may have been taken from; what was chosen stays chosen while it is there.
    void setLoads(const std::vector<LoadToSample>& loads);

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] std::optional<QString> notYet() const override;
    [[nodiscard]] QString running() const override;
    void finish() override;
    void clear() override;
    void retranslate() override;

  private:
    enum class Way { dish, microwave, meter };
    [[nodiscard]] Way way() const;
    [[nodiscard]] Result<AsFedMass> wetNet() const;
    [[nodiscard]] Result<DryMass> dryNet() const;
    [[nodiscard]] Result<samples::DryingStep> step() const;
    [[nodiscard]] QString dishText() const;
    [[nodiscard]] QString stepText() const;
    [[nodiscard]] QString meterText() const;
    void showWay();
    void showLoads();
    [[nodiscard]] const LoadToSample* load() const;

    samples::MeterBias m_bias;
    std::vector<DryMass> m_weighings;  ///< net, of the sample in the microwave
    std::vector<LoadToSample> m_loads;
    QComboBox* m_way;
    QComboBox* m_load;
    widgets::QuantitySpinBox* m_dish;
    widgets::QuantitySpinBox* m_wet;
    widgets::QuantitySpinBox* m_dry;
    widgets::QuantitySpinBox* m_reading;
};

}  // namespace treadwell::samples_page
