#pragma once

#include "core/intake/intake.h"

#include <span>

namespace treadwell::intake {

/// One field of an entry as typed: `mass`, `12.3t`. Names are those of the entry's fields without the unit,
/// with `-` or `_` between words; the items of a list are numbered from 1: `readings.1.height`.
struct TypedField {
    std::string name;
    std::string text;
};

/// What `start` becomes with the fields filled in, as a new entry. Quantities carry their unit, things go by
/// the names of the context, times by the farm's clock; what is not typed stays as it is. A thing without an
/// id gets a new one from `ids`. Not validated: recording does that. Errors: typedFieldUnknown,
/// typedFieldTwice, valueMissing where neither `start` nor the typed fields give a value, and those of
/// reading the values, each with the field.
[[nodiscard]] Result<entries::Body> typedEntry(entries::Body start, std::span<const TypedField> fields,
                                               const Context& context, UuidSource& ids, Instant now);

/// An entry as it reads with some fields changed; an empty text takes a value away that may be absent.
/// Errors: those of typedEntry.
[[nodiscard]] Result<entries::Body> typedChange(entries::Body body, std::span<const TypedField> fields,
                                                const Context& context);

}  // namespace treadwell::intake
