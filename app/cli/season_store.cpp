#include "app/cli/import.h"
#include "app/cli/intake_files.h"
#include "app/cli/intake_output.h"
#include "app/cli/season_file.h"
#include "core/base/atomic_file.h"
#include "core/base/hex.h"
#include "core/intake/farm_file.h"
#include "core/intake/records.h"
#include "core/session/session.h"
#include "core/session/state_folder.h"

#include <ostream>

namespace treadwell::cli {

namespace {

/// Entries from files have no author at the keyboard.
constexpr entries::PersonId kNobody{};

Result<session::Files> filesOf(const std::string& season) {
    return session::stateFolder().map([&](const std::filesystem::path& folder) {
        return session::Files{season, folder};
    });
}

std::vector<session::Proposal> proposalsOf(const std::vector<intake::Proposal>& records) {
    std::vector<session::Proposal> proposals;
    for (const intake::Proposal& proposal : records) {
        proposals.push_back({proposal.body, proposal.happened, proposal.target, proposal.evidence});
    }
    return proposals;
}

std::vector<session::Proposal> recordsOf(const std::vector<ImportedFile>& files, Instant now,
                                         const words::Style& style) {
    std::vector<session::Proposal> all;
    for (const ImportedFile& file : files) {
        const std::string name = std::filesystem::path{file.path}.filename().string();
        const auto inWords = [&](const Error& error) { return words::inWords(error.message, style); };
        const auto records = proposalsOf(intake::recordsOf(file.intake, name, file.kind, now, inWords));
        all.insert(all.end(), records.begin(), records.end());
    }
    return all;
}

}  // namespace

tl::expected<season::Season, Failure> readSeason(const std::string& file, const words::Style& style) {
    const SystemClock clock;
    const auto files = filesOf(file);
    if (!files) return failed(files.error(), style);
    const auto opened = session::Session::openForReading(*files, clock);
    if (!opened) return failed(opened.error(), style);
    return *opened->snapshot();
}

Outcome newSeason(const std::string& file, const std::string& farm, const Answer& answer) {
    const SystemClock clock;
    const auto bytes = readFile(farm);
    if (!bytes) return failed(bytes.error(), answer.style);
    auto intake = intake::readFarm(*bytes, {});
    if (!intake) {
        Error error = intake.error();
        error.place.file = farm;
        return failed(error, answer.style);
    }
    const auto files = filesOf(file);
    if (!files) return failed(files.error(), answer.style);
    std::vector<session::Proposal> proposals = proposalsOf(intake->proposals);
    const auto& start = std::get<entries::SeasonStarted>(proposals.front().body);
    auto created = session::Session::create(*files, start, kNobody, clock, proposals.front().happened);
    if (!created) return failed(created.error(), answer.style);
    const std::span<const session::Proposal> rest{proposals.begin() + 1, proposals.end()};
    if (const auto recorded = created->importAll(rest, kNobody); !recorded) {
        return failed(recorded.error(), answer.style);
    }
    const season::FarmBook& book = created->snapshot()->farm();
    const auto count = [](const auto& things) { return static_cast<std::int64_t>(things.size()); };
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().member("file", file).member("farm", book.farm).member("zone", book.zone.name());
        json.member("silos", count(book.silos)).member("tractors", count(book.tractors));
        json.member("trucks", count(book.trucks)).member("fields", count(book.fields)).endObject();
        answer.out << json.text() << '\n';
    } else {
        answer.out << file << ": a new season of " << book.farm << '\n';
    }
    return {};
}

Outcome import(const ImportOptions& options, const Answer& answer) {
    const SystemClock clock;
    const auto files = filesOf(options.file);
    if (!files) return failed(files.error(), answer.style);
    auto opened = options.preview ? session::Session::openForReading(*files, clock)
                                  : session::Session::open(*files, clock);
    if (!opened) return failed(opened.error(), answer.style);
    if (const auto& reason = opened->readOnlyReason()) {
        return failed(Error{*reason, "", {options.file, 0, 0}}, answer.style);
    }
    const std::filesystem::path mapsFile = files->stateFolder / "import_maps.json";
    auto maps = rememberedMaps(mapsFile, answer.style);
    if (!maps) return tl::unexpected{maps.error()};
    const intake::ImportMaps before = *maps;
    const auto read = readFiles(options, *opened->snapshot(), *maps, answer.style);
    if (!read) return tl::unexpected{read.error()};
    if (!options.preview) {
        const auto proposals = recordsOf(*read, clock.now(), answer.style);
        if (!proposals.empty()) {
            if (const auto recorded = opened->importAll(proposals, kNobody); !recorded)
                return failed(recorded.error(), answer.style);
        }
        if (*maps != before) {
            if (const auto kept = writeFileAtomically(mapsFile, maps->text()); !kept)
                return failed(kept.error(), answer.style);
        }
    }
    answer.json ? writeImport(*read, answer) : printImport(*read, answer);
    return {};
}

Outcome setAside(const std::string& file, const Answer& answer) {
    const SystemClock clock;
    const auto files = filesOf(file);
    if (!files) return failed(files.error(), answer.style);
    const auto opened = session::Session::openForReading(*files, clock);
    if (!opened) return failed(opened.error(), answer.style);
    std::vector<KeptRow> rows;
    for (const auto& day : opened->snapshot()->days()) {
        for (const season::AsideNote& aside : day->setAside) {
            const auto raw = opened->evidence(aside.what.evidence);
            if (!raw) return failed(raw.error(), answer.style);
            rows.push_back({aside, *raw});
        }
    }
    answer.json ? writeRows(rows, answer) : printRows(rows, answer);
    return {};
}

Outcome check(const std::string& file, const Answer& answer) {
    const SystemClock clock;
    const auto files = filesOf(file);
    if (!files) return failed(files.error(), answer.style);
    auto opened = session::Session::openForReading(*files, clock);
    if (!opened) return failed(opened.error(), answer.style);
    if (const auto broken = opened->check()) return failed(Error{*broken, "", {file, 0, 0}}, answer.style);
    std::int64_t facts = 0;
    for (const auto& day : opened->snapshot()->days()) facts += std::ssize(day->facts);
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().member("facts", facts).member("head", toHex(opened->head())).member("whole", true);
        json.endObject();
        answer.out << json.text() << '\n';
    } else {
        answer.out << file << ": " << facts << " facts, every chain whole, head " << toHex(opened->head())
                   << '\n';
    }
    return {};
}

}  // namespace treadwell::cli
