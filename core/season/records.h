#pragma once

#include "core/entries/body.h"

#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

namespace treadwell::season {

/// A fact and when it happened, as last corrected.
template <class Kind>
struct Dated {
    entries::EntryId entry;
    Instant at;
    Kind what;

    friend bool operator==(const Dated&, const Dated&) = default;
};

/// A kind of entry that changes nothing else in a season: its day keeps it as it stands.
template <class Kind>
concept RecordKind = requires {
    requires Kind::kRecord;
};

template <class Kind>
using RecordList = std::conditional_t<RecordKind<Kind>, std::tuple<std::vector<Dated<Kind>>>, std::tuple<>>;

template <class Body>
struct RecordLists;
template <class... Kinds>
struct RecordLists<std::variant<Kinds...>> {
    using Type = decltype(std::tuple_cat(std::declval<RecordList<Kinds>>()...));
};

/// What a day keeps as it stands, kind by kind, each in order. A new kind of record needs no line here.
class Records {
  public:
    template <RecordKind Kind>
    [[nodiscard]] const std::vector<Dated<Kind>>& of() const noexcept {
        return std::get<std::vector<Dated<Kind>>>(m_lists);
    }
    template <RecordKind Kind>
    void add(Dated<Kind> record) {
        std::get<std::vector<Dated<Kind>>>(m_lists).push_back(std::move(record));
    }

    friend bool operator==(const Records&, const Records&) = default;

  private:
    RecordLists<entries::Body>::Type m_lists;
};

}  // namespace treadwell::season
