#pragma once

#include "app/desktop/samples/form.h"
#include "core/samples/sieve.h"

class QCheckBox;
class QPushButton;
class QLineEdit;

namespace treadwell::samples_page {

/// A sieve test from the top sieve down to the pan, weighed or in percent, with the running sum, what is
/// missing of the sample, and what is odd about it.
class SieveForm final : public Form {
    Q_OBJECT

  public:
    explicit SieveForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

  signals:
    /// What lies on the sieves so far; nothing where it cannot be read yet.
    void edited(const std::optional<treadwell::samples::SieveParts>& parts);
    /// What the parts are held against is to be seen or changed.
    void rangesAsked();

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] QString running() const override;
    void clear() override;
    void retranslate() override;

  private:
    static constexpr std::size_t kMostParts = 8;

    [[nodiscard]] bool byPercent() const;
    [[nodiscard]] std::vector<Length> openings() const;
    [[nodiscard]] entries::SieveTest test() const;
    void showStack();
    void tellEdited();

    QComboBox* m_stack;
    QLineEdit* m_own;  ///< openings of a stack of one's own in mm
    QComboBox* m_way;
    widgets::QuantitySpinBox* m_before;
    std::array<widgets::QuantitySpinBox*, kMostParts> m_masses{};
    std::array<widgets::QuantitySpinBox*, kMostParts> m_parts{};
    widgets::QuantitySpinBox* m_topLength;
    QCheckBox* m_wet;
    QPushButton* m_ranges;
};

}  // namespace treadwell::samples_page
