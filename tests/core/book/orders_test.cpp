// Orders: taken in twice, changed, called off, edited by hand, joined, found.
#include "small_shop.h"

using namespace stow;
using namespace stow::book;

TEST(TakeInOrders, TheSameFileTwiceChangesNothing)
{
    SmallShop shop;
    const std::vector<shop::Order> file{SmallShop::order("1001"), SmallShop::order("1002", 1, "")};
    const OrdersTaken first = take_in_orders(shop.book, file, "market.csv");
    EXPECT_EQ(first.fresh, 2);
    ASSERT_TRUE(first.step);
    const std::size_t count = steps(shop.book).size();

    const OrdersTaken again = take_in_orders(shop.book, file, "market.csv");
    EXPECT_EQ(again.fresh + again.changed + again.called_off, 0);
    EXPECT_EQ(again.unchanged, 2);
    EXPECT_FALSE(again.step);
    EXPECT_EQ(steps(shop.book).size(), count);
    EXPECT_EQ(orders(shop.book).size(), 2u);
    EXPECT_EQ(orders(shop.book).at(0).version, 1);
}

TEST(TakeInOrders, GivesBackWhatTheFileSaid)
{
    SmallShop shop;
    shop::Order whole = SmallShop::order("1001");
    whole.promised = *parse_date("2026-11-30");
    whole.paid = false;
    whole.to.company = "Strandvik & Søn";
    whole.to.street = {"Tangvej 4", "2. sal"};
    whole.to.region = "Syddanmark";
    whole.note = "Ring the bell\ntwice";
    whole.gift = shop::Gift{"Jo", "For your letters"};
    whole.service_wanted = "tracked";
    whole.postage_paid = Money{690, *Currency::from("DKK")};
    whole.lines.push_back({"Nib", "fine", "N-1", {}, 3, std::nullopt, "engrave: Ida"});
    take_in_orders(shop.book, {whole}, "market.csv");
    EXPECT_EQ(orders(shop.book).at(0).order, whole);
    EXPECT_EQ(order_by_key(shop.book, whole.key)->order, whole);
    EXPECT_FALSE(order_by_key(shop.book, {"Another shop", "1001"})) << "the shop belongs to the identity";
}

TEST(TakeInOrders, AChangedOrderKeepsItsParcelsAndStopsThem)
{
    SmallShop shop;
    const shop::ParcelId parcel_id = shop.planned("1001");
    const shop::Parcel before = parcel(shop.book, parcel_id)->parcel;
    EXPECT_FALSE(parcel_standing(shop.book, before).stops());

    shop::Order changed = SmallShop::order("1001");
    changed.to.postcode = "6705";
    const OrdersTaken taken = take_in_orders(shop.book, {changed}, "market.csv");
    EXPECT_EQ(taken.changed, 1);
    const auto held = order_by_key(shop.book, changed.key);
    EXPECT_EQ(held->version, 2);
    EXPECT_TRUE(held->changed);
    EXPECT_EQ(held->state, shop::OrderState::arrived) << "it has to be checked again";
    EXPECT_EQ(held->order.to.postcode, "6705");

    const auto kept = parcel(shop.book, parcel_id);
    ASSERT_TRUE(kept);
    EXPECT_EQ(parcel_standing(shop.book, kept->parcel).changed, std::vector{held->id});
    const Done stopped = mark_picked(shop.book, parcel_id);
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().why, Why::parcel_stops);
    EXPECT_EQ(stopped.error().what, "1001");

    ASSERT_TRUE(accept_changes(shop.book, parcel_id));
    EXPECT_TRUE(mark_picked(shop.book, parcel_id));
}

TEST(TakeInOrders, AnOrderCalledOffStopsItsParcel)
{
    SmallShop shop;
    const shop::ParcelId parcel_id = shop.planned("1001");
    shop::Order off = SmallShop::order("1001");
    off.called_off = true;
    const OrdersTaken taken = take_in_orders(shop.book, {off}, "market.csv");
    EXPECT_EQ(taken.called_off, 1);
    EXPECT_EQ(taken.changed, 0);
    EXPECT_EQ(order_by_key(shop.book, off.key)->state, shop::OrderState::called_off);
    EXPECT_TRUE(parcel_standing(shop.book, parcel(shop.book, parcel_id)->parcel).stops());
    EXPECT_FALSE(mark_packed(shop.book, parcel_id));
    EXPECT_EQ(take_in_orders(shop.book, {off}, "market.csv").unchanged, 1);

    EXPECT_EQ(take_in_orders(shop.book, {SmallShop::order("1001")}, "market.csv").changed, 1) << "and on again";
    EXPECT_EQ(order_by_key(shop.book, off.key)->state, shop::OrderState::arrived);
}

TEST(TakeInOrders, KeepsWhatSheEditedByHand)
{
    SmallShop shop;
    const shop::OrderId id = take_in_orders(shop.book, {SmallShop::order("1001")}, "market.csv").touched.at(0);
    shop::Order mended = order(shop.book, id)->order;
    mended.to.postcode = "6760";
    ASSERT_TRUE(edit_order(shop.book, id, mended));
    EXPECT_EQ(order(shop.book, id)->version, 2) << "another address stops its parcels";

    EXPECT_EQ(take_in_orders(shop.book, {SmallShop::order("1001")}, "market.csv").unchanged, 1);
    EXPECT_EQ(order(shop.book, id)->order.to.postcode, "6760");

    shop::Order noted = SmallShop::order("1001");
    noted.note = "Thank you";
    EXPECT_EQ(take_in_orders(shop.book, {noted}, "market.csv").changed, 1);
    EXPECT_EQ(order(shop.book, id)->order.note, "Thank you");
    EXPECT_EQ(order(shop.book, id)->order.to.postcode, "6760") << "the shop did not change the address";
}

TEST(MatchGoods, FillsInNowAndLater)
{
    SmallShop shop;
    shop.stock_up();
    const auto first = take_in_orders(shop.book, {SmallShop::order("1001", 2, "")}, "market.csv").touched.at(0);
    EXPECT_TRUE(order(shop.book, first)->order.lines[0].good.empty());
    ASSERT_TRUE(remember_match(shop.book, {"Harbour Market", "Sea ink", "30 ml", {"INK-SEA"}}));
    EXPECT_EQ(order(shop.book, first)->order.lines[0].good.text, "INK-SEA");
    EXPECT_EQ(take_in_orders(shop.book, {SmallShop::order("1001", 2, "")}, "market.csv").unchanged, 1);

    const auto second = take_in_orders(shop.book, {SmallShop::order("1002", 1, "")}, "market.csv").touched.at(0);
    EXPECT_EQ(order(shop.book, second)->order.lines[0].good.text, "INK-SEA");

    ASSERT_TRUE(check_order(shop.book, first));
    ASSERT_TRUE(remember_match(shop.book, {"Harbour Market", "Sea ink", "30 ml", {"NIB-F"}}));
    EXPECT_EQ(order(shop.book, first)->order.lines[0].good.text, "INK-SEA") << "checked: left alone";
    EXPECT_EQ(order(shop.book, second)->order.lines[0].good.text, "NIB-F") << "not checked yet: mended";

    shop::Order coded = SmallShop::order("1003", 1, "");
    coded.lines[0].title = "Something else";
    coded.lines[0].shop_code = "NIB-F";
    const auto third = take_in_orders(shop.book, {coded}, "market.csv").touched.at(0);
    EXPECT_EQ(order(shop.book, third)->order.lines[0].good.text, "NIB-F") << "the shop uses her own code";
}

TEST(Orders, AreHeldByTheirState)
{
    SmallShop shop;
    const shop::OrderId id = shop.checked_order("1001");
    EXPECT_EQ(orders_to_plan(shop.book).size(), 1u);
    ASSERT_TRUE(set_aside(shop.book, id, "waits for blue", *parse_date("2026-12-01")));
    EXPECT_EQ(order(shop.book, id)->aside_reason, "waits for blue");
    EXPECT_EQ(order(shop.book, id)->aside_until, parse_date("2026-12-01"));
    EXPECT_TRUE(orders_to_plan(shop.book).empty());
    EXPECT_EQ(check_order(shop.book, id).error().why, Why::wrong_state);
    ASSERT_TRUE(take_back(shop.book, id));
    EXPECT_EQ(order(shop.book, id)->aside_reason, "");
    ASSERT_TRUE(call_off(shop.book, id));
    EXPECT_EQ(orders_in(shop.book, shop::OrderState::called_off).size(), 1u);
    EXPECT_EQ(check_order(shop.book, shop::OrderId{99}).error().why, Why::unknown_order);
    EXPECT_EQ(enter_order(shop.book, SmallShop::order("1001")).error().why, Why::already_there);

    shop::Order unpaid = SmallShop::order("1002");
    unpaid.paid = false;
    const shop::OrderId second = enter_order(shop.book, unpaid).value();
    ASSERT_TRUE(check_order(shop.book, second));
    EXPECT_TRUE(orders_to_plan(shop.book).empty()) << "an unpaid order is never planned";
}

TEST(Orders, OnlyWhatNoKeptParcelHoldsIsLeftToPlan)
{
    SmallShop shop;
    const shop::OrderId id = shop.checked_order("1001", 3);
    const auto made = put_plan(shop.book, {id}, {shop.plan(id, 2), shop.plan(id, 1)}).value();
    EXPECT_EQ(orders_to_plan(shop.book).at(0).order.lines[0].count, 3);
    ASSERT_TRUE(lock_parcel(shop.book, made[0]));
    EXPECT_EQ(orders_to_plan(shop.book).at(0).order.lines[0].count, 1);
    ASSERT_TRUE(lock_parcel(shop.book, made[1]));
    EXPECT_TRUE(orders_to_plan(shop.book).empty());
}

TEST(JoinOrders, OnlyToOneAddress)
{
    SmallShop shop;
    const auto ids =
        take_in_orders(shop.book, {SmallShop::order("1"), SmallShop::order("2"), SmallShop::order("3")}, "m.csv")
            .touched;
    shop::Order elsewhere = SmallShop::order("4");
    elsewhere.to.street = {"Havnegade 9"};
    const auto far = take_in_orders(shop.book, {elsewhere}, "m.csv").touched.at(0);

    EXPECT_EQ(join_orders(shop.book, far, ids[0]).error().why, Why::not_joinable);
    ASSERT_TRUE(join_orders(shop.book, ids[2], ids[1]));
    ASSERT_TRUE(join_orders(shop.book, ids[1], ids[0]));
    EXPECT_EQ(order(shop.book, ids[1])->joined_to, ids[0]);
    EXPECT_EQ(order(shop.book, ids[2])->joined_to, ids[0]) << "it follows";
    EXPECT_EQ(join_orders(shop.book, ids[0], ids[2]).value(), std::nullopt) << "together already";

    ASSERT_TRUE(part_order(shop.book, ids[0]));
    EXPECT_EQ(order(shop.book, ids[1])->joined_to, std::nullopt);
    EXPECT_EQ(order(shop.book, ids[2])->joined_to, ids[1]) << "the others stay together";

    shop::Order moved = SmallShop::order("3");
    moved.to.street = {"Havnegade 9"};
    take_in_orders(shop.book, {moved}, "m.csv");
    EXPECT_EQ(order(shop.book, ids[2])->joined_to, std::nullopt) << "another address parts it";
}

TEST(Search, FindsByNamePostcodeNumberAndTracking)
{
    SmallShop shop;
    const shop::ParcelId sent = shop.labelled("A-1001");
    set_tracking(shop.book, sent, "SK 4471 DK").value();
    shop::Order other = SmallShop::order("B-2");
    other.to.name = "Øjvind Åberg";
    other.to.postcode = "SW1A 1AA";
    enter_order(shop.book, other).value();

    ASSERT_EQ(search(shop.book, "øjvind å").size(), 1u) << "letter case aside, in all scripts";
    EXPECT_EQ(search(shop.book, "ØJVINDÅBERG").at(0).by, Hit::By::name);
    shop::Order sharp = SmallShop::order("B-3");
    sharp.to.name = "Łucja Straßer";
    enter_order(shop.book, sharp).value();
    EXPECT_EQ(search(shop.book, "STRASSER").size(), 1u) << "as Unicode folds it";
    EXPECT_EQ(search(shop.book, "łUCJA").size(), 1u);
    EXPECT_EQ(search(shop.book, "sw1a1aa").at(0).by, Hit::By::postcode);
    EXPECT_EQ(search(shop.book, "a-10").at(0).by, Hit::By::number);
    EXPECT_EQ(search(shop.book, "sk4471").at(0).parcel, sent);
    EXPECT_EQ(search(shop.book, "2611-001").at(0).by, Hit::By::parcel_number);
    EXPECT_TRUE(search(shop.book, "").empty());
    EXPECT_TRUE(search(shop.book, "%").empty());
}

TEST(History, TellsAllThatHappenedToAnOrder)
{
    SmallShop shop;
    const shop::ParcelId parcel_id = shop.labelled("1001");
    const shop::OrderId id = parcel(shop.book, parcel_id)->parcel.pieces.at(0).order;
    shop.labelled("1002");
    std::string told;
    for (const Step& step : history(shop.book, id)) told += std::string(name_of(step.kind)) + ", ";
    EXPECT_EQ(told, "take in orders, check order, plan, pick, pack, label, ");
}
