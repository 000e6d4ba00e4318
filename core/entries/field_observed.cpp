#include "core/entries/field_observed.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"

namespace treadwell::entries {

Result<void> validate(const FieldObserved& entry) {
    using std::chrono::local_days;
    if (!entry.planted && !entry.silked && !entry.hybrid && !entry.hybridDays && !entry.milkLine &&
        !entry.dryMatter) {
        return fail(code::readingsMissing, "dryMatter");
    }
    if (entry.planted && entry.silked && local_days{*entry.silked} <= local_days{*entry.planted})
        return fail(code::daysReversed, "silked", toIso8601(*entry.planted), toIso8601(*entry.silked));
    if (entry.hybridDays && (*entry.hybridDays < 60 || *entry.hybridDays > 140)) {
        return fail(code::valueOutOfRange, "hybridDays", *entry.hybridDays, std::int64_t{60},
                    std::int64_t{140});
    }
    const DryMatter wettest = DryMatter::fromPercent(10), driest = DryMatter::fromPercent(90);
    return firstFailure(
        holdsWithin(entry.milkLine.value_or(Share{}), Share{}, Share::fromFraction(1), "milkLine"),
        holdsWithin(entry.dryMatter.value_or(wettest), wettest, driest, "dryMatter"));
}

}  // namespace treadwell::entries
