#include "app/desktop/widgets/distribution_view.h"

namespace treadwell::widgets {

AccessibleDistribution::AccessibleDistribution(DistributionView* view)
    : QAccessibleWidget{view, QAccessible::Indicator} {}

QAccessibleInterface* AccessibleDistribution::make(const QString&, QObject* object) {
    auto* view = qobject_cast<DistributionView*>(object);
    return view == nullptr ? nullptr : new AccessibleDistribution{view};
}

void* AccessibleDistribution::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
}

const DistributionView& AccessibleDistribution::view() const {
    return *static_cast<const DistributionView*>(object());
}

QString AccessibleDistribution::text(QAccessible::Text which) const {
    const GaugeDensity* shown = view().density();
    if (which != QAccessible::Value || shown == nullptr) return QAccessibleWidget::text(which);
    return view().appearance().units().text(shown->density.median());
}

QVariant AccessibleDistribution::currentValue() const {
    const GaugeDensity* shown = view().density();
    if (shown == nullptr) return {};
    return view().appearance().units().shown(shown->density.median().amount());
}

void AccessibleDistribution::setCurrentValue(const QVariant&) {}  // it is read, never set

QVariant AccessibleDistribution::minimumValue() const {
    return view().axis().low;
}

QVariant AccessibleDistribution::maximumValue() const {
    return view().axis().high;
}

QVariant AccessibleDistribution::minimumStepSize() const {
    return 0.0;
}

}  // namespace treadwell::widgets
