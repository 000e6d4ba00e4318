#pragma once

#include "core/intake/intake.h"

#include <span>
#include <string_view>

namespace treadwell::intake {

/// A sort of list that can be taken in.
struct FileKind {
    std::string_view name;  ///< `tickets`
    Result<Intake> (*read)(std::string_view bytes, const Context& context);
};

/// All there are, the most usual first.
[[nodiscard]] std::span<const FileKind> fileKinds() noexcept;

/// The kind called so; std::invalid_argument where there is none.
[[nodiscard]] const FileKind& fileKindCalled(std::string_view name);

/// What a file seems to be by its columns: of those that can read it, the one that leaves the fewest of them
/// unread. Tickets where none can, since what scales write is the least alike.
[[nodiscard]] const FileKind& likeliestKind(std::string_view bytes, const Context& context);

}  // namespace treadwell::intake
