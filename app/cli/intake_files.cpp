#include "app/cli/intake_files.h"

#include "app/cli/season_file.h"
#include "core/base/atomic_file.h"
#include "core/intake/logs.h"
#include "core/intake/tickets.h"

#include <array>

namespace treadwell::cli {

namespace {

using Reader = Result<intake::Intake> (*)(std::string_view, const intake::Context&);

/// `--date-order dayFirst`: one of the enumeration's names.
template <NamedEnum E>
tl::expected<std::optional<E>, Failure> choiceFrom(const std::optional<std::string>& text,
                                                   const std::string& option) {
    if (!text) return std::nullopt;
    if (const auto choice = enumFromText<E>(*text)) return choice;
    std::string names;
    for (const std::string_view name : enumTexts(E{}))
        names += (names.empty() ? "" : ", ") + std::string{name};
    return tl::unexpected{
        Failure{Status::misused, option + ": \"" + *text + "\" is not known: use one of " + names}};
}

tl::expected<intake::Context, Failure> contextFrom(const ImportOptions& options,
                                                   const season::Season& season) {
    intake::Context context;
    for (const auto& day : season.days()) {
        for (const season::FactPointer& fact : day->facts) {
            learn(context, fact->stated(), fact->isVoid());
            for (const season::EntryPointer& change : fact->changes())
                learn(context, *change, fact->isVoid());
        }
    }
    // Files of a farm with one silo seldom name it.
    if (options.silo || season.farm().silos.size() == 1) {
        const auto silo = siloFrom(season.farm(), options.silo);
        if (!silo) return tl::unexpected{silo.error()};
        context.silo = silo->id;
    }
    const auto decimalSign = choiceFrom<formats::DecimalSign>(options.decimalSign, "--decimal-sign");
    if (!decimalSign) return tl::unexpected{decimalSign.error()};
    context.csv.decimalSign = *decimalSign;
    const auto dateOrder = choiceFrom<intake::DateOrder>(options.dateOrder, "--date-order");
    if (!dateOrder) return tl::unexpected{dateOrder.error()};
    context.dateOrder = *dateOrder;
    const auto massUnit = choiceFrom<formats::MassUnit>(options.massUnit, "--mass-unit");
    if (!massUnit) return tl::unexpected{massUnit.error()};
    context.massUnit = *massUnit;
    return context;
}

struct Named {
    std::string_view kind;
    const std::optional<std::string>& path;
    Reader reader;
};

}  // namespace

tl::expected<std::vector<ImportedFile>, Failure> readFiles(const ImportOptions& options,
                                                           const season::Season& season,
                                                           const words::Style& style) {
    const auto context = contextFrom(options, season);
    if (!context) return tl::unexpected{context.error()};
    const std::array<Named, 6> all{{{"tickets", options.tickets, intake::readTickets},
                                    {"tractors", options.tractors, intake::readTractorLog},
                                    {"samples", options.samples, intake::readSamples},
                                    {"heights", options.heights, intake::readHeights},
                                    {"layers", options.layers, intake::readLayers},
                                    {"cores", options.cores, intake::readCores}}};
    std::vector<ImportedFile> files;
    for (const Named& named : all) {
        if (!named.path) continue;
        const auto bytes = readFile(*named.path);
        if (!bytes) return failed(bytes.error(), style);
        auto read = named.reader(*bytes, *context);
        if (!read) {
            Error error = read.error();
            error.place.file = *named.path;
            return failed(error, style);
        }
        files.push_back({named.kind, *named.path, *std::move(read)});
    }
    if (files.empty()) {
        return tl::unexpected{Failure{
            Status::misused,
            "nothing to import: give --tickets, --tractors, --samples, --heights, --layers or --cores"}};
    }
    return files;
}

}  // namespace treadwell::cli
