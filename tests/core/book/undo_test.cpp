// Undo, undo of the undo, and when it is refused.
#include "core/book/rate_sheets.h"
#include "core/book/settings.h"
#include "core/book/verify.h"
#include "small_shop.h"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace stow;
using namespace stow::book;

namespace {

// All rows of all tables that steps may change, as one text.
std::string contents(const Book& book)
{
    std::string all;
    for (const char* table :
         {"house", "good", "supply", "wrapping", "rate_sheet", "orders", "order_line", "good_match", "column_match",
          "hand_over_list", "parcel", "parcel_plan", "parcel_piece", "weighing", "postage"}) {
        SQLite::Statement rows(book.db(), std::string("SELECT * FROM ") + table + " ORDER BY id");
        while (rows.executeStep()) {
            all += table;
            for (int i = 0; i < rows.getColumnCount(); ++i) {
                all += rows.getColumn(i).isNull() ? "|null" : "|" + rows.getColumn(i).getString();
            }
            all += '\n';
        }
    }
    SQLite::Statement sums(book.db(),
                           "SELECT ledger, code, sum(amount) FROM movement GROUP BY 1, 2 HAVING sum(amount) <> 0");
    while (sums.executeStep()) {
        all += sums.getColumn(0).getString() + sums.getColumn(1).getString() + sums.getColumn(2).getString() + '\n';
    }
    return all;
}

StepId newest(const Book& book)
{
    return steps(book, 1).at(0).id;
}

} // namespace

// Walks through a day; after every step: undoing gives the book before it, undoing that gives the book after it.
TEST(Undo, TakesEveryKindOfStepBackAndDoesItAgain)
{
    SmallShop shop;
    Book& book = shop.book;
    int walked = 0;
    const auto walk = [&](const char* what, const std::function<void()>& act) {
        const std::string before = contents(book);
        act();
        const std::string after = contents(book);
        ASSERT_NE(before, after) << what;
        const StepId done = newest(book);
        ASSERT_TRUE(undo(book, done)) << what;
        EXPECT_EQ(contents(book), before) << what;
        ASSERT_TRUE(undo(book, newest(book))) << what;
        EXPECT_EQ(contents(book), after) << what;
        ++walked;
    };
    shop::OrderId first, second;
    shop::ParcelId parcel;
    walk("goods", [&] { take_in_goods(book, {SmallShop::good("INK-SEA", 20), SmallShop::good("NIB-F", 5)}, "g.csv"); });
    walk("supplies", [&] { take_in_supplies(book, {SmallShop::carton("K2", 10)}, "s.csv"); });
    walk("edit good", [&] { put_good(book, SmallShop::good("NIB-M", 3)).value(); });
    walk("house", [&] { put_house(book, {}).value(); });
    walk("remove", [&] { remove_good(book, {"NIB-M"}).value(); });
    walk("columns", [&] { remember_columns(book, "Harbour Market", "number=Order").value(); });
    walk("orders", [&] { first = take_in_orders(book, {SmallShop::order("1001")}, "o.csv").touched.at(0); });
    walk("changed order", [&] { take_in_orders(book, {SmallShop::order("1001", 3)}, "o.csv"); });
    walk("enter", [&] { second = enter_order(book, SmallShop::order("H-1", 1)).value(); });
    walk("join", [&] { join_orders(book, second, first).value(); });
    walk("part", [&] { part_order(book, second).value(); });
    walk("check", [&] { check_orders(book, {first, second}).value(); });
    walk("aside", [&] { set_aside(book, second, "waits for blue").value(); });
    walk("back", [&] { take_back(book, second).value(); });
    walk("plan", [&] { parcel = put_plan(book, {first}, {shop.plan(first, 3)}).value().at(0); });
    walk("plan anew", [&] { parcel = put_plan(book, {first}, {shop.plan(first, 3)}).value().at(0); });
    walk("round", [&] { start_round(book, {{parcel, "A"}}).value(); });
    walk("pick", [&] { mark_picked(book, parcel).value(); });
    walk("tick", [&] { bench_tick(book, parcel, 2).value(); });
    walk("replan", [&] { replan(book, parcel, shop.plan(first, 3)).value(); });
    walk("weigh", [&] { weigh(book, parcel, {shop::WeighingStage::contents, grams(640)}).value(); });
    walk("pack", [&] { mark_packed(book, parcel).value(); });
    walk("postage", [&] {
        buy_postage(book, {0, parcel, "Skerry Post", "PACKET", {690, {}}, "T-1", {}, false}).value();
    });
    walk("label", [&] { mark_labelled(book, parcel).value(); });
    walk("track", [&] { set_tracking(book, parcel, "SK123").value(); });
    walk("hand over", [&] { hand_over(book, "Skerry Post").value(); });
    walk("came back", [&] { mark_came_back(book, parcel).value(); });
    walk("goods back", [&] { mark_came_back(book, parcel, {"moved away", GoodsBack::on_the_shelf, true}).value(); });
    walk("count", [&] { count(book, shop::SupplyCode{"K2"}, shop::pieces(7), "counted").value(); });
    EXPECT_EQ(walked, 29);
    EXPECT_TRUE(verify(book).empty());
}

TEST(Undo, BackToTheBeginningAndForthAgain)
{
    SmallShop shop;
    const std::string empty = contents(shop.book);
    shop.stock_up();
    shop.labelled("1001");
    const std::string full = contents(shop.book);
    int undone = 0;
    while (const auto step = last_undoable(shop.book)) {
        ASSERT_TRUE(undo(shop.book, step->id)) << name_of(step->kind);
        ++undone;
    }
    EXPECT_EQ(undone, 8);
    EXPECT_EQ(contents(shop.book), empty);
    while (const auto step = last_redoable(shop.book)) ASSERT_TRUE(undo(shop.book, step->id));
    EXPECT_EQ(contents(shop.book), full);
    EXPECT_TRUE(verify(shop.book).empty());
}

TEST(Undo, IsRefusedNamingTheLaterStepOnTheSameRow)
{
    SmallShop shop;
    const shop::OrderId id = shop.checked_order("1001");
    const StepId checked = newest(shop.book);
    set_aside(shop.book, id, "asked the buyer").value();
    const StepId aside = newest(shop.book);

    const Done refused = undo(shop.book, checked);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().why, Why::later_step);
    EXPECT_EQ(refused.error().step, aside);

    ASSERT_TRUE(undo(shop.book, aside));
    EXPECT_TRUE(undo(shop.book, checked)) << "what was undone is no obstacle";
    EXPECT_EQ(order(shop.book, id)->state, shop::OrderState::arrived);
}

TEST(Undo, IsRefusedWhenALaterStepBuildsOnItsRows)
{
    SmallShop shop;
    const auto taken = take_in_orders(shop.book, {SmallShop::order("1001")}, "o.csv");
    const shop::OrderId id = taken.touched.at(0);
    put_plan(shop.book, {id}, {shop.plan(id)}).value();
    const StepId plan = newest(shop.book);

    const Done refused = undo(shop.book, *taken.step);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().why, Why::later_step);
    EXPECT_EQ(refused.error().step, plan) << "the parcel holds pieces of the order";
    EXPECT_TRUE(order(shop.book, id));
}

TEST(Undo, IsRefusedPastACountOrAMovementOfSomethingNew)
{
    SmallShop shop;
    shop.stock_up();
    const shop::SupplyCode carton{"K2"};
    receive(shop.book, carton, shop::pieces(5)).value();
    const StepId received = newest(shop.book);
    spoil(shop.book, carton, shop::pieces(1), "wet").value();
    EXPECT_TRUE(undo(shop.book, received)) << "sums do not mind the order";
    ASSERT_TRUE(undo(shop.book, newest(shop.book)));

    count(shop.book, carton, shop::pieces(13), "counted").value();
    const StepId counted = newest(shop.book);
    const Done refused = undo(shop.book, received);
    ASSERT_FALSE(refused) << "the count took it into account";
    EXPECT_EQ(refused.error().step, counted);

    take_in_goods(shop.book, {SmallShop::good("WAX-RED", 4)}, "more.csv");
    const StepId fresh = newest(shop.book);
    make(shop.book, {"WAX-RED"}, 2).value();
    const Done unknown = undo(shop.book, fresh);
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().step, newest(shop.book));
}

TEST(Undo, OnlyOnce)
{
    SmallShop shop;
    shop.stock_up();
    const StepId done = newest(shop.book);
    ASSERT_TRUE(undo(shop.book, done));
    const StepId by = newest(shop.book);
    const Done again = undo(shop.book, done);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().why, Why::already_undone);
    EXPECT_EQ(again.error().step, by);
    EXPECT_EQ(step(shop.book, done)->undone_by, by);
    ASSERT_TRUE(undo(shop.book, by));
    EXPECT_EQ(step(shop.book, done)->undone_by, std::nullopt);
    EXPECT_TRUE(undo(shop.book, done)) << "it stands again, so it can be undone again";
    EXPECT_EQ(undo(shop.book, StepId{999}).error().why, Why::unknown_step);
}

TEST(Undo, LeavesNothingBehindWhenTheStepFails)
{
    SmallShop shop;
    shop.stock_up();
    const std::string before = contents(shop.book);
    const std::size_t steps_before = steps(shop.book).size();
    const shop::Order order = SmallShop::order("1001");
    const shop::OrderId id = enter_order(shop.book, order).value();
    // The second plan takes more than was ordered: the first must not stay either.
    const auto refused = put_plan(shop.book, {id}, {shop.plan(id, 2), shop.plan(id, 1)});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().why, Why::more_than_ordered);
    EXPECT_TRUE(parcels(shop.book).empty());
    ASSERT_TRUE(undo(shop.book, newest(shop.book)));
    EXPECT_EQ(contents(shop.book), before);
    EXPECT_EQ(steps(shop.book).size(), steps_before + 2) << "the refused plan is no step";
}

TEST(Steps, NothingChangedIsNoStep)
{
    SmallShop shop;
    shop.stock_up();
    const shop::OrderId id = shop.checked_order("1001");
    const StepId before = newest(shop.book);
    EXPECT_EQ(check_order(shop.book, id).value(), std::nullopt);
    EXPECT_EQ(take_in_goods(shop.book, {SmallShop::good("INK-SEA", 99)}, "goods.csv").step, std::nullopt);
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 20) << "the ledger knows better than an old file";
    EXPECT_EQ(newest(shop.book), before);
}
