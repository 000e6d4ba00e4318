#include "app/cli/names.h"
#include "app/cli/season_file.h"
#include "core/base/codes.h"
#include "core/intake/codes.h"

#include <algorithm>

namespace treadwell::cli {

tl::expected<Instant, Failure> momentFrom(const std::optional<std::string>& at, const words::Style& style,
                                          std::string_view option) {
    if (!at) return SystemClock{}.now();
    if (const auto instant = instantFromIso8601(*at)) return *instant;
    return misused(fail(code::timeUnreadable, "at", *at).value(), option, style);
}

tl::expected<entries::Body, Failure> emptyBodyOf(std::string kind, const words::Style& style) {
    std::replace(kind.begin(), kind.end(), '-', '_');
    if (auto body = entries::emptyBody(kind)) return *std::move(body);
    std::string known;
    for (const std::string_view name : entries::kindNames())
        known += (known.empty() ? "" : ", ") + std::string{name};
    return misusedLine(words::inWords(Message{code::kindUnknown, {kind, known}}, style));
}

tl::expected<farm::Silo, Failure> siloFrom(const season::FarmBook& farm,
                                           const std::optional<std::string>& name) {
    if (farm.silos.empty()) {
        return tl::unexpected{Failure{Status::failed, "The farm has no silo: define one in the farm file"}};
    }
    if (!name && farm.silos.size() == 1) return farm.silos.begin()->second;
    if (!name) return misusedLine("--silo: there are several: give one of " + namesOf(farm.silos));
    return thingCalled(farm.silos, *name, "--silo").map([](const auto& found) { return found->second; });
}

tl::expected<const season::Day*, Failure> dayFrom(const season::Season& season,
                                                  const std::optional<std::string>& date) {
    if (season.days().empty()) {
        return tl::unexpected{Failure{Status::failed, "The season has no day yet: import something first"}};
    }
    const season::Day& last = *season.days().back();
    if (!date) return &last;
    const auto read = dayFromIso8601(*date);
    if (!read) return misusedLine("--date: \"" + *date + "\" is not a date: write it like 2026-09-15");
    if (const season::Day* found = season.day(*read)) return found;
    return misusedLine("--date: nothing was entered on " + *date + ": the season runs from " +
                       toIso8601(season.days().front()->date) + " to " + toIso8601(last.date));
}

}  // namespace treadwell::cli
