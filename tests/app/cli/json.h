#pragma once

#include <simdjson.h>

#include <string>

namespace treadwell::cli {

/// The program's JSON, parsed; the parser owns the text behind the element.
struct Json {
    simdjson::dom::parser parser;
    simdjson::dom::element root;

    explicit Json(const std::string& text) : root{parser.parse(text)} {}

    /// By JSON pointer; throws where there is nothing of that sort.
    [[nodiscard]] double number(const std::string& pointer) const {
        return double(simdjson::dom::element{root.at_pointer(pointer)});
    }
    [[nodiscard]] bool truth(const std::string& pointer) const {
        return bool(simdjson::dom::element{root.at_pointer(pointer)});
    }
    [[nodiscard]] std::string text(const std::string& pointer) const {
        return std::string{std::string_view{simdjson::dom::element{root.at_pointer(pointer)}}};
    }
};

}  // namespace treadwell::cli
