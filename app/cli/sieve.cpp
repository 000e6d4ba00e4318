#include "app/cli/sieve.h"

#include "app/cli/chop_output.h"
#include "app/cli/option_reader.h"
#include "core/samples/codes.h"
#include "core/samples/dish.h"

#include <ostream>

namespace treadwell::cli {

namespace {

std::vector<Length> openingsFrom(OptionReader& reader, const SieveOptions& options) {
    if (options.sieves.empty()) {
        const auto known =
            samples::openingsOf(reader.readName<samples::SieveStack>(options.stack, "--stack"));
        return {known.begin(), known.end()};
    }
    std::vector<Length> openings;
    for (const std::string& text : options.sieves)
        openings.push_back(reader.readAs<Length>(Dimension::chopLength, text, "--sieve"));
    return openings;
}

Result<samples::SieveParts> partsFrom(OptionReader& reader, const SieveOptions& options) {
    const std::vector<Length> openings = openingsFrom(reader, options);
    if (options.masses.empty() == options.parts.empty())
        reader.fail("--mass: give one for each sieve from the top down and one for the pan, or --part");
    if (!options.parts.empty()) {
        std::vector<double> percent;
        for (const std::string& text : options.parts)
            percent.push_back(reader.read<Share>(text, "--part").percent());
        return samples::partsOfPercent(openings, percent).map([&](samples::SieveParts parts) {
            if (options.wet) parts.remarks.push_back({code::sieveWet, {}});
            return parts;
        });
    }
    samples::SieveTest test{openings, {}, {}, options.wet};
    for (const std::string& text : options.masses)
        test.masses.push_back(reader.readAs<AsFedMass>(Dimension::dishMass, text, "--mass"));
    test.before = reader.readAsIfGiven<AsFedMass>(Dimension::dishMass, options.before, "--before");
    return samples::partsOf(test);
}

}  // namespace

Outcome sieve(const SieveOptions& options, const Answer& answer) {
    OptionReader reader{answer.style};
    const auto parts = partsFrom(reader, options);
    ChopView chop;
    chop.ranges = samples::usualRanges(reader.readName<crop::Crop>(options.crop, "--crop"),
                                       reader.readName<samples::Processor>(options.processor, "--processor"));
    chop.topLength = reader.readAsIfGiven<Length>(Dimension::chopLength, options.topLength, "--top-length");
    chop.fibre = reader.readIfGiven<Share>(options.fibre, "--fibre");
    if (const auto cut = reader.readAsIfGiven<Length>(Dimension::chopLength, options.cut, "--cut"))
        chop.setting = samples::ChopSetting{*cut};
    if (reader.failure()) return tl::unexpected{*reader.failure()};
    if (!parts) return misused(parts.error(), words::fieldInWords(parts.error().field), answer.style);
    chop.parts = *parts;
    if (chop.fibre) {
        const auto fibre = samples::effectiveFibre(chop.parts, chop.parts.openings.front(), *chop.fibre);
        if (!fibre) return misused(fibre.error(), "--fibre", answer.style);
    }
    if (!answer.json) {
        printChop(chop, answer);
        return {};
    }
    JsonWriter json{2};
    json.beginObject();
    writeChop(json, chop, answer.style);
    json.endObject();
    answer.out << json.text() << '\n';
    return {};
}

Outcome dry(const DryOptions& options, const Answer& answer) {
    OptionReader reader{answer.style};
    const auto wet = reader.readAs<AsFedMass>(Dimension::dishMass, options.wet, "--wet");
    std::vector<DryMass> weighings;
    for (const std::string& text : options.weighings)
        weighings.push_back(reader.readAs<DryMass>(Dimension::dishMass, text, "--weighed"));
    if (reader.failure()) return tl::unexpected{*reader.failure()};
    const auto step = samples::nextDryingStep(wet, weighings);
    if (!step)
        return misused(step.error(), step.error().field == "wet" ? "--wet" : "--weighed", answer.style);
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().member("dry", step->isDry).member("heat_s", step->heat.count());
        if (step->dryMatter) json.member("dry_matter", step->dryMatter->fraction());
        if (step->lastLoss) json.member("last_loss_kg", step->lastLoss->kilograms());
        json.member("small_sample", step->small).endObject();
        answer.out << json.text() << '\n';
        return {};
    }
    if (step->isDry) {
        printLine(answer.out, "Dry", words::inWords(step->dryMatter->amount(), answer.style) + " dry matter");
    } else {
        printLine(answer.out, "Heat", words::inWords(step->heat.count(), answer.style) + " s, then weigh");
    }
    if (step->small)
        printLine(answer.out, "Note", "Less than 80 g: the last gram counts for more than a point");
    return {};
}

}  // namespace treadwell::cli
