// A sound book passes; each way of being unsound is named.
#include "core/book/schema.h"
#include "core/book/verify.h"
#include "core/intake/plan_json.h"
#include "small_shop.h"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace stow;
using namespace stow::book;

namespace {

// Changes the file behind the book's back, as a fault would: no step, no triggers of ours.
void tamper(const Book& book, const std::string& sql)
{
    SQLite::Database other(book.path().string(), SQLite::OPEN_READWRITE);
    other.exec("PRAGMA foreign_keys = OFF");
    other.exec(sql);
}

void tamper_with_plan(const Book& book, shop::ParcelId id, const std::function<void(planning::ParcelPlan&)>& change)
{
    planning::ParcelPlan plan = parcel(book, id)->plan;
    change(plan);
    SQLite::Database other(book.path().string(), SQLite::OPEN_READWRITE);
    SQLite::Statement update(other, "UPDATE parcel_plan SET document = ? WHERE id = ?");
    update.bind(1, intake::plan_to_json(plan));
    update.bind(2, id.value);
    update.exec();
}

std::vector<Unsound> kinds(const Book& book)
{
    std::vector<Unsound> found;
    for (const Finding& finding : verify(book)) found.push_back(finding.what);
    return found;
}

} // namespace

TEST(Verify, PassesASoundBook)
{
    SmallShop shop;
    shop.stock_up();
    shop.labelled("1001");
    shop.planned("1002");
    EXPECT_TRUE(verify(shop.book).empty());
}

TEST(Verify, ObjectsToATenthOfAMillimetre)
{
    SmallShop shop;
    const shop::ParcelId id = shop.planned("1001");
    tamper_with_plan(shop.book, id, [](planning::ParcelPlan& plan) { plan.placements[1].at.x += tenth_mm(1); });
    EXPECT_TRUE(verify(shop.book).empty()) << "away from its neighbour there is room";

    tamper_with_plan(shop.book, id, [](planning::ParcelPlan& plan) { plan.placements[1].at.x -= tenth_mm(2); });
    auto found = verify(shop.book);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].what, Unsound::plan_geometry);
    EXPECT_EQ(found[0].where, "parcel 2611-001");
    ASSERT_TRUE(found[0].violation);
    EXPECT_EQ(found[0].violation->rule, fitting::Rule::apart);
    EXPECT_EQ(found[0].violation->by, tenth_mm(1));

    tamper_with_plan(shop.book, id, [](planning::ParcelPlan& plan) {
        plan.placements[0].at.x = mm(60);
        plan.placements[1].at.x = mm(140) + tenth_mm(1);
    });
    found = verify(shop.book);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].violation->rule, fitting::Rule::inside);
}

TEST(Verify, NamesWhatIsUnsound)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.planned("1001");
    tamper_with_plan(shop.book, id, [](planning::ParcelPlan& plan) { plan.pieces[0].good = {"NIB-F"}; });
    EXPECT_EQ(kinds(shop.book), std::vector{Unsound::plan_pieces});
    tamper(shop.book, "UPDATE parcel_plan SET document = '{}'");
    EXPECT_EQ(kinds(shop.book), std::vector{Unsound::plan_unreadable});
    tamper(shop.book, "DELETE FROM parcel_plan");
    EXPECT_EQ(kinds(shop.book), std::vector{Unsound::plan_unreadable});
}

TEST(Verify, NamesALedgerThatDoesNotAddUp)
{
    SmallShop shop;
    shop.stock_up();
    receive(shop.book, {"K2"}, shop::pieces(5)).value();
    undo(shop.book, last_undoable(shop.book)->id).value();
    tamper(shop.book,
           "DROP TRIGGER movement_stays; UPDATE movement SET amount = -4000 WHERE id = (SELECT max(id) FROM movement)");
    EXPECT_EQ(kinds(shop.book), (std::vector{Unsound::ledger, Unsound::step})) << "the kept sum and the undoing";
    tamper(shop.book, "UPDATE movement SET amount = -5000 WHERE id = (SELECT max(id) FROM movement); DELETE FROM good "
                      "WHERE code = 'NIB-F'");
    const auto found = verify(shop.book);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].what, Unsound::ledger);
    EXPECT_EQ(found[0].where, "NIB-F");
}

TEST(Verify, NamesRowsThatReferToNothing)
{
    SmallShop shop;
    shop.planned("1001");
    tamper(shop.book, "DELETE FROM orders");
    const auto found = kinds(shop.book);
    EXPECT_NE(std::find(found.begin(), found.end(), Unsound::reference), found.end());
}

TEST(Verify, NamesPiecesThatWereNeverOrdered)
{
    SmallShop shop;
    shop.planned("1001");
    tamper(shop.book, "UPDATE order_line SET count = 1");
    EXPECT_EQ(kinds(shop.book), std::vector{Unsound::too_many_pieces});
}
