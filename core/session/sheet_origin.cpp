#include "core/session/sheet_origin.h"

namespace treadwell::session {

review::SheetOrigin originOf(const season::Season& season, const season::Day& day,
                             const std::map<entries::PersonId, std::string>& people, const Hash& head) {
    review::SheetOrigin origin{.closedBy = {}, .head = head};
    const auto closing = day.closed ? season.fact(day.closed->entry) : season::FactPointer{};
    if (!closing) return origin;
    const auto known = people.find(closing->stated().header.author);
    if (known != people.end()) origin.closedBy = known->second;
    return origin;
}

Result<review::SheetOrigin> sheetOrigin(Session& session, const season::Day& day) {
    const auto people = session.people().all();
    if (!people) return Unexpected{people.error()};
    return originOf(*session.snapshot(), day, *people, session.head());
}

}  // namespace treadwell::session
