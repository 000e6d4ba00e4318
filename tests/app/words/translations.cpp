#include "tests/app/words/translations.h"

#include "core/base/atomic_file.h"

#include <expat.h>

#include <memory>
#include <stdexcept>
#include <string_view>

namespace treadwell::words {

namespace {

struct Reader {
    Translations read;
    std::string context, source, text;
    bool finished = true;
};

void onStart(void* data, const XML_Char* name, const XML_Char** attributes) {
    auto& reader = *static_cast<Reader*>(data);
    reader.text.clear();
    if (std::string_view{name} != "translation") return;
    reader.finished = true;
    for (; *attributes != nullptr; attributes += 2) {
        if (std::string_view{attributes[0]} == "type") reader.finished = false;
    }
}

void onEnd(void* data, const XML_Char* name) {
    auto& reader = *static_cast<Reader*>(data);
    const std::string_view element{name};
    if (element == "name") reader.context = reader.text;
    if (element == "source") reader.source = reader.text;
    if (element == "translation") reader.read[reader.context][reader.source] = {reader.text, reader.finished};
    reader.text.clear();
}

void onText(void* data, const XML_Char* text, int length) {
    static_cast<Reader*>(data)->text.append(text, static_cast<std::size_t>(length));
}

}  // namespace

Translations readTranslations(const std::string& path) {
    const auto content = readFile(path);
    if (!content) throw std::runtime_error(path + " cannot be read");
    Reader reader;
    const std::unique_ptr<XML_ParserStruct, decltype(&XML_ParserFree)> parser{XML_ParserCreate(nullptr),
                                                                              &XML_ParserFree};
    XML_SetUserData(parser.get(), &reader);
    XML_SetElementHandler(parser.get(), onStart, onEnd);
    XML_SetCharacterDataHandler(parser.get(), onText);
    if (XML_Parse(parser.get(), content->data(), static_cast<int>(content->size()), 1) != XML_STATUS_OK) {
        throw std::runtime_error(path + " is no XML");
    }
    return reader.read;
}

}  // namespace treadwell::words
