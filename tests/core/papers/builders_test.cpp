// From orders, parcels and plans to what stands on paper.
#include "core/papers/payload.h"
#include "tests/core/papers/samples.h"

#include <gtest/gtest.h>

namespace stow::papers {
namespace {

shop::Cupboard cupboard()
{
    shop::Cupboard c;
    c.house.address = {"Skerrywick Ink & Paper", "", {"Netmakers' Row 4"}, "26899", "Skerrywick", "", "DE"};
    c.house.contact = "hello@skerrywick.example";
    const auto add = [&](const std::string& code, const std::string& name, const std::string& shelf) -> shop::Good& {
        shop::Good& good = c.goods[{code}];
        good.code = {code};
        good.name = name;
        good.shelf = shelf;
        return good;
    };
    add("INK", "Ink bottle, sea green", "B10");
    add("WAX", "Sealing wax", "B2");
    add("NIB", "Nib, pointed", "");
    add("SET", "Gift set Harbour", "Z9").parts = {{{"INK"}, 2}, {{"WAX"}, 1}};
    return c;
}

shop::HeldOrder order(std::int64_t id, std::vector<shop::OrderLine> lines)
{
    shop::HeldOrder held;
    held.id = {id};
    held.order.key = {"pier shop", std::to_string(1000 + id)};
    held.order.date = samples::day;
    held.order.to = {"Pál Verrin", "", {"Kaigata 1"}, "0150", "Skerhavn", "", "NO"};
    held.order.lines = std::move(lines);
    return held;
}

shop::OrderLine line(const std::string& good, int count, const std::string& personal_text = {})
{
    shop::OrderLine l;
    l.good = {good};
    l.title = "shop title of " + good;
    l.count = count;
    l.price = samples::euro(1000);
    l.personal_text = personal_text;
    return l;
}

shop::Parcel parcel(const std::string& number, const std::string& tray, std::vector<shop::Piece> pieces)
{
    shop::Parcel p;
    p.number = number;
    p.tray = tray;
    p.pieces = std::move(pieces);
    return p;
}

TEST(ShelfBefore, WalksByNumber)
{
    EXPECT_TRUE(shelf_before("B2", "B10"));
    EXPECT_FALSE(shelf_before("B10", "B2"));
    EXPECT_TRUE(shelf_before("A9", "B1"));
    EXPECT_TRUE(shelf_before("B2", ""));
    EXPECT_FALSE(shelf_before("", "B2"));
    EXPECT_TRUE(shelf_before("B2", "B2 left"));
    EXPECT_FALSE(shelf_before("B2", "B2"));
    EXPECT_NE(shelf_before("B02", "B2"), shelf_before("B2", "B02")); // one of them comes first
    EXPECT_TRUE(shelf_before("1-2-9", "1-2-10"));
}

TEST(PickSheetOf, WalksTheShelvesWithSetsTakenApart)
{
    const auto c = cupboard();
    const std::vector<shop::HeldOrder> orders{order(1, {line("SET", 1), line("NIB", 3)}), order(2, {line("INK", 1)})};
    const PickSheet sheet = pick_sheet(samples::day, 1,
                                       {parcel("2611-001", "A", {{{1}, 0, {"SET"}, 1}, {{1}, 1, {"NIB"}, 3}}),
                                        parcel("2611-002", "B", {{{2}, 0, {"INK"}, 1}})},
                                       orders, c);
    ASSERT_EQ(sheet.lines.size(), 3U);
    EXPECT_EQ(sheet.lines[0].name, "Sealing wax");           // B2
    EXPECT_EQ(sheet.lines[1].name, "Ink bottle, sea green"); // B10
    EXPECT_EQ(sheet.lines[2].name, "Nib, pointed");          // no place
    ASSERT_EQ(sheet.lines[1].into.size(), 2U);
    EXPECT_EQ(sheet.lines[1].into[0].tray, "A");
    EXPECT_EQ(sheet.lines[1].into[0].count, 2);
    EXPECT_EQ(sheet.lines[1].into[1].count, 1);
    ASSERT_EQ(sheet.trays.size(), 2U);
    EXPECT_EQ(sheet.trays[0].buyer, "Pál Verrin");
    EXPECT_EQ(sheet.trays[0].orders.size(), 1U);
}

TEST(PickSheetOf, KeepsEveryPersonalTextApart)
{
    const std::vector<shop::HeldOrder> orders{
        order(1, {line("WAX", 1, "engrave: Anna"), line("WAX", 2), line("WAX", 1, "engrave: Per")})};
    const PickSheet sheet = pick_sheet(
        samples::day, 1, {parcel("2611-001", "A", {{{1}, 0, {"WAX"}, 1}, {{1}, 1, {"WAX"}, 2}, {{1}, 2, {"WAX"}, 1}})},
        orders, cupboard());
    ASSERT_EQ(sheet.lines.size(), 3U);
    EXPECT_EQ(sheet.lines[0].personal_text, "");
    EXPECT_EQ(sheet.lines[0].into[0].count, 2);
    EXPECT_EQ(sheet.lines[1].personal_text, "engrave: Anna");
    EXPECT_EQ(sheet.lines[2].personal_text, "engrave: Per");
}

TEST(PickSheetOf, TakesASetThatHoldsItselfAsItStands)
{
    auto c = cupboard();
    c.goods[{"SET"}].parts = {{{"SET"}, 1}};
    const PickSheet sheet =
        pick_sheet(samples::day, 1, {parcel("2611-001", "A", {{{1}, 0, {"SET"}, 1}})}, {order(1, {line("SET", 1)})}, c);
    ASSERT_EQ(sheet.lines.size(), 1U);
    EXPECT_EQ(sheet.lines[0].name, "Gift set Harbour");
}

TEST(SlipOf, TellsWhatIsHereAndWhatTravelsApart)
{
    const std::vector<shop::HeldOrder> orders{order(1, {line("INK", 3), line("WAX", 1)}), order(2, {line("NIB", 1)})};
    const shop::Parcel here = parcel("2611-001", "A", {{{1}, 0, {"INK"}, 2}});
    const Slip made = slip(here, orders, cupboard(), 1, 2);
    EXPECT_EQ(made.order_numbers, (std::vector<std::string>{"1001"})); // order 2 is none of this parcel's
    ASSERT_EQ(made.lines.size(), 1U);
    EXPECT_EQ(made.lines[0].count, 2);
    EXPECT_EQ(made.lines[0].name, "shop title of INK");
    ASSERT_EQ(made.apart.size(), 2U);
    EXPECT_EQ(made.apart[0].count, 1);
    EXPECT_EQ(made.to, (std::vector<std::string>{"Pál Verrin", "Kaigata 1", "0150 SKERHAVN", "NORWAY"}));
}

TEST(SlipOf, JoinsOrdersAndAddsTheirPostage)
{
    std::vector<shop::HeldOrder> orders{order(1, {line("INK", 1)}), order(2, {line("NIB", 1)})};
    orders[0].order.postage_paid = samples::euro(495);
    orders[1].order.postage_paid = samples::euro(250);
    const Slip made =
        slip(parcel("2611-001", "A", {{{1}, 0, {"INK"}, 1}, {{2}, 0, {"NIB"}, 1}}), orders, cupboard(), 1, 1);
    EXPECT_EQ(made.order_numbers.size(), 2U);
    EXPECT_EQ(made.postage, samples::euro(745));
    EXPECT_TRUE(made.apart.empty());
}

TEST(Codes, CarryTheParcelNumberAndNothingElse)
{
    const std::vector<shop::HeldOrder> orders{order(1, {line("INK", 1)})};
    const shop::Parcel p = parcel("2611-001", "A", {{{1}, 0, {"INK"}, 1}});
    const auto c = cupboard();
    planning::ParcelPlan plan;
    plan.pieces = p.pieces;
    const shop::Address to = orders[0].order.to;
    for (const std::string& code :
         {slip(p, orders, c, 1, 1).code, bench_card(p, plan, orders, c).code, return_label(p, to, c.house).code}) {
        const auto parsed = parse_payload(code);
        ASSERT_TRUE(parsed);
        EXPECT_EQ(*parsed, (Payload{Payload::Kind::paper, "2611-001"}));
        EXPECT_EQ(code.size(), std::string("SB2:P:2611-001:X").size());
    }
    for (const int print : {1, 2, 17}) {
        const auto parsed = parse_payload(label(p, to, c.house, "", 1, 1, print).code);
        ASSERT_TRUE(parsed);
        EXPECT_EQ(*parsed, (Payload{Payload::Kind::label, "2611-001", print}));
    }
}

TEST(LabelOf, WritesTheCountryOnlyAbroad)
{
    const auto c = cupboard();
    const shop::Parcel p = parcel("2611-001", "A", {});
    const LabelData abroad = label(p, order(1, {}).order.to, c.house, "Skua Post", 1, 1);
    EXPECT_TRUE(abroad.abroad);
    EXPECT_EQ(abroad.to.back(), "NORWAY");
    EXPECT_EQ(abroad.from.back(), "GERMANY");
    shop::Address home = order(1, {}).order.to;
    home.country = "DE";
    const LabelData at_home = label(p, home, c.house, "Skua Post", 1, 1);
    EXPECT_FALSE(at_home.abroad);
    EXPECT_EQ(at_home.to.back(), "0150 Skerhavn");
    EXPECT_EQ(at_home.from.back(), "26899 Skerrywick");
}

TEST(BenchCardOf, PutsTogetherWhatGoesInTogether)
{
    auto c = cupboard();
    c.wrappings[{"DBL"}].name = "double corrugated wrap";
    c.wrappings[{"DBL"}].growth = {mm(12), mm(12), mm(8)};
    shop::Supply& outer = c.supplies[{"K3"}];
    outer.name = "Carton K3";
    outer.form = samples::bench().arrangement.form;

    planning::ParcelPlan plan;
    plan.pieces = {{{1}, 0, {"INK"}, 2}, {{1}, 1, {"WAX"}, 1}};
    plan.outer = {"K3"};
    planning::PackedItem ink;
    ink.id = "ink";
    ink.name = "Ink bottle, sea green";
    ink.good = {"INK"};
    ink.wrapping = {"DBL"};
    ink.count = 2;
    planning::PackedItem wax = ink, card = ink;
    wax.id = "wax";
    wax.name = "Sealing wax";
    wax.good = {"WAX"};
    wax.wrapping = {};
    card.id = "card";
    card.name = "Thank-you card";
    card.good = {};
    card.kind = planning::PackedItem::Kind::slip;
    card.count = 1;
    card.under_cushion = true;
    plan.items = {ink, wax, card};
    plan.placements = {samples::put("wax", 1, {{}, {}, mm(60)}, {mm(60), mm(60), mm(20)}),
                       samples::put("ink", 1, {}, {mm(60), mm(60), mm(60)}),
                       samples::put("ink", 2, {mm(60), {}, {}}, {mm(60), mm(60), mm(60)})};
    plan.weight = {grams(15100), grams(100)};
    plan.holds = {"glass"};

    const BenchCard made = bench_card(parcel("2611-001", "A", plan.pieces), plan,
                                      {order(1, {line("INK", 2), line("WAX", 1, "engrave: Anna")})}, c);
    ASSERT_EQ(made.steps.size(), 3U);
    EXPECT_TRUE(made.steps[0].under_cushion);
    EXPECT_TRUE(made.steps[0].numbers.empty());
    EXPECT_EQ(made.steps[0].own_paper, Word::insert_slip);
    EXPECT_FALSE(made.steps[1].own_paper);
    EXPECT_EQ(made.steps[1].count, 2);
    EXPECT_EQ(made.steps[1].numbers, (std::vector<int>{1, 2}));
    EXPECT_EQ(made.steps[1].wrapping, "double corrugated wrap");
    EXPECT_EQ(made.steps[2].numbers, (std::vector<int>{3}));
    EXPECT_EQ(made.steps[2].personal_text, "engrave: Anna");
    EXPECT_EQ(made.outer_name, "Carton K3");
    EXPECT_TRUE(made.heavy); // from 15 kg on, as the house has it
    EXPECT_TRUE(made.glass);
    EXPECT_FALSE(made.flammable);
    EXPECT_TRUE(made.service.empty());
    EXPECT_EQ(made.arrangement.looks[1].wrap, mm(4));
}

TEST(HandOverListOf, TakesTheLastWeighing)
{
    shop::Parcel p = parcel("2611-001", "A", {{{1}, 0, {"INK"}, 1}});
    p.tracking = "SK 1";
    p.weighings = {{shop::WeighingStage::contents, grams(300), false, {}},
                   {shop::WeighingStage::labelled, grams(420), false, {}}};
    const HandOverList list = hand_over_list("Skua Post", "2611-25-1", samples::day, std::nullopt, {p},
                                             {order(1, {line("INK", 1)})}, cupboard().house);
    ASSERT_EQ(list.lines.size(), 1U);
    EXPECT_EQ(list.lines[0].weight, grams(420));
    EXPECT_EQ(list.lines[0].place, "0150 Skerhavn · NO");
    EXPECT_EQ(list.lines[0].name, "Pál Verrin");
}

TEST(CustomsDataOf, SharesASetsPriceByWeightWithNothingLost)
{
    auto c = cupboard();
    c.goods[{"INK"}].weight.mean = grams(200);
    c.goods[{"INK"}].customs_words = "writing ink";
    c.goods[{"INK"}].hs_code = "321590";
    c.goods[{"INK"}].origin = "DE";
    c.goods[{"WAX"}].weight.mean = grams(33);
    std::vector<shop::HeldOrder> orders{order(1, {line("SET", 1)})};
    const CustomsData data =
        customs_data(parcel("2611-001", "A", {{{1}, 0, {"SET"}, 1}}), orders, c, grams(600), samples::day);
    ASSERT_EQ(data.lines.size(), 2U);
    EXPECT_EQ(data.lines[0].count, 2);
    EXPECT_EQ(data.lines[0].weight, grams(400));
    EXPECT_EQ(data.lines[0].description, "writing ink");
    EXPECT_EQ(*data.lines[0].value + *data.lines[1].value, samples::euro(1000));
    EXPECT_EQ(data.lines[0].value, samples::euro(924)); // 400 of 433 g: 923.8
    EXPECT_TRUE(data.lines[1].description.empty());     // shown as missing, not guessed from the shop's title
    EXPECT_EQ(data.to.back(), "NORWAY");
    EXPECT_EQ(data.from.back(), "GERMANY");

    const std::vector<CustomsFault> lacking = faults(data); // of the wax, all but its weight and value
    ASSERT_EQ(lacking.size(), 3U);
    EXPECT_EQ(lacking[0].lack, CustomsLack::description);
    EXPECT_EQ(lacking[1].lack, CustomsLack::tariff_number);
    EXPECT_EQ(lacking[2].lack, CustomsLack::origin);
    CustomsData heavy = data;
    heavy.gross = grams(432);
    EXPECT_EQ(faults(heavy).back().lack, CustomsLack::heavier_than_parcel);

    c.goods[{"SET"}].customs_words = "writing set";
    const CustomsData whole =
        customs_data(parcel("2611-001", "A", {{{1}, 0, {"SET"}, 1}}), orders, c, grams(600), samples::day);
    ASSERT_EQ(whole.lines.size(), 1U);
    EXPECT_EQ(whole.lines[0].value, samples::euro(1000));
    EXPECT_EQ(whole.lines[0].weight, grams(433)); // a set has no weight of its own
}

} // namespace
} // namespace stow::papers
