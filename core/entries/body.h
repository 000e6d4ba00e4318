#pragma once

#include "core/base/error.h"
#include "core/entries/additive.h"
#include "core/entries/advice_decided.h"
#include "core/entries/caution_shown.h"
#include "core/entries/chop_ranges_set.h"
#include "core/entries/chop_set.h"
#include "core/entries/core.h"
#include "core/entries/cover.h"
#include "core/entries/day_closed.h"
#include "core/entries/dry_matter_sample.h"
#include "core/entries/entry.h"
#include "core/entries/face_temperature.h"
#include "core/entries/feed_removed.h"
#include "core/entries/field_defined.h"
#include "core/entries/field_observed.h"
#include "core/entries/fuel_taken.h"
#include "core/entries/hand_over.h"
#include "core/entries/height_survey.h"
#include "core/entries/incident.h"
#include "core/entries/kernel_test.h"
#include "core/entries/layer_seen.h"
#include "core/entries/load.h"
#include "core/entries/note.h"
#include "core/entries/pause.h"
#include "core/entries/plan_adopted.h"
#include "core/entries/row_set_aside.h"
#include "core/entries/rules_set.h"
#include "core/entries/season_carried.h"
#include "core/entries/season_started.h"
#include "core/entries/shift.h"
#include "core/entries/sieve_test.h"
#include "core/entries/silo_defined.h"
#include "core/entries/silo_placed.h"
#include "core/entries/surface_treatment.h"
#include "core/entries/temperatures.h"
#include "core/entries/track_attached.h"
#include "core/entries/tractor_defined.h"
#include "core/entries/tractor_work.h"
#include "core/entries/truck_defined.h"
#include "core/entries/void_entry.h"
#include "core/entries/weather_seen.h"

#include <optional>
#include <span>
#include <variant>

namespace treadwell::entries {

/// What an entry says. A kind that this version does not know is kept as it stands (std::monostate here) and
/// counted.
using Body =
    std::variant<std::monostate, SeasonStarted, SiloDefined, TractorDefined, TruckDefined, FieldDefined,
                 RulesSet, Load, DryMatterSample, TractorWork, LayerSeen, HeightSurvey, Core, Pause, Note,
                 VoidEntry, DayClosed, AdviceDecided, CautionShown, RowSetAside, SeasonCarried, WeatherSeen,
                 Incident, Shift, Additive, SurfaceTreatment, Cover, SieveTest, KernelTest, FieldObserved,
                 ChopSet, ChopRangesSet, Temperatures, HandOver, FuelTaken, FeedRemoved, FaceTemperature,
                 PlanAdopted, SiloPlaced, TrackAttached>;

struct Entry {
    Header header;
    Body body;

    friend bool operator==(const Entry&, const Entry&) = default;
};

struct KindVersion {
    std::string_view kind;
    int version;
};

/// Not for std::monostate, which has no kind of its own (std::logic_error).
[[nodiscard]] KindVersion kindOf(const Body& body);

/// The names of all kinds, in the order of the variant.
[[nodiscard]] std::span<const std::string_view> kindNames();

/// An entry of this kind with nothing filled in; none for a kind that is not known.
[[nodiscard]] std::optional<Body> emptyBody(std::string_view kind);

[[nodiscard]] Result<void> validate(const Body& body);

/// Canonical JSON: sorted keys, shortest numbers, SI with the unit in the key.
[[nodiscard]] std::string encode(const Body& body);

/// Errors: payloadUnreadable, payloadFieldMissing, payloadFieldWrong. An unknown kind, or a newer version of
/// a known one, decodes to std::monostate.
[[nodiscard]] Result<Body> decode(std::string_view kind, int version, std::string_view payload);

[[nodiscard]] Result<Entry> decode(const StoredEntry& stored);

}  // namespace treadwell::entries
