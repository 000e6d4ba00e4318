#pragma once

#include "app/desktop/fill/say.h"
#include "core/density/doubts.h"

#include <QDialog>

namespace treadwell::fill {

/// How a density came about: every step with its formula and source, and what there is to doubt and to
/// measure.
class WorkingDialog final : public QDialog {
    Q_OBJECT

  public:
    WorkingDialog(const density::Estimate& estimate, const density::Doubts& doubts, const Speech& speech,
                  QWidget* parent);
};

[[nodiscard]] QString workingText(const density::Estimate& estimate, const density::Doubts& doubts,
                                  const Speech& speech);

}  // namespace treadwell::fill
