#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"

#include <cmath>
#include <string>
#include <utility>

namespace treadwell {

/// Holds an input to its range, both ends included. Errors: valueNotFinite; valueOutOfRange with the value
/// and the two ends, each naming `field`.
template <class Q>
[[nodiscard]] Result<Q> within(Q value, Q lowest, Q highest, std::string field) {
    if (!std::isfinite(value.si())) return fail(code::valueNotFinite, std::move(field));
    if (value < lowest || value > highest) {
        return fail(code::valueOutOfRange, std::move(field), value.amount(), lowest.amount(),
                    highest.amount());
    }
    return value;
}

/// The same for a plain number.
[[nodiscard]] inline Result<double> within(double value, double lowest, double highest, std::string field) {
    if (!std::isfinite(value)) return fail(code::valueNotFinite, std::move(field));
    if (value < lowest || value > highest) {
        return fail(code::valueOutOfRange, std::move(field), value, lowest, highest);
    }
    return value;
}

/// The same, where only the failure matters.
template <class V>
[[nodiscard]] Result<void> holdsWithin(V value, V lowest, V highest, std::string field) {
    return within(value, lowest, highest, std::move(field)).map([](V) {});
}

/// The first failure of several checks.
template <class... More>
[[nodiscard]] Result<void> firstFailure(Result<void> result, More... more) {
    ((result ? void(result = std::move(more)) : void()), ...);
    return result;
}

}  // namespace treadwell
