#include "app/words/phrases/tables.h"
#include "core/crop/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& cropPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::densityImpossible, QT_TRANSLATE_NOOP("Phrase", "{1} at {2} dry matter is more than the pore-free {3}: check both")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
