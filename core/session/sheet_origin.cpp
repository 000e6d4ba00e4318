#include "core/session/sheet_origin.h"

namespace treadwell::session {

Result<review::SheetOrigin> sheetOrigin(Session& session, const season::Day& day) {
    review::SheetOrigin origin{.closedBy = {}, .head = session.head()};
    const auto closing = day.closed ? session.snapshot()->fact(day.closed->entry) : season::FactPointer{};
    if (!closing) return origin;
    const auto people = session.people().all();
    if (!people) return Unexpected{people.error()};
    const auto known = people->find(closing->stated().header.author);
    if (known != people->end()) origin.closedBy = known->second;
    return origin;
}

}  // namespace treadwell::session
