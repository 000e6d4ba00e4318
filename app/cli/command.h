#pragma once

#include "app/words/words.h"
#include "core/base/json_writer.h"

#include <tl/expected.hpp>

#include <iosfwd>
#include <string>
#include <string_view>

namespace treadwell::cli {

/// What the program returns to the shell.
enum class Status : std::uint8_t {
    done = 0,
    failed = 1,  ///< a file or its data
    misused = 2  ///< the command line or a value on it
};

/// Why a command ended, as one line with what to do about it.
struct Failure {
    Status status;
    std::string line;
};

using Outcome = tl::expected<void, Failure>;

/// How a command answers; every command has these options.
struct Answer {
    std::ostream& out;
    std::ostream& notes;  ///< what must be told beside the answer
    bool json = false;
    words::Style style = {};
};

/// A value on the command line that cannot be used; `option` as typed, `--layer`.
[[nodiscard]] tl::unexpected<Failure> misused(const Error& error, std::string_view option,
                                              const words::Style& style);

/// The same in words of its own.
[[nodiscard]] tl::unexpected<Failure> misusedLine(std::string line);

/// A file or what stands in it.
[[nodiscard]] tl::unexpected<Failure> failed(const Error& error, const words::Style& style);

/// {code, text}.
void writeMessage(JsonWriter& json, const Message& message, const words::Style& style);

/// Member `name_unit` in the metric unit of the unit table: `delivery_t_per_h`.
void writeAmount(JsonWriter& json, const std::string& name, Amount amount);

/// Member `name`: an array of {code, text}.
void writeMessages(JsonWriter& json, std::string_view name, const std::vector<Message>& messages,
                   const words::Style& style);

/// The name, blanks to a column, and what is said of it.
void printLine(std::ostream& out, std::string_view name, std::string_view text);

}  // namespace treadwell::cli
