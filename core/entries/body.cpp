#include "core/entries/body.h"

#include "core/entries/payload.h"

#include <stdexcept>

namespace treadwell::entries {

namespace {

template <class Kind>
Result<Body> decodeAs(std::string_view payload) {
    thread_local PayloadDocument document;  // a season has many payloads
    const auto object = document.read(payload);
    if (!object) return Unexpected{object.error()};
    Result<Body> body{tl::in_place, std::in_place_type<Kind>};  // filled where it lies
    PayloadReader reader{**object};
    Kind::fields(reader, std::get<Kind>(*body));
    if (const auto read = reader.result(); !read) return Unexpected{read.error()};
    return body;
}

using Decoder = Result<Body> (*)(std::string_view);

struct KnownKind {
    KindVersion kind;
    Decoder decode;
    Body (*empty)();
};

template <class... Kinds>
constexpr auto knownKinds(std::type_identity<std::variant<std::monostate, Kinds...>> /*of*/) {
    return std::array{
        KnownKind{{Kinds::kKind, Kinds::kVersion}, &decodeAs<Kinds>, [] { return Body{Kinds{}}; }}...};
}

constexpr auto kKnownKinds = knownKinds(std::type_identity<Body>{});

constexpr auto kKindNames = [] {
    std::array<std::string_view, kKnownKinds.size()> names{};
    for (std::size_t i = 0; i < names.size(); ++i) names[i] = kKnownKinds[i].kind.kind;
    return names;
}();

[[noreturn]] void refuseUnknown() {
    throw std::logic_error("an entry of an unknown kind is kept as it was read, never written anew");
}

}  // namespace

KindVersion kindOf(const Body& body) {
    if (body.index() == 0) refuseUnknown();
    return kKnownKinds[body.index() - 1].kind;
}

std::span<const std::string_view> kindNames() {
    return kKindNames;
}

std::optional<Body> emptyBody(std::string_view kind) {
    for (const KnownKind& known : kKnownKinds) {
        if (known.kind.kind == kind) return known.empty();
    }
    return std::nullopt;
}

Result<void> validate(const Body& body) {
    return std::visit(
        [](const auto& kind) -> Result<void> {
            if constexpr (std::is_same_v<std::decay_t<decltype(kind)>, std::monostate>) {
                refuseUnknown();
            } else {
                return validate(kind);
            }
        },
        body);
}

std::string encode(const Body& body) {
    return std::visit(
        [](const auto& kind) -> std::string {
            using Kind = std::decay_t<decltype(kind)>;
            if constexpr (std::is_same_v<Kind, std::monostate>) {
                refuseUnknown();
            } else {
                PayloadWriter writer;
                Kind::fields(writer, kind);
                return writer.text();
            }
        },
        body);
}

Result<Body> decode(std::string_view kind, int version, std::string_view payload) {
    for (const KnownKind& known : kKnownKinds) {
        if (known.kind.kind == kind && version <= known.kind.version) return known.decode(payload);
    }
    return Body{};
}

Result<Entry> decode(const StoredEntry& stored) {
    auto body = decode(stored.header.kind, stored.header.kindVersion, stored.payload);
    if (!body) return Unexpected{std::move(body.error())};
    return Entry{stored.header, *std::move(body)};
}

}  // namespace treadwell::entries
