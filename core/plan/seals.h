#pragma once

#include "core/plan/fits.h"

#include <vector>

namespace treadwell::plan {

/// Covering one silo, in the order in which it is done.
struct Seal {
    std::string silo;
    LocalDay full{};  ///< day on which the last of the planned crop arrives; cover it then
    double treatment_L = 0.0;
    Area sideSheets;          ///< walls and their lap over the top
    outcome::Sheets sheets;   ///< of the barrier film, and as many of the black-and-white sheet above
    std::int64_t tyres = 0;   ///< double on the laps
    Seconds crewTime{};       ///< by the clock, with the whole crew
    DryMass exposed;          ///< lies under the open surface
    DryMass lostByADay;       ///< of it, by waiting a day
    double costOfADay = 0.0;  ///< money
};

/// The silos that get crop, in order of filling. Errors: those of validate().
[[nodiscard]] Result<std::vector<Seal>> sealsOf(const Inputs& inputs);

/// Day on which the planned crop of each silo is in, at so much crop a working day; a day works every day.
[[nodiscard]] std::vector<LocalDay> daysFull(const Inputs& inputs, const Fit& fit);

}  // namespace treadwell::plan
