#pragma once

#include "core/base/enum_text.h"
#include "core/base/instant.h"
#include "core/outcome/feed_out.h"
#include "core/outcome/sealing.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace treadwell::plan {

/// How silos are covered. What has no source is assumed.
struct Sealing {
    outcome::SheetRule sheets{Length::fromMetres(12), Length::fromMetres(1.5), Length::fromMetres(2)};
    double tyres_per_m2 = 2.4;      ///< car tyres, 2.2-2.7 (from memory)
    double treatment_L_per_m2 = 0;  ///< as mixed, on the finished surface
    double crewMinutes_per_m2 = 0.6;
    int crew = 6;
    Length exposedDepth = Length::fromMetres(0.5);  ///< that air reaches while a surface lies open

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("crew", self.crew);
        visit("crew_minutes_per_m2", self.crewMinutes_per_m2);
        visit("exposed_depth_m", self.exposedDepth);
        visit("sheets", self.sheets);
        visit("treatment_litres_per_m2", self.treatment_L_per_m2);
        visit("tyres_per_m2", self.tyres_per_m2);
    }
    friend bool operator==(const Sealing&, const Sealing&) = default;
};

/// What the herd takes, and how fast an open face must move so that it does not heat.
struct Feeding {
    DryMass daily = DryMass::fromKilograms(1500);    ///< of this silage
    Length summerAdvance = outcome::kSummerAdvance;  ///< of the face in a day, at least
    Length winterAdvance = outcome::kWinterAdvance;
    int summerFrom = 4;   ///< month, 1-12
    int summerUntil = 9;  ///< its last month; before `summerFrom` where summer lies over the new year
    int closedDays = 45;  ///< from the last load until a silo is opened, at the earliest

    [[nodiscard]] bool isSummer(LocalDay day) const noexcept {
        const int month = static_cast<int>(static_cast<unsigned>(day.month()));
        if (summerFrom <= summerUntil) return month >= summerFrom && month <= summerUntil;
        return month >= summerFrom || month <= summerUntil;
    }
    [[nodiscard]] Length leastAdvance(LocalDay day) const noexcept {
        return isSummer(day) ? summerAdvance : winterAdvance;
    }

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("closed_days", self.closedDays);
        visit("daily_kg_dm", self.daily);
        visit("summer_advance_m_per_day", self.summerAdvance);
        visit("summer_from_month", self.summerFrom);
        visit("summer_until_month", self.summerUntil);
        visit("winter_advance_m_per_day", self.winterAdvance);
    }
    friend bool operator==(const Feeding&, const Feeding&) = default;
};

}  // namespace treadwell::plan
