#pragma once

#include "core/intake/file_kind.h"

namespace treadwell::intake {

struct PreviewColumn {
    std::string header;
    std::optional<Column> meaning;  ///< none: it says nothing here
    std::string unit;
};

/// A file as it is understood, before anything is recorded.
struct Preview {
    formats::Encoding encoding = formats::Encoding::utf8;
    char delimiter = ',';
    std::optional<formats::DecimalSign> decimalSign;  ///< none while it must be asked for
    std::vector<PreviewColumn> columns;  ///< of tickets, whose columns are named by whoever wrote the scale
    std::vector<Error> open;             ///< what must be answered before the file can be read
    std::optional<Intake> intake;        ///< what would be recorded; none while something is open
};

/// Says all that is open about a file at once, where a reader stops at the first. A file without any header
/// has no columns.
[[nodiscard]] Preview previewOf(const FileKind& kind, std::string_view bytes, const Context& context);

}  // namespace treadwell::intake
