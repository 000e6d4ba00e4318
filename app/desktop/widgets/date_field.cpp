#include "app/desktop/widgets/date_field.h"

#include "app/desktop/settings/dates.h"

#include <QDateEdit>

namespace treadwell::widgets {

namespace {

const QDate kOpen{2000, 1, 1};

}  // namespace

QDateEdit* makeDateField(const char* name) {
    auto* field = new QDateEdit;
    field->setObjectName(QLatin1String{name});
    field->setMinimumDate(kOpen);
    leaveOpen(*field);
    field->setSpecialValueText(QStringLiteral("–"));
    field->setCalendarPopup(true);
    return field;
}

std::optional<LocalDay> dayOf(const QDateEdit& field) {
    if (field.date() == kOpen) return std::nullopt;
    return settings::localDayOf(field.date());
}

void leaveOpen(QDateEdit& field) {
    field.setDate(kOpen);
}

}  // namespace treadwell::widgets
