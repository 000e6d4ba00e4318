// What the example's files are drawn with: lots from one engine whose numbers the standard fixes, reckoned in
// integers, and the text of times and numbers.
#pragma once

#include <algorithm>
#include <cstdint>
#include <random>
#include <string>

namespace example {

// Seconds on the farm's wall clock since midnight of the first day of filling.
using WallSeconds = std::int64_t;
constexpr WallSeconds kDay = 24 * 3600;
constexpr int kFirstDay = 15;  // of September 2026

constexpr WallSeconds at(int day, int hour, int minute) {
    return (day - 1) * kDay + hour * 3600 + minute * 60;
}

class Lot {
  public:
    explicit Lot(std::uint64_t seed) : m_engine{seed} {}

    std::int64_t between(std::int64_t lowest, std::int64_t highest) {
        const auto width = static_cast<std::uint64_t>(highest - lowest + 1);
        return lowest + static_cast<std::int64_t>(m_engine() % width);
    }

  private:
    std::mt19937_64 m_engine;
};

inline std::string padded(std::int64_t number, std::size_t width) {
    std::string text = std::to_string(number);
    return std::string(width - std::min(width, text.size()), '0') + text;
}

inline std::string clock(WallSeconds time) {
    return padded(time % kDay / 3600, 2) + ':' + padded(time % 3600 / 60, 2) + ':' + padded(time % 60, 2);
}

inline std::int64_t dayOfMonth(WallSeconds time) {
    return kFirstDay + time / kDay;
}

// The farm's summer time is two hours before UTC all through September.
inline std::string stamp(WallSeconds time) {
    return "2026-09-" + padded(dayOfMonth(time), 2) + 'T' + clock(time) + "+02:00";
}

// A number of `decimals` digits behind the sign, held as an integer.
inline std::string decimal(std::int64_t scaled, std::size_t decimals, char sign = '.') {
    const std::string digits = padded(scaled, decimals + 1);
    return digits.substr(0, digits.size() - decimals) + sign + digits.substr(digits.size() - decimals);
}

// The files of samples, of samples.cpp.
std::string sieveFile();
std::string kernelFile();
std::string chopFile();
std::string temperatureFile();
std::string fieldFile();

// Written before the harvest: the plan that is adopted, and two beside it.
std::string adoptedPlan();
std::string plainPlan();
std::string swiftPlan();

}  // namespace example
