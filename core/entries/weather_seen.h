#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/quantity/geometry.h"
#include "core/quantity/range.h"
#include "core/quantity/weather.h"

#include <array>
#include <optional>
#include <string_view>

namespace treadwell::entries {

enum class Sky : std::uint8_t { fair, overcast, showers, rain, fog };

constexpr std::array<std::string_view, 5> enumTexts(Sky /*sky*/) noexcept {
    return {"fair", "overcast", "showers", "rain", "fog"};
}

/// The weather at the silo, as it was seen.
struct WeatherSeen {
    static constexpr std::string_view kKind = "weather_seen";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    Sky sky = Sky::fair;
    std::optional<Length> rain;  ///< fallen since the last reading of the gauge
    std::optional<Temperature> temperature;
    std::optional<Speed> wind;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("rain_m", self.rain);
        visit("sky", self.sky);
        visit("temperature_k", self.temperature);
        visit("wind_m_per_s", self.wind);
    }
    friend bool operator==(const WeatherSeen&, const WeatherSeen&) = default;
};

/// Rain 0-50 cm, -40 to 55 degrees Celsius, wind 0-150 km/h.
[[nodiscard]] inline Result<void> validate(const WeatherSeen& entry) {
    return firstFailure(
        holdsWithin(entry.rain.value_or(Length{}), Length{}, Length::fromCentimetres(50), "rain"),
        holdsWithin(entry.temperature.value_or(Temperature{}), Temperature::fromCelsius(-40),
                    Temperature::fromCelsius(55), "temperature"),
        holdsWithin(entry.wind.value_or(Speed{}), Speed{}, Speed::fromKilometresPerHour(150), "wind"));
}

}  // namespace treadwell::entries
