#include "app/cli/estimate.h"

#include "app/cli/density_output.h"
#include "app/cli/situation.h"

#include <ostream>

namespace treadwell::cli {

Outcome estimate(const EstimateOptions& options, const Answer& answer) {
    const auto situation = situationFrom(options, answer.style);
    if (!situation) return tl::unexpected{situation.error()};
    const auto result = density::estimate(*situation);
    if (!result) return misused(result.error(), optionOf(result.error().field), answer.style);
    const density::Doubts doubts = density::doubtsOf(*situation, {}, *result);
    if (!answer.json) {
        printEstimate(*result, situation->machines.size(), options.working, answer);
        printDoubts(doubts, options.working, answer);
        return {};
    }
    JsonWriter json{2};
    json.beginObject();
    writeEstimate(json, *result, options.working, answer.style);
    writeDoubts(json, doubts, answer.style);
    json.endObject();
    answer.out << json.text() << '\n';
    return {};
}

}  // namespace treadwell::cli
