#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"

#include <functional>
#include <map>
#include <string>
#include <string_view>

namespace treadwell::entries {

// A whole season as one JSON document, for other programs and for restoring: what
// resources/season.schema.json describes. `format` and `version` stand first, then the entries in the order
// of arrival, each with its payload as it was hashed.

inline constexpr std::string_view kDocumentFormat = "treadwell season";
inline constexpr std::int64_t kDocumentVersion = 1;

/// What a document says beside its entries.
struct DocumentFrame {
    Hash head{};                             ///< of the journal that it was written from
    std::map<PersonId, std::string> people;  ///< names, where the document carries them

    friend bool operator==(const DocumentFrame&, const DocumentFrame&) = default;
};

/// Writes a document entry by entry.
class DocumentWriter {
  public:
    DocumentWriter();
    void add(const StoredEntry& entry);
    /// The document; the writer is used up.
    [[nodiscard]] std::string finish(const DocumentFrame& frame);

  private:
    std::string m_text;
    bool m_begun = false;
};

/// Reads a document and hands over its entries in order, stopping at the first that `take` refuses. Hashes
/// are read and not checked. Errors: documentUnreadable, documentForeign, documentNewer, payloadFieldMissing,
/// payloadFieldWrong and fieldUnknown with the field (`entries[3].hash`), and those of `take`.
[[nodiscard]] Result<DocumentFrame> readDocument(std::string_view json,
                                                 const std::function<Result<void>(StoredEntry&&)>& take);

}  // namespace treadwell::entries
