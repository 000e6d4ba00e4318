#include "core/session/kept_aside.h"

#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/base/descriptor.h"
#include "core/base/hex.h"
#include "core/entries/codes.h"
#include "core/entries/payload.h"

#include <fcntl.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

namespace treadwell::session {

namespace {

using entries::StoredEntry;

/// The fields of a line, listed once for writing and reading.
template <class Entry>
struct Line {
    Entry& entry;
    std::optional<bool> untimed;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        auto& header = self.entry.header;
        visit("author", header.author);
        visit("happened_us", header.happened);
        visit("id", header.id);
        visit("kind", header.kind);
        visit("kind_version", header.kindVersion);
        visit("payload", self.entry.payload);
        visit("target", header.target);
        visit("untimed", self.untimed);
    }
};

std::string lineOf(const StoredEntry& entry, const Kept& kept) {
    entries::PayloadWriter writer;
    const Line<const StoredEntry> line{entry, isUntimed(entry, kept) ? std::optional{true} : std::nullopt};
    line.fields(writer, line);
    return writer.text() + '\n';
}

constexpr const char* kContent = "content_hex";  // raw bytes of any encoding
constexpr const char* kHash = "hash";

std::string lineOf(const entries::Evidence& evidence) {
    entries::PayloadWriter writer;
    const auto* bytes = reinterpret_cast<const std::uint8_t*>(evidence.content.data());
    writer(kContent, toHex({bytes, evidence.content.size()}));
    writer(kHash, evidence.hash);
    return writer.text() + '\n';
}

Result<void> takeEvidence(const entries::PayloadValue& line, Kept& kept) {
    entries::Evidence evidence;
    std::string content;
    entries::PayloadReader reader{line};
    reader(kContent, content);
    reader(kHash, evidence.hash);
    if (auto read = reader.result(); !read) return read;
    std::vector<std::uint8_t> bytes(content.size() / 2);
    if (!fromHex(content, bytes)) return fail(code::payloadFieldWrong, kContent);
    evidence.content.assign(bytes.begin(), bytes.end());
    kept.evidence.push_back(std::move(evidence));
    return {};
}

Result<void> takeLine(std::string_view text, Kept& kept) {
    entries::PayloadDocument document;
    const auto object = document.read(text);
    if (!object) return tl::unexpected(object.error());
    if ((*object)->find(kContent) != nullptr) return takeEvidence(**object, kept);
    StoredEntry entry;
    Line<StoredEntry> line{entry, {}};
    entries::PayloadReader reader{**object};
    line.fields(reader, line);
    if (auto read = reader.result(); !read) return read;
    if (line.untimed.value_or(false)) kept.untimed.push_back(entry.header.id);
    kept.entries.push_back(std::move(entry));
    return {};
}

std::string linesOf(const Kept& kept) {
    std::string lines;
    for (const entries::Evidence& evidence : kept.evidence) lines += lineOf(evidence);
    for (const StoredEntry& entry : kept.entries) lines += lineOf(entry, kept);
    return lines;
}

}  // namespace

bool isUntimed(const StoredEntry& entry, const Kept& kept) {
    return std::find(kept.untimed.begin(), kept.untimed.end(), entry.header.id) != kept.untimed.end();
}

Result<void> keepAside(const std::filesystem::path& file, const Kept& kept) {
    const std::string lines = linesOf(kept);
    const Descriptor out{::open(file.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600)};
    if (!out.isOpen() ||
        ::write(out.get(), lines.data(), lines.size()) != static_cast<ssize_t>(lines.size()) ||
        ::fsync(out.get()) != 0) {
        return fail(code::fileUnwritable, "file", file.string(), std::generic_category().message(errno));
    }
    return syncFolderOf(file);
}

Result<void> keepInstead(const std::filesystem::path& file, const Kept& kept) {
    return writeFileAtomically(file, linesOf(kept));
}

Result<Kept> keptIn(const std::filesystem::path& file) {
    Kept kept;
    std::error_code unknown;
    if (!std::filesystem::exists(file, unknown)) return kept;
    const auto content = readFile(file);
    if (!content) return tl::unexpected(content.error());
    std::int64_t number = 0;
    for (std::string_view rest = *content; !rest.empty();) {
        const std::string_view line = rest.substr(0, rest.find('\n'));
        rest.remove_prefix(std::min(line.size() + 1, rest.size()));
        ++number;
        if (auto taken = takeLine(line, kept); !taken) {
            taken.error().place = {file.string(), number, 0};
            return tl::unexpected(taken.error());
        }
    }
    return kept;
}

}  // namespace treadwell::session
