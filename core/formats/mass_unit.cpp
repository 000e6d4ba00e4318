#include "core/formats/mass_unit.h"

#include <algorithm>

namespace treadwell::formats {

namespace {

struct UnitWord {
    std::string_view word;
    MassUnit unit;
};

constexpr std::array<UnitWord, 20> kWords{{{"kg", MassUnit::kg},
                                           {"kilogram", MassUnit::kg},
                                           {"kilograms", MassUnit::kg},
                                           {"kilogramm", MassUnit::kg},
                                           {"quilograma", MassUnit::kg},
                                           {"quilogramas", MassUnit::kg},
                                           {"t", MassUnit::t},
                                           {"tonne", MassUnit::t},
                                           {"tonnes", MassUnit::t},
                                           {"tonnen", MassUnit::t},
                                           {"tonelada", MassUnit::t},
                                           {"toneladas", MassUnit::t},
                                           {"lb", MassUnit::lb},
                                           {"lbs", MassUnit::lb},
                                           {"pound", MassUnit::lb},
                                           {"pounds", MassUnit::lb},
                                           {"ton", MassUnit::ton},
                                           {"tons", MassUnit::ton},
                                           {"short tons", MassUnit::ton},
                                           {"g", MassUnit::g}}};

}  // namespace

std::optional<MassUnit> massUnitFromWord(std::string_view word) {
    const auto* known =
        std::find_if(kWords.begin(), kWords.end(), [&](const UnitWord& unit) { return unit.word == word; });
    return known == kWords.end() ? std::nullopt : std::optional{known->unit};
}

AsFedMass massOf(double value, MassUnit unit) {
    switch (unit) {
        case MassUnit::kg:
            return AsFedMass::fromKilograms(value);
        case MassUnit::t:
            return AsFedMass::fromTonnes(value);
        case MassUnit::lb:
            return AsFedMass::fromPounds(value);
        case MassUnit::ton:
            return AsFedMass::fromShortTons(value);
        case MassUnit::g:
            break;
    }
    return AsFedMass::fromKilograms(value / 1000.0);
}

}  // namespace treadwell::formats
