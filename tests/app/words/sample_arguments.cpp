#include "tests/app/words/sample_arguments.h"

#include "tests/app/words/samples/tables.h"

#include <algorithm>
#include <stdexcept>

namespace treadwell::words {

namespace {

const std::vector<Sample>& samples() {
    static const std::vector<Sample> kSamples = [] {
        std::vector<Sample> all;
        for (const auto& room :
             {baseSamples(), cropSamples(), samplesSamples(), farmSamples(), entriesSamples(),
              journalSamples(), formatsSamples(), packingSamples(), densitySamples(), adviceSamples(),
              planSamples(), attentionSamples(), passesSamples(), faceSamples(), practiceSamples(),
              intakeSamples(), reviewSamples(), sessionSamples()}) {
            all.insert(all.end(), room.begin(), room.end());
        }
        return all;
    }();
    return kSamples;
}

}  // namespace

std::vector<Argument> sampleArguments(Code code) {
    const auto found = std::ranges::find(samples(), code, &Sample::code);
    if (found == samples().end()) throw std::logic_error("a code without sample arguments");
    return found->arguments;
}

}  // namespace treadwell::words
