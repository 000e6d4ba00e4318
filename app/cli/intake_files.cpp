#include "app/cli/intake_files.h"

#include "app/cli/season_file.h"
#include "core/base/atomic_file.h"
#include "core/formats/codes.h"
#include "core/intake/codes.h"
#include "core/intake/from_season.h"

#include <algorithm>
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
    return misusedLine(option + ": \"" + *text + "\" is not known: use one of " + names);
}

tl::expected<intake::ImportMap, Failure> answersFrom(const ImportOptions& options) {
    intake::ImportMap map;
    std::optional<Failure> wrong;
    const auto take = [&](auto& answer, const std::optional<std::string>& text, const std::string& option) {
        using Choice = typename std::remove_reference_t<decltype(answer)>::value_type;
        auto choice = choiceFrom<Choice>(text, option);
        if (choice) {
            answer = *choice;
        } else if (!wrong) {
            wrong = choice.error();
        }
    };
    take(map.encoding, options.encoding, "--encoding");
    take(map.delimiter, options.delimiter, "--delimiter");
    take(map.decimalSign, options.decimalSign, "--decimal-sign");
    take(map.dateOrder, options.dateOrder, "--date-order");
    take(map.massUnit, options.massUnit, "--mass-unit");
    for (const std::string& text : options.columns) {
        const std::size_t split = std::min(text.find('='), text.size());
        std::optional<intake::Column> meaning;
        take(meaning, text.substr(0, split), "--column");
        if (meaning && split < text.size()) map.columns.push_back({*meaning, text.substr(split + 1)});
        if (split == text.size() && !wrong)
            wrong = Failure{Status::misused, "--column: \"" + text + "\": write it like net=HEADER"};
    }
    if (wrong) return tl::unexpected{*wrong};
    return map;
}

tl::expected<intake::Context, Failure> contextFrom(const ImportOptions& options,
                                                   const season::Season& season) {
    intake::Context context = intake::contextOf(season);
    if (options.silo) {
        const auto silo = siloFrom(season.farm(), options.silo);
        if (!silo) return tl::unexpected{silo.error()};
        context.silo = silo->id;
    }
    return context;
}

struct Choice {
    Code question;
    const char* option;
};

/// The option that answers what a file leaves open; empty where none does.
std::string optionFor(Code question) {
    static constexpr auto kAnswers = std::to_array<Choice>({{code::encodingAmbiguous, " (--encoding)"},
                                                            {code::encodingWrong, " (--encoding)"},
                                                            {code::delimiterAmbiguous, " (--delimiter)"},
                                                            {code::decimalAmbiguous, " (--decimal-sign)"},
                                                            {code::decimalMixed, " (--decimal-sign)"},
                                                            {code::dateOrderAmbiguous, " (--date-order)"},
                                                            {code::massUnitMissing, " (--mass-unit)"},
                                                            {code::massUnitUnknown, " (--mass-unit)"},
                                                            {code::columnMissing, " (--column)"},
                                                            {code::columnTwice, " (--column)"},
                                                            {code::columnNotThere, " (--column)"}});
    const auto* found = std::ranges::find(kAnswers, question, &Choice::question);
    return found == kAnswers.end() ? "" : found->option;
}

}  // namespace

std::string questionInWords(const Error& error, const words::Style& style) {
    return words::inWords(error, style) + optionFor(error.code());
}

tl::expected<std::vector<ImportedFile>, Failure> readFiles(const ImportOptions& options,
                                                           const season::Season& season,
                                                           intake::ImportMaps& maps,
                                                           const words::Style& style) {
    auto context = contextFrom(options, season);
    if (!context) return tl::unexpected{context.error()};
    const auto answers = answersFrom(options);
    if (!answers) return tl::unexpected{answers.error()};
    const std::array<std::pair<std::string_view, const std::optional<std::string>&>, 13> all{
        {{"tickets", options.tickets},
         {"tractors", options.tractors},
         {"samples", options.samples},
         {"heights", options.heights},
         {"layers", options.layers},
         {"cores", options.cores},
         {"sieves", options.sieves},
         {"kernels", options.kernels},
         {"temperatures", options.temperatures},
         {"fields", options.fields},
         {"chop", options.chop},
         {"removals", options.removals},
         {"face temperatures", options.faceTemperatures}}};
    std::vector<ImportedFile> files;
    for (const auto& [name, path] : all) {
        if (!path) continue;
        const intake::FileKind& kind = intake::fileKindCalled(name);
        const auto bytes = readFile(*path);
        if (!bytes) return failed(bytes.error(), style);
        const auto header = intake::headerFingerprint(*bytes);
        context->map = header ? answers->filledFrom(maps.find(*header)) : *answers;
        if (options.preview) {
            files.push_back({kind.name, *path, {}, intake::previewOf(kind, *bytes, *context)});
            continue;
        }
        auto read = kind.read(*bytes, *context);
        if (!read) {
            Error error = read.error();
            error.place.file = *path;
            return tl::unexpected{Failure{Status::failed, questionInWords(error, style)}};
        }
        if (header && *answers != intake::ImportMap{}) maps.remember(*header, context->map);
        files.push_back({kind.name, *path, *std::move(read), {}});
    }
    if (files.empty()) {
        return misusedLine(
            "nothing to import: give --tickets, --tractors, --samples, --heights, "
            "--layers, --cores, --sieves, "
            "--kernels, --temperatures, --fields, --chop, "
            "--removals or --face-temperatures");
    }
    return files;
}

}  // namespace treadwell::cli
