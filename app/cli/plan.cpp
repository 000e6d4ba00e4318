#include "app/cli/plan.h"

#include "app/cli/from_file.h"

#include <array>
#include <ostream>
#include <utility>

namespace treadwell::cli {

namespace {

using ViewOf = PlanView (*)(const plan::Inputs&);
constexpr std::array kViews{std::pair{"fits", ViewOf{fitsView}}, std::pair{"flows", ViewOf{flowsView}},
                            std::pair{"pays", ViewOf{paysView}}, std::pair{"seals", ViewOf{sealsView}},
                            std::pair{"feeds", ViewOf{feedsView}}};

using Tables = tl::expected<std::vector<PlanTable>, Failure>;

Tables tablesFrom(PlanView view, const std::string& file, const words::Style& style) {
    if (view) return *std::move(view);
    Error error = view.error();
    error.place.file = file;
    return failed(error, style);
}

Tables scenariosOf(const PlanOptions& options, const Answer& answer) {
    std::vector<plan::Inputs> scenarios;
    std::vector<std::string> files{options.file};
    files.insert(files.end(), options.against.begin(), options.against.end());
    for (const std::string& file : files) {
        auto inputs = inputsFrom(file, answer.style);
        if (!inputs) return tl::unexpected{inputs.error()};
        scenarios.push_back(*std::move(inputs));
    }
    return tablesFrom(scenariosView(scenarios), options.file, answer.style);
}

Tables tablesOf(const PlanOptions& options, const Answer& answer) {
    if (!options.against.empty()) return scenariosOf(options, answer);
    const auto inputs = inputsFrom(options.file, answer.style);
    if (!inputs) return tl::unexpected{inputs.error()};
    std::vector<PlanTable> all;
    std::string names;
    bool found = false;
    for (const auto& [name, viewOf] : kViews) {
        names += std::string{name} + ", ";
        if (options.what != "all" && options.what != name) continue;
        found = true;
        auto tables = tablesFrom(viewOf(*inputs), options.file, answer.style);
        if (!tables) return tables;
        for (PlanTable& table : *tables) all.push_back(std::move(table));
    }
    if (found) return all;
    return misusedLine("WHAT: \"" + options.what + "\" is not known: use one of " + names + "all");
}

}  // namespace

tl::expected<plan::Inputs, Failure> inputsFrom(const std::string& file, const words::Style& style) {
    return fromFile(file, plan::inputsFromJson, style);
}

void printPlanTables(const std::vector<PlanTable>& tables, const Answer& answer) {
    if (!answer.json) {
        for (const PlanTable& table : tables) {
            answer.out << table.heading << '\n';
            printTable(answer.out, table.table, answer.style);
            for (const Message& remark : table.remarks)
                answer.out << words::inWords(remark, answer.style) << '\n';
            answer.out << '\n';
        }
        return;
    }
    JsonWriter json{2};
    json.beginObject();
    for (const PlanTable& table : tables) {
        json.key(table.key);
        writeTable(json, table.table);
        if (!table.remarks.empty()) writeMessages(json, table.key + "_remarks", table.remarks, answer.style);
    }
    json.endObject();
    answer.out << json.text() << '\n';
}

Outcome plan(const PlanOptions& options, const Answer& answer) {
    if (options.example) {
        answer.out << plan::toJson(plan::exampleInputs()) << '\n';
        return {};
    }
    if (options.adopted) return printAdopted(*options.adopted, answer);
    if (options.of) return printBegun(*options.of, answer);
    if (options.file.empty()) return misusedLine("PLAN is missing: give a file, or --example for one");
    if (options.adopt) return adopt(options, answer);
    const auto tables = tablesOf(options, answer);
    if (!tables) return tl::unexpected{tables.error()};
    printPlanTables(*tables, answer);
    return {};
}

}  // namespace treadwell::cli
