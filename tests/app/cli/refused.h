#pragma once

#include "tests/app/cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::cli {

/// What the program must not do, and how it says so: in one line, with nothing answered.
struct Refused {
    std::vector<std::string> arguments;
    int status;
    std::string says;
};

inline void expectRefused(const std::vector<Refused>& cases) {
    for (const Refused& wrong : cases) {
        const Answered answered = runProgram(wrong.arguments);
        EXPECT_EQ(answered.status, wrong.status) << answered.err << wrong.says;
        EXPECT_THAT(answered.err, testing::HasSubstr(wrong.says));
        EXPECT_EQ(answered.err.find('\n'), answered.err.size() - 1) << answered.err;
        EXPECT_EQ(answered.out, "");
    }
}

}  // namespace treadwell::cli
