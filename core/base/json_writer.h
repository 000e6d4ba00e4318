#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell {

/// Writes JSON text. Members stand in the order given; numbers are the shortest that read back the same.
/// Values that are not finite are a broken invariant (std::invalid_argument). Commas are the writer's
/// business.
class JsonWriter {
  public:
    /// `indent` 0 writes one line without blanks.
    explicit JsonWriter(int indent = 0);

    JsonWriter& beginObject();
    JsonWriter& endObject();
    JsonWriter& beginArray();
    JsonWriter& endArray();
    JsonWriter& key(std::string_view name);

    JsonWriter& value(std::string_view text);
    JsonWriter& value(const char* text) { return value(std::string_view{text}); }
    JsonWriter& value(double number);
    JsonWriter& value(std::int64_t number);
    JsonWriter& value(int number) { return value(static_cast<std::int64_t>(number)); }
    JsonWriter& value(bool truth);
    JsonWriter& null();
    /// A value that is JSON already, as it stands.
    JsonWriter& json(std::string_view text);

    template <class T>
    JsonWriter& member(std::string_view name, const T& content) {
        return key(name).value(content);
    }

    [[nodiscard]] const std::string& text() const noexcept { return m_text; }
    [[nodiscard]] std::string take() { return std::move(m_text); }

  private:
    void separate();
    void open(char bracket);
    void close(char bracket);
    void newLine();

    std::string m_text;
    std::vector<bool> m_hasContent;
    int m_indent;
    bool m_afterKey = false;
};

/// Appends `text` as a JSON string, quoted and escaped.
void appendJsonString(std::string& out, std::string_view text);

}  // namespace treadwell
