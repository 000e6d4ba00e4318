#pragma once

#include "app/desktop/fill/say.h"
#include "core/intake/preview.h"

namespace treadwell::intake_page {

[[nodiscard]] QString kindName(const intake::FileKind& kind);
/// Where a column stands among intake::kTicketColumns; none where no ticket has it.
[[nodiscard]] std::optional<std::size_t> ticketPlace(intake::Column column);
/// Of a ticket's column; std::bad_optional_access for another.
[[nodiscard]] QString columnName(intake::Column column);

/// A file adds something, or sets rows aside that were not before.
[[nodiscard]] bool hasNews(const intake::Intake& intake);

/// What is asked, or all that comes of the file: how many rows do what, those that cannot be used with the
/// reason and as they stand, and what a ticket changes of a load that was tapped in.
[[nodiscard]] QString previewText(const intake::Preview& preview, const fill::Speech& speech);

}  // namespace treadwell::intake_page
