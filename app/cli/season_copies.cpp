#include "app/cli/season_copies.h"

#include "app/cli/exports.h"
#include "app/cli/open_season.h"
#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/base/hex.h"
#include "core/entries/schema.h"
#include "core/journal/codes.h"
#include "core/practice/schema.h"
#include "core/session/copies.h"
#include "core/session/exchange.h"

#include <ostream>

namespace treadwell::cli {

namespace {

void tell(std::string_view done, const std::string& file, const Hash& head, const Answer& answer) {
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().member("file", file).member("head", toHex(head)).endObject();
        answer.out << json.text() << '\n';
    } else {
        answer.out << file << ": " << done << ", head " << toHex(head) << '\n';
    }
}

bool isDocument(const std::string& bytes) {
    const std::size_t first = bytes.find_first_not_of(" \t\r\n");
    return first != std::string::npos && bytes[first] == '{';
}

}  // namespace

Outcome deliver(const std::string& content, const std::optional<std::string>& output, const Answer& answer) {
    if (!output) {
        answer.out << content;
        return {};
    }
    std::error_code unreadable;
    if (std::filesystem::exists(std::filesystem::symlink_status(*output, unreadable))) {
        return failed(fail(code::journalExists, "", *output).value(), answer.style);
    }
    if (const auto written = writeFileAtomically(*output, content); !written) {
        return failed(written.error(), answer.style);
    }
    return {};
}

Outcome backup(const CopyOptions& options, const Answer& answer) {
    const auto opened = openSeason(options.file, Purpose::reading, answer);
    if (!opened) return tl::unexpected{opened.error()};
    if (const auto made = opened->backupTo(options.copy); !made) return failed(made.error(), answer.style);
    tell("a checked copy", options.copy, opened->head(), answer);
    return {};
}

Outcome restore(const CopyOptions& options, const Answer& answer) {
    const auto bytes = readFile(options.copy);
    if (!bytes) return failed(bytes.error(), answer.style);
    if (!isDocument(*bytes)) {
        const auto made = session::restore(options.copy, options.file, machineClock().now());
        if (!made) return failed(made.error(), answer.style);
        const auto opened = openSeason(options.file, Purpose::reading, answer);
        if (!opened) return tl::unexpected{opened.error()};
        tell("restored", options.file, opened->head(), answer);
        return {};
    }
    const auto head = session::restoreDocument(*bytes, options.file);
    if (!head) {
        Error error = head.error();
        if (error.field != "file") error.place.file = options.copy;
        return failed(error, answer.style);
    }
    tell("restored", options.file, *head, answer);
    return {};
}

Outcome secondPlace(const CopyOptions& options, const Answer& answer) {
    const auto files = filesOf({}, answer.style);
    if (!files) return tl::unexpected{files.error()};
    if (options.place || options.noPlace) {
        if (options.place && options.noPlace) return misusedLine("give a folder or --none");
        std::error_code absent;
        if (options.place && !std::filesystem::is_directory(*options.place, absent)) {
            return failed(
                fail(code::fileUnreadable, "", *options.place, std::string{"it is no folder"}).value(),
                answer.style);
        }
        // Seasons are closed from anywhere: the place must not depend on where this was typed.
        const auto place =
            options.place ? std::filesystem::absolute(*options.place) : std::filesystem::path{};
        if (const auto chosen = session::chooseSecondPlace(files->stateFolder, place); !chosen)
            return failed(chosen.error(), answer.style);
    }
    std::optional<std::filesystem::path> season;
    if (options.season) {
        season = *options.season;
        const auto opened = openSeason(*options.season, Purpose::reading, answer);
        if (!opened) return tl::unexpected{opened.error()};
        if (const auto copied = options.copyNow ? opened->copyToSecondPlace() : Result<void>{}; !copied)
            return failed(copied.error(), answer.style);
    } else if (options.copyNow) {
        return misusedLine("--copy-now: say of which season, with --season");
    }
    const Message stand = session::copiesStand(files->stateFolder, season);
    if (answer.json) {
        const auto place = session::secondPlace(files->stateFolder).value_or("").string();
        JsonWriter json{2};
        json.beginObject().member("second_place", place).key("copies");
        writeMessage(json, stand, answer.style);
        json.endObject();
        answer.out << json.text() << '\n';
    } else {
        answer.out << words::inWords(stand, answer.style) << '\n';
    }
    return {};
}

Outcome exportSeason(const CopyOptions& options, const Answer& answer) {
    if (options.what == "season") {
        const auto names = options.names ? session::PeoplesNames::included : session::PeoplesNames::leftOut;
        const auto document = session::exportDocument(options.file, names, machineClock().now());
        if (!document) return failed(document.error(), answer.style);
        return deliver(*document, options.output, answer);
    }
    const auto what = enumFromText<Export>(options.what);
    if (!what) {
        std::string known = "season";
        for (const std::string_view name : enumTexts(Export{})) known += ", " + std::string{name};
        return misusedLine("\"" + options.what + "\" cannot be exported: use one of " + known);
    }
    const auto opened = openSeason(options.file, Purpose::reading, answer);
    if (!opened) return tl::unexpected{opened.error()};
    return deliver(csvOf(exportOf(*opened->snapshot(), *what, machineClock().now())), options.output, answer);
}

Outcome schema(const std::string& what, const Answer& answer) {
    if (what == "season") {
        answer.out << entries::documentSchema();
    } else if (what == "lesson") {
        answer.out << practice::lessonSchema();
    } else if (what == "drive") {
        answer.out << practice::driveSchema();
    } else {
        return misusedLine("\"" + what + "\" has no schema: use one of season, lesson, drive");
    }
    return {};
}

}  // namespace treadwell::cli
