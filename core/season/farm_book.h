#pragma once

#include "core/base/farm_zone.h"
#include "core/farm/field.h"
#include "core/farm/machines.h"
#include "core/farm/silo.h"
#include "core/farm/site_rules.h"

#include <map>
#include <string>

namespace treadwell::season {

/// The farm as the entries up to some moment have defined it.
struct FarmBook {
    std::string farm;
    FarmZone zone;
    std::map<farm::SiloId, farm::Silo> silos;
    std::map<farm::TractorId, farm::Tractor> tractors;
    std::map<farm::TruckId, farm::Truck> trucks;
    std::map<farm::FieldId, farm::Field> fields;
    farm::SiteRules rules;

    friend bool operator==(const FarmBook&, const FarmBook&) = default;
};

}  // namespace treadwell::season
