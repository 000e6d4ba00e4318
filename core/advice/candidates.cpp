#include "core/advice/candidates.h"

#include <algorithm>

namespace treadwell::advice {

namespace {

using farm::Activity;

constexpr Share kAll = Share::fromFraction(1.0);
constexpr Share kHalf = Share::fromFraction(0.5);

/// Collects changes up to the most that are compared, and counts the others.
class Collector final {
  public:
    Collector(const AdviceSituation& situation, const Comparer& comparer)
        : m_situation{situation}, m_comparer{comparer} {
        for (const std::size_t i : comparer.heaviestFirst()) {
            switch (situation.tractors[i].activity) {
                case Activity::packing:
                    m_packing.push_back(i);
                    break;
                case Activity::spreading:
                    m_spreading.push_back(i);
                    break;
                case Activity::away:
                    m_standingBy.push_back(i);
                    break;
            }
        }
        if (situation.layer && *situation.layer > situation.maximumLayer) {
            m_thinner = situation.maximumLayer;
        }
    }

    LiveChanges collect() {
        add({});
        for (const std::size_t i : m_standingBy) add({.duties = {pack(i)}});
        // Where it is no slower than now it is never chosen: it keeps what has been said of the delivery
        // alive while the pace wavers.
        if (const auto rate = m_comparer.steadyDelivery()) add({.delivery = rate});
        if (m_thinner) add({.layer = m_thinner});
        addSpreaders();
        addLightestToSpreading();
        for (const std::size_t i : m_packing) add({.duties = {{i, Activity::away, Share{}}}});
        for (std::size_t i = 0; i < m_standingBy.size(); ++i) {
            for (std::size_t j = i + 1; j < m_standingBy.size(); ++j) {
                add({.duties = {pack(m_standingBy[i]), pack(m_standingBy[j])}});
            }
        }
        addCombinations();
        return std::move(m_live);
    }

  private:
    static Duty pack(std::size_t i, Share share = kAll) { return {i, Activity::packing, share}; }
    static Duty spread(std::size_t i) { return {i, Activity::spreading, Share{}}; }

    void add(Change change) {
        if (m_live.changes.size() < kMostCandidates) {
            m_live.changes.push_back(std::move(change));
        } else {
            ++m_live.left;
        }
    }

    void addSlower(const std::vector<Duty>& duties) {
        if (const auto rate = m_comparer.slowerDelivery(duties)) add({.duties = duties, .delivery = rate});
    }

    /// A spreader packs half of its time, all of it where another still spreads, or changes places with the
    /// lightest packer or a lighter tractor that stands by.
    void addSpreaders() {
        for (const std::size_t s : m_spreading) {
            add({.duties = {pack(s, kHalf)}});
            if (m_spreading.size() > 1) add({.duties = {pack(s)}});
            if (!m_packing.empty() && lighter(m_packing.back(), s)) {
                const std::size_t p = m_packing.back();
                add({.duties = {pack(s), spread(p)}});
                add({.duties = {pack(s, kHalf), pack(p, std::min(kHalf, m_situation.tractors[p].share))}});
            }
            if (!m_standingBy.empty() && lighter(m_standingBy.back(), s)) {
                add({.duties = {pack(s), spread(m_standingBy.back())}});
            }
        }
        if (m_spreading.empty()) return;
        for (const std::size_t p : m_packing) {
            if (m_situation.tractors[p].share < kAll) add({.duties = {pack(p)}});
        }
    }

    void addLightestToSpreading() {
        if (m_packing.size() < 2) return;
        const std::size_t lightest = m_packing.back();
        add({.duties = {spread(lightest)}});
        if (m_situation.tractors[lightest].share > kHalf) add({.duties = {pack(lightest, kHalf)}});
    }

    void addCombinations() {
        for (const std::size_t i : m_standingBy) {
            if (m_thinner) add({.duties = {pack(i)}, .layer = m_thinner});
            if (!m_spreading.empty()) add({.duties = {pack(i), pack(m_spreading.front(), kHalf)}});
            addSlower({pack(i)});
        }
        if (!m_spreading.empty()) addSlower({pack(m_spreading.front(), kHalf)});
    }

    [[nodiscard]] bool lighter(std::size_t a, std::size_t b) const {
        return m_situation.tractors[a].mass < m_situation.tractors[b].mass;
    }

    const AdviceSituation& m_situation;
    const Comparer& m_comparer;
    std::vector<std::size_t> m_packing, m_spreading, m_standingBy;
    std::optional<Length> m_thinner;
    LiveChanges m_live;
};

}  // namespace

LiveChanges liveChanges(const AdviceSituation& situation, const Comparer& comparer) {
    return Collector{situation, comparer}.collect();
}

}  // namespace treadwell::advice
