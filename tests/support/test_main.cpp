#include <gtest/gtest.h>

#include <clocale>

// The locale of the environment is taken as it is: the suite must pass in any of them.
int main(int argc, char** argv) {
    std::setlocale(LC_ALL, "");
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
