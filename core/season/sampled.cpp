#include "core/season/sampled.h"

#include "core/samples/codes.h"
#include "core/samples/particle_size.h"

#include <algorithm>
#include <map>

namespace treadwell::season {

namespace {

/// Every record of a kind up to a moment, in the order of time.
template <class Kind, class Take>
void forEach(const Season& season, Instant until, Take take) {
    for (const auto& day : season.days()) {
        if (day->begin > until) break;
        for (const Dated<Kind>& record : day->records.template of<Kind>()) {
            if (record.at <= until) take(record);
        }
    }
}

template <class T>
void replace(std::optional<T>& known, const std::optional<T>& seen) {
    if (seen) known = seen;
}

crop::Crop cropOf(const FarmBook& farm, const std::optional<farm::FieldId>& field) {
    const auto known = field ? farm.fields.find(*field) : farm.fields.end();
    return known == farm.fields.end() ? crop::Crop::maize : known->second.crop;
}

using Test = Dated<entries::SieveTest>;

/// Tests whose parts can be read; entries were validated when they were made.
Result<samples::SieveParts> pooledOf(const std::vector<const Test*>& tests, const farm::SiteRules& rules) {
    std::vector<samples::SieveParts> parts;
    for (const Test* test : tests) {
        if (auto read = entries::partsOf(test->what, rules.sieveLossLimit()))
            parts.push_back(*std::move(read));
    }
    return samples::pooled(parts);
}

std::optional<Length> meanTopLength(const std::vector<const Test*>& tests) {
    Length sum;
    int count = 0;
    for (const Test* test : tests) {
        if (!test->what.topLength) continue;
        sum += *test->what.topLength;
        ++count;
    }
    return count == 0 ? std::nullopt : std::optional{sum / count};
}

template <class Key, class KeyOf>
std::map<Key, std::vector<const Test*>> grouped(const Day& day, Instant until, KeyOf keyOf) {
    std::map<Key, std::vector<const Test*>> groups;
    for (const Test& test : day.records.of<entries::SieveTest>()) {
        if (test.at <= until) groups[keyOf(test)].push_back(&test);
    }
    return groups;
}

void addWarmth(const Season& season, Instant until, FieldOutlook& outlook) {
    const FieldSeen& seen = outlook.seen;
    if (!seen.silked || !seen.hybridDays) return;
    const auto wanted = samples::warmthFromSilking(*seen.hybridDays);
    if (!wanted) {
        outlook.notes.push_back({code::hybridOutsideWarmth, {*seen.hybridDays}});
        return;
    }
    const auto reached = samples::whenWarmthReaches(temperaturesOf(season, until), *seen.silked, *wanted);
    if (reached) {
        outlook.byWarmth = *reached;
        if (reached->missing > 0) outlook.notes.push_back({code::temperaturesMissing, {reached->missing}});
    } else {
        outlook.notes.push_back({code::warmthUnknown, {}});
    }
}

}  // namespace

std::optional<ChopInForce> chopInForce(const Season& season, Instant until) {
    std::optional<ChopInForce> chop;
    forEach<entries::ChopSet>(season, until, [&](const Dated<entries::ChopSet>& set) {
        if (!chop) chop.emplace();
        chop->since = set.at;
        chop->processor = set.what.processor;
        replace(chop->length, set.what.length);
        replace(chop->rollGap, set.what.rollGap);
        replace(chop->cuttingHeight, set.what.cuttingHeight);
    });
    return chop;
}

samples::ChopRanges chopRangesFor(const Season& season, crop::Crop crop, samples::Processor processor,
                                  Instant until) {
    samples::ChopRanges ranges = samples::usualRanges(crop, processor);
    forEach<entries::ChopRangesSet>(season, until, [&](const Dated<entries::ChopRangesSet>& set) {
        if (set.what.ranges.crop == crop && set.what.ranges.processor == processor) ranges = set.what.ranges;
    });
    return ranges;
}

std::vector<Message> ChopOfField::advice() const {
    std::optional<samples::ChopSetting> cut;
    if (setting && setting->length) cut = samples::ChopSetting{*setting->length};
    return samples::chopAdvice(parts, ranges, cut);
}

std::vector<ChopOfField> chopOf(const Season& season, const Day& day, Instant until) {
    using Key = std::pair<std::optional<farm::FieldId>, std::vector<Length>>;
    const auto groups = grouped<Key>(day, until, [](const Test& test) {
        return Key{test.what.field, test.what.openings};
    });
    std::vector<ChopOfField> chops;
    for (const auto& [key, tests] : groups) {
        auto parts = pooledOf(tests, day.farm().rules);
        if (!parts) continue;
        ChopOfField chop;
        chop.field = key.first;
        chop.parts = *std::move(parts);
        chop.topLength = meanTopLength(tests);
        chop.last = tests.back()->at;
        chop.setting = chopInForce(season, chop.last);
        const auto processor = chop.setting ? chop.setting->processor : samples::Processor::rolls;
        chop.ranges = chopRangesFor(season, cropOf(day.farm(), chop.field), processor, chop.last);
        chops.push_back(std::move(chop));
    }
    std::ranges::stable_sort(chops, {}, &ChopOfField::last);
    return chops;
}

std::vector<samples::DayLength> chopByDay(const Season& season, Instant until) {
    std::map<std::vector<Length>, std::size_t> used;
    forEach<entries::SieveTest>(season, until, [&](const Test& test) { ++used[test.what.openings]; });
    if (used.empty()) return {};
    const auto& stack =
        std::ranges::max_element(used, {}, [](const auto& each) { return each.second; })->first;
    std::vector<samples::DayLength> lengths;
    for (const auto& day : season.days()) {
        const auto groups =
            grouped<std::vector<Length>>(*day, until, [](const Test& test) { return test.what.openings; });
        const auto tests = groups.find(stack);
        if (tests == groups.end()) continue;
        const auto parts = pooledOf(tests->second, day->farm().rules);
        const auto size = parts.and_then(samples::logNormalSize);
        if (size) lengths.push_back({day->date, size->geometricMean});
    }
    return lengths;
}

KernelsOfDay kernelsOf(const Season& season, const Day& day, Instant until) {
    KernelsOfDay kernels;
    std::vector<samples::CupCount> counts;
    std::optional<samples::Processing> worst;
    const auto found = [&](samples::Processing processing, samples::Material material) {
        if (material == samples::Material::fresh && (!worst || processing > *worst)) worst = processing;
    };
    for (const Dated<entries::KernelTest>& test : day.records.of<entries::KernelTest>()) {
        if (test.at > until) continue;
        if (test.what.kernels) counts.push_back({*test.what.kernels, test.what.material});
        const auto score = entries::scoreOf(test.what);
        if (!score || !*score) continue;
        kernels.scores.push_back({test.at, test.what.field, **score});
        found((*score)->processing, test.what.material);
    }
    if (auto means = samples::cupMeans(counts)) kernels.cups = *std::move(means);
    for (const samples::CupMean& mean : kernels.cups) found(mean.processing, mean.material);
    if (worst) {
        const auto setting = chopInForce(season, until);
        kernels.advice.push_back(samples::rollGapAdvice(*worst, samples::Material::fresh,
                                                        setting ? setting->rollGap : std::nullopt));
    }
    return kernels;
}

FieldSeen fieldSeen(const Season& season, farm::FieldId field, Instant until) {
    FieldSeen seen;
    forEach<entries::FieldObserved>(season, until, [&](const Dated<entries::FieldObserved>& visit) {
        if (visit.what.field != field) return;
        replace(seen.planted, visit.what.planted);
        replace(seen.silked, visit.what.silked);
        replace(seen.hybrid, visit.what.hybrid);
        replace(seen.hybridDays, visit.what.hybridDays);
        replace(seen.milkLine, visit.what.milkLine);
        if (visit.what.dryMatter)
            seen.samples.push_back({season.zone().dayOf(visit.at), *visit.what.dryMatter});
    });
    return seen;
}

std::vector<samples::DayTemperatures> temperaturesOf(const Season& season, Instant until) {
    std::map<std::chrono::local_days, samples::DayTemperatures> byDay;
    forEach<entries::Temperatures>(season, until, [&](const Dated<entries::Temperatures>& entry) {
        for (const entries::DayTemperatures& day : entry.what.days)
            byDay[std::chrono::local_days{day.day}] = {day.day, day.low, day.high};
    });
    std::vector<samples::DayTemperatures> days;
    for (const auto& [day, temperatures] : byDay) days.push_back(temperatures);
    return days;
}

FieldOutlook outlookOf(const Season& season, farm::FieldId field, Instant until) {
    FieldOutlook outlook;
    outlook.seen = fieldSeen(season, field, until);
    const FieldSeen& seen = outlook.seen;
    const farm::SiteRules& rules = season.farm().rules;
    if (const auto fit = samples::refitDryDown(seen.samples)) {
        outlook.dryDown = *fit;
        if (const auto low = samples::whenReaches(*fit, rules.dryMatterLow)) outlook.reachesLow = *low;
        if (const auto high = samples::whenReaches(*fit, rules.dryMatterHigh)) outlook.reachesHigh = *high;
    }
    addWarmth(season, until, outlook);
    if (seen.planted) outlook.byPlanting = samples::windowFromPlanting(*seen.planted);
    if (seen.milkLine) {
        if (const auto says = samples::milkLineSays(*seen.milkLine)) {
            outlook.milkLine = *says;
            if (says->sampleNow && seen.samples.empty())
                outlook.notes.push_back({code::sampleFieldNow, {seen.milkLine->amount()}});
        }
    }
    return outlook;
}

}  // namespace treadwell::season
