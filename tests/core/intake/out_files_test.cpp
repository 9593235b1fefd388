#include "core/intake/out_files.h"

#include <gmock/gmock.h>
#include <sstream>

namespace stow::intake {
namespace {

using testing::ElementsAre;
using testing::Pair;

struct Packet {
    shop::Parcel parcel;
    planning::ParcelPlan plan;
    shop::HeldOrder order;

    Packet()
    {
        parcel.number = "2611-017";
        parcel.carrier = "Skua Post";
        parcel.tracking = "RR473124829DK";
        parcel.weighings = {{shop::WeighingStage::closed, tenth_g(8125), false, {}, {}}};
        plan.closed = {mm(180), mm(250), tenth_mm(905)};
        order.order.key = {"Harbour Stall", "HS-1001"};
        order.order.to = {"Ines \"Ina\" Halvard", "", {"Kaistraße 5; Hof"}, "20457", "Ostermund", "", "DE"};
    }
    OutRow row() const
    {
        return {parcel, plan, order, "Packet", "ink in glass", Money{3990, {}}, parse_date("2026-11-25")};
    }
};

TEST(OutFiles, HerColumnsInHerOrderAndMarks)
{
    const Packet packet;
    const shop::OutFile file{"Skua Post",
                             {{"Referenz", "parcel"},
                              {"Name", "name"},
                              {"Strasse", "street"},
                              {"kg", "weight kg"},
                              {"cm", "length cm"},
                              {"Wert", "value"},
                              {"Art", "text", "Ware"},
                              {"EORI", "eori number"}},
                             ';',
                             ','};
    EXPECT_EQ(write_out_file(file, {packet.row()}, {"", "DK123", ""}),
              "Referenz;Name;Strasse;kg;cm;Wert;Art;EORI\r\n"
              "2611-017;\"Ines \"\"Ina\"\" Halvard\";\"Kaistraße 5; Hof\";0,8125;25;39,90;Ware;DK123\r\n");
}

TEST(OutFiles, EveryFieldSaysSomethingOrNothingButIsKnown)
{
    const Packet packet;
    for (const std::string& field : shop::send_fields()) {
        EXPECT_NO_THROW((void)out_field({field, field}, packet.row(), {}, '.')) << field;
    }
    EXPECT_EQ(out_field({"", "handed over"}, packet.row(), {}, '.'), "2026-11-25");
    EXPECT_EQ(out_field({"", "weight g"}, packet.row(), {}, '.'), "812.5");
    EXPECT_EQ(out_field({"", "height mm"}, packet.row(), {}, '.'), "90.5");
    EXPECT_EQ(out_field({"", "vat number"}, packet.row(), {}, '.'), "");
}

const std::vector<std::string> known{"2611-017", "2611-018"};

// S10 check digits: 47312482 closes with 9 as published (UPU S10); 12345678 with 5, worked.
TEST(Tracking, FromAFileWhateverItsColumns)
{
    std::istringstream in("date;your ref;item;kg\n2026-11-25;2611-017;RR 473 124 829 DK;0,8\n"
                          "2026-11-25;2611-018;RR123456784DK;1,2\n2026-11-25;2611-044;RR123456785DK;1,2\n");
    const TakenTracking taken = read_tracking(read_csv(in, "skua.csv"), known);
    EXPECT_THAT(taken.by_parcel, ElementsAre(Pair("2611-017", "RR473124829DK")));
    ASSERT_EQ(taken.problems.size(), 2U);
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::bad_check_digit);
    EXPECT_EQ(taken.problems[0].value, "RR123456784DK");
    EXPECT_EQ(taken.problems[1].kind, ProblemKind::unknown_code);
    EXPECT_EQ(taken.problems[1].row, 4U);
}

TEST(Tracking, PastedInAnyWay)
{
    const auto pasted = [](const char* text) { return read_pasted_tracking(text, known, {"2611-017", "2611-018"}); };
    EXPECT_THAT(pasted("2611-018\tRR123456785DK\r\n2611-017 00340434161094021501").by_parcel,
                ElementsAre(Pair("2611-017", "00340434161094021501"), Pair("2611-018", "RR123456785DK")));
    EXPECT_THAT(pasted("RR473124829DK\n\nRR 123 456 785 DK\n").by_parcel,
                ElementsAre(Pair("2611-017", "RR473124829DK"), Pair("2611-018", "RR123456785DK")));
    EXPECT_EQ(pasted("nothing here").problems.size(), 1U);
    EXPECT_TRUE(pasted("").problems.empty());
}

} // namespace
} // namespace stow::intake
