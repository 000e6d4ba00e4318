#include "core/session/kept_aside.h"

#include "core/base/atomic_file.h"
#include "core/base/descriptor.h"
#include "core/entries/payload.h"

#include <fcntl.h>

#include <cerrno>
#include <system_error>

namespace treadwell::session {

namespace {

using entries::StoredEntry;

/// The fields of a line, listed once for writing and reading.
template <class Entry>
struct Line {
    Entry& entry;

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
    }
};

std::string lineOf(const StoredEntry& entry) {
    entries::PayloadWriter writer;
    const Line<const StoredEntry> line{entry};
    line.fields(writer, line);
    return writer.text() + '\n';
}

Result<StoredEntry> entryOf(std::string_view text) {
    entries::PayloadDocument document;
    const auto object = document.read(text);
    if (!object) return tl::unexpected(object.error());
    StoredEntry entry;
    Line<StoredEntry> line{entry};
    entries::PayloadReader reader{**object};
    line.fields(reader, line);
    if (const auto read = reader.result(); !read) return tl::unexpected(read.error());
    return entry;
}

}  // namespace

Result<void> keepAside(const std::filesystem::path& file, std::span<const StoredEntry> entries) {
    std::string lines;
    for (const StoredEntry& entry : entries) lines += lineOf(entry);
    const Descriptor kept{::open(file.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600)};
    if (!kept.isOpen() ||
        ::write(kept.get(), lines.data(), lines.size()) != static_cast<ssize_t>(lines.size()) ||
        ::fsync(kept.get()) != 0) {
        return fail(Code::fileUnwritable, "file", file.string(), std::generic_category().message(errno));
    }
    return syncFolderOf(file);
}

Result<std::vector<StoredEntry>> keptIn(const std::filesystem::path& file) {
    std::vector<StoredEntry> entries;
    std::error_code unknown;
    if (!std::filesystem::exists(file, unknown)) return entries;
    const auto content = readFile(file);
    if (!content) return tl::unexpected(content.error());
    std::int64_t number = 0;
    for (std::string_view rest = *content; !rest.empty();) {
        const std::string_view line = rest.substr(0, rest.find('\n'));
        rest.remove_prefix(std::min(line.size() + 1, rest.size()));
        ++number;
        auto entry = entryOf(line);
        if (!entry) {
            entry.error().place = {file.string(), number, 0};
            return tl::unexpected(entry.error());
        }
        entries.push_back(std::move(*entry));
    }
    return entries;
}

}  // namespace treadwell::session
