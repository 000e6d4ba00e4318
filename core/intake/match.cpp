#include "core/intake/match.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace treadwell::intake {

namespace {

/// Pairs, and the time between them in all.
struct Score {
    std::int64_t pairs = 0;
    double apart = 0;

    [[nodiscard]] bool beats(const Score& other) const {
        return pairs != other.pairs ? pairs > other.pairs : apart < other.apart;
    }
};

/// The time in seconds that lies between them beyond any doubt; none where they cannot be one load.
std::optional<double> timeApart(const TicketLoad& ticket, const TappedLoad& tap, AsFedMass scaleInterval) {
    const bool bothWeighed = tap.load.source == entries::MassSource::weighed;
    const double difference = std::abs((ticket.load.mass - tap.load.mass).si());
    if (bothWeighed && difference > 2 * scaleInterval.si()) return std::nullopt;
    const double doubt = tap.load.timeSpread.value_or(Seconds{0}).count();
    const double apart = std::abs(Seconds{ticket.at - tap.at}.count()) - doubt;
    if (apart > Seconds{kScaleToSilo}.count()) return std::nullopt;
    return std::max(apart, 0.0);
}

class Matcher {
  public:
    Matcher(std::span<const TicketLoad> tickets, std::span<const TappedLoad> tapped, AsFedMass scaleInterval)
        : m_tickets(tickets), m_tapped(tapped), m_scaleInterval(scaleInterval), m_found(tickets.size()) {}

    std::vector<std::optional<std::size_t>> match() {
        using Lane = std::pair<farm::SiloId, std::optional<farm::TruckId>>;
        std::map<Lane, Group> ofTrucks;
        for (const std::size_t i : inOrder(m_tickets))
            ofTrucks[{m_tickets[i].load.silo, m_tickets[i].load.truck}].tickets.push_back(i);
        for (const std::size_t i : inOrder(m_tapped))
            ofTrucks[{m_tapped[i].load.silo, m_tapped[i].load.truck}].tapped.push_back(i);
        std::map<farm::SiloId, Group> named;    // tickets with a truck, taps without
        std::map<farm::SiloId, Group> unnamed;  // tickets without one, taps of any
        for (const auto& [lane, group] : ofTrucks) {
            if (lane.second) align(group);
        }
        for (const std::size_t i : inOrder(m_tickets)) {
            if (m_found[i]) continue;
            auto& groups = m_tickets[i].load.truck ? named : unnamed;
            groups[m_tickets[i].load.silo].tickets.push_back(i);
        }
        for (const std::size_t i : inOrder(m_tapped)) {
            if (!m_tapped[i].load.truck) named[m_tapped[i].load.silo].tapped.push_back(i);
            unnamed[m_tapped[i].load.silo].tapped.push_back(i);
        }
        for (const auto& [silo, group] : named) align(group);
        for (const auto& [silo, group] : unnamed) align(group);
        return m_found;
    }

  private:
    struct Group {
        std::vector<std::size_t> tickets;
        std::vector<std::size_t> tapped;
    };

    template <class Loads>
    static std::vector<std::size_t> inOrder(const Loads& loads) {
        std::vector<std::size_t> order(loads.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return loads[a].at < loads[b].at; });
        return order;
    }

    /// The best pairs of two rows in time, neither crossing the other: the table holds the best of the rows'
    /// ends from each place on.
    void align(Group group) {
        std::erase_if(group.tapped, [&](std::size_t tap) {
            return std::find(m_found.begin(), m_found.end(), std::optional{tap}) != m_found.end();
        });
        const std::size_t rows = group.tickets.size();
        const std::size_t columns = group.tapped.size();
        if (rows == 0 || columns == 0) return;
        std::vector<Score> best((rows + 1) * (columns + 1));
        const auto at = [&](std::size_t i, std::size_t j) -> Score& { return best[i * (columns + 1) + j]; };
        const auto paired = [&](std::size_t i, std::size_t j) -> std::optional<Score> {
            const auto apart =
                timeApart(m_tickets[group.tickets[i]], m_tapped[group.tapped[j]], m_scaleInterval);
            if (!apart) return std::nullopt;
            return Score{at(i + 1, j + 1).pairs + 1, at(i + 1, j + 1).apart + *apart};
        };
        for (std::size_t i = rows; i-- > 0;) {
            for (std::size_t j = columns; j-- > 0;) {
                Score& score = at(i, j);
                score = at(i + 1, j).beats(at(i, j + 1)) ? at(i + 1, j) : at(i, j + 1);
                if (const auto pair = paired(i, j); pair && pair->beats(score)) score = *pair;
            }
        }
        for (std::size_t i = 0, j = 0; i < rows && j < columns;) {
            const auto pair = paired(i, j);
            const bool isPair = pair && !at(i + 1, j).beats(*pair) && !at(i, j + 1).beats(*pair);
            if (isPair)
                m_found[group.tickets[i++]] = group.tapped[j++];
            else if (at(i + 1, j).beats(at(i, j + 1)))
                ++i;
            else
                ++j;
        }
    }

    std::span<const TicketLoad> m_tickets;
    std::span<const TappedLoad> m_tapped;
    AsFedMass m_scaleInterval;
    std::vector<std::optional<std::size_t>> m_found;
};

}  // namespace

std::vector<std::optional<std::size_t>> matchLoads(std::span<const TicketLoad> tickets,
                                                   std::span<const TappedLoad> tapped,
                                                   AsFedMass scaleInterval) {
    return Matcher{tickets, tapped, scaleInterval}.match();
}

}  // namespace treadwell::intake
