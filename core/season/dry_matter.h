#pragma once

#include "core/season/season.h"

#include <map>
#include <optional>
#include <span>

namespace treadwell::season {

/// A meter's reading and a dish of the same field within this time are of the same crop.
inline constexpr Seconds kMeterPairWithin{30.0 * 60.0};

/// That a sample of the day names, or else that of the load it names: a sample of a load is one of its field.
[[nodiscard]] std::optional<farm::FieldId> fieldOf(const Day& day, const Sample& sample);

/// Gives each sample of a day what it is believed to say and each load its dry matter: the mean of the day's
/// samples that name it, else what the samples up to it carry to it, those of its field, else of whatever
/// fields; without any, last season's mean or the middle of the goal. Before a
/// stream's first sample that one speaks, if it is of the same day. A meter's bias is learned from its pairs
/// with a dish; where both were taken the dish speaks.
void carryDryMatter(Day& day);

/// How far a sum that loads' dry matter enters may be off. Loads that rest on the same samples err together:
/// an error of the belief at one load stays in that at a later one as far as the samples between have not
/// taken it out (exact for the local level model); what fields differ is one error a field, and a load with
/// samples of its own has an error of its own.
class DryMatterErrors final {
  public:
    /// `count`: what an error of 1 of this load's dry matter moves the sum. Each field's loads come in the
    /// order of time.
    void add(const LoadTipped& load, double count);
    [[nodiscard]] double sd() const noexcept;

  private:
    struct Chain {
        double variance = 0.0;    ///< of the sum so far
        double covariance = 0.0;  ///< of that and the belief at the last load
        double left = 0.0;        ///< at the last load
    };
    using Field = std::optional<farm::FieldId>;

    std::map<std::pair<DryMatterBasis, Field>, Chain> m_chains;
    std::map<Field, double> m_fields;  ///< that have no sample of their own
    double m_loads = 0.0;              ///< variance of those that have
};

/// Of loads together, weighted by mass, and how far that may be off; none without mass. Loads in the order of
/// time.
[[nodiscard]] std::optional<samples::Belief> meanDryMatter(std::span<const LoadTipped* const> loads);

/// Means by mass of what has come in up to a moment.
struct ComeIn {
    std::optional<samples::Belief> day;                              ///< of that day alone
    std::map<std::optional<farm::FieldId>, samples::Belief> fields;  ///< of all days
    std::map<farm::SiloId, samples::Belief> silos;
};
[[nodiscard]] ComeIn comeIn(const Season& season, const Day& day, Instant until);

/// What the samples carry to a load of a field, or of none in particular, that comes at `now`; none without a
/// sample.
[[nodiscard]] std::optional<samples::Belief> dryMatterFor(const Season& season,
                                                          const std::optional<farm::FieldId>& field,
                                                          Instant now);

/// What the pairs of a season up to a day's end say of its meter.
[[nodiscard]] samples::MeterBias meterBiasOf(const Carry& carry);

}  // namespace treadwell::season
