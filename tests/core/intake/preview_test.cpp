#include "core/intake/preview.h"

#include "core/formats/codes.h"
#include "core/intake/codes.h"
#include "core/intake/tickets.h"
#include "tests/core/intake/farm_context.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

using testing::ElementsAre;

std::vector<Code> openIn(const Preview& preview) {
    std::vector<Code> codes;
    for (const Error& question : preview.open) codes.push_back(question.code());
    return codes;
}

Preview previewTicketsOf(std::string_view bytes, const Context& context) {
    return previewOf(fileKindCalled("tickets"), bytes, context);
}

TEST(PreviewTickets, ShowsHowAFileIsUnderstood) {
    const Preview preview = previewTicketsOf(
        "Ticket;Time;Vehicle;Net [t];Driver\n"
        "1;2026-09-15T08:00:00Z;Amsel;8,43;N.\n"
        "2;2026-09-15T08:20:00Z;Zebra;8,1;N.\n",
        farmContext());
    EXPECT_EQ(preview.delimiter, ';');
    EXPECT_EQ(preview.decimalSign, formats::DecimalSign::comma);
    ASSERT_EQ(preview.columns.size(), 5u);
    EXPECT_EQ(preview.columns[3].header, "Net [t]");
    EXPECT_EQ(preview.columns[3].meaning, Column::net);
    EXPECT_EQ(preview.columns[3].unit, "t");
    EXPECT_EQ(preview.columns[4].meaning, std::nullopt);
    EXPECT_TRUE(preview.open.empty());
    ASSERT_TRUE(preview.intake);
    EXPECT_EQ(preview.intake->used, 1);
    EXPECT_EQ(preview.intake->quarantine.size(), 1u);
}

TEST(PreviewTickets, SaysAllThatIsOpenAtOnce) {
    const Preview preview = previewTicketsOf("Date;Weight;Tare\n04/05/2026;12.340;\xA4\n", farmContext());
    EXPECT_THAT(openIn(preview),
                ElementsAre(code::encodingAmbiguous, code::decimalAmbiguous, code::columnMissing,
                            code::columnMissing, code::massUnitMissing, code::dateOrderAmbiguous));
    EXPECT_EQ(preview.columns.size(), 3u);
    EXPECT_EQ(preview.decimalSign, std::nullopt);
    EXPECT_FALSE(preview.intake);
    EXPECT_THAT(openIn(previewTicketsOf("a;b,c\n1;2,3\n", farmContext())),
                testing::Contains(code::delimiterAmbiguous));
    EXPECT_THAT(openIn(previewTicketsOf("net_kg,netto_kg,time\n", farmContext())),
                ElementsAre(code::columnTwice));
    EXPECT_THAT(openIn(previewTicketsOf("", farmContext())), ElementsAre(code::headerMissing));
}

TEST(PreviewTickets, TheAnswersLeaveNothingOpen) {
    Context context = farmContext();
    context.map.columns = {{Column::time, "When"}, {Column::net, "Weight"}};
    context.map.decimalSign = formats::DecimalSign::comma;
    context.map.massUnit = formats::MassUnit::kg;
    context.map.dateOrder = DateOrder::dayFirst;
    context.map.encoding = formats::Encoding::latin9;
    const Preview preview = previewTicketsOf("When;Weight;Price\n04/05/2026 10:00;12.340;2 \xA4\n", context);
    EXPECT_TRUE(preview.open.empty());
    ASSERT_TRUE(preview.intake);
    EXPECT_EQ(std::get<entries::Load>(preview.intake->proposals.at(0).body).mass,
              AsFedMass::fromKilograms(12340));
}

}  // namespace
}  // namespace treadwell::intake
