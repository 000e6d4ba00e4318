#pragma once

#include "core/intake/intake.h"

namespace treadwell::intake {

/// Reads a farm file: a JSON object with `format` ("treadwell farm"), `version` (1), `begins` (an instant
/// with its offset), `farm`, `zone`, and the lists `silos`, `tractors`, `trucks`, `fields` and the object
/// `rules`, with the field names of the farm's structs. The lists and the rules may be absent. The entries
/// begin with the season's start; all happen at `begins`. The file is taken as a whole or not at all. Errors:
/// payloadUnreadable, payloadFieldMissing, payloadFieldWrong, fieldUnknown, farmFileVersion, timeUnreadable
/// and those of the farm's validation, each with its field (`silos[0].width`).
[[nodiscard]] Result<Intake> readFarm(std::string_view bytes, const Context& context);

}  // namespace treadwell::intake
