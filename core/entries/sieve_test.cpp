#include "core/entries/sieve_test.h"

#include "core/base/codes.h"
#include "core/quantity/range.h"
#include "core/samples/codes.h"

namespace treadwell::entries {

Result<samples::SieveParts> partsOf(const SieveTest& entry, Share usualLoss) {
    if (entry.masses.empty() == entry.parts.empty()) return fail(code::valueMissing, "masses");
    if (!entry.masses.empty())
        return samples::partsOf({entry.openings, entry.masses, entry.before, entry.wet}, usualLoss);
    std::vector<double> percent;
    for (const Share part : entry.parts) percent.push_back(part.percent());
    return samples::partsOfPercent(entry.openings, percent).map([&](samples::SieveParts parts) {
        if (entry.wet) parts.remarks.push_back({code::sieveWet, {}});
        return parts;
    });
}

Result<void> validate(const SieveTest& entry) {
    if (const auto parts = partsOf(entry); !parts) return Unexpected{parts.error()};
    if (!entry.topLength) return {};
    return holdsWithin(*entry.topLength, Length::fromCentimetres(1), Length::fromCentimetres(50),
                       "topLength");
}

}  // namespace treadwell::entries
