#pragma once

#include "core/base/descriptor.h"
#include "core/base/error.h"

#include <filesystem>
#include <optional>
#include <string>
#include <variant>

namespace treadwell::journal {

/// Who writes a season file.
struct LeaseOwner {
    std::int64_t pid = 0;
    std::string host;
    Instant since;
    std::string user;

    friend bool operator==(const LeaseOwner&, const LeaseOwner&) = default;
};

/// The right to write a season file, held by one process at a time: a lock on FILE.lease, which names its
/// owner. The kernel gives it back when the owner ends, however it ends.
class Lease {
  public:
    /// The lease, or who has it. Error: fileUnwritable, where the folder cannot be written.
    [[nodiscard]] static Result<std::variant<Lease, LeaseOwner>> take(const std::filesystem::path& journal,
                                                                      Instant now);

    /// Who has it at the moment; none where it is free, or where nobody can be asked.
    [[nodiscard]] static std::optional<LeaseOwner> ownerOf(const std::filesystem::path& journal);

  private:
    explicit Lease(Descriptor file) : m_file(std::move(file)) {}

    Descriptor m_file;
};

}  // namespace treadwell::journal
