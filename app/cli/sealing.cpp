// The sealing of the silos as the season's plan has it: what is done, what is next, and the entry that says
// so.
#include "app/cli/open_season.h"
#include "app/cli/option_reader.h"
#include "app/cli/plan.h"
#include "app/cli/season_entries.h"
#include "app/cli/season_file.h"
#include "core/plan/codes.h"
#include "core/plan/from_farm.h"
#include "core/plan/sealing_list.h"

#include <algorithm>
#include <ostream>

namespace treadwell::cli {

namespace {

using Tasks = std::vector<plan::SealTask>;

tl::expected<plan::Inputs, Failure> plannedIn(const season::Season& season, const SealingOptions& options,
                                              const words::Style& style) {
    if (options.plan) return inputsFrom(*options.plan, style);
    Error error{{code::planNoneAdopted, {}}, {}, {}};
    if (const entries::PlanAdopted* adopted = plan::adoptedIn(season)) {
        auto inputs = plan::inputsFromJson(adopted->inputs);
        if (inputs) return *std::move(inputs);
        error = inputs.error();
    }
    error.place.file = options.file;
    return failed(error, style);
}

PlanTable listed(const Tasks& tasks) {
    PlanTable result{"sealing", "Sealing, in order of filling", {}};
    result.table.columns = {{"silo", "Silo"},
                            {"step", "Step"},
                            {"due", "Due"},
                            {"area", "Area", Dimension::area},
                            {"treatment", "Treatment", Dimension::productVolume},
                            {"tyres", "Tyres"},
                            {"done", "Done", Dimension::share},
                            {"at", "At"}};
    for (const plan::SealTask& task : tasks) {
        auto& row = result.table.rows.emplace_back();
        row = {Name{task.silo},     std::string{enumText(task.step)},
               toIso8601(task.due), std::monostate{},
               std::monostate{},    std::monostate{},
               task.done.amount(),  std::monostate{}};
        if (task.area) row[3] = task.area->amount();
        if (task.litres) row[4] = ProductVolume::fromLitres(*task.litres).amount();
        if (task.tyres) row[5] = *task.tyres;
        if (task.at) row[7] = *task.at;
        if (!task.id) {
            const Message unknown{code::planSiloUnknown, {task.silo}};
            if (result.remarks.empty() || result.remarks.back() != unknown) result.remarks.push_back(unknown);
        }
    }
    return result;
}

tl::expected<plan::SealTask, Failure> taskFrom(const Tasks& tasks, const SealingOptions& options) {
    std::string names;
    const plan::SealTask* found = nullptr;
    for (const plan::SealTask& task : tasks) {
        if (options.silo && task.silo != *options.silo) continue;
        const std::string name{enumText(task.step)};
        if (names.find(name) == std::string::npos) names += (names.empty() ? "" : ", ") + name;
        // Without a silo named, the first in order of filling on which it is not yet done.
        if (name == *options.done && (found == nullptr || !(found->done < Share::fromPercent(100))))
            found = &task;
    }
    if (found != nullptr) return *found;
    return misusedLine("--done: \"" + *options.done + "\" is no step of this sealing: use one of " + names);
}

tl::expected<entries::Stretch, Failure> stretchFrom(const SealingOptions& options,
                                                    const words::Style& style) {
    OptionReader reader{style};
    entries::Stretch stretch;
    stretch.begin = reader.readIfGiven<Length>(options.from, "--from");
    stretch.end = reader.readIfGiven<Length>(options.to, "--to");
    if (reader.failure()) return tl::unexpected{*reader.failure()};
    return stretch;
}

Outcome record(const SealingOptions& options, session::Session& session, const Tasks& tasks, Instant at,
               const Answer& answer) {
    const auto task = taskFrom(tasks, options);
    if (!task) return tl::unexpected{task.error()};
    const auto stretch = stretchFrom(options, answer.style);
    if (!stretch) return tl::unexpected{stretch.error()};
    const auto body = plan::doneEntry(*task, *stretch, options.product.value_or(std::string{}));
    if (!body) return failed(body.error(), answer.style);
    const auto author = authorIn(session, options.file, options.author, answer.style);
    if (!author) return tl::unexpected{author.error()};
    const auto recorded = session.propose(*body, at, *author);
    if (!recorded) return failed(recorded.error(), answer.style);
    return {};
}

}  // namespace

Outcome sealing(const SealingOptions& options, const Answer& answer) {
    auto session = openSeason(options.file, options.done ? Purpose::writing : Purpose::reading, answer);
    if (!session) return tl::unexpected{session.error()};
    const auto at =
        options.done ? timeOfEntry(*session, options.at, answer.style) : momentFrom(options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    const auto inputs = plannedIn(*session->snapshot(), options, answer.style);
    if (!inputs) return tl::unexpected{inputs.error()};
    const auto seals = plan::sealsOf(*inputs);
    if (!seals) return failed(seals.error(), answer.style);
    const auto tasks = [&] { return plan::sealingList(*seals, inputs->begins, *session->snapshot(), *at); };
    if (options.done) {
        if (auto recorded = record(options, *session, tasks(), *at, answer); !recorded) return recorded;
    }
    Answer local = answer;
    local.style.zone = session->snapshot()->zone();
    printPlanTables({listed(tasks())}, local);
    return {};
}

}  // namespace treadwell::cli
