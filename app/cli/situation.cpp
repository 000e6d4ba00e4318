#include "app/cli/situation.h"

#include "app/cli/option_reader.h"
#include "core/base/number_text.h"

#include <array>
#include <utility>

namespace treadwell::cli {

namespace {

/// The option's name says the unit, so a bare number is understood here as well.
PackingIntensity minutesPerTonneFrom(OptionReader& reader, std::string_view text) {
    if (const auto number = numberFromText(text)) return PackingIntensity::fromMinutesPerTonne(*number);
    return reader.read<PackingIntensity>(text, "--minutes-per-tonne");
}

density::Work workFrom(OptionReader& reader, const EstimateOptions& options) {
    if (options.rate && options.minutesPerTonne) {
        reader.fail("--rate and --minutes-per-tonne: give one of them");
    } else if (options.rate) {
        return reader.read<AsFedRate>(*options.rate, "--rate");
    } else if (options.minutesPerTonne) {
        return minutesPerTonneFrom(reader, *options.minutesPerTonne);
    } else {
        reader.fail("--rate is missing: give the delivery, like 120t/h, or --minutes-per-tonne");
    }
    return AsFedRate{};
}

/// `0.5` or `50%`.
Share shareFrom(OptionReader& reader, std::string_view text, std::string_view option) {
    if (const auto number = numberFromText(text)) return Share::fromFraction(*number);
    return reader.read<Share>(text, option);
}

/// `14t`, or with its share of the time packing `10t@0.5`.
density::Machine machineFrom(OptionReader& reader, std::string_view text) {
    constexpr std::string_view kOption = "--tractor";
    density::Machine machine{};
    const std::size_t at = text.find('@');
    machine.mass = reader.read<MachineMass>(text.substr(0, at), kOption);
    if (at != std::string_view::npos) machine.share = shareFrom(reader, text.substr(at + 1), kOption);
    return machine;
}

}  // namespace

tl::expected<density::Situation, Failure> situationFrom(const EstimateOptions& options,
                                                        const words::Style& style) {
    OptionReader reader{style};
    density::Situation situation{.work = workFrom(reader, options),
                                 .dryMatter = reader.read<DryMatter>(options.dryMatter, "--dry-matter"),
                                 .layer = reader.readIfGiven<Length>(options.layer, "--layer"),
                                 .meanDepth = reader.read<Length>(options.depth, "--depth")};
    for (const std::string& tractor : options.tractors) {
        situation.machines.push_back(machineFrom(reader, tractor));
    }
    situation.crop = reader.readName<crop::Crop>(options.crop, "--crop");
    if (const auto minimum = reader.readIfGiven<DryDensity>(options.minimum, "--minimum")) {
        situation.target.minimum = *minimum;
    }
    if (reader.failure()) return tl::unexpected{*reader.failure()};
    return situation;
}

std::string optionOf(std::string_view field) {
    constexpr std::string_view kMachines = "machines[";
    if (field.starts_with(kMachines)) {
        const std::string_view rest = field.substr(kMachines.size());
        if (const auto index = integerFromText(rest.substr(0, rest.find(']')))) {
            return "--tractor " + std::to_string(*index + 1);
        }
    }
    constexpr std::array kOptions{
        std::pair{"rate", "--rate"},
        std::pair{"packingTime", "--minutes-per-tonne"},
        std::pair{"dryMatter", "--dry-matter"},
        std::pair{"layer", "--layer"},
        std::pair{"meanDepth", "--depth"},
        std::pair{"target.minimum", "--minimum"},
    };
    for (const auto& [name, option] : kOptions) {
        if (field == name) return option;
    }
    return words::fieldInWords(field);
}

}  // namespace treadwell::cli
