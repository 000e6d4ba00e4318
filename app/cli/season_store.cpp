#include "app/cli/import.h"
#include "app/cli/intake_files.h"
#include "app/cli/intake_output.h"
#include "app/cli/open_season.h"
#include "app/cli/season_file.h"
#include "core/base/atomic_file.h"
#include "core/base/hex.h"
#include "core/intake/farm_file.h"
#include "core/intake/records.h"
#include "core/session/carry.h"

#include <ostream>

namespace treadwell::cli {

namespace {

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

/// The program is younger: a machine that shows an earlier day has lost its clock.
constexpr Instant kNoClockIsRightBefore = std::chrono::sys_days{std::chrono::year{2020} / 1 / 1};

/// What a new season begins with; its start is the first.
using Beginning = tl::expected<std::vector<session::Proposal>, Failure>;

Beginning farmFrom(const std::string& file, const words::Style& style) {
    const auto bytes = readFile(file);
    if (!bytes) return failed(bytes.error(), style);
    auto intake = intake::readFarm(*bytes, {});
    if (!intake) {
        Error error = intake.error();
        error.place.file = file;
        return failed(error, style);
    }
    return proposalsOf(intake->proposals);
}

Beginning carriedFrom(const NewSeasonOptions& options, const Answer& answer) {
    const auto begins = momentFrom(options.begins, answer.style, "--begins");
    if (!begins) return tl::unexpected{begins.error()};
    std::vector<std::shared_ptr<const season::Season>> seasons;
    std::vector<Hash> heads;
    for (const std::string& file : options.carry) {
        const auto opened = openSeason(file, Purpose::reading, answer);
        if (!opened) return tl::unexpected{opened.error()};
        seasons.push_back(opened->snapshot());
        heads.push_back(opened->head());
    }
    std::vector<session::Earlier> earlier;
    for (std::size_t i = 0; i < seasons.size(); ++i) earlier.push_back({*seasons[i], heads[i]});
    auto carried = session::carriedFrom(earlier, *begins);
    if (!carried) return failed(carried.error(), answer.style);
    const season::FarmBook& last = seasons.back()->farm();
    carried->insert(carried->begin(),
                    {entries::SeasonStarted{last.farm, last.zone.name()}, *begins, std::nullopt, {}});
    return *std::move(carried);
}

void tellNew(const std::string& file, const season::FarmBook& book, const Answer& answer) {
    if (!answer.json) {
        answer.out << file << ": a new season of " << book.farm << '\n';
        return;
    }
    const auto count = [](const auto& things) { return static_cast<std::int64_t>(things.size()); };
    JsonWriter json{2};
    json.beginObject().member("file", file).member("farm", book.farm).member("zone", book.zone.name());
    json.member("silos", count(book.silos)).member("tractors", count(book.tractors));
    json.member("trucks", count(book.trucks)).member("fields", count(book.fields)).endObject();
    answer.out << json.text() << '\n';
}

}  // namespace

tl::expected<season::Season, Failure> readSeason(const std::string& file, const Answer& answer) {
    const auto opened = openSeason(file, Purpose::reading, answer);
    if (!opened) return tl::unexpected{opened.error()};
    return *opened->snapshot();
}

Outcome newSeason(const NewSeasonOptions& options, const Answer& answer) {
    if (options.farm.has_value() == !options.carry.empty()) {
        return misusedLine("give --farm, or --carry with an earlier season");
    }
    // Later entries are held against the first, so a season that is begun at a wrong time never finds out.
    if (const Instant now = machineClock().now(); now < kNoClockIsRightBefore) {
        return tl::unexpected{Failure{Status::failed, "the machine's clock shows " + toIso8601(now) +
                                                          ": set it first, then make the season"}};
    }
    const auto beginning =
        options.farm ? farmFrom(*options.farm, answer.style) : carriedFrom(options, answer);
    if (!beginning) return tl::unexpected{beginning.error()};
    const auto files = filesOf(options.file, answer.style);
    if (!files) return tl::unexpected{files.error()};
    const session::Proposal& first = beginning->front();
    const auto& start = std::get<entries::SeasonStarted>(first.body);
    auto created = session::Session::create(*files, start, kNobody, machineClock(), first.happened);
    if (!created) return failed(created.error(), answer.style);
    const std::span<const session::Proposal> rest{beginning->begin() + 1, beginning->end()};
    if (const auto recorded = created->importAll(rest, kNobody); !recorded) {
        return failed(recorded.error(), answer.style);
    }
    tellNew(options.file, created->snapshot()->farm(), answer);
    return {};
}

Outcome import(const ImportOptions& options, const Answer& answer) {
    auto opened = openSeason(options.file, options.preview ? Purpose::reading : Purpose::writing, answer);
    if (!opened) return tl::unexpected{opened.error()};
    const auto files = filesOf(options.file, answer.style);
    if (!files) return tl::unexpected{files.error()};
    const std::filesystem::path mapsFile = files->stateFolder / intake::kImportMapsFile;
    auto maps = intake::ImportMaps::load(mapsFile);
    if (!maps) return failed(maps.error(), answer.style);
    const intake::ImportMaps before = *maps;
    const auto read = readFiles(options, *opened->snapshot(), *maps, answer.style);
    if (!read) return tl::unexpected{read.error()};
    if (!options.preview) {
        const auto now = timeOfEntry(*opened, options.at, answer.style);
        if (!now) return tl::unexpected{now.error()};
        const auto proposals = recordsOf(*read, *now, answer.style);
        if (!proposals.empty()) {
            if (const auto recorded = opened->importAll(proposals, kNobody); !recorded)
                return failed(recorded.error(), answer.style);
        }
        if (*maps != before) {
            if (const auto kept = maps->save(mapsFile); !kept) return failed(kept.error(), answer.style);
        }
    }
    answer.json ? writeImport(*read, answer) : printImport(*read, answer);
    return {};
}

Outcome setAside(const std::string& file, const Answer& answer) {
    const auto opened = openSeason(file, Purpose::reading, answer);
    if (!opened) return tl::unexpected{opened.error()};
    std::vector<KeptRow> rows;
    for (const auto& day : opened->snapshot()->days()) {
        for (const auto& aside : day->records.of<entries::RowSetAside>()) {
            const auto raw = opened->evidence(aside.what.evidence);
            if (!raw) return failed(raw.error(), answer.style);
            rows.push_back({aside, *raw});
        }
    }
    answer.json ? writeRows(rows, answer) : printRows(rows, answer);
    return {};
}

Outcome check(const std::string& file, const Answer& answer) {
    auto opened = openSeason(file, Purpose::reading, answer);
    if (!opened) return tl::unexpected{opened.error()};
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
