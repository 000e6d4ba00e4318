#include "core/face/removed.h"

#include "core/face/codes.h"

namespace treadwell::face {

namespace {

template <class Kind>
std::vector<season::Dated<Kind>> recordsOf(const season::Season& season, farm::SiloId silo, Instant now) {
    std::vector<season::Dated<Kind>> records;
    for (const auto& day : season.days()) {
        for (const season::Dated<Kind>& record : day->records.of<Kind>()) {
            if (record.what.silo == silo && record.at <= now) records.push_back(record);
        }
    }
    return records;
}

DryMass dryBefore(const density::Field& field, Length face) {
    density::Box box = field.whole();
    box.low.along = std::clamp(face, Length{}, box.high.along);
    const auto mean = field.mean(box);
    return mean ? mean->dry : DryMass{};
}

}  // namespace

FedOut fedOutOf(const season::Season& season, farm::SiloId silo, Instant now) {
    FedOut fed{.removals = recordsOf<entries::FeedRemoved>(season, silo, now), .mass = {}};
    AsFedMass sampled;
    DryMass dry;
    for (const auto& removal : fed.removals) {
        fed.mass += removal.what.mass;
        if (removal.what.face) fed.face = removal.what.face;
        if (!removal.what.dryMatter) continue;
        sampled += removal.what.mass;
        dry += removal.what.mass * *removal.what.dryMatter;
    }
    if (sampled > AsFedMass{}) fed.dryMatter = DryMatter::fromFraction(dry.kilograms() / sampled.kilograms());
    return fed;
}

std::optional<AsFedMass> FedOut::perDay(const FarmZone& zone) const {
    if (removals.empty()) return std::nullopt;
    const auto day = [&](Instant at) { return std::chrono::local_days{zone.dayOf(at)}; };
    const auto days = (day(removals.back().at) - day(removals.front().at)).count() + 1;
    return mass * (1.0 / static_cast<double>(days));
}

Result<FedBalance> fedBalanceOf(const season::Delivered& in, const density::Field& field, const FedOut& fed) {
    if (!fed.face) return fail(code::faceNotSeen, "face");
    if (!fed.dryMatter) return fail(code::feedNotSampled, "dryMatter");
    const double part = *fed.face > Length{} ? dryBefore(field, *fed.face) / dryBefore(field, Length{}) : 1.0;
    FedBalance balance{in.mass * part, in.dry * part, fed.mass, fed.mass * *fed.dryMatter, {}};
    const auto lost = balanceOf(balance.massIn, balance.dryIn, balance.massOut, balance.dryOut);
    if (!lost) return Unexpected{lost.error()};
    balance.balance = *lost;
    return balance;
}

std::vector<season::Dated<entries::FaceTemperature>> faceTemperaturesOf(const season::Season& season,
                                                                        farm::SiloId silo, Instant now) {
    return recordsOf<entries::FaceTemperature>(season, silo, now);
}

}  // namespace treadwell::face
