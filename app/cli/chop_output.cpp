#include "app/cli/chop_output.h"

#include "core/base/number_text.h"

#include <array>
#include <ostream>

namespace treadwell::cli {

namespace {

using samples::ParticleSize;
using words::inWords;

constexpr std::array<const char*, 4> kPartNames{"on 19 mm", "on 8 mm", "on 4 mm", "below"};
constexpr std::array<const char*, 4> kPartKeys{"on_19_mm", "on_8_mm", "on_4_mm", "below_4_mm"};

struct Sized {
    samples::SizeMethod method;
    Result<ParticleSize> size;
};

std::array<Sized, 3> sizesOf(const ChopView& chop) {
    using samples::SizeMethod;
    return {{{SizeMethod::logNormal, logNormalSize(chop.parts)},
             {SizeMethod::standard, standardSize(chop.parts, chop.topLength)},
             {SizeMethod::oneScreen, oneScreenSize(chop.parts)}}};
}

void writeSizes(JsonWriter& json, const ChopView& chop, const words::Style& style) {
    json.key("sizes").beginArray();
    for (const auto& [method, size] : sizesOf(chop)) {
        json.beginObject().member("method", enumText(method));
        if (size) {
            writeAmount(json, "geometric_mean", size->geometricMean.chopAmount());
            if (size->spread) json.member("spread", *size->spread);
            json.member("source", size->source.citation).member("evidence", enumText(size->source.evidence));
        } else {
            json.key("reason");
            writeMessage(json, size.error().message, style);
        }
        json.endObject();
    }
    json.endArray();
}

void writeFibre(JsonWriter& json, const ChopView& chop) {
    if (!chop.fibre) return;
    json.key("effective_fibre").beginArray();
    for (const Length from : chop.parts.openings) {
        const auto effective = samples::effectiveFibre(chop.parts, from, *chop.fibre);
        if (!effective) continue;
        json.beginObject();
        writeAmount(json, "from", from.chopAmount());
        json.member("factor", effective->factor.fraction())
            .member("fibre", effective->fibre.fraction())
            .endObject();
    }
    json.endArray();
}

std::string wordsOf(const ParticleSize& size, const Answer& answer) {
    std::string text = inWords(size.geometricMean.chopAmount(), answer.style);
    if (size.spread) text += ", spread " + inWords(*size.spread, answer.style);
    return text + (size.source.citation.empty() ? "" : "; " + std::string{size.source.citation});
}

}  // namespace

void writeChop(JsonWriter& json, const ChopView& chop, const words::Style& style) {
    json.member("tests", chop.parts.tests).key("sieves").beginArray();
    for (std::size_t i = 0; i < chop.parts.parts.size(); ++i) {
        json.beginObject();
        if (i < chop.parts.openings.size()) writeAmount(json, "opening", chop.parts.openings[i].chopAmount());
        json.member("part", chop.parts.parts[i].fraction());
        if (!chop.parts.sds.empty()) json.member("sd", chop.parts.sds[i].fraction());
        json.endObject();
    }
    json.endArray();
    writeSizes(json, chop, style);
    const samples::JudgedChop judged = samples::judge(chop.parts, chop.ranges);
    json.key("ranges").beginObject().member("interpolated", judged.interpolated);
    for (std::size_t i = 0; i < judged.parts.size(); ++i) {
        const samples::JudgedPart& part = judged.parts[i];
        json.key(kPartKeys[i]).beginObject().member("part", part.part.fraction());
        json.member("low", part.range.low.fraction()).member("high", part.range.high.fraction());
        json.member("side", enumText(part.side)).endObject();
    }
    json.endObject();
    writeFibre(json, chop);
    writeMessages(json, "remarks", chop.parts.remarks, style);
    writeMessages(json, "advice", samples::chopAdvice(chop.parts, chop.ranges, chop.setting), style);
}

void printChop(const ChopView& chop, const Answer& answer) {
    const words::Style& style = answer.style;
    if (chop.parts.tests > 1) printLine(answer.out, "Tests", std::to_string(chop.parts.tests) + ", pooled");
    for (const auto& [method, size] : sizesOf(chop)) {
        const std::string name{enumText(method)};
        printLine(answer.out, name, size ? wordsOf(*size, answer) : inWords(size.error().message, style));
    }
    const samples::JudgedChop judged = samples::judge(chop.parts, chop.ranges);
    for (std::size_t i = 0; i < judged.parts.size(); ++i) {
        const samples::JudgedPart& part = judged.parts[i];
        printLine(answer.out, kPartNames[i],
                  inWords(part.part.amount(), style) + ", usual " + inWords(part.range.low.amount(), style) +
                      " to " + inWords(part.range.high.amount(), style) + ": " +
                      std::string{enumText(part.side)});
    }
    if (judged.interpolated) printLine(answer.out, "", "Parts between this stack's sieves are interpolated");
    if (chop.fibre) {
        for (const Length from : chop.parts.openings) {
            const auto effective = samples::effectiveFibre(chop.parts, from, *chop.fibre);
            printLine(answer.out, "Fibre",
                      fixedText(effective->fibre.percent(), 1) + " % physically effective from " +
                          inWords(from.chopAmount(), style) + " on");
        }
    }
    for (const Message& remark : chop.parts.remarks) printLine(answer.out, "Note", inWords(remark, style));
    for (const Message& advice : samples::chopAdvice(chop.parts, chop.ranges, chop.setting))
        printLine(answer.out, "Advice", inWords(advice, style));
}

}  // namespace treadwell::cli
