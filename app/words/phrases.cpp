#include "app/words/phrases.h"

#include "app/words/phrases/tables.h"

#include <stdexcept>
#include <string_view>
#include <unordered_map>

namespace treadwell::words {

namespace {

std::unordered_map<std::string_view, const char*> everyPhrase() {
    std::unordered_map<std::string_view, const char*> all;
    for (const std::vector<Phrase>& room : {
             basePhrases(),
             cropPhrases(),
             samplesPhrases(),
             farmPhrases(),
             entriesPhrases(),
             journalPhrases(),
             formatsPhrases(),
             packingPhrases(),
             densityPhrases(),
             advicePhrases(),
             planPhrases(),
             attentionPhrases(),
             passesPhrases(),
             facePhrases(),
             practicePhrases(),
             intakePhrases(),
             reviewPhrases(),
             sessionPhrases(),
         }) {
        for (const Phrase& phrase : room) all.emplace(phrase.code.name(), phrase.english);
    }
    return all;
}

}  // namespace

const char* phraseTemplate(Code code) {
    static const std::unordered_map<std::string_view, const char*> kAll = everyPhrase();
    const auto found = kAll.find(code.name());
    if (found == kAll.end()) throw std::logic_error("a code without a phrase");
    return found->second;
}

}  // namespace treadwell::words
