#pragma once

#include "core/base/enum_text.h"
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

/// What the herd takes.
struct Feeding {
    DryMass daily = DryMass::fromKilograms(1500);   ///< of this silage
    Length leastAdvance = outcome::kSummerAdvance;  ///< of the face in a day
    int closedDays = 45;  ///< from the last load until a silo is opened, at the earliest

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("closed_days", self.closedDays);
        visit("daily_kg_dm", self.daily);
        visit("least_advance_m_per_day", self.leastAdvance);
    }
    friend bool operator==(const Feeding&, const Feeding&) = default;
};

}  // namespace treadwell::plan
