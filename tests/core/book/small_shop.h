// A book in a folder of its own, with time that only the test moves, and a small shop to put into it.
#pragma once

#include "core/book/book.h"
#include "core/book/cupboard.h"
#include "core/book/ledger.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace stow::book {

// In memory where the system offers it: no test pulls the plug of a disk, so none need wait for one.
inline std::filesystem::path new_folder()
{
    const std::filesystem::path memory = "/dev/shm";
    const bool usable = ::access(memory.c_str(), W_OK) == 0;
    std::string name = ((usable ? memory : std::filesystem::temp_directory_path()) / "stowbook-XXXXXX").string();
    if (!mkdtemp(name.data())) throw std::runtime_error("no temporary folder");
    return name;
}

class Folder {
public:
    Folder() : path_(new_folder()) {}
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    std::filesystem::path operator/(const char* name) const { return path_ / name; }

private:
    std::filesystem::path path_;
};

inline Book open_or_throw(const std::filesystem::path& path, Clock clock)
{
    auto book = Book::open(path, std::move(clock));
    if (!book) throw std::runtime_error(book.error().detail);
    return std::move(*book);
}

struct SmallShop {
    Folder folder;
    Instant now = *parse_instant("2026-11-25T07:30:00Z");
    Book book = open_or_throw(folder / "shop.book", [this] { return now; });

    static shop::Good good(const char* code, int pieces)
    {
        shop::Good made;
        made.code = {code};
        made.name = std::string(code) + " by name";
        made.shape = Block{{mm(60), mm(60), mm(90)}};
        made.weight = {grams(210), grams(3)};
        made.pieces = pieces;
        return made;
    }

    static shop::Supply carton(const char* code, int count)
    {
        shop::Supply made;
        made.code = {code};
        made.name = code;
        made.form = OuterForm{OuterKind::carton, {mm(200), mm(150), mm(100)}, {mm(206), mm(156), mm(106)}, {}, {}, {}};
        made.on_hand = shop::pieces(count);
        return made;
    }

    void stock_up()
    {
        take_in_goods(book, {good("INK-SEA", 20), good("NIB-F", 50)}, "goods.csv");
        take_in_supplies(book, {carton("K2", 10), carton("K3", 10)}, "supplies.csv");
    }

    static shop::Order order(const char* number, int count = 2, const char* good = "INK-SEA")
    {
        shop::Order made;
        made.key = {"Harbour Market", number};
        made.date = *parse_date("2026-11-24");
        made.buyer_contact = "ida@example.org";
        made.to = {"Ida Strandvik", "", {"Tangvej 4"}, "6700", "Esbjerg", "", "DK"};
        shop::OrderLine line;
        line.title = "Sea ink";
        line.variant = "30 ml";
        line.good = {good};
        line.count = count;
        line.price = Money{1450, {}};
        made.lines = {line};
        return made;
    }

    // One order taken in and checked.
    shop::OrderId checked_order(const char* number, int count = 2)
    {
        const auto taken = take_in_orders(book, {order(number, count)}, "orders.csv");
        check_order(book, taken.touched.at(0));
        return taken.touched.at(0);
    }

    // The bottles of an order side by side in carton K2.
    planning::ParcelPlan plan(shop::OrderId id, int count = 2) const
    {
        planning::ParcelPlan made;
        made.pieces = {{id, 0, {"INK-SEA"}, count}};
        fitting::Item item;
        item.id = "INK-SEA";
        item.count = count;
        item.shape = Block{{mm(60), mm(60), mm(90)}};
        item.weight = grams(210);
        fitting::Outer outer;
        outer.id = "K2";
        outer.form = *carton("K2", 0).form;
        outer.tare = grams(90);
        made.question.items = {item};
        made.question.outers = {outer};
        made.outer = {"K2"};
        for (int i = 0; i < count; ++i) {
            fitting::Placement placement;
            placement.item = "INK-SEA";
            placement.copy = i + 1;
            placement.at = {mm(60) * i, {}, {}};
            placement.size = {mm(60), mm(60), mm(90)};
            made.placements.push_back(placement);
        }
        made.uses = {{{"K2"}, shop::pieces(1)}};
        postage::Quote quote;
        quote.carrier = "Skerry Post";
        quote.service = "PACKET";
        postage::Price price;
        price.total = {690, {}};
        quote.result = price;
        made.quotes = {quote};
        made.chosen = 0;
        return made;
    }

    shop::ParcelId planned(const char* number)
    {
        const shop::OrderId id = checked_order(number);
        return put_plan(book, {id}, {plan(id)}).value().at(0);
    }

    shop::ParcelId labelled(const char* number)
    {
        const shop::ParcelId id = planned(number);
        mark_picked(book, id).value();
        mark_packed(book, id).value();
        mark_labelled(book, id).value();
        return id;
    }
};

} // namespace stow::book
