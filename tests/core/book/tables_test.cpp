// The book as open tables and back.
#include "core/book/settings.h"
#include "core/book/tables.h"
#include "core/book/verify.h"
#include "small_shop.h"

using namespace stow;
using namespace stow::book;
using Fault = BackupProblem::Fault;
namespace fs = std::filesystem;

namespace {

std::map<std::string, std::string> files_in(const fs::path& folder)
{
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::directory_iterator(folder)) {
        std::ifstream in(entry.path(), std::ios::binary);
        files[entry.path().filename().string()] = std::string(std::istreambuf_iterator<char>(in), {});
    }
    return files;
}

void put(const fs::path& file, const std::string& text)
{
    std::ofstream(file, std::ios::binary) << text;
}

struct Exported : SmallShop {
    Exported()
    {
        stock_up();
        labelled("1001");
        // Text with all that could be lost on the way: quotes, commas, line ends, nothing, a formula, other scripts.
        remember(book, "odd", "a \"quoted\", cell\r\nand a line\n;\t=1+1 ü 灯台");
        remember(book, "empty", "");
        remember(book, "formula", "=HYPERLINK(\"ink\")");
        remember(book, "apostrophes", "''-1");
        remember(book, "place", "'s-Oord");
        EXPECT_TRUE(write_tables(book, folder / "out"));
    }
    std::string refused(const char* what = "back.book")
    {
        const auto read = read_tables(folder / "out", folder / what);
        EXPECT_FALSE(fs::exists(folder / what));
        EXPECT_FALSE(fs::exists((folder / what).string() + ".part"));
        return read ? std::string("taken") : read.error().detail;
    }
};

} // namespace

TEST(Tables, ComeBackWithoutLoss)
{
    Exported shop;
    const auto read = read_tables(shop.folder / "out", shop.folder / "back.book");
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_GT(read->rows, 50U);
    Book back = open_or_throw(shop.folder / "back.book", [&] { return shop.now; });
    EXPECT_TRUE(verify(back).empty());
    EXPECT_EQ(remembered(back, "odd"), remembered(shop.book, "odd"));
    EXPECT_EQ(remembered(back, "empty"), "");
    for (const char* name : {"formula", "apostrophes", "place"}) {
        EXPECT_EQ(remembered(back, name), remembered(shop.book, name));
    }
    ASSERT_TRUE(write_tables(back, shop.folder / "again"));
    const auto before = files_in(shop.folder / "out"), after = files_in(shop.folder / "again");
    ASSERT_EQ(before.size(), after.size());
    for (const auto& [name, text] : before) EXPECT_EQ(after.at(name), text) << name;

    // It works on: what triggers count is counted again, and numbers go on where they stood.
    take_in_goods(back, {SmallShop::good("WAX-NEW", 4)}, "later.csv");
    take_in_goods(shop.book, {SmallShop::good("WAX-NEW", 4)}, "later.csv");
    EXPECT_EQ(steps(back).back().id.value, steps(shop.book).back().id.value);
    EXPECT_TRUE(verify(back).empty());
}

// OWASP, CSV Injection: cells that begin with = + - @, tab or return are formulas to a table program.
TEST(Tables, HoldNoFormula)
{
    SmallShop shop;
    shop::Order order = SmallShop::order("1001");
    order.to.name = "=1+1";
    order.note = "+later";
    order.to.company = "@home";
    order.buyer_contact = "-2";
    order.to.town = "\tTown";
    take_in_orders(shop.book, {order}, "=cmd.csv");
    ASSERT_TRUE(write_tables(shop.book, shop.folder / "out"));
    const std::string orders = files_in(shop.folder / "out").at("orders.csv");
    EXPECT_NE(orders.find("\"'=1+1\""), std::string::npos);
    for (const auto& [name, text] : files_in(shop.folder / "out")) {
        for (const char* formula : {"\"=", "\"+", "\"-", "\"@", "\"\t"}) {
            for (const char* before : {",", "\n"}) {
                EXPECT_EQ(text.find(std::string(before) + formula), std::string::npos) << name << " " << formula;
            }
        }
    }
    ASSERT_TRUE(read_tables(shop.folder / "out", shop.folder / "back.book"));
    const Book back = open_or_throw(shop.folder / "back.book", [&] { return shop.now; });
    EXPECT_EQ(order_by_key(back, order.key)->order, order_by_key(shop.book, order.key)->order);
}

TEST(Tables, AreTheOwnersAlone)
{
    Exported shop;
    EXPECT_EQ(fs::status(shop.folder / "out").permissions() & (fs::perms::group_all | fs::perms::others_all),
              fs::perms::none);
    const auto again = write_tables(shop.book, shop.folder / "out");
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().fault, Fault::cannot_write);
}

TEST(Tables, AreRefusedWithFileAndRow)
{
    Exported shop;
    const auto good = files_in(shop.folder / "out");
    const auto with = [&](const char* file, const std::string& text) {
        put(shop.folder / "out" / file, text);
        const std::string why = shop.refused();
        put(shop.folder / "out" / file, good.at(file));
        return why;
    };
    const std::string& goods = good.at("orders.csv");
    EXPECT_NE(with("orders.csv", goods + "1,2\n").find("orders.csv, row "), std::string::npos);
    EXPECT_NE(with("orders.csv", goods + "\"no end").find("does not end"), std::string::npos);
    EXPECT_NE(with("orders.csv", "id,name\n").find("the columns should be"), std::string::npos);
    EXPECT_NE(with("orders.csv", goods.substr(0, goods.find('\n') + 1)).find("belongs to one of"), std::string::npos)
        << "orders that lines and parcels belong to are gone";
    EXPECT_NE(with("book.csv", "version\n99\n").find("version 99"), std::string::npos);
    fs::remove(shop.folder / "out" / "parcel.csv");
    EXPECT_NE(shop.refused().find("parcel.csv"), std::string::npos);
    put(shop.folder / "out" / "parcel.csv", good.at("parcel.csv"));
    EXPECT_TRUE(read_tables(shop.folder / "out", shop.folder / "back.book")) << "whole again";
    const auto there = read_tables(shop.folder / "out", shop.folder / "back.book");
    ASSERT_FALSE(there);
    EXPECT_EQ(there.error().fault, Fault::cannot_write) << "never over a book that is there";
}
