#include "app/cli/weigh.h"

#include "app/cli/names.h"
#include "app/cli/open_season.h"
#include "app/cli/scale_line.h"
#include "app/cli/season_file.h"
#include "core/intake/codes.h"
#include "core/intake/weighing.h"
#include "core/quantity/unit_table.h"
#include "core/quantity/work.h"

#include <ostream>

namespace treadwell::cli {

namespace {

using words::inWords;

std::string readingText(const formats::ScaleReading& reading, const words::Style& style) {
    std::string text{enumText(reading.state)};
    if (reading.kind != formats::WeightKind::untold) text += ' ' + std::string{enumText(reading.kind)};
    if (reading.weight) text += ' ' + inWords(reading.weight->amount(), style);
    if (reading.tare) text += ", tare " + inWords(reading.tare->amount(), style);
    return text;
}

void writeFrame(JsonWriter& json, const formats::ScaleFrame& frame, Instant at, const words::Style& style) {
    json.beginObject().member("time", toIso8601(at)).member("raw", formats::shownBytes(frame.raw));
    if (frame.reading) {
        json.member("state", enumText(frame.reading->state)).member("kind", enumText(frame.reading->kind));
        if (frame.reading->weight) json.member("weight_kg", frame.reading->weight->kilograms());
        if (frame.reading->tare) json.member("tare_kg", frame.reading->tare->kilograms());
    } else {
        json.key("error");
        writeMessage(json, frame.reading.error().message, style);
    }
    json.endObject();
}

template <class Things>
tl::expected<std::optional<typename Things::key_type>, Failure> idOf(const Things& things,
                                                                     const std::optional<std::string>& name,
                                                                     const std::string& option) {
    if (!name) return std::nullopt;
    return thingCalled(things, *name, option).map([](const auto& found) {
        return std::optional{found->first};
    });
}

tl::expected<entries::Load, Failure> knownOf(const WeighOptions& options, const season::FarmBook& farm) {
    entries::Load known;
    const auto silo = siloFrom(farm, options.silo);
    if (!silo) return tl::unexpected{silo.error()};
    known.silo = silo->id;
    const auto truck = idOf(farm.trucks, options.truck, "--truck");
    if (!truck) return tl::unexpected{truck.error()};
    known.truck = *truck;
    const auto field = idOf(farm.fields, options.field, "--field");
    if (!field) return tl::unexpected{field.error()};
    known.field = *field;
    known.ticket = options.ticket;
    return known;
}

tl::expected<std::optional<AsFedMass>, Failure> tareFrom(const std::optional<std::string>& text,
                                                         const words::Style& style) {
    if (!text) return std::optional<AsFedMass>{};
    const auto tare = quantityFromText<AsFedMass>(*text, "tare");
    if (!tare) return misused(tare.error(), "--tare", style);
    return std::optional{*tare};
}

tl::expected<intake::Weighing, Failure> steadyWeight(ScaleLine& line, const words::Style& style) {
    intake::SteadyWeight steady;
    std::optional<intake::Weighing> weighing;
    const auto heard = line.listen([&](const formats::ScaleFrame& frame, Instant at) {
        weighing = steady.take(frame, at);
        return weighing.has_value();
    });
    if (!heard) return failed(heard.error(), style);
    if (weighing) return *weighing;
    const Amount waited = durationAmount(line.wait());
    if (heard->frames == 0)
        return failed(fail(code::scaleSilent, "line", line.place(), waited).value(), style);
    return failed(
        fail(code::scaleUnsteady, "line", line.place(), waited, heard->frames, heard->unreadable).value(),
        style);
}

void answerWith(const entries::Load& load, const intake::Weighing& weighing, const season::FarmBook& farm,
                const Answer& answer) {
    const std::string truck = nameIn(farm.trucks, load.truck);
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().member("time", toIso8601(weighing.at)).member("net_kg", load.mass.kilograms());
        json.member("shown_kg", weighing.reading.weight->kilograms())
            .member("silo", nameIn(farm.silos, load.silo));
        json.member("truck", truck).endObject();
        answer.out << json.text() << '\n';
        return;
    }
    answer.out << inWords(load.mass.amount(), answer.style) << " recorded in "
               << nameIn(farm.silos, load.silo);
    if (!truck.empty()) answer.out << " from " << truck;
    answer.out << " (" << readingText(weighing.reading, answer.style) << ")\n";
}

}  // namespace

Outcome listen(const WeighOptions& options, const Answer& answer) {
    auto line = ScaleLine::open(options, answer.style);
    if (!line) return tl::unexpected{line.error()};
    JsonWriter json{2};
    json.beginObject().key("frames").beginArray();
    const auto heard = line->listen([&](const formats::ScaleFrame& frame, Instant at) {
        if (answer.json) {
            writeFrame(json, frame, at, answer.style);
        } else {
            answer.out << formats::shownBytes(frame.raw) << "   "
                       << (frame.reading ? readingText(*frame.reading, answer.style)
                                         : inWords(frame.reading.error().message, answer.style))
                       << std::endl;
        }
        return false;
    });
    if (!heard) return failed(heard.error(), answer.style);
    json.endArray().member("unreadable", heard->unreadable).endObject();
    if (answer.json) answer.out << json.text() << '\n';
    if (heard->frames == 0)
        return failed(fail(code::scaleSilent, "line", line->place(), durationAmount(line->wait())).value(),
                      answer.style);
    return {};
}

Outcome weigh(const WeighOptions& options, const Answer& answer) {
    auto opened = openSeason(options.file, Purpose::writing, answer);
    if (!opened) return tl::unexpected{opened.error()};
    const auto begun = timeOfEntry(*opened, options.at, answer.style);
    if (!begun) return tl::unexpected{begun.error()};
    const season::FarmBook farm = opened->snapshot()->farm();
    const auto known = knownOf(options, farm);
    if (!known) return tl::unexpected{known.error()};
    const auto tare = tareFrom(options.tare, answer.style);
    if (!tare) return tl::unexpected{tare.error()};
    auto line = ScaleLine::open(options, answer.style);
    if (!line) return tl::unexpected{line.error()};
    auto weighing = steadyWeight(*line, answer.style);
    if (!weighing) return tl::unexpected{weighing.error()};
    if (options.at) weighing->at = *begun;
    const auto load = intake::loadOf(*weighing, *known, *tare);
    if (!load) return failed(load.error(), answer.style);
    const session::Proposal proposal{*load, weighing->at, {}, weighing->evidence};
    if (const auto recorded = opened->importAll({&proposal, 1}, kNobody); !recorded)
        return failed(recorded.error(), answer.style);
    answerWith(*load, *weighing, farm, answer);
    return {};
}

}  // namespace treadwell::cli
