// Parcels from plan to courier, and what they move.
#include "core/book/verify.h"
#include "small_shop.h"

using namespace stow;
using namespace stow::book;
using shop::ParcelState;

TEST(PutPlan, NumbersRunWithinTheMonth)
{
    SmallShop shop;
    const shop::ParcelId first = shop.planned("1001");
    const shop::ParcelId second = shop.planned("1002");
    EXPECT_EQ(parcel(shop.book, first)->parcel.number, "2611-001");
    EXPECT_EQ(parcel(shop.book, second)->parcel.number, "2611-002");
    shop.now = *parse_instant("2026-12-01T00:00:00Z");
    EXPECT_EQ(parcel(shop.book, shop.planned("1003"))->parcel.number, "2612-001");
    EXPECT_EQ(parcel_by_number(shop.book, "2611-002")->parcel.id, second);
    EXPECT_FALSE(parcel_by_number(shop.book, "2611-003"));
}

TEST(PutPlan, KeepsTheSnapshotWhole)
{
    SmallShop shop;
    const shop::OrderId id = shop.checked_order("1001");
    const planning::ParcelPlan plan = shop.plan(id);
    const auto held = parcel(shop.book, put_plan(shop.book, {id}, {plan}).value().at(0));
    EXPECT_EQ(held->parcel.pieces, plan.pieces);
    EXPECT_EQ(held->plan.pieces, plan.pieces);
    EXPECT_EQ(held->plan.placements.at(1).at, plan.placements.at(1).at);
    EXPECT_EQ(held->parcel.carrier, "Skerry Post");
    EXPECT_EQ(held->parcel.postage, (Money{690, {}}));
    EXPECT_EQ(held->parcel.order_version, 1);
}

TEST(PutPlan, ReplacesOnlyWhatIsNotLocked)
{
    SmallShop shop;
    const shop::OrderId id = shop.checked_order("1001", 3);
    const auto first = put_plan(shop.book, {id}, {shop.plan(id, 2), shop.plan(id, 1)}).value();
    ASSERT_TRUE(lock_parcel(shop.book, first[0]));
    EXPECT_EQ(put_plan(shop.book, {id}, {shop.plan(id, 3)}).error().why, Why::more_than_ordered);
    EXPECT_TRUE(parcel(shop.book, first[1])) << "refused: the old plan stays";

    const auto second = put_plan(shop.book, {id}, {shop.plan(id, 1)}).value();
    EXPECT_TRUE(parcel(shop.book, first[0]));
    EXPECT_FALSE(parcel(shop.book, first[1]));
    EXPECT_EQ(parcels_of(shop.book, id).size(), 2u);
    EXPECT_EQ(put_plan(shop.book, {shop::OrderId{77}}, {shop.plan(shop::OrderId{77})}).error().why, Why::unknown_order);
    EXPECT_TRUE(parcel(shop.book, second[0]));
}

TEST(Packing, MovesSuppliesAndGoodsOnce)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.planned("1001");
    EXPECT_EQ(supplies_reserved(shop.book).at({"K2"}), shop::pieces(1));
    EXPECT_EQ(pieces_reserved(shop.book).at({"INK-SEA"}), 2);
    EXPECT_EQ(supplies_on_hand(shop.book).at({"K2"}), shop::pieces(10)) << "reserved is not used";

    ASSERT_TRUE(mark_packed(shop.book, id));
    EXPECT_EQ(supplies_on_hand(shop.book).at({"K2"}), shop::pieces(9));
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 18);
    EXPECT_TRUE(supplies_reserved(shop.book).empty());
    EXPECT_EQ(mark_packed(shop.book, id).error().why, Why::wrong_state);
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 18);

    const auto ledger = movements_of(shop.book, shop::GoodCode{"INK-SEA"});
    ASSERT_EQ(ledger.size(), 2u);
    EXPECT_EQ(ledger[1].kind, MovementKind::sold);
    EXPECT_EQ(ledger[1].parcel, id);
    EXPECT_EQ(ledger[1].amount, shop::pieces(-2));
}

TEST(Packing, TakesTheStockOfASetFromItsParts)
{
    SmallShop shop;
    shop.stock_up();
    shop::Good set = SmallShop::good("SET-WRITE", 0);
    set.parts = {{{"INK-SEA"}, 1}, {{"NIB-F"}, 3}};
    shop::Good large = SmallShop::good("SET-LARGE", 0);
    large.parts = {{{"SET-WRITE"}, 2}, {{"NIB-F"}, 1}};
    take_in_goods(shop.book, {set, large}, "sets.csv");
    const shop::OrderId id = enter_order(shop.book, SmallShop::order("1001", 2, "SET-LARGE")).value();
    planning::ParcelPlan plan = shop.plan(id);
    plan.pieces = {{id, 0, {"SET-LARGE"}, 2}};
    const auto made = put_plan(shop.book, {id}, {plan}).value();
    ASSERT_TRUE(mark_packed(shop.book, made[0]));
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 20 - 4);
    EXPECT_EQ(pieces_on_hand(shop.book).at({"NIB-F"}), 50 - 14);
}

TEST(Picking, NotThereCorrectsStockAndDropsTheParcel)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.planned("1001");
    const shop::OrderId order_id = parcel(shop.book, id)->parcel.pieces[0].order;
    EXPECT_EQ(not_there(shop.book, id, {"NIB-F"}, 1, "broken").error().why, Why::unknown_good) << "not in this parcel";
    EXPECT_EQ(not_there(shop.book, id, {"INK-SEA"}, 0, "broken").error().why, Why::not_positive);
    ASSERT_TRUE(not_there(shop.book, id, {"INK-SEA"}, 1, "broken"));
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 19);
    EXPECT_FALSE(parcel(shop.book, id));
    EXPECT_EQ(order(shop.book, order_id)->state, shop::OrderState::set_aside);
    EXPECT_EQ(order(shop.book, order_id)->aside_reason, "broken");
    EXPECT_TRUE(supplies_reserved(shop.book).empty()) << "its carton is free again";
}

TEST(Picking, ARoundLocksItsParcelsAndNamesTheirTrays)
{
    SmallShop shop;
    const shop::ParcelId a = shop.planned("1001"), b = shop.planned("1002");
    EXPECT_EQ(start_round(shop.book, {{a, "A"}, {b, "B"}}).value(), 1);
    EXPECT_EQ(parcel(shop.book, b)->parcel.tray, "B");
    EXPECT_EQ(parcel(shop.book, b)->round, 1);
    EXPECT_TRUE(parcel(shop.book, a)->parcel.locked);
    EXPECT_EQ(start_round(shop.book, {}).error().why, Why::nothing_to_do);
    EXPECT_EQ(start_round(shop.book, {{shop.planned("1003"), "A"}}).value(), 2);
}

TEST(Bench, RemembersEveryTickAndWeighing)
{
    SmallShop shop;
    const shop::ParcelId id = shop.planned("1001");
    ASSERT_TRUE(bench_tick(shop.book, id, 3));
    ASSERT_TRUE(weigh(shop.book, id, {shop::WeighingStage::contents, tenth_g(4215)}));
    ASSERT_TRUE(weigh(shop.book, id, {shop::WeighingStage::closed, tenth_g(5120), true}));
    EXPECT_EQ(weigh(shop.book, id, {shop::WeighingStage::closed, {}}).error().why, Why::not_positive);
    const std::filesystem::path path = shop.book.path();
    const Book again = open_or_throw(path, system_time);
    const shop::Parcel held = parcel(again, id)->parcel;
    EXPECT_EQ(held.steps_done, 3);
    ASSERT_EQ(held.weighings.size(), 2u);
    EXPECT_EQ(held.weighings[0].weight, tenth_g(4215));
    EXPECT_EQ(held.weighings[0].at, shop.now);
    EXPECT_TRUE(held.weighings[1].overridden);
}

TEST(Postage, IsNotBoughtTwiceWithoutSayingSo)
{
    SmallShop shop;
    const shop::ParcelId id = shop.planned("1001");
    PostageBought bought{0, id, "Skerry Post", "PACKET", {690, {}}, "R-77", {}, false};
    ASSERT_TRUE(buy_postage(shop.book, bought));
    const Done again = buy_postage(shop.book, bought);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().why, Why::already_bought);
    EXPECT_EQ(again.error().what, "R-77");
    EXPECT_TRUE(parcel(shop.book, id)->parcel.locked) << "paid for, so its plan is kept";
    ASSERT_TRUE(refund_postage(shop.book, postage_bought(shop.book, id).at(0).id));
    EXPECT_TRUE(buy_postage(shop.book, bought)) << "the first was refunded";
    EXPECT_TRUE(buy_postage(shop.book, bought, true)) << "told to";
    EXPECT_EQ(postage_bought(shop.book, id).size(), 3u);
    EXPECT_EQ(postage_bought(shop.book, id)[1].at, shop.now);
}

TEST(HandOver, ListsExactlyTheLabelledParcelsOfTheCarrier)
{
    SmallShop shop;
    const shop::ParcelId a = shop.labelled("1001"), b = shop.labelled("1002"), c = shop.labelled("1003");
    const shop::ParcelId waiting = shop.planned("1004");
    choose_service(shop.book, c, "Gull Parcels", "DOOR", Money{1100, {}}).value();
    EXPECT_EQ(hand_over(shop.book, "Nobody").error().why, Why::nothing_to_do);

    const HandOverList shown = next_hand_over(shop.book, "Skerry Post");
    const HandOverList list = hand_over(shop.book, "Skerry Post").value();
    EXPECT_EQ(shown.parcels, list.parcels) << "what was shown before it was closed is what was closed";
    EXPECT_EQ(shown.number, list.number);
    EXPECT_EQ(shown.day, list.day);
    EXPECT_TRUE(next_hand_over(shop.book, "Skerry Post").parcels.empty());
    EXPECT_EQ(list.parcels, (std::vector{a, b}));
    EXPECT_EQ(list.number, 1);
    EXPECT_EQ(to_text(list.day), "2026-11-25");
    EXPECT_EQ(parcel(shop.book, a)->parcel.state, ParcelState::handed_over);
    EXPECT_EQ(parcel(shop.book, a)->parcel.handed_over_on, list.id);
    EXPECT_EQ(parcel(shop.book, c)->parcel.state, ParcelState::labelled);
    EXPECT_EQ(parcel(shop.book, waiting)->parcel.state, ParcelState::planned);

    shop.labelled("1005");
    EXPECT_EQ(hand_over(shop.book, "Skerry Post").value().number, 2) << "for the late ones";
    EXPECT_EQ(hand_over(shop.book, "Gull Parcels").value().number, 1);
    shop.now = *parse_instant("2026-11-26T15:00:00Z");
    shop.labelled("1006");
    EXPECT_EQ(hand_over(shop.book, "Skerry Post").value().number, 1) << "a new day";
    EXPECT_EQ(hand_over_lists(shop.book).size(), 4u);
}

TEST(HandOver, LeavesBehindWhatMustStop)
{
    SmallShop shop;
    const shop::ParcelId a = shop.labelled("1001"), b = shop.labelled("1002");
    call_off(shop.book, parcel(shop.book, a)->parcel.pieces[0].order).value();
    EXPECT_EQ(hand_over(shop.book, "Skerry Post").value().parcels, std::vector{b});
    EXPECT_EQ(parcel(shop.book, a)->parcel.state, ParcelState::labelled);
}

TEST(ComesBack, ItsGoodsMayGoBackOnTheShelfOnce)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.labelled("1001");
    EXPECT_EQ(mark_came_back(shop.book, id).error().why, Why::wrong_state);
    hand_over(shop.book, "Skerry Post").value();
    ASSERT_TRUE(mark_came_back(shop.book, id, {"nobody there", GoodsBack::undecided, false}));
    EXPECT_EQ(mark_came_back(shop.book, id).error().why, Why::already_there);
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 18);
    ASSERT_TRUE(mark_came_back(shop.book, id, {"", GoodsBack::on_the_shelf, false}));
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 20);
    EXPECT_EQ(parcel(shop.book, id)->parcel.back_why, "nobody there") << "said before, and kept";
    EXPECT_EQ(mark_came_back(shop.book, id, {"", GoodsBack::on_the_shelf, false}).error().why, Why::already_there);
    EXPECT_EQ(mark_came_back(shop.book, id, {"", GoodsBack::written_off, false}).error().why, Why::already_there);
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 20);
    EXPECT_EQ(supplies_on_hand(shop.book).at({"K2"}), shop::pieces(9)) << "the carton is used up";
}

TEST(Labelled, KeepsWhichPrintWasStuckOn)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.labelled("1001");
    ASSERT_TRUE(undo(shop.book, last_undoable(shop.book)->id));
    ASSERT_TRUE(mark_labelled(shop.book, id, {2, 3}));
    const Step told = *last_undoable(shop.book);
    EXPECT_EQ(told.kind, StepKind::label);
    EXPECT_EQ(told.words.at("print"), "2");
    EXPECT_EQ(told.words.at("printed"), "3");
}

TEST(ComesBack, WhatIsSentAgainIsPlannedAndPackedAnew)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.labelled("1001");
    const shop::OrderId order = parcel(shop.book, id)->parcel.pieces[0].order;
    hand_over(shop.book, "Skerry Post").value();
    EXPECT_TRUE(orders_to_plan(shop.book).empty());
    ASSERT_TRUE(mark_came_back(shop.book, id, {"crushed", GoodsBack::written_off, true}));
    EXPECT_TRUE(parcel(shop.book, id)->parcel.written_off);
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 18) << "what was written off stays away";
    ASSERT_EQ(orders_to_plan(shop.book).size(), 1U);
    EXPECT_TRUE(parcels_of(shop.book, order).empty());
    const shop::ParcelId again = put_plan(shop.book, {order}, {shop.plan(order, 2)}).value().at(0);
    EXPECT_FALSE(put_plan(shop.book, {}, {shop.plan(order, 1)})) << "no more than ordered, even so";
    ASSERT_TRUE(mark_packed(shop.book, again));
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 16);
    ASSERT_TRUE(choose_service(shop.book, again, "Skerry Post", "PACKET", Money{690, {}}));
    ASSERT_TRUE(mark_labelled(shop.book, again));
    ASSERT_TRUE(hand_over(shop.book, "Skerry Post"));
    EXPECT_TRUE(orders_to_plan(shop.book).empty()) << "all of it is on its way";
    const Date day = std::chrono::floor<std::chrono::days>(shop.now);
    const auto facts = packed_facts(shop.book, day, day);
    ASSERT_EQ(facts.size(), 2U);
    EXPECT_TRUE(facts[0].came_back && facts[0].written_off && !facts[0].restocked && !facts[0].again);
    EXPECT_EQ(facts[0].back_why, "crushed");
    EXPECT_TRUE(facts[1].again && !facts[1].came_back);
    EXPECT_EQ(mark_came_back(shop.book, id, {"", GoodsBack::undecided, true}).error().why, Why::already_there);
    EXPECT_TRUE(verify(shop.book).empty());
}

TEST(Records, FindWhatWasPackedOnADay)
{
    SmallShop shop;
    shop.labelled("1001");
    shop.now = *parse_instant("2026-11-26T00:00:00Z");
    const shop::ParcelId next = shop.labelled("1002");
    const Date day = *parse_date("2026-11-25");
    EXPECT_EQ(packed_facts(shop.book, day, day).size(), 1u);
    const auto held = parcel(shop.book, next);
    const auto late = packed_facts(shop.book, day + std::chrono::days(1), day + std::chrono::days(5));
    ASSERT_EQ(late.size(), 1u);
    EXPECT_EQ(late[0].number, held->parcel.number);
    EXPECT_EQ(packed_facts(shop.book, day, day + std::chrono::days(1)).size(), 2u);

    // The part of the plan that SQLite draws out of it is what the plan says.
    const records::PlannedPart& part = late[0].plan;
    EXPECT_EQ(part.closed, held->plan.closed);
    EXPECT_EQ(part.weight.mean, held->plan.weight.mean);
    EXPECT_EQ(part.uses.size(), held->plan.uses.size());
    EXPECT_EQ(late[0].pieces, held->plan.pieces);
    Size reach{};
    for (const fitting::Placement& p : held->plan.placements) {
        reach = {std::max(reach.x, p.at.x + p.size.x), std::max(reach.y, p.at.y + p.size.y),
                 std::max(reach.z, p.at.z + p.size.z)};
    }
    EXPECT_GT(reach.z, Length{});
    EXPECT_EQ(part.reach, reach);
}
