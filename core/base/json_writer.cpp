#include "core/base/json_writer.h"

#include "core/base/number_text.h"

#include <array>
#include <cstdio>

namespace treadwell {

JsonWriter::JsonWriter(int indent) : m_indent(indent) {}

void JsonWriter::newLine() {
    if (m_indent == 0) return;
    m_text += '\n';
    m_text.append(m_hasContent.size() * static_cast<std::size_t>(m_indent), ' ');
}

void JsonWriter::separate() {
    if (m_afterKey) {
        m_afterKey = false;
        return;
    }
    if (m_hasContent.empty()) return;
    if (m_hasContent.back()) m_text += ',';
    m_hasContent.back() = true;
    newLine();
}

void JsonWriter::open(char bracket) {
    separate();
    m_text += bracket;
    m_hasContent.push_back(false);
}

void JsonWriter::close(char bracket) {
    const bool hadContent = m_hasContent.back();
    m_hasContent.pop_back();
    if (hadContent) newLine();
    m_text += bracket;
}

JsonWriter& JsonWriter::beginObject() {
    open('{');
    return *this;
}

JsonWriter& JsonWriter::endObject() {
    close('}');
    return *this;
}

JsonWriter& JsonWriter::beginArray() {
    open('[');
    return *this;
}

JsonWriter& JsonWriter::endArray() {
    close(']');
    return *this;
}

JsonWriter& JsonWriter::key(std::string_view name) {
    separate();
    appendJsonString(m_text, name);
    m_text += m_indent == 0 ? ":" : ": ";
    m_afterKey = true;
    return *this;
}

JsonWriter& JsonWriter::value(std::string_view text) {
    separate();
    appendJsonString(m_text, text);
    return *this;
}

JsonWriter& JsonWriter::value(double number) {
    separate();
    m_text += shortestText(number);
    return *this;
}

JsonWriter& JsonWriter::value(std::int64_t number) {
    separate();
    m_text += std::to_string(number);
    return *this;
}

JsonWriter& JsonWriter::value(bool truth) {
    separate();
    m_text += truth ? "true" : "false";
    return *this;
}

JsonWriter& JsonWriter::json(std::string_view text) {
    separate();
    m_text += text;
    return *this;
}

JsonWriter& JsonWriter::null() {
    separate();
    m_text += "null";
    return *this;
}

void appendJsonString(std::string& out, std::string_view text) {
    out += '"';
    for (const char c : text) {
        switch (c) {
            case '"':
                out += "\\\"";
                break;
            case '\\':
                out += "\\\\";
                break;
            case '\n':
                out += "\\n";
                break;
            case '\r':
                out += "\\r";
                break;
            case '\t':
                out += "\\t";
                break;
            default:
                if (static_cast<unsigned char>(c) < 0x20) {
                    std::array<char, 8> escape{};
                    std::snprintf(escape.data(), escape.size(), "\\u%04x", static_cast<unsigned>(c));
                    out += escape.data();
                } else {
                    out += c;
                }
        }
    }
    out += '"';
}

}  // namespace treadwell
