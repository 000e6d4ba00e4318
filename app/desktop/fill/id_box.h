#pragma once

#include "core/base/uuid.h"

#include <QComboBox>
#include <optional>

namespace treadwell::fill {

/// Fills a box with the names of the farm's things and chooses one.
template <class Things, class IdType>
void fillBox(QComboBox& box, const Things& things, const std::optional<IdType>& chosen) {
    for (const auto& [id, thing] : things) {
        box.addItem(QString::fromStdString(thing.name), QString::fromStdString(id.value.text()));
        if (chosen == id) box.setCurrentIndex(box.count() - 1);
    }
}

/// What is chosen in such a box; none where its data is no id.
template <class IdType>
[[nodiscard]] std::optional<IdType> chosenIn(const QComboBox& box) {
    const auto id = Uuid::fromText(box.currentData().toString().toStdString());
    return id ? std::optional{IdType{*id}} : std::nullopt;
}

}  // namespace treadwell::fill
