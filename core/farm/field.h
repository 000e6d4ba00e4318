#pragma once

#include "core/base/error.h"
#include "core/base/uuid.h"
#include "core/crop/crop.h"

#include <string>

namespace treadwell::farm {

using FieldId = Id<struct FieldTag>;

struct Field {
    FieldId id;
    std::string name;
    crop::Crop crop = crop::Crop::maize;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("crop", self.crop);
        visit("id", self.id);
        visit("name", self.name);
    }
    friend bool operator==(const Field&, const Field&) = default;
};

[[nodiscard]] Result<void> validate(const Field& field);

}  // namespace treadwell::farm
