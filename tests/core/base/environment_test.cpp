// The suite runs once more in other locales and time zones; these say whether the one asked for is in force,
// since a locale that is not installed falls back to C in silence and everything would pass for nothing.
#include <gtest/gtest.h>

#include <clocale>
#include <cstdlib>
#include <ctime>
#include <map>
#include <string>

namespace {

std::string asked(const char* variable) {
    const char* value = std::getenv(variable);
    return value ? value : "";
}

TEST(Environment, LocaleAskedForIsInForce) {
    const std::string locale = asked("LC_ALL");
    if (!locale.empty()) {
        EXPECT_EQ(std::setlocale(LC_ALL, nullptr), locale);
    }
    if (locale.starts_with("de_DE")) {
        EXPECT_STREQ(std::localeconv()->decimal_point, ",");
    }
}

TEST(Environment, ZoneAskedForIsInForce) {
    // Noon UTC on 1 July 2024, in the zones that CI asks for and in UTC, where none is asked for.
    const std::map<std::string, long> offsets{{"America/Sao_Paulo", -3 * 3600},
                                              {"Pacific/Auckland", 12 * 3600}};
    const std::time_t noon = 1719835200;
    std::tm local{};
    ASSERT_NE(localtime_r(&noon, &local), nullptr);
    const auto expected = offsets.find(asked("TZ"));
    if (expected != offsets.end()) {
        EXPECT_EQ(local.tm_gmtoff, expected->second);
    }
    EXPECT_EQ(std::mktime(&local), noon);
}

}  // namespace
