#pragma once

#include "core/quantity/relations.h"
#include "core/samples/dry_matter.h"
#include "core/samples/meter.h"
#include "core/season/fact.h"
#include "core/season/farm_book.h"
#include "core/season/records.h"

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace treadwell::season {

/// Where a load's dry matter came from.
enum class DryMatterBasis : std::uint8_t {
    loadSample,   ///< its own samples
    fieldSample,  ///< samples of its field; of a load without a field, those that name none
    otherSample,  ///< samples of whatever fields
    assumed,      ///< no sample yet: last season's mean, or the middle of the goal
};
constexpr std::array<std::string_view, 4> enumTexts(DryMatterBasis /*basis*/) noexcept {
    return {"loadSample", "fieldSample", "otherSample", "assumed"};
}

struct Sample {
    entries::EntryId entry;
    Instant at;
    entries::DryMatterSample reading;
    samples::Belief
        believed;  ///< the reading less its meter's bias, and how far it may lie from the field's mean

    friend bool operator==(const Sample&, const Sample&) = default;
};

struct LoadTipped {
    entries::EntryId entry;
    Instant at;
    entries::Load load;
    DryMatter dryMatter;        ///< carried from the samples
    DryMatter dryMatterSd;      ///< how far it may be off
    double leftOfErrors = 0.0;  ///< of the samples: samples::CarriedDryMatter
    DryMatterBasis basis = DryMatterBasis::assumed;
    std::optional<entries::EntryId> sample;  ///< the newest of those it was carried from

    [[nodiscard]] DryMass dryMass() const noexcept { return load.mass * dryMatter; }
    friend bool operator==(const LoadTipped&, const LoadTipped&) = default;
};

/// A stretch in which a tractor did one thing, within one local day.
struct WorkSpan {
    farm::TractorId tractor;
    farm::Activity activity = farm::Activity::away;
    std::optional<farm::SiloId> silo;
    Share packing;  ///< of the stretch: nothing while spreading or away
    Instant begin;
    std::optional<Instant> end;  ///< none while it goes on
    entries::EntryId entry;      ///< that began it

    friend bool operator==(const WorkSpan&, const WorkSpan&) = default;
};

struct PauseSpan {
    std::optional<farm::SiloId> silo;
    std::string reason;
    Instant begin;
    std::optional<Instant> end;

    friend bool operator==(const PauseSpan&, const PauseSpan&) = default;
};

struct ShiftSpan {
    entries::PersonId person;
    entries::Duty duty = entries::Duty::packing;
    bool holdsTablet = false;
    std::optional<farm::TractorId> tractor;
    Instant onShiftSince;  ///< with another duty, or yesterday, it may be
    Instant begin;         ///< of this duty
    std::optional<Instant> end;

    friend bool operator==(const ShiftSpan&, const ShiftSpan&) = default;
};

using LayerNote = Dated<entries::LayerSeen>;
using Survey = Dated<entries::HeightSurvey>;

/// What was placed in one silo and how long it was packed.
struct Delivered {
    std::int64_t loads = 0;
    AsFedMass mass;
    DryMass dry;
    Instant first;  ///< of the loads; meaningless without one
    Instant last;
    std::map<farm::TractorId, Seconds> packing;  ///< stretches since the first load, by their shares

    /// Mass-weighted; none without mass.
    [[nodiscard]] std::optional<DryMatter> dryMatter() const noexcept;
    /// Of all tractors together; nothing without mass.
    [[nodiscard]] PackingIntensity intensity() const noexcept;

    /// Counts a load that came after these; packing is not its to know.
    void add(const LoadTipped& load);
    /// Adds what was placed after this.
    Delivered& operator+=(const Delivered& later);

    friend bool operator==(const Delivered&, const Delivered&) = default;
};

/// Dry matter as the samples of one stream have left it.
struct Stream {
    samples::CarriedDryMatter carried;
    std::optional<entries::EntryId> newest;

    friend bool operator==(const Stream&, const Stream&) = default;
};

/// What one day hands to the next.
struct Carry {
    std::shared_ptr<const FarmBook> farm = std::make_shared<FarmBook>();
    std::map<farm::TractorId, WorkSpan> working;  ///< not away; begin is within the day that is handed over
    std::map<farm::SiloId, LayerNote> layers;
    std::map<std::optional<farm::FieldId>, Stream> fieldSamples;  ///< and of samples that name no field
    Stream allSamples;
    std::vector<samples::MeterPair> meterPairs;
    std::optional<Sample> lastSample;
    std::vector<PauseSpan> pauses;                            ///< those that go on
    std::map<entries::PersonId, ShiftSpan> shifts;            ///< those that go on
    std::set<farm::SiloId> begun;                             ///< silos that hold a load
    std::shared_ptr<const Dated<entries::PlanAdopted>> plan;  ///< in force; null without one

    friend bool operator==(const Carry& a, const Carry& b);
};

/// One local day, folded. Immutable: a late entry makes a new one.
struct Day {
    LocalDay date;
    Instant begin;
    Instant end;                     ///< the next local midnight; frozen by the day's closing
    std::vector<FactPointer> facts;  ///< in order, voided ones among them
    std::vector<std::pair<entries::EntryId, std::size_t>> factsById;  ///< sorted: where each fact stands

    std::vector<LoadTipped> loads;
    std::vector<Sample> samples;
    std::vector<WorkSpan> work;
    std::vector<PauseSpan> pauses;
    std::vector<LayerNote> layers;
    std::vector<Survey> surveys;
    std::vector<ShiftSpan> shifts;                        ///< by their begin
    std::vector<Dated<entries::Shift>> shiftsNeverBegun;  ///< ends of shifts that nothing says began
    Records records;
    std::optional<Dated<entries::DayClosed>> closed;
    std::int64_t unknownKinds = 0;
    std::map<farm::SiloId, Delivered> placed;  ///< over the whole day

    Carry before;
    Carry after;

    [[nodiscard]] const FarmBook& farm() const noexcept { return *after.farm; }

    /// Where a stretch of work or a pause of this day ends for one who looks at `now`: what goes on ends
    /// there, and at midnight it passes to the next day.
    [[nodiscard]] Instant endOf(Instant spanBegin, std::optional<Instant> spanEnd,
                                Instant now) const noexcept {
        return std::max(spanBegin, std::min(spanEnd.value_or(now), std::min(now, end)));
    }
};

/// Packing time of each tractor at a silo on this day in [from, now): stretches by their shares. Only
/// tractors that packed.
[[nodiscard]] std::map<farm::TractorId, Seconds> packingOn(const Day& day, farm::SiloId silo, Instant from,
                                                           Instant now);

/// What was placed in a silo on this day up to and including `now`. In a silo that held a load before,
/// packing counts from the day's begin, else from its first load.
[[nodiscard]] Delivered deliveredOn(const Day& day, farm::SiloId silo, Instant now);

/// The same for a day alone: packing counts from the day's first load in any case.
[[nodiscard]] Delivered sinceFirstLoadOn(const Day& day, farm::SiloId silo, Instant now);

/// Folds a day's facts, which are in order, onto what came before.
[[nodiscard]] Day foldDay(LocalDay date, Instant begin, Instant end, std::vector<FactPointer> facts,
                          const Carry& before);

}  // namespace treadwell::season
