#pragma once

#include "app/words/words.h"
#include "core/entries/body.h"

namespace treadwell::words {

/// The translations' contexts for the names of kinds and fields, and for the words that stand in fields.
inline constexpr const char* kFieldContext = "Field";
inline constexpr const char* kWordContext = "Word";

/// What the farm calls a thing with an id; empty where nobody knows.
using NameOf = std::function<std::string(const Uuid& id)>;

/// `layer seen`.
[[nodiscard]] std::string kindInWords(std::string_view kind, const Style& style);

/// `near miss`: a stable name of an enumeration.
[[nodiscard]] std::string wordInWords(std::string_view name, const Style& style);

/// All that an entry says, in one line, the same in lists, histories and questions: `silo Long bunker, mass
/// 12.3 t, source weighed`. What is absent is left out; an unknown kind says nothing.
[[nodiscard]] std::string inWords(const entries::Body& body, const NameOf& nameOf, const Style& style);

/// Every English text that stands for a kind, a field or a word, by its context, for the translations.
struct EntryTerm {
    const char* context;
    std::string english;
};
[[nodiscard]] std::vector<EntryTerm> entryTerms();

}  // namespace treadwell::words
