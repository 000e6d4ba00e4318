#pragma once

#include "core/base/code.h"

namespace treadwell::words {

/// The English phrase of a code. {1}, {2}... stand for the message's arguments in their order. The text is
/// the key of its translation, in the context kPhraseContext.
[[nodiscard]] const char* phraseTemplate(Code code);

inline constexpr const char* kPhraseContext = "Phrase";

}  // namespace treadwell::words
