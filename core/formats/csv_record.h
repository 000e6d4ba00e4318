#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace treadwell::formats {

/// One row of a file.
struct CsvRecord {
    std::int64_t line = 0;  ///< on which it begins, counted from 1
    std::vector<std::string> cells;
    std::string raw;  ///< as it stood, in UTF-8, without its line end

    friend bool operator==(const CsvRecord&, const CsvRecord&) = default;
};

}  // namespace treadwell::formats
