#pragma once

#include "core/density/delivery_limit.h"
#include "core/density/estimate.h"
#include "core/plan/inputs.h"

namespace treadwell::plan {

/// What the planned tractors pack at a delivery, for the density engine. Inputs that validate() has passed.
[[nodiscard]] density::Situation situationOf(const Inputs& inputs, AsFedRate delivery, Length meanDepth);

/// Mean depth over all silos, by the volume of each.
[[nodiscard]] Length meanDepthOf(const Inputs& inputs);

/// The fastest delivery at which the tractors reach the target with the wanted chance.
[[nodiscard]] Result<density::DeliveryLimit> packingLimit(const Inputs& inputs);

/// Passes over each layer at a delivery, at the usual speed and rolled width.
[[nodiscard]] double passesAt(const Inputs& inputs, AsFedRate delivery);

/// Packing time of all tractors for a tonne at a delivery above 0.
[[nodiscard]] PackingIntensity packingAt(const Inputs& inputs, AsFedRate delivery);

}  // namespace treadwell::plan
