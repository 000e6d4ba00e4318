#include "core/advice/voice.h"

#include "core/advice/codes.h"

namespace treadwell::advice {

namespace {

/// What this advice would have the line say; empty for silence. What is said already needs no further gain to
/// stay, so that a gain that wavers about the least does not make the line flap.
std::string worthSaying(const Advice& advice, const std::string& said, const VoiceRules& rules) {
    const double gain = advice.best().outcome.chance.fraction() - advice.now().outcome.chance.fraction();
    switch (advice.verdict) {
        case Verdict::change:
        case Verdict::closest:
            return gain >= rules.leastChanceGain || advice.best().name == said ? advice.best().name
                                                                               : std::string{};
        case Verdict::canLeave:
        case Verdict::thinner:
            return advice.best().name;
        case Verdict::allIsWell:
        case Verdict::saturated:
        case Verdict::nothingHelps:
            break;
    }
    return {};
}

/// What is still said of a candidate that is not there any more: where the delivery need not be slowed, what
/// goes with it. Empty: nothing of it is left.
std::string leftOf(const std::string& said, const Advice& advice) {
    constexpr std::string_view kSlower = "+delivery";
    if (!said.ends_with(kSlower)) return {};
    std::string rest = said.substr(0, said.size() - kSlower.size());
    return find(advice, rest) == nullptr ? std::string{} : rest;
}

}  // namespace

Voice hear(const Voice& voice, const Advice& advice, Instant now, const VoiceRules& rules) {
    Voice next = voice;
    if (!next.said.empty() && find(advice, next.said) == nullptr) {
        next.said = leftOf(next.said, advice);
        if (next.said.empty()) next.saidSince = now;
    }
    const std::string wish = worthSaying(advice, next.said, rules);
    if (wish == next.said) {
        next.waiting.clear();
        next.waitingSince.reset();
        return next;
    }
    if (!next.waitingSince || wish != next.waiting) {
        next.waiting = wish;
        next.waitingSince = now;
        return next;
    }
    const bool held = now - *next.waitingSince >= rules.hold;
    const bool patient = next.said.empty() || now - next.saidSince >= rules.mindChange;
    if (held && patient) next = {.said = wish, .saidSince = now, .waiting = {}, .waitingSince = {}};
    return next;
}

std::optional<Message> whySilent(const Advice& advice, const VoiceRules& rules) {
    if (advice.chosen == 0) return advice.says.front();
    if (!worthSaying(advice, {}, rules).empty()) return std::nullopt;
    return Message{code::adviceLittleHelps,
                   {advice.target.density.amount(), advice.now().outcome.chance.amount(),
                    Share::fromFraction(rules.leastChanceGain).amount()}};
}

}  // namespace treadwell::advice
