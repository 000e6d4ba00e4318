#include "app/cli/open_season.h"

#include "app/cli/season_file.h"
#include "core/session/state_folder.h"

#include <ostream>

namespace treadwell::cli {

const Clock& machineClock() {
    static const SystemClock kClock;
    return kClock;
}

tl::expected<Instant, Failure> timeOfEntry(const session::Session& session,
                                           const std::optional<std::string>& at, const words::Style& style) {
    const auto question = session.standing().clockQuestion;
    if (at || !question) return momentFrom(at, style);
    return tl::unexpected{Failure{
        Status::misused,
        "--at: say when it happened, since the clock is in question: " + words::inWords(*question, style)}};
}

tl::expected<session::Files, Failure> filesOf(const std::string& season, const words::Style& style) {
    const auto folder = session::stateFolder();
    if (!folder) return failed(folder.error(), style);
    return session::Files{season, *folder};
}

tl::expected<session::Session, Failure> openSeason(const std::string& file, Purpose purpose,
                                                   const Answer& answer) {
    const auto files = filesOf(file, answer.style);
    if (!files) return tl::unexpected{files.error()};
    auto opened = session::Session::open(*files, machineClock(), purpose);
    if (!opened) return failed(opened.error(), answer.style);
    const session::Standing standing = opened->standing();
    const auto tell = [&](const Message& message) {
        answer.notes << file << ": " << words::inWords(message, answer.style) << '\n';
    };
    if (purpose == Purpose::writing) {
        if (standing.readOnlyReason) {
            return failed(Error{*standing.readOnlyReason, "", {file, 0, 0}}, answer.style);
        }
        if (standing.unsavedReason) tell(*standing.unsavedReason);
        if (standing.clockQuestion) tell(*standing.clockQuestion);
    }
    for (const Message& caution : standing.cautions) tell(caution);
    return *std::move(opened);
}

}  // namespace treadwell::cli
