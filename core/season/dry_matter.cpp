#include "core/season/dry_matter.h"

#include "core/stats/square.h"

#include <algorithm>
#include <cmath>

namespace treadwell::season {

namespace {

using stats::square;

bool isDish(entries::DryMatterMethod method) {
    return method == entries::DryMatterMethod::oven || method == entries::DryMatterMethod::microwave;
}

/// The dish nearest in time that a meter's reading can be held against.
const Sample* dishFor(const Sample& meter, const Day& day) {
    const Sample* nearest = nullptr;
    const auto field = fieldOf(day, meter);
    const auto apart = [&](const Sample& sample) { return std::chrono::abs(sample.at - meter.at); };
    for (const Sample& sample : day.samples) {
        if (!isDish(sample.reading.method) || fieldOf(day, sample) != field) continue;
        if (Seconds{apart(sample)} > kMeterPairWithin) continue;
        if (nearest == nullptr || apart(sample) < apart(*nearest)) nearest = &sample;
    }
    return nearest;
}

samples::Belief believedOf(const entries::DryMatterSample& reading, const samples::MeterBias& bias) {
    if (reading.method == entries::DryMatterMethod::meter) {
        if (const auto less = samples::corrected(reading.dryMatter, bias)) {
            const double sd = std::hypot(less->sd.fraction(), samples::kSampleSd.fraction());
            return {less->mean, DryMatter::fromFraction(sd)};
        }
    }
    return {reading.dryMatter, samples::kSampleSd};
}

/// Takes a day's samples as its loads come.
class Carrying {
  public:
    explicit Carrying(Day& day) : m_day{day}, m_carry{day.after} {
        std::vector<bool> paired;
        for (const Sample& sample : day.samples) {
            const bool byMeter = sample.reading.method == entries::DryMatterMethod::meter;
            const Sample* dish = byMeter ? dishFor(sample, day) : nullptr;
            paired.push_back(dish != nullptr);
            if (dish != nullptr)
                m_carry.meterPairs.push_back({sample.reading.dryMatter, dish->reading.dryMatter});
        }
        const samples::MeterBias bias = meterBiasOf(m_carry);
        for (std::size_t i = 0; i < day.samples.size(); ++i) {
            Sample& sample = day.samples[i];
            sample.believed = believedOf(sample.reading, bias);
            if (paired[i]) continue;
            m_speaking.push_back(&sample);
            if (sample.reading.load) m_ofLoads[*sample.reading.load].push_back(&sample);
        }
        if (!day.samples.empty()) m_carry.lastSample = day.samples.back();
    }

    void run() {
        for (LoadTipped& load : m_day.loads) {
            takeUntil(load.at);
            carryTo(load);
            if (const auto own = m_ofLoads.find(load.entry); own != m_ofLoads.end()) take(load, own->second);
        }
        takeUntil(Instant::max());
    }

  private:
    static void take(Stream& stream, const Sample& sample) {
        stream.carried.take({sample.at, sample.believed.mean}, sample.believed.sd);
        stream.newest = sample.entry;
    }

    /// Samples of this very load speak of it alone; what others would carry to it counts no more.
    static void take(LoadTipped& load, const std::vector<const Sample*>& own) {
        double sum = 0;
        double variance = 0;
        for (const Sample* sample : own) {
            sum += sample->believed.mean.fraction();
            // The doubt about a meter's bias lies in what is believed beyond the scatter of samples.
            const double bias =
                square(sample->believed.sd.fraction()) - square(samples::kSampleSd.fraction());
            variance += square(samples::kLoadSampleSd.fraction()) + std::max(0.0, bias);
        }
        const auto n = static_cast<double>(own.size());
        load.dryMatter = DryMatter::fromFraction(sum / n);
        load.dryMatterSd = DryMatter::fromFraction(std::sqrt(variance) / n);
        load.basis = DryMatterBasis::loadSample;
        load.sample = own.back()->entry;
    }

    void takeUntil(Instant moment) {
        for (; m_next < m_speaking.size() && m_speaking[m_next]->at <= moment; ++m_next) {
            const Sample& sample = *m_speaking[m_next];
            take(m_carry.fieldSamples[fieldOf(m_day, sample)], sample);
            take(m_carry.allSamples, sample);
        }
    }

    /// The stream that the day's first sample to come of a kind will begin.
    template <class Fits>
    [[nodiscard]] Stream toCome(Fits fits) const {
        Stream stream;
        for (std::size_t i = m_next; i < m_speaking.size() && !stream.newest; ++i) {
            if (fits(*m_speaking[i])) take(stream, *m_speaking[i]);
        }
        return stream;
    }

    void carryTo(LoadTipped& load) const {
        const auto ofField = [&](const Sample& sample) { return fieldOf(m_day, sample) == load.load.field; };
        const auto own = m_carry.fieldSamples.find(load.load.field);
        Stream stream = own != m_carry.fieldSamples.end() ? own->second : toCome(ofField);
        load.basis = DryMatterBasis::fieldSample;
        if (!stream.newest) {
            load.basis = DryMatterBasis::otherSample;
            stream = m_carry.allSamples.newest ? m_carry.allSamples
                                               : toCome([](const Sample& /*any*/) { return true; });
        }
        auto belief = stream.carried.at(load.at);
        if (!belief) {
            load.basis = DryMatterBasis::assumed;
            belief = samples::Belief{m_day.farm().unsampledDryMatter(), samples::kSampleSd};
        }
        if (load.basis != DryMatterBasis::fieldSample) belief = samples::fromAnotherField(*belief);
        load.dryMatter = belief->mean;
        load.dryMatterSd = belief->sd;
        load.leftOfErrors = stream.carried.leftOfErrors();
        load.sample = stream.newest;
    }

    Day& m_day;
    Carry& m_carry;
    std::vector<const Sample*> m_speaking;
    std::map<entries::EntryId, std::vector<const Sample*>> m_ofLoads;
    std::size_t m_next = 0;
};

}  // namespace

std::optional<farm::FieldId> fieldOf(const Day& day, const Sample& sample) {
    if (sample.reading.field || !sample.reading.load) return sample.reading.field;
    const auto load = std::ranges::find(day.loads, *sample.reading.load, &LoadTipped::entry);
    return load == day.loads.end() ? std::nullopt : load->load.field;
}

ComeIn comeIn(const Season& season, const Day& day, Instant until) {
    using Loads = std::vector<const LoadTipped*>;
    Loads ofDay;
    std::map<std::optional<farm::FieldId>, Loads> byField;
    std::map<farm::SiloId, Loads> bySilo;
    for (const auto& each : season.days()) {
        for (const LoadTipped& load : each->loads) {
            if (load.at > until) break;
            if (each->date == day.date) ofDay.push_back(&load);
            byField[load.load.field].push_back(&load);
            bySilo[load.load.silo].push_back(&load);
        }
    }
    ComeIn means{meanDryMatter(ofDay), {}, {}};
    for (const auto& [field, loads] : byField) {
        if (const auto mean = meanDryMatter(loads)) means.fields.emplace(field, *mean);
    }
    for (const auto& [silo, loads] : bySilo) {
        if (const auto mean = meanDryMatter(loads)) means.silos.emplace(silo, *mean);
    }
    return means;
}

std::optional<samples::Belief> dryMatterFor(const Season& season, const std::optional<farm::FieldId>& field,
                                            Instant now) {
    const auto days = season.days();
    const auto past = std::ranges::find_if(days, [&](const auto& day) { return day->begin > now; });
    if (past == days.begin()) return std::nullopt;
    const Carry& carry = (*std::prev(past))->after;
    if (const auto own = carry.fieldSamples.find(field); own != carry.fieldSamples.end())
        return own->second.carried.at(now);
    const auto other = carry.allSamples.carried.at(now);
    return other ? std::optional{samples::fromAnotherField(*other)} : std::nullopt;
}

samples::MeterBias meterBiasOf(const Carry& carry) {
    // Entries were held to a narrower range when they were made than a pair must keep.
    return samples::learnBias(carry.meterPairs).value();
}

void carryDryMatter(Day& day) {
    Carrying{day}.run();
}

void DryMatterErrors::add(const LoadTipped& load, double count) {
    if (load.basis == DryMatterBasis::loadSample) {
        m_loads += square(count * load.dryMatterSd.fraction());
        return;
    }
    const bool own = load.basis == DryMatterBasis::fieldSample;
    double variance = square(load.dryMatterSd.fraction());
    if (!own) {
        variance = std::max(0.0, variance - square(samples::kFieldSd.fraction()));
        m_fields[load.load.field] += count;
    }
    Chain& chain = m_chains[{load.basis, own ? load.load.field : std::nullopt}];
    // Two sums cannot go together more than wholly; before the first sample the walk runs backwards.
    const double kept = std::min(chain.covariance * std::exp(load.leftOfErrors - chain.left),
                                 std::sqrt(chain.variance * variance));
    chain.variance += count * (2.0 * kept + count * variance);
    chain.covariance = kept + count * variance;
    chain.left = load.leftOfErrors;
}

double DryMatterErrors::sd() const noexcept {
    double variance = m_loads;
    for (const auto& [basis, chain] : m_chains) variance += chain.variance;
    for (const auto& [field, count] : m_fields) variance += square(count * samples::kFieldSd.fraction());
    return std::sqrt(variance);
}

std::optional<samples::Belief> meanDryMatter(std::span<const LoadTipped* const> loads) {
    Delivered delivered;
    for (const LoadTipped* load : loads) delivered.add(*load);
    const auto mean = delivered.dryMatter();
    if (!mean) return std::nullopt;
    DryMatterErrors errors;
    for (const LoadTipped* load : loads) errors.add(*load, load->load.mass / delivered.mass);
    return samples::Belief{*mean, DryMatter::fromFraction(errors.sd())};
}

}  // namespace treadwell::season
