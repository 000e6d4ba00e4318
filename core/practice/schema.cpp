#include "core/practice/schema.h"

#include "core/entries/member_schemas.h"
#include "core/practice/drive.h"

namespace treadwell::practice {

namespace {

template <class T>
std::string schemaOf(std::string_view format, int version, std::string_view title,
                     std::string_view description) {
    entries::MemberSchemas members;
    members.constant("format", format);
    members.constant("version", version);
    const T empty{};
    T::fields(members, empty);
    JsonWriter json{1};
    json.beginObject().member("$schema", "https://json-schema.org/draft/2020-12/schema");
    json.member("title", title).member("description", description);
    members.write(json);
    return json.endObject().take() + '\n';
}

}  // namespace

std::string lessonSchema() {
    return schemaOf<Lesson>(
        kLessonFormat, kLessonVersion, "A lesson of Treadwell",
        "What is packed on a pad, by whom and towards which goal. Numbers are SI, with the unit in the key; "
        "times count from the lesson's begin.");
}

std::string driveSchema() {
    return schemaOf<Drive>(kDriveFormat, kDriveVersion, "A drive of Treadwell",
                           "Where the first tractor of a lesson goes: points of the floor in metres from the "
                           "back wall and from the left wall, one after the other.");
}

}  // namespace treadwell::practice
