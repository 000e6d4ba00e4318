#pragma once

#include "core/base/hash.h"
#include "core/formats/csv_reader.h"
#include "core/formats/mass_unit.h"
#include "core/intake/columns.h"
#include "core/intake/wall_clock.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::intake {

/// How a file is to be read where it does not tell by itself: answered once, remembered by its header.
struct ImportMap {
    std::optional<formats::Encoding> encoding;
    std::optional<formats::Delimiter> delimiter;
    std::optional<formats::DecimalSign> decimalSign;
    std::optional<DateOrder> dateOrder;
    std::optional<formats::MassUnit> massUnit;  ///< for weights without a unit in header or row
    std::vector<ColumnName> columns;            ///< those whose headers are none of the usual words

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("columns", self.columns);
        visit("date_order", self.dateOrder);
        visit("decimal_sign", self.decimalSign);
        visit("delimiter", self.delimiter);
        visit("encoding", self.encoding);
        visit("mass_unit", self.massUnit);
    }
    friend bool operator==(const ImportMap&, const ImportMap&) = default;

    /// What is not answered here is taken from `earlier`.
    [[nodiscard]] ImportMap filledFrom(const ImportMap& earlier) const;
};

/// SHA-256 of a file's first line that is not blank, `sep=` left out; none for an empty file.
[[nodiscard]] std::optional<Hash> headerFingerprint(std::string_view bytes);

/// In this machine's state folder.
inline constexpr const char* kImportMapsFile = "import_maps.json";

/// The answers of this machine, by header.
struct ImportMaps {
    struct Remembered {
        Hash header{};
        ImportMap map;

        template <class Visit, class Self>
        static void fields(Visit& visit, Self& self) {
            visit("header", self.header);
            visit("map", self.map);
        }
        friend bool operator==(const Remembered&, const Remembered&) = default;
    };

    std::vector<Remembered> all;

    /// From the text of the settings file. Errors: payloadUnreadable, payloadFieldMissing, payloadFieldWrong.
    [[nodiscard]] static Result<ImportMaps> parse(std::string_view json);
    [[nodiscard]] std::string text() const;

    /// What this machine remembers in a file; nothing where it is not there. Errors: fileUnreadable,
    /// importMapsUnreadable.
    [[nodiscard]] static Result<ImportMaps> load(const std::filesystem::path& file);
    [[nodiscard]] Result<void> save(const std::filesystem::path& file) const;

    /// Empty answers where nothing is remembered.
    [[nodiscard]] ImportMap find(const Hash& header) const;
    void remember(const Hash& header, ImportMap map);

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("import_maps", self.all);
    }
    friend bool operator==(const ImportMaps&, const ImportMaps&) = default;
};

}  // namespace treadwell::intake
