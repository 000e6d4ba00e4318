#include "app/cli/open_season.h"

#include "core/session/state_folder.h"

#include <ostream>

namespace treadwell::cli {

const Clock& machineClock() {
    static const SystemClock kClock;
    return kClock;
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
    auto opened = purpose == Purpose::writing ? session::Session::open(*files, machineClock())
                                              : session::Session::openForReading(*files, machineClock());
    if (!opened) return failed(opened.error(), answer.style);
    if (const auto& reason = opened->readOnlyReason(); reason && purpose == Purpose::writing) {
        return failed(Error{*reason, "", {file, 0, 0}}, answer.style);
    }
    for (const Message& caution : opened->cautions()) {
        answer.notes << file << ": " << words::inWords(caution, answer.style) << '\n';
    }
    return *std::move(opened);
}

}  // namespace treadwell::cli
