#pragma once

#include "app/cli/command.h"
#include "core/base/atomic_file.h"

namespace treadwell::cli {

/// The file's content read by `read`, with the file's name on what is wrong in it.
template <class T>
[[nodiscard]] tl::expected<T, Failure> fromFile(const std::string& file, Result<T> (*read)(std::string_view),
                                                const words::Style& style) {
    const auto bytes = readFile(file);
    if (!bytes) return failed(bytes.error(), style);
    auto content = read(*bytes);
    if (content) return *std::move(content);
    Error error = content.error();
    error.place.file = file;
    return failed(error, style);
}

}  // namespace treadwell::cli
