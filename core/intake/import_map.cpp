#include "core/intake/import_map.h"

#include "core/base/atomic_file.h"
#include "core/entries/payload.h"
#include "core/intake/codes.h"

#include <algorithm>

namespace treadwell::intake {

ImportMap ImportMap::filledFrom(const ImportMap& earlier) const {
    ImportMap filled = *this;
    const auto fill = [](auto& own, const auto& other) {
        if (!own) own = other;
    };
    fill(filled.encoding, earlier.encoding);
    fill(filled.delimiter, earlier.delimiter);
    fill(filled.decimalSign, earlier.decimalSign);
    fill(filled.dateOrder, earlier.dateOrder);
    fill(filled.massUnit, earlier.massUnit);
    for (const ColumnName& name : earlier.columns) {
        const bool answered = std::any_of(columns.begin(), columns.end(),
                                          [&](const ColumnName& own) { return own.column == name.column; });
        if (!answered) filled.columns.push_back(name);
    }
    return filled;
}

std::optional<Hash> headerFingerprint(std::string_view bytes) {
    constexpr std::string_view kMark = "\xEF\xBB\xBF";
    if (bytes.substr(0, kMark.size()) == kMark) bytes.remove_prefix(kMark.size());
    while (!bytes.empty()) {
        const std::size_t end = std::min(bytes.find_first_of("\r\n"), bytes.size());
        const std::string_view line = bytes.substr(0, end);
        const bool isBlank = line.find_first_not_of(" \t") == std::string_view::npos;
        if (!isBlank && !formats::declaredDelimiter(line)) return sha256(line);
        bytes.remove_prefix(std::min(end + 1, bytes.size()));
    }
    return std::nullopt;
}

Result<ImportMaps> ImportMaps::parse(std::string_view json) {
    entries::PayloadDocument document;
    const auto object = document.read(json);
    if (!object) return Unexpected{object.error()};
    ImportMaps maps;
    entries::PayloadReader reader{**object};
    fields(reader, maps);
    if (const auto read = reader.result(); !read) return Unexpected{read.error()};
    return maps;
}

std::string ImportMaps::text() const {
    entries::PayloadWriter writer;
    fields(writer, *this);
    return writer.text() + '\n';
}

Result<ImportMaps> ImportMaps::load(const std::filesystem::path& file) {
    if (!std::filesystem::exists(file)) return ImportMaps{};
    const auto text = readFile(file);
    if (!text) return Unexpected{text.error()};
    auto maps = parse(*text);
    if (!maps) return fail(code::importMapsUnreadable, "file", file.string());
    return maps;
}

Result<void> ImportMaps::save(const std::filesystem::path& file) const {
    return writeFileAtomically(file, text());
}

ImportMap ImportMaps::find(const Hash& header) const {
    const auto known =
        std::find_if(all.begin(), all.end(), [&](const Remembered& one) { return one.header == header; });
    return known == all.end() ? ImportMap{} : known->map;
}

void ImportMaps::remember(const Hash& header, ImportMap map) {
    const auto known =
        std::find_if(all.begin(), all.end(), [&](const Remembered& one) { return one.header == header; });
    if (known == all.end()) {
        all.push_back({header, std::move(map)});
    } else {
        known->map = std::move(map);
    }
}

}  // namespace treadwell::intake
