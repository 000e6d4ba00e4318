// Text that a person or a file gives for one value: what is read must be finite and must survive being
// printed.
#include "core/base/instant.h"
#include "core/base/number_text.h"
#include "core/base/uuid.h"
#include "core/quantity/unit_table.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace treadwell;

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    if (const auto number = numberFromText(text)) {
        require(std::isfinite(*number));
        require(numberFromText(shortestText(*number)) == number);
    }
    if (const auto integer = integerFromText(text))
        require(integerFromText(std::to_string(*integer)) == integer);
    if (const auto at = instantFromIso8601(text)) require(instantFromIso8601(toIso8601(*at)) == at);
    if (const auto day = dayFromIso8601(text)) require(day->ok() && dayFromIso8601(toIso8601(*day)) == day);
    if (const auto uuid = Uuid::fromText(text)) require(Uuid::fromText(uuid->text()) == uuid);
    for (const UnitRow& row : unitTable()) {
        if (const auto si = siFromText(row.dimension, text, "value")) require(std::isfinite(*si));
    }
    return 0;
}
