#pragma once

#include "core/entries/payload.h"
#include "core/practice/codes.h"

#include <algorithm>

namespace treadwell::practice {

struct KeyCollector {
    std::vector<std::string_view> keys{"format", "version"};

    template <class T>
    void operator()(std::string_view key, const T& /*value*/) {
        keys.push_back(key);
    }
};

/// The fields of a file of this room, whose `format` and `version` stand beside them. Errors: those of
/// PayloadDocument and PayloadReader, fieldUnknown, lessonVersion.
template <class T>
[[nodiscard]] Result<T> fileFromJson(std::string_view json, std::string_view format, int version) {
    entries::PayloadDocument document;
    const auto file = document.read(json);
    if (!file) return Unexpected{file.error()};
    T fields;
    KeyCollector known;
    T::fields(known, fields);
    for (const entries::PayloadValue& member : **file) {
        if (std::find(known.keys.begin(), known.keys.end(), member.key) == known.keys.end()) {
            return fail(code::fieldUnknown, std::string{member.key});
        }
    }
    std::string isFormat;
    int isVersion = 0;
    entries::PayloadReader reader{**file};
    reader("format", isFormat);
    reader("version", isVersion);
    if (auto read = reader.result(); !read) return Unexpected{read.error()};
    if (isFormat != format) return fail(code::payloadFieldWrong, "format");
    if (isVersion != version) return fail(code::lessonVersion, "version", std::int64_t{isVersion});
    T::fields(reader, fields);
    if (auto read = reader.result(); !read) return Unexpected{read.error()};
    return fields;
}

template <class T>
[[nodiscard]] std::string fileToJson(const T& fields, std::string_view format, int version) {
    entries::PayloadWriter writer;
    writer("format", std::string{format});
    writer("version", version);
    T::fields(writer, fields);
    return writer.text();
}

}  // namespace treadwell::practice
