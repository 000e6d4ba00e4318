#pragma once

#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace treadwell::intake {

using Reader = Result<Intake> (*)(std::string_view, const Context&);

/// What a list says; every row of it must be accounted for.
inline Intake read(Reader reader, const std::string& bytes, const Context& context = farmContext()) {
    auto intake = reader(bytes, context);
    if (!intake) throw std::runtime_error(std::string{toText(intake.error().code())});
    EXPECT_EQ(accountedFor(*intake), intake->rows);
    return *std::move(intake);
}

}  // namespace treadwell::intake
