#include "core/attention/cautions.h"

#include "core/attention/codes.h"
#include "core/farm/shape.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace treadwell::attention {

namespace {

constexpr Source published(std::string_view citation) {
    return {citation, Evidence::published};
}

constexpr std::array<CautionFacts, kCautions> kTable{{
    {Caution::rampSlope, code::cautionRampSlope, Slope::fromRunPerRise(3).amount(),
     published("Bolsen; several extension services")},
    {Caution::crossSlope, code::cautionCrossSlope, Slope::fromRunPerRise(6).amount(), published("Carrabba")},
    {Caution::fillAboveWall, code::cautionFillAboveWall, Length::fromMetres(0).amount(),
     published("several national guides; one country has more for walls built to its specification")},
    {Caution::workingWidth, code::cautionWorkingWidth, 3.0, published("HSA Ireland")},
    {Caution::faceDistance, code::cautionFaceDistance, 3.0,
     published("Bolsen & Bolsen; once its height is also published")},
    {Caution::cores, code::cautionCores, std::nullopt, published("several extension services")},
    {Caution::peopleOnFoot, code::cautionPeopleOnFoot, 0.0, published("several extension services")},
    {Caution::siloGas, code::cautionSiloGas, 21.0,
     published("NIOSH (1 ppm for 15 min, 13 ppm dangerous at once); several extension services")},
    {Caution::shiftHours, code::cautionShiftHours, 8.0, published("HSE")},
    {Caution::powerLines, code::cautionPowerLines, Length::fromMetres(3.05).amount(), published("OSHA")},
    {Caution::driverAge, code::cautionDriverAge, 16.0, published("29 CFR 570.71")},
    {Caution::walls, code::cautionWalls, std::nullopt,
     published("Zhao & Jofriet 1991: measured loads reached 3.8 to 4.5 times an old code's")},
    {Caution::drySilage, code::cautionDrySilage, DryMatter::fromPercent(60).amount(),
     published("several extension services")},
}};

/// Risk about twice as high after 12 hours (HSE, published).
constexpr double kStrongShift = 12.0 / 8.0;
/// Beyond 50 kV (OSHA, published).
constexpr Length kMorePerTenKilovolts = Length::fromMetres(0.10);

/// Gathers the cautions of one silo.
class CautionCollector final {
  public:
    CautionCollector(const farm::Silo& silo, const CautionSituation& situation, Instant now)
        : m_silo{silo}, m_situation{situation}, m_now{now} {}

    std::vector<CautionNow> collect() {
        if (m_situation.stage == Stage::filling) addFilling();
        if (m_situation.stage == Stage::open) addOpen();
        addGas();
        addDrySilage();
        if (!limitOf(Caution::walls)) stands(Caution::walls);
        std::stable_sort(m_found.begin(), m_found.end(),
                         [](const CautionNow& a, const CautionNow& b) { return a.weight > b.weight; });
        return std::move(m_found);
    }

  private:
    [[nodiscard]] std::optional<Limit> limitOf(Caution caution) const {
        for (const SiteLimit& set : m_situation.limits) {
            if (set.caution == caution) return set.limit;
        }
        return factsOf(caution).limit;
    }

    /// In SI or plain; for cautions that have a default.
    [[nodiscard]] double numberOf(Caution caution) const {
        const Limit limit = limitOf(caution).value();
        const auto* amount = std::get_if<Amount>(&limit);
        return amount != nullptr ? amount->si : std::get<double>(limit);
    }

    [[nodiscard]] Argument said(Caution caution) const {
        return std::visit([](auto value) { return Argument{value}; }, limitOf(caution).value());
    }

    template <class... Arguments>
    void add(Caution caution, Weight weight, Code code, Arguments... arguments) {
        CautionNow found{caution, weight, {code, {}}, factsOf(caution).source};
        (found.message.arguments.emplace_back(std::move(arguments)), ...);
        m_found.push_back(std::move(found));
    }
    template <class... Arguments>
    void stands(Caution caution, Arguments... arguments) {
        add(caution, Weight::standing, factsOf(caution).text, std::move(arguments)...);
    }

    void addFilling() {
        if (m_silo.rampSlope.runPerRise() < numberOf(Caution::rampSlope)) {
            add(Caution::rampSlope, Weight::seen, code::cautionRampSteep, m_silo.rampSlope.amount(),
                said(Caution::rampSlope));
        } else {
            stands(Caution::rampSlope, said(Caution::rampSlope));
        }
        if (m_silo.crown > Length{} && farm::kCrownSide.runPerRise() < numberOf(Caution::crossSlope)) {
            add(Caution::crossSlope, Weight::seen, code::cautionCrownSteep, farm::kCrownSide.amount(),
                said(Caution::crossSlope));
        } else {
            stands(Caution::crossSlope, said(Caution::crossSlope));
        }
        addFill();
        addWidth();
        stands(Caution::peopleOnFoot);
        addShift();
        stands(Caution::powerLines, said(Caution::powerLines), kMorePerTenKilovolts.amount());
        stands(Caution::driverAge, said(Caution::driverAge));
    }

    void addFill() {
        const Length planned = m_silo.wallHeight + m_silo.crown;
        const Length highest = std::max(planned, m_situation.highestFill.value_or(planned));
        const Length limit = m_silo.wallHeight + Length::fromMetres(numberOf(Caution::fillAboveWall));
        if (highest <= limit) return;
        add(Caution::fillAboveWall, Weight::seen, code::cautionFillAboveWall,
            (highest - m_silo.wallHeight).amount(), said(Caution::fillAboveWall));
    }

    void addWidth() {
        if (!m_situation.machineWidth) {
            stands(Caution::workingWidth, said(Caution::workingWidth));
        } else if (m_silo.width < *m_situation.machineWidth * numberOf(Caution::workingWidth)) {
            add(Caution::workingWidth, Weight::seen, code::cautionWidthNarrow, m_silo.width.amount(),
                m_situation.machineWidth->amount(), said(Caution::workingWidth));
        }
    }

    void addShift() {
        if (!m_situation.longestShift) return;
        const double hours = *m_situation.longestShift / Seconds{std::chrono::hours{1}};
        const double limit = numberOf(Caution::shiftHours);
        if (hours < limit) return;
        const Weight weight = hours >= limit * kStrongShift ? Weight::strong : Weight::seen;
        add(Caution::shiftHours, weight, code::cautionShiftHours, hours, said(Caution::shiftHours));
    }

    void addOpen() {
        stands(Caution::faceDistance, said(Caution::faceDistance),
               (m_silo.wallHeight * numberOf(Caution::faceDistance)).amount());
        stands(Caution::cores);
    }

    /// Gas forms from the first load on.
    void addGas() {
        if (!m_situation.lastLoad) return;
        const double days = (m_now - *m_situation.lastLoad) / Seconds{std::chrono::hours{24}};
        if (days > numberOf(Caution::siloGas)) return;
        const auto day = static_cast<std::int64_t>(std::ceil(days));
        add(Caution::siloGas, Weight::seen, code::cautionSiloGas, std::max<std::int64_t>(day, 1),
            said(Caution::siloGas));
    }

    void addDrySilage() {
        if (!m_situation.dryMatter || m_situation.dryMatter->si() <= numberOf(Caution::drySilage)) return;
        add(Caution::drySilage, Weight::seen, code::cautionDrySilage, m_situation.dryMatter->amount(),
            said(Caution::drySilage));
    }

    const farm::Silo& m_silo;
    const CautionSituation& m_situation;
    Instant m_now;
    std::vector<CautionNow> m_found;
};

}  // namespace

std::span<const CautionFacts> cautions() noexcept {
    return kTable;
}

const CautionFacts& factsOf(Caution caution) {
    return kTable.at(static_cast<std::size_t>(caution));
}

Message standingText() {
    return {code::cautionStanding, {}};
}

std::vector<CautionNow> cautionsFor(const farm::Silo& silo, const CautionSituation& situation, Instant now) {
    return CautionCollector{silo, situation, now}.collect();
}

}  // namespace treadwell::attention
