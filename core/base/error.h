#pragma once

#include "core/base/code.h"
#include "core/base/codes.h"
#include "core/base/dimension.h"
#include "core/base/instant.h"

#include <tl/expected.hpp>

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace treadwell {

/// What a phrase's {1}, {2}... stand for. Text is somebody's own (a name, a raw cell) and is never
/// translated. Several codes are a list of things that are put into words one by one.
using Argument = std::variant<std::string, std::int64_t, double, Amount, Instant, Code, std::vector<Code>>;

/// A sentence not yet put into words: a code and what it speaks of.
struct Message {
    Code code;
    std::vector<Argument> arguments;
    friend bool operator==(const Message&, const Message&) = default;
};

/// Where in a file; 0 means not known.
struct Place {
    std::string file;
    std::int64_t line = 0;
    std::int64_t column = 0;
    friend bool operator==(const Place&, const Place&) = default;
};

/// Bad input or a failing outside world: what is wrong, in which field, and where.
struct Error {
    Message message;
    std::string field;
    Place place;

    [[nodiscard]] Code code() const noexcept { return message.code; }
    friend bool operator==(const Error&, const Error&) = default;
};

template <class T>
using Result = tl::expected<T, Error>;

using Unexpected = tl::unexpected<Error>;

/// `return fail(code::valueOutOfRange, "width", Amount{...}, ...);`
template <class... Arguments>
[[nodiscard]] Unexpected fail(Code code, std::string field, Arguments&&... arguments) {
    return Unexpected{Error{{code, {Argument{std::forward<Arguments>(arguments)}...}}, std::move(field), {}}};
}

}  // namespace treadwell
