#include "app/words/phrases/tables.h"
#include "core/face/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& facePhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::faceNoCores, QT_TRANSLATE_NOOP("Phrase", "No core tells where it came from and how dense it was, so there is no map of a face")},
        {code::faceTooFewCores, QT_TRANSLATE_NOOP("Phrase", "{1} cores at this face, {2} are the fewest for a map: take more, spread over width and height")},
        {code::faceNotSeen, QT_TRANSLATE_NOOP("Phrase", "Where the face stands is not recorded, so what was fed cannot be held against what was laid: record the removal with the place of the face")},
        {code::feedNotSampled, QT_TRANSLATE_NOOP("Phrase", "No removal tells its dry matter, so the loss of dry matter is not known: sample what is fed")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
