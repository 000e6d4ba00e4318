#pragma once

#include "core/density/distribution.h"
#include "core/density/situation.h"
#include "core/density/yardsticks.h"
#include "core/entries/entry.h"

#include <string>
#include <vector>

namespace treadwell::density {

/// One line of the working: what was computed, how, after whom, and from what.
struct WorkingStep {
    Message what;  ///< a code of the `working` group with the values
    std::string formula;
    Source source;
    std::vector<entries::EntryId> entries =
        {};  ///< recorded facts that it rests on, in order; none if typed in
};

/// A density as a distribution, never a bare number, with all that it came from.
struct Estimate {
    Distribution density;
    PorosityDistribution porosity;
    Chance chance;  ///< of reaching the target
    Target target;
    Packing packing;
    Length layer;             ///< thickness used
    double elasticity = 0.0;  ///< of density in the packing factor
    SpreadParts spread;       ///< of ln(density); the parts add up to density.sigma()^2
    InputParts inputs;        ///< of ln(density), through each entry
    Yardsticks yardsticks;
    std::vector<Message> warnings;
    std::vector<WorkingStep> working;
};

/// Estimates the dry-matter density of a silo being filled.
///
/// density = (136.157 + 0.170959 P)(0.818 + 0.0446194 D), cut at the saturation limit; P the packing factor
/// of the strongest heaviest-first part of the fleet, D the mean depth. Log-normal about that median; the
/// band's parts follow Options. Valid for 10-90 % dry matter and mean depths to 20 m; what lies outside the
/// survey's data is estimated and warned of, the thickness is held to 10-40 cm and this is said. Without
/// machines or packing time the packing factor is 0. Errors: those of check(). Nothing non-finite leaves.
/// Sources: Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619 (coefficients from memory);
/// Tang, Jofriet & LeLievre 1988, Canadian Agricultural Engineering 30(1):93-98; Richard et al. 2004,
/// Biotechnol. Prog. 20:1372-1381.
[[nodiscard]] Result<Estimate> estimate(const Situation& situation, const Options& options = {});

}  // namespace treadwell::density
