#pragma once

#include "app/desktop/samples/form.h"
#include "core/farm/silo.h"

class QCheckBox;

namespace treadwell::face_page {

/// A form of an opened silo; the silo is named in its entry.
class SiloForm : public samples_page::Form {
    Q_OBJECT

  public:
    void setSilo(farm::SiloId silo) { m_silo = silo; }

  protected:
    using samples_page::Form::Form;
    [[nodiscard]] farm::SiloId silo() const noexcept { return m_silo; }

  private:
    farm::SiloId m_silo;
};

/// A core, a block or loose material, with where it came from and how it was taken.
class CoreForm final : public SiloForm {
    Q_OBJECT

  public:
    explicit CoreForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] QString running() const override;
    void retranslate() override;

  private:
    [[nodiscard]] entries::Core core() const;
    void showWay();

    QComboBox* m_origin;
    widgets::QuantitySpinBox* m_along;
    widgets::QuantitySpinBox* m_across;
    widgets::QuantitySpinBox* m_depth;
    widgets::QuantitySpinBox* m_diameter;
    widgets::QuantitySpinBox* m_length;
    widgets::QuantitySpinBox* m_volume;
    widgets::QuantitySpinBox* m_mass;
    widgets::QuantitySpinBox* m_dryMatter;
    widgets::QuantitySpinBox* m_density;
};

/// What was fed since the last time, its dry matter, and where the face stands now.
class RemovalForm final : public SiloForm {
    Q_OBJECT

  public:
    explicit RemovalForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] QString running() const override;
    void clear() override;
    void retranslate() override;

  private:
    widgets::QuantitySpinBox* m_mass;
    widgets::QuantitySpinBox* m_dryMatter;
    widgets::QuantitySpinBox* m_face;
    QCheckBox* m_empty;
};

/// How warm it is 20 cm behind the face and in the core.
class WarmthForm final : public SiloForm {
    Q_OBJECT

  public:
    explicit WarmthForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

  protected:
    [[nodiscard]] Result<entries::Body> body() const override;
    [[nodiscard]] std::optional<QString> notYet() const override;
    [[nodiscard]] QString running() const override;
    void clear() override;
    void retranslate() override;

  private:
    void setUnread();

    widgets::QuantitySpinBox* m_behind;
    widgets::QuantitySpinBox* m_core;
    widgets::QuantitySpinBox* m_across;
    widgets::QuantitySpinBox* m_height;
    bool m_behindRead = false;
    bool m_coreRead = false;
};

}  // namespace treadwell::face_page
