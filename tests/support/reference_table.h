#pragma once

#include "core/base/atomic_file.h"
#include "core/base/number_text.h"

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::testing_support {

/// A table of tests/published/reference: a comment with its provenance, a header, rows of words and numbers.
class ReferenceTable {
  public:
    explicit ReferenceTable(const std::string& name) {
        const auto text = readFile(std::string{TREADWELL_SOURCE} + "/tests/published/reference/" + name);
        if (!text) throw std::runtime_error("not there: " + name);
        std::string_view rest = *text;
        while (!rest.empty()) {
            const std::size_t end = std::min(rest.find('\n'), rest.size());
            const std::string_view line = rest.substr(0, end);
            rest.remove_prefix(std::min(end + 1, rest.size()));
            if (line.empty() || line.front() == '#') continue;
            (m_header.empty() ? m_header : m_rows.emplace_back()) = cellsOf(line);
        }
    }

    [[nodiscard]] std::size_t size() const { return m_rows.size(); }
    [[nodiscard]] std::string text(std::size_t row, std::string_view column) const {
        for (std::size_t i = 0; i < m_header.size(); ++i) {
            if (m_header[i] == column) return m_rows.at(row).at(i);
        }
        throw std::runtime_error("no such column: " + std::string{column});
    }
    [[nodiscard]] double number(std::size_t row, std::string_view column) const {
        const auto value = numberFromText(text(row, column));
        if (!value) throw std::runtime_error("not a number: " + text(row, column));
        return *value;
    }
    [[nodiscard]] std::int64_t whole(std::size_t row, std::string_view column) const {
        return static_cast<std::int64_t>(number(row, column));
    }

  private:
    static std::vector<std::string> cellsOf(std::string_view line) {
        std::vector<std::string> cells(1);
        for (const char c : line) {
            if (c == ',') {
                cells.emplace_back();
            } else {
                cells.back() += c;
            }
        }
        return cells;
    }

    std::vector<std::string> m_header;
    std::vector<std::vector<std::string>> m_rows;
};

}  // namespace treadwell::testing_support
