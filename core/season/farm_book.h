#pragma once

#include "core/base/farm_zone.h"
#include "core/farm/field.h"
#include "core/farm/machines.h"
#include "core/farm/silo.h"
#include "core/farm/silo_place.h"
#include "core/farm/site_rules.h"

#include <map>
#include <optional>
#include <string>

namespace treadwell::season {

/// The farm as the entries up to some moment have defined it.
struct FarmBook {
    std::string farm;
    FarmZone zone;
    std::map<farm::SiloId, farm::Silo> silos;
    std::map<farm::SiloId, farm::SiloPlace> places;  ///< of those whose place on Earth was recorded
    std::map<farm::TractorId, farm::Tractor> tractors;
    std::map<farm::TruckId, farm::Truck> trucks;
    std::map<farm::FieldId, farm::Field> fields;
    farm::SiteRules rules;
    std::optional<DryMatter> lastSeasonsDryMatter;  ///< mean by mass, carried over

    /// That of a load's field; maize where no field that is known is named.
    [[nodiscard]] crop::Crop cropOf(const std::optional<farm::FieldId>& field) const {
        const auto known = field ? fields.find(*field) : fields.end();
        return known == fields.end() ? crop::Crop::maize : known->second.crop;
    }

    /// Of crop that nobody has sampled: last season's mean, else the middle of the goal.
    [[nodiscard]] DryMatter unsampledDryMatter() const {
        return lastSeasonsDryMatter.value_or((rules.dryMatterLow + rules.dryMatterHigh) * 0.5);
    }

    friend bool operator==(const FarmBook&, const FarmBook&) = default;
};

}  // namespace treadwell::season
