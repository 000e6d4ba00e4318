#pragma once

#include <string>

namespace treadwell::entries {

/// The JSON Schema (draft 2020-12) of a season's document: the payload of every kind that this version knows,
/// from its list of fields. A kind of a newer version is held to no shape. resources/season.schema.json is
/// this text.
[[nodiscard]] std::string documentSchema();

}  // namespace treadwell::entries
