#pragma once

#include "core/crop/crop.h"
#include "core/farm/shape.h"
#include "core/plan/afterwards.h"
#include "core/plan/prices.h"
#include "core/quantity/relations.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace treadwell::plan {

/// A silo or pile that is to be filled.
struct PlannedSilo {
    std::string name;
    farm::Shape shape;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("name", self.name);
        visit("shape", self.shape);
    }
    friend bool operator==(const PlannedSilo&, const PlannedSilo&) = default;
};

/// A field, or several at one distance.
struct PlannedField {
    std::string name;
    AsFedMass crop;   ///< that stands on it
    Length distance;  ///< of the road to the silo, one way

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("crop_kg", self.crop);
        visit("distance_m", self.distance);
        visit("name", self.name);
    }
    friend bool operator==(const PlannedField&, const PlannedField&) = default;
};

struct Harvester {
    AsFedRate rate;                           ///< while it chops
    Share chopping = Share::fromPercent(85);  ///< of its time; the rest turns, waits and repairs (published)
    CostRate hourlyCost;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("chopping_share", self.chopping);
        visit("hourly_cost_per_s", self.hourlyCost);
        visit("rate_kg_per_s", self.rate);
    }
    friend bool operator==(const Harvester&, const Harvester&) = default;
};

inline constexpr int kMostTrucks = 60;
inline constexpr int kMostListed = 12;  ///< silos, fields or tractors

/// Trucks of one kind. A round is fill + road both ways + tip + elsewhere; tip and elsewhere together take
/// 7.5 min (Harrigan 2003, Applied Engineering in Agriculture 19:389, published).
struct Haulage {
    int trucks = 6;
    AsFedMass load = AsFedMass::fromTonnes(12);
    Speed speed = Speed::fromKilometresPerHour(40);
    Seconds tip = std::chrono::seconds{150};        ///< at the tipping place
    Seconds elsewhere = std::chrono::seconds{300};  ///< weighing, turning, gates
    int tippingPlaces = 1;
    CostRate hourlyCost;  ///< of one truck, driver included

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("elsewhere_s", self.elsewhere);
        visit("hourly_cost_per_s", self.hourlyCost);
        visit("load_kg", self.load);
        visit("speed_m_per_s", self.speed);
        visit("tip_s", self.tip);
        visit("tipping_places", self.tippingPlaces);
        visit("trucks", self.trucks);
    }
    friend bool operator==(const Haulage&, const Haulage&) = default;
};

struct Spreading {
    AsFedRate rate = AsFedRate::fromTonnesPerHour(250);  ///< what is spread in an hour
    int heaps = 2;  ///< loads that may lie tipped and not yet spread; the next truck waits

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("heaps", self.heaps);
        visit("rate_kg_per_s", self.rate);
    }
    friend bool operator==(const Spreading&, const Spreading&) = default;
};

/// Coefficients of variation of the times of a load: 0 is fixed, 1 exponential. The defaults are assumed.
struct Variation {
    double fill = 0.25;
    double road = 0.20;
    double tip = 0.30;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("fill", self.fill);
        visit("road", self.road);
        visit("tip", self.tip);
    }
    friend bool operator==(const Variation&, const Variation&) = default;
};

/// A tractor that could pack.
struct PlannedTractor {
    std::string name;
    MachineMass mass;
    Share share = Share::fromFraction(1.0);  ///< of the time in which it packs
    MachinePrice price;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("mass_kg", self.mass);
        visit("name", self.name);
        visit("price", self.price);
        visit("share", self.share);
    }
    friend bool operator==(const PlannedTractor&, const PlannedTractor&) = default;
};

/// Everything a plan stands on.
struct Inputs {
    std::string name;
    crop::Crop crop = crop::Crop::maize;
    DryMatter dryMatter = DryMatter::fromPercent(35);
    Length layer = Length::fromCentimetres(15);
    DryDensity minimumDensity = DryDensity::fromKilogramsPerCubicMetre(225);
    Chance wantedChance = Chance::fromPercent(50);
    Seconds workday = std::chrono::hours{10};
    LocalDay begins = std::chrono::year{2026} / std::chrono::September / 14;
    Length machineWidth = Length::fromMetres(2.5);  ///< of the widest packing machine, duals included
    int days = 400;                                 ///< that are simulated
    std::int64_t draw = 1;                          ///< which random numbers; the same give the same plan
    std::vector<PlannedSilo> silos;                 ///< in order of filling
    std::vector<PlannedField> grounds;              ///< in order of harvest
    Harvester harvester;
    Haulage haulage;
    Spreading spreading;
    Variation variation;
    std::vector<PlannedTractor> tractors;
    Prices prices;
    Sealing sealing;
    Feeding feeding;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("begins", self.begins);
        visit("crop", self.crop);
        visit("days", self.days);
        visit("draw", self.draw);
        visit("dry_matter", self.dryMatter);
        visit("feeding", self.feeding);
        visit("fields", self.grounds);
        visit("harvester", self.harvester);
        visit("haulage", self.haulage);
        visit("layer_m", self.layer);
        visit("machine_width_m", self.machineWidth);
        visit("minimum_density_kg_dm_m3", self.minimumDensity);
        visit("name", self.name);
        visit("prices", self.prices);
        visit("sealing", self.sealing);
        visit("silos", self.silos);
        visit("spreading", self.spreading);
        visit("tractors", self.tractors);
        visit("variation", self.variation);
        visit("wanted_chance", self.wantedChance);
        visit("workday_s", self.workday);
    }
    friend bool operator==(const Inputs&, const Inputs&) = default;
};

/// Holds every input to what can be meant, so that all that follows is finite. Errors: valueOutOfRange and
/// valueNotFinite with the place (`tractors[1].mass`), nameEmpty, planNameTwice, planNothingListed, and those
/// of farm::validate(Shape).
[[nodiscard]] Result<void> validate(const Inputs& inputs);

/// An invented plan to begin with.
[[nodiscard]] Inputs exampleInputs();

/// The inputs as JSON, SI with the unit in the key; and back. Nothing in the text is passed over. Errors:
/// payloadUnreadable, payloadFieldMissing, payloadFieldWrong, fieldUnknown, and those of validate().
[[nodiscard]] std::string toJson(const Inputs& inputs);
[[nodiscard]] Result<Inputs> inputsFromJson(std::string_view json);

}  // namespace treadwell::plan
