#include "core/crop/crop.h"

#include <array>
#include <stdexcept>

namespace treadwell::crop {

namespace {

constexpr Source kRichard{"Richard, Veeken, de Wilde & Hamelers 2004, Biotechnol. Prog. 20:1372-1381",
                          Evidence::fromMemory};
constexpr Source kSurvey{"Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619",
                         Evidence::fromMemory};
constexpr Source kDutchTrailers{"Dutch trailer study 1979-86, 423 loads of chopped maize",
                                Evidence::published};
constexpr Source kWiersmaHolmes{"Wiersma & Holmes", Evidence::published};

constexpr DryMatter percent(double value) {
    return DryMatter::fromPercent(value);
}
constexpr DryDensity dense(double value) {
    return DryDensity::fromKilogramsPerCubicMetre(value);
}

constexpr std::array kCrops{
    Facts{Crop::maize, "maize", 0.95, kRichard, percent(25), percent(46), kSurvey, dense(112),
          kDutchTrailers},
    Facts{Crop::grass, "grass", 0.90, kRichard, percent(24), percent(67), kSurvey, dense(80), kWiersmaHolmes},
    Facts{Crop::lucerne, "lucerne", 0.90, kRichard, percent(24), percent(67), kSurvey, dense(80),
          kWiersmaHolmes},
};

}  // namespace

std::span<const Facts> crops() noexcept {
    return kCrops;
}

const Facts& factsOf(Crop crop) {
    for (const Facts& facts : kCrops) {
        if (facts.crop == crop) return facts;
    }
    throw std::logic_error("a crop without facts");
}

std::array<std::string_view, 3> enumTexts(Crop /*crop*/) noexcept {
    std::array<std::string_view, kCrops.size()> texts;
    for (std::size_t i = 0; i < kCrops.size(); ++i) texts[i] = kCrops[i].name;
    return texts;
}

AsFedDensity looseAsFed(Crop crop, DryMatter dryMatter) {
    return factsOf(crop).loose / dryMatter;
}

}  // namespace treadwell::crop
