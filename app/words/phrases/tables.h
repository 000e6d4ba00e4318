#pragma once

#include "core/base/code.h"

#include <vector>

// Marks a text for lupdate, without Qt.
#define QT_TRANSLATE_NOOP(context, text) text

namespace treadwell::words {

struct Phrase {
    Code code;
    const char* english;
};

// The phrases of each room's codes, sorted as its codes.h.
[[nodiscard]] const std::vector<Phrase>& basePhrases();
[[nodiscard]] const std::vector<Phrase>& cropPhrases();
[[nodiscard]] const std::vector<Phrase>& samplesPhrases();
[[nodiscard]] const std::vector<Phrase>& farmPhrases();
[[nodiscard]] const std::vector<Phrase>& entriesPhrases();
[[nodiscard]] const std::vector<Phrase>& journalPhrases();
[[nodiscard]] const std::vector<Phrase>& formatsPhrases();
[[nodiscard]] const std::vector<Phrase>& packingPhrases();
[[nodiscard]] const std::vector<Phrase>& densityPhrases();
[[nodiscard]] const std::vector<Phrase>& advicePhrases();
[[nodiscard]] const std::vector<Phrase>& planPhrases();
[[nodiscard]] const std::vector<Phrase>& attentionPhrases();
[[nodiscard]] const std::vector<Phrase>& passesPhrases();
[[nodiscard]] const std::vector<Phrase>& facePhrases();
[[nodiscard]] const std::vector<Phrase>& practicePhrases();
[[nodiscard]] const std::vector<Phrase>& intakePhrases();
[[nodiscard]] const std::vector<Phrase>& reviewPhrases();
[[nodiscard]] const std::vector<Phrase>& sessionPhrases();

}  // namespace treadwell::words
