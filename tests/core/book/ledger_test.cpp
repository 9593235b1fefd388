// The ledger against a model that only adds and subtracts.
#include "core/book/verify.h"
#include "small_shop.h"

#include <rapidcheck/gtest.h>

using namespace stow;
using namespace stow::book;

TEST(Ledger, CountsBookTheDifferenceWithItsReason)
{
    SmallShop shop;
    shop.stock_up();
    const shop::SupplyCode carton{"K2"};
    ASSERT_TRUE(count(shop.book, carton, shop::pieces(8), "two were wet"));
    ASSERT_TRUE(receive(shop.book, carton, shop::pieces(25)));
    ASSERT_TRUE(spoil(shop.book, carton, shop::pieces(1), "torn"));
    const auto rows = movements_of(shop.book, carton);
    ASSERT_EQ(rows.size(), 4u);
    EXPECT_EQ(rows[0].kind, MovementKind::start);
    EXPECT_EQ(rows[1].kind, MovementKind::counted);
    EXPECT_EQ(rows[1].amount, shop::pieces(-2));
    EXPECT_EQ(rows[1].reason, "two were wet");
    EXPECT_EQ(rows[1].at, shop.now);
    EXPECT_EQ(supplies_on_hand(shop.book).at(carton), shop::pieces(32));
    EXPECT_EQ(cupboard(shop.book).on_hand.at(carton), shop::pieces(32));
    EXPECT_EQ(movements(shop.book).size(), 7u) << "four starts and three of these";
}

TEST(Ledger, RefusesWhatItDoesNotKnow)
{
    SmallShop shop;
    shop.stock_up();
    EXPECT_EQ(receive(shop.book, {"K9"}, shop::pieces(1)).error().why, Why::unknown_supply);
    EXPECT_EQ(make(shop.book, {"NOPE"}, 1).error().why, Why::unknown_good);
    EXPECT_EQ(make(shop.book, {"INK-SEA"}, 0).error().why, Why::not_positive);
    EXPECT_EQ(spoil(shop.book, shop::GoodCode{"INK-SEA"}, -3, "").error().why, Why::not_positive);
    EXPECT_EQ(count(shop.book, shop::GoodCode{"INK-SEA"}, -1, "").error().why, Why::not_positive);
    const auto refused = take_in_stock(
        shop.book, {{shop::GoodCode{"INK-SEA"}, shop::pieces(3)}, {shop::GoodCode{"NOPE"}, shop::pieces(3)}},
        "stock.csv");
    EXPECT_EQ(refused.error().what, "NOPE");
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 20) << "the whole file is refused";
}

TEST(Ledger, TakesInAStockFileOnce)
{
    SmallShop shop;
    shop.stock_up();
    const std::vector<StockCount> file{{shop::GoodCode{"INK-SEA"}, shop::pieces(17)},
                                       {shop::SupplyCode{"K3"}, shop::pieces(4)}};
    EXPECT_TRUE(take_in_stock(shop.book, file, "stock.csv").value());
    EXPECT_EQ(pieces_on_hand(shop.book).at({"INK-SEA"}), 17);
    EXPECT_EQ(supplies_on_hand(shop.book).at({"K3"}), shop::pieces(4));
    EXPECT_FALSE(take_in_stock(shop.book, file, "stock.csv").value());
}

TEST(Ledger, RemovingAThingTakesItsRestAlong)
{
    SmallShop shop;
    shop.stock_up();
    ASSERT_TRUE(remove_supply(shop.book, {"K3"}));
    EXPECT_EQ(cupboard(shop.book).supplies.count({"K3"}), 0u);
    EXPECT_TRUE(verify(shop.book).empty());
    ASSERT_TRUE(undo(shop.book, last_undoable(shop.book)->id));
    EXPECT_EQ(cupboard(shop.book).on_hand.at({"K3"}), shop::pieces(10));
}

TEST(Ledger, EveryKindHasAWordOfItsOwn)
{
    for (int i = 0; i <= static_cast<int>(MovementKind::returned); ++i) {
        const auto kind = static_cast<MovementKind>(i);
        ASSERT_FALSE(name_of(kind).empty()) << i;
        EXPECT_EQ(movement_kind(name_of(kind)), kind);
    }
}

// Any row of receipts, counts, losses, packed parcels, undoings and redoings: on hand is what a plain sum says, and the
// book stays sound. Undoing is only held against the model when the book allows it.
RC_GTEST_PROP(Ledger, AgreesWithAPlainSum, ())
{
    SmallShop shop;
    shop.stock_up();
    struct Stock {
        std::int64_t cartons = 10'000; // thousandths
        int bottles = 20;
    };
    Stock now;
    std::map<StepId, Stock> change; // what each step added
    int orders = 0;
    const auto length = *rc::gen::inRange(1, 25);
    for (int i = 0; i < length; ++i) {
        const Stock before = now;
        const int amount = *rc::gen::inRange(1, 9);
        const shop::Amount cartons{*rc::gen::inRange<std::int64_t>(1, 9'000)};
        const StepId last = steps(shop.book, 1).at(0).id;
        switch (*rc::gen::inRange(0, 8)) {
        case 0:
            receive(shop.book, {"K2"}, cartons).value();
            now.cartons += cartons.thousandths;
            break;
        case 1:
            spoil(shop.book, shop::SupplyCode{"K2"}, cartons, "wet").value();
            now.cartons -= cartons.thousandths;
            break;
        case 2:
            count(shop.book, shop::SupplyCode{"K2"}, cartons, "counted").value();
            now.cartons = cartons.thousandths;
            break;
        case 3:
            make(shop.book, {"INK-SEA"}, amount).value();
            now.bottles += amount;
            break;
        case 4:
            count(shop.book, shop::GoodCode{"INK-SEA"}, amount, "counted").value();
            now.bottles = amount;
            break;
        case 5: {
            const shop::OrderId id = enter_order(shop.book, SmallShop::order(std::to_string(++orders).c_str())).value();
            const auto made = put_plan(shop.book, {id}, {shop.plan(id)}).value();
            mark_packed(shop.book, made[0]).value();
            now.cartons -= 1000;
            now.bottles -= 2;
            break;
        }
        default: {
            // Any step after the stock came in, undoings as well.
            const auto all = steps(shop.book);
            const Step& one = all[*rc::gen::inRange<std::size_t>(0, all.size())];
            if (change.count(one.id) && undo(shop.book, one.id)) {
                now.cartons -= change[one.id].cartons;
                now.bottles -= change[one.id].bottles;
            }
        }
        }
        const StepId newest = steps(shop.book, 1).at(0).id;
        if (newest != last) change[newest] = {now.cartons - before.cartons, now.bottles - before.bottles};
        RC_ASSERT(supplies_on_hand(shop.book).at({"K2"}).thousandths == now.cartons);
        RC_ASSERT(pieces_on_hand(shop.book).at({"INK-SEA"}) == now.bottles);
    }
    RC_ASSERT(verify(shop.book).empty());
}

TEST(Ledger, KnowsWhatCameInForWhatAndFromWhom)
{
    SmallShop shop;
    shop.stock_up();
    const shop::SupplyCode carton{"K2"};
    ASSERT_TRUE(receive(shop.book, carton, shop::pieces(20), Money{800, {}}, "Kartonhof Ohlsiel"));
    ASSERT_TRUE(receive(shop.book, carton, shop::pieces(10), Money{550, {}}, "Papierlager Birkfelde"));
    const auto wrong = receive(shop.book, carton, shop::pieces(5), Money{5000, {}}, "Kartonhof Ohlsiel").value();
    ASSERT_TRUE(undo(shop.book, *wrong));
    EXPECT_EQ(average_costs(shop.book, {}).at(carton), (Money{45, {}})) << "13.50 for 30; what was undone is gone";
    const auto rows = movements_of(shop.book, carton);
    EXPECT_EQ(rows[1].supplier, "Kartonhof Ohlsiel");
    EXPECT_EQ(rows[1].cost, (Money{800, {}}));
    EXPECT_EQ(rows.back().cost, (Money{-5000, {}}));
    EXPECT_TRUE(verify(shop.book).empty());
}

// She has them in her hands, whatever the book says.
TEST(Ledger, MorePackedThanTheBookKnowsIsAllowedAndSeen)
{
    SmallShop shop;
    shop.stock_up();
    ASSERT_TRUE(count(shop.book, shop::SupplyCode{"K2"}, {}, "none left"));
    const shop::OrderId id = enter_order(shop.book, SmallShop::order("77")).value();
    const auto made = put_plan(shop.book, {id}, {shop.plan(id)}).value();
    ASSERT_TRUE(mark_packed(shop.book, made[0]));
    EXPECT_EQ(supplies_on_hand(shop.book).at({"K2"}), shop::pieces(-1));
    const auto use = weekly_use(shop.book, shop.now, 4);
    EXPECT_EQ(use.at({"K2"}), (std::vector<std::int64_t>{0, 0, 0, 1000}));
    EXPECT_TRUE(verify(shop.book).empty());
}
