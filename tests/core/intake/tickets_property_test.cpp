#include "core/base/number_text.h"
#include "core/intake/tickets.h"
#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace treadwell::intake {
namespace {

/// Tickets of one day: kilograms net and the second of the day, each second once.
struct Weighed {
    int second;
    int kilograms;
};

std::vector<Weighed> someTickets() {
    std::vector<Weighed> tickets;
    int second = 0;
    for (int i = *rc::gen::inRange(1, 15); i > 0; --i) {
        second += *rc::gen::inRange(1, 4000);
        tickets.push_back({second, *rc::gen::inRange(1000, 40000)});
    }
    return tickets;
}

std::string twoDigits(int number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

std::string clockOf(int second) {
    return twoDigits(second / 3600) + ':' + twoDigits(second / 60 % 60) + ':' + twoDigits(second % 60);
}

/// The same tickets as this or that scale writes them, with one decimal more than can be in doubt.
std::string fileOf(const std::vector<Weighed>& tickets) {
    const char delimiter = *rc::gen::elementOf(std::string{";\t|"});
    const bool comma = *rc::gen::arbitrary<bool>();
    const bool tonnes = *rc::gen::arbitrary<bool>();
    const bool german = *rc::gen::arbitrary<bool>();
    const std::string lineEnd = *rc::gen::element<std::string>("\r\n", "\n");
    std::vector<std::size_t> order{0, 1, 2, 3};
    std::rotate(order.begin(), order.begin() + *rc::gen::inRange(0, 4), order.end());
    const auto write = [&](const std::array<std::string, 4>& cells) {
        std::string row;
        for (const std::size_t i : order) row += (row.empty() ? "" : std::string{delimiter}) + cells[i];
        return row + lineEnd;
    };
    const std::string unit = tonnes ? " [t]" : " [kg]";
    std::string file = *rc::gen::arbitrary<bool>() ? "\xEF\xBB\xBF" : "";
    file += german ? write({"Beleg-Nr.", "Datum", "Uhrzeit", "Netto" + unit})
                   : write({"Ticket", "Date", "Time", "Net" + unit});
    for (std::size_t i = 0; i < tickets.size(); ++i) {
        std::string net = fixedText(tickets[i].kilograms / (tonnes ? 1000.0 : 1.0), tonnes ? 4 : 1);
        if (comma) std::replace(net.begin(), net.end(), '.', ',');
        file += write({"N" + std::to_string(i + 1), german ? "15.09.2026" : "2026-09-15",
                       clockOf(tickets[i].second), net});
    }
    return file;
}

RC_GTEST_PROP(ReadTicketsProperty, TheSameLoadsComeOfEveryDialect, ()) {
    const std::vector<Weighed> tickets = someTickets();
    Context context = farmContext();
    const auto intake = readTickets(fileOf(tickets), context);
    RC_ASSERT(intake.has_value());
    RC_ASSERT(intake->quarantine.empty());
    RC_ASSERT(intake->proposals.size() == tickets.size());
    const Instant midnight = utc("2026-09-14T22:00:00Z");
    for (std::size_t i = 0; i < tickets.size(); ++i) {
        const auto& load = std::get<entries::Load>(intake->proposals[i].body);
        RC_ASSERT(std::abs(load.mass.kilograms() - tickets[i].kilograms) < 1e-6);
        RC_ASSERT(intake->proposals[i].happened == midnight + std::chrono::seconds{tickets[i].second});
    }
}

RC_GTEST_PROP(ReadTicketsProperty, NothingIsAddedTwiceAndNothingIsLost, (const std::string& noise)) {
    const std::vector<Weighed> tickets = someTickets();
    std::string file = fileOf(tickets);
    file.insert(*rc::gen::inRange<std::size_t>(0, file.size() + 1), noise);
    Context context = farmContext();
    const auto first = readTickets(file, context);
    if (!first) return;
    RC_ASSERT(accountedFor(*first) == first->rows);
    record(context, *first);
    const auto again = readTickets(file, context);
    RC_ASSERT(again.has_value());
    RC_ASSERT(again->used == 0);
    RC_ASSERT(accountedFor(*again) == again->rows);
}

}  // namespace
}  // namespace treadwell::intake
