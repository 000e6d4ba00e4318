// The plan and the season's file.
#include "app/cli/open_season.h"
#include "app/cli/plan.h"
#include "app/cli/season_entries.h"
#include "app/cli/season_file.h"
#include "core/plan/adoption.h"
#include "core/plan/codes.h"
#include "core/plan/from_farm.h"

#include <ostream>

namespace treadwell::cli {

namespace {

void tell(const entries::Header& header, const entries::PlanAdopted& plan, const Answer& answer) {
    if (!answer.json) {
        answer.out << words::inWords(header.happened, answer.style) << ", "
                   << words::kindInWords(header.kind, answer.style) << ": " << plan.name << '\n';
        for (const entries::PlannedDay& day : plan.days)
            answer.out << toIso8601(day.day) << "  " << words::inWords(day.mass.amount(), answer.style)
                       << ", " << words::inWords(day.delivery.amount(), answer.style) << ", "
                       << words::inWords(day.density.amount(), answer.style) << " ("
                       << words::inWords(day.low80.amount(), answer.style) << " - "
                       << words::inWords(day.high80.amount(), answer.style) << ")\n";
        answer.out << header.id.value.text() << '\n';
        return;
    }
    JsonWriter json{2};
    json.beginObject().member("entry", header.id.value.text()).member("kind", header.kind);
    json.member("happened", toIso8601(header.happened)).key("plan").json(entries::encode(plan));
    json.endObject();
    answer.out << json.text() << '\n';
}

}  // namespace

Outcome adopt(const PlanOptions& options, const Answer& answer) {
    const auto inputs = inputsFrom(options.file, answer.style);
    if (!inputs) return tl::unexpected{inputs.error()};
    auto plan = plan::adoptionOf(*inputs);
    if (!plan) {
        Error error = plan.error();
        error.place.file = options.file;
        return failed(error, answer.style);
    }
    auto session = openSeason(*options.adopt, Purpose::writing, answer);
    if (!session) return tl::unexpected{session.error()};
    const auto at = timeOfEntry(*session, options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    const auto author = authorIn(*session, *options.adopt, options.author, answer.style);
    if (!author) return tl::unexpected{author.error()};
    const auto recorded = session->propose(*plan, *at, *author);
    if (!recorded) return failed(recorded.error(), answer.style);
    Answer local = answer;
    local.style.zone = session->snapshot()->zone();
    tell(*recorded, *plan, local);
    return {};
}

Outcome printAdopted(const std::string& file, const Answer& answer) {
    const auto season = readSeason(file, answer);
    if (!season) return tl::unexpected{season.error()};
    const entries::PlanAdopted* adopted = plan::adoptedIn(*season);
    if (adopted == nullptr) {
        Error error{{code::planNoneAdopted, {}}, {}, {}};
        error.place.file = file;
        return failed(error, answer.style);
    }
    answer.out << adopted->inputs << '\n';
    return {};
}

Outcome printBegun(const std::string& file, const Answer& answer) {
    const auto season = readSeason(file, answer);
    if (!season) return tl::unexpected{season.error()};
    const LocalDay today = season->zone().dayOf(machineClock().now());
    answer.out << plan::toJson(plan::inputsOf(*season, today)) << '\n';
    return {};
}

}  // namespace treadwell::cli
