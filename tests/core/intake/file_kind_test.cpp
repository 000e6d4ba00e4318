#include "core/intake/file_kind.h"

#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

std::string_view likeliest(std::string_view bytes) {
    return likeliestKind(bytes, farmContext()).name;
}

TEST(FileKinds, AreToldByTheirColumns) {
    EXPECT_EQ(likeliest("time,truck,net kg\n2026-09-15T08:00:00Z,Amsel,8430\n"), "tickets");
    EXPECT_EQ(likeliest("date,low C,high C\n2026-07-01,12.5,26\n"), "temperatures");
    EXPECT_EQ(likeliest("time,along m,across m,height m\n2026-09-15T18:00:00Z,4,2,1.4\n"), "heights");
    EXPECT_EQ(likeliest("time,wet g,dry g,method\n2026-09-15T08:00:00Z,100,36,oven\n"), "samples");
    EXPECT_EQ(likeliest("time,thickness cm,method\n2026-09-15T08:00:00Z,15,staff\n"), "layers");
    EXPECT_EQ(likeliest("When,What\nnow,much\n"), "tickets") << "to be asked about";
}

TEST(FileKinds, AreCalledByTheirNames) {
    for (const FileKind& kind : fileKinds()) EXPECT_EQ(&fileKindCalled(kind.name), &kind);
    EXPECT_THROW((void)fileKindCalled("rumours"), std::invalid_argument);
}

}  // namespace
}  // namespace treadwell::intake
