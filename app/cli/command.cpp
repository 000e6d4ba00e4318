#include "app/cli/command.h"

#include <ostream>

namespace treadwell::cli {

namespace {

constexpr std::size_t kNameColumn = 12;

}  // namespace

tl::unexpected<Failure> misused(const Error& error, std::string_view option, const words::Style& style) {
    return tl::unexpected{
        Failure{Status::misused, std::string{option} + ": " + words::inWords(error.message, style)}};
}

tl::unexpected<Failure> misusedLine(std::string line) {
    return tl::unexpected{Failure{Status::misused, std::move(line)}};
}

tl::unexpected<Failure> failed(const Error& error, const words::Style& style) {
    return tl::unexpected{Failure{Status::failed, words::inWords(error, style)}};
}

void writeMessage(JsonWriter& json, const Message& message, const words::Style& style) {
    json.beginObject()
        .member("code", toText(message.code))
        .member("text", words::inWords(message, style))
        .endObject();
}

void writeAmount(JsonWriter& json, const std::string& name, Amount amount) {
    const Unit& unit = unitOf(amount.dimension, UnitSystem::metric);
    json.member(name + '_' + std::string{unit.key}, unit.fromSi(amount.si));
}

void writeMessages(JsonWriter& json, std::string_view name, const std::vector<Message>& messages,
                   const words::Style& style) {
    json.key(name).beginArray();
    for (const Message& message : messages) writeMessage(json, message, style);
    json.endArray();
}

void printLine(std::ostream& out, std::string_view name, std::string_view text) {
    const std::size_t blanks = name.size() < kNameColumn ? kNameColumn - name.size() : 1;
    out << name << std::string(blanks, ' ') << text << '\n';
}

}  // namespace treadwell::cli
