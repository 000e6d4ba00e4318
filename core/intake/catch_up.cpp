#include "core/intake/catch_up.h"

#include "core/base/codes.h"
#include "core/intake/codes.h"

namespace treadwell::intake {

Result<std::vector<Proposal>> catchUp(const CatchUp& loads, Instant now) {
    if (loads.count < 1 || loads.count > kMostCaughtUp) {
        return fail(code::caughtUpCount, "count", loads.count, kMostCaughtUp);
    }
    if (loads.to > now) return fail(code::caughtUpAhead, "to", loads.to);
    if (loads.from >= loads.to || loads.to - loads.from > std::chrono::hours{24}) {
        return fail(code::caughtUpSpan, "from", loads.from, loads.to);
    }
    if (const auto valid = entries::validate(loads.each); !valid) return Unexpected{valid.error()};
    std::vector<Proposal> proposals;
    const auto span = loads.to - loads.from;
    for (std::int64_t i = 0; i < loads.count; ++i) {
        const Instant at = loads.from + span * (2 * i + 1) / (2 * loads.count);
        entries::Load load = loads.each;
        load.timeSpread = Seconds{std::max(at - loads.from, loads.to - at)};
        proposals.push_back({std::move(load), at, {}, 0, {}});
    }
    return proposals;
}

}  // namespace treadwell::intake
