#include "core/density/sample_change.h"

#include "core/density/codes.h"
#include "core/density/readings.h"

#include <algorithm>
#include <map>

namespace treadwell::density {

namespace {

std::optional<CropToCome> cropToCome(const season::Season& season, const std::optional<farm::FieldId>& field,
                                     Instant now) {
    const auto belief = season::dryMatterFor(season, field, now);
    if (!belief) return std::nullopt;
    const farm::SiteRules& rules = season.farm().rules;
    const crop::Crop crop = season.farm().cropOf(field);
    return CropToCome{*belief, targetFor({rules.minimumDensity, rules.porosityGoal}, belief->mean, crop),
                      crop::looseAsFed(crop, belief->mean)};
}

std::optional<farm::SiloId> newestSilo(const season::Season& season, Instant now) {
    std::optional<farm::SiloId> silo;
    for (const auto& day : season.days()) {
        for (const season::LoadTipped& load : day->loads) {
            if (load.at <= now) silo = load.load.silo;
        }
    }
    return silo;
}

std::optional<SiloReached> reached(const season::Season& season, farm::SiloId silo, Instant now) {
    const Readings readings = readingsAt(season, silo, now);
    if (!readings.silo.estimate) return std::nullopt;
    return SiloReached{readings.silo.estimate->density, readings.silo.estimate->chance};
}

std::int64_t loadsMoved(const season::Season& before, const season::Season& after, Instant now) {
    std::map<entries::EntryId, DryMatter> known;
    for (const auto& day : before.days()) {
        for (const season::LoadTipped& load : day->loads) known[load.entry] = load.dryMatter;
    }
    std::int64_t moved = 0;
    for (const auto& day : after.days()) {
        moved += std::ranges::count_if(day->loads, [&](const season::LoadTipped& load) {
            const auto was = known.find(load.entry);
            return load.at <= now && was != known.end() && was->second != load.dryMatter;
        });
    }
    return moved;
}

void addCrop(const SampleChange& change, const farm::SiteRules& rules, std::vector<Message>& messages) {
    if (!change.cropNow) {
        if (change.cropBefore) messages.push_back({code::sampleNoneLeft, {}});
        return;
    }
    const CropToCome& now = *change.cropNow;
    if (change.cropBefore) {
        const CropToCome& was = *change.cropBefore;
        messages.push_back({code::sampleMovedCrop,
                            {was.dryMatter.mean.amount(), was.dryMatter.half80().amount(),
                             now.dryMatter.mean.amount(), now.dryMatter.half80().amount()}});
    } else {
        messages.push_back(
            {code::sampleFirst, {now.dryMatter.mean.amount(), now.dryMatter.half80().amount()}});
    }
    if (auto warning = samples::goalWarning(now.dryMatter.mean, rules.dryMatterLow, rules.dryMatterHigh))
        messages.push_back(*std::move(warning));
    if (!change.cropBefore) return;
    const CropToCome& was = *change.cropBefore;
    messages.push_back(
        {code::sampleMovedTarget,
         {was.target.density.amount(), now.target.density.amount(), was.loose.amount(), now.loose.amount()}});
}

}  // namespace

SampleChange changeBySample(const season::Season& before, const season::Season& after,
                            const std::optional<farm::FieldId>& field, Instant now) {
    SampleChange change;
    change.cropBefore = cropToCome(before, field, now);
    change.cropNow = cropToCome(after, field, now);
    change.loads = loadsMoved(before, after, now);
    if (const auto silo = newestSilo(after, now)) {
        change.siloBefore = reached(before, *silo, now);
        change.siloNow = reached(after, *silo, now);
    }
    return change;
}

std::vector<Message> messagesOf(const SampleChange& change, const farm::SiteRules& rules) {
    std::vector<Message> messages;
    addCrop(change, rules, messages);
    if (change.loads > 0) messages.push_back({code::sampleMovedLoads, {change.loads}});
    if (change.loads > 0 && change.siloBefore && change.siloNow) {
        const Distribution &was = change.siloBefore->density, &now = change.siloNow->density;
        messages.push_back(
            {code::sampleMovedSilo,
             {was.median().amount(), now.median().amount(), now.low80().amount(), now.high80().amount(),
              change.siloBefore->chance.amount(), change.siloNow->chance.amount()}});
    }
    return messages;
}

}  // namespace treadwell::density
