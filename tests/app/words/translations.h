#pragma once

#include <map>
#include <string>

namespace treadwell::words {

struct Translation {
    std::string text;
    bool finished = true;
};

/// A Qt translation file as context -> source text -> translation. Throws std::runtime_error where the file
/// is missing or no XML.
using Translations = std::map<std::string, std::map<std::string, Translation>>;
[[nodiscard]] Translations readTranslations(const std::string& path);

}  // namespace treadwell::words
