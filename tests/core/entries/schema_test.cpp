#include "core/entries/schema.h"

#include "core/base/atomic_file.h"

#include <gtest/gtest.h>

namespace treadwell::entries {
namespace {

TEST(DocumentSchema, IsTheOneThatIsPublished) {
    const auto published = readFile(TREADWELL_SOURCE "/resources/season.schema.json");
    ASSERT_TRUE(published);
    EXPECT_TRUE(*published == documentSchema())
        << "write it anew: build/bin/treadwell-cli schema > resources/season.schema.json";
}

}  // namespace
}  // namespace treadwell::entries
