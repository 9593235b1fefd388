// Books as earlier versions of the program really wrote them (frozen/README): each is opened by today's, which brings
// it up to date. What it held is read from the frozen book by plain SQL, apart from our own reading.
#include "core/book/erasing.h"
#include "core/book/rate_sheets.h"
#include "core/book/schema.h"
#include "core/book/verify.h"
#include "core/planning/planner.h"
#include "small_shop.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sys/stat.h>

using namespace stow;
using namespace stow::book;

namespace {

namespace fs = std::filesystem;
using Lines = std::vector<std::string>;

const fs::path frozen_folder = fs::path(STOW_SOURCE_DIR) / "tests/core/book/frozen";

std::string whole(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

Lines sorted(Lines lines)
{
    std::sort(lines.begin(), lines.end());
    return lines;
}

Lines asked(SQLite::Database& db, const std::string& sql)
{
    Lines lines;
    SQLite::Statement rows(db, sql);
    while (rows.executeStep()) lines.push_back(rows.getColumn(0).getString());
    return sorted(std::move(lines));
}

struct Held { // one line of text each, so that a difference is read at once
    Lines orders, parcels, ledger, lists, weighings;
    std::int64_t steps = 0;
    friend bool operator==(const Held&, const Held&) = default;
};

Held by_plain_sql(SQLite::Database& db)
{
    Held held;
    held.orders = asked(db, "SELECT shop || '|' || number || '|' || name || '|' || street || '|' || country || '|' || "
                            "state || '|' || version || '|' || coalesce(gift_message, '-') || '|' || "
                            "(SELECT group_concat(good || '*' || count || personal_text) FROM (SELECT * FROM "
                            "order_line WHERE order_id = orders.id ORDER BY place)) FROM orders");
    held.parcels = asked(db, "SELECT number || '|' || state || '|' || carrier || '|' || service || '|' || tracking || "
                             "'|' || coalesce(postage, '-') || '|' || (SELECT sum(count) FROM parcel_piece WHERE "
                             "parcel = parcel.id) FROM parcel");
    held.ledger = asked(db, "SELECT ledger || '|' || code || '|' || sum(amount) FROM movement GROUP BY ledger, code "
                            "HAVING sum(amount) <> 0");
    held.lists = asked(db, "SELECT carrier || '|' || day || '|' || hand_over_list.number || '|' || (SELECT "
                           "group_concat(number) FROM (SELECT number FROM parcel WHERE list = hand_over_list.id "
                           "ORDER BY number)) FROM hand_over_list");
    held.weighings = asked(db, "SELECT number || '|' || stage || '|' || weight FROM weighing JOIN parcel "
                               "ON parcel.id = weighing.parcel");
    held.steps = db.execAndGet("SELECT count(*) FROM step").getInt64();
    return held;
}

Held by_our_reading(const Book& book)
{
    Held held;
    for (const shop::HeldOrder& h : orders(book)) {
        std::string street, lines;
        for (const std::string& line : h.order.to.street) street += (street.empty() ? "" : "\n") + line;
        for (const shop::OrderLine& line : h.order.lines) {
            lines += fmt::format("{}{}*{}{}", lines.empty() ? "" : ",", line.good.text, line.count, line.personal_text);
        }
        held.orders.push_back(fmt::format("{}|{}|{}|{}|{}|{}|{}|{}|{}", h.order.key.shop, h.order.key.number,
                                          h.order.to.name, street, h.order.to.country, name_of(h.state), h.version,
                                          h.order.gift ? h.order.gift->message : "-", lines));
    }
    for (const shop::Parcel& p : parcels(book)) {
        int pieces = 0;
        for (const shop::Piece& piece : p.pieces) pieces += piece.count;
        held.parcels.push_back(fmt::format("{}|{}|{}|{}|{}|{}|{}", p.number, name_of(p.state), p.carrier, p.service,
                                           p.tracking, p.postage ? std::to_string(p.postage->minor) : "-", pieces));
        for (const shop::Weighing& w : p.weighings) {
            held.weighings.push_back(fmt::format("{}|{}|{}", p.number, name_of(w.stage), w.weight.units));
        }
    }
    for (const auto& [code, amount] : supplies_on_hand(book)) {
        if (amount.thousandths != 0) {
            held.ledger.push_back(fmt::format("supplies|{}|{}", code.text, amount.thousandths));
        }
    }
    for (const auto& [code, pieces] : pieces_on_hand(book)) {
        if (pieces != 0) held.ledger.push_back(fmt::format("goods|{}|{}", code.text, pieces * 1000));
    }
    for (const HandOverList& list : hand_over_lists(book)) {
        std::string numbers;
        for (const shop::ParcelId id : list.parcels) {
            numbers += (numbers.empty() ? "" : ",") + parcel(book, id)->parcel.number;
        }
        held.lists.push_back(fmt::format("{}|{}|{}|{}", list.carrier, to_text(list.day), list.number, numbers));
    }
    for (Lines* lines : {&held.orders, &held.parcels, &held.ledger, &held.lists, &held.weighings}) {
        *lines = sorted(std::move(*lines));
    }
    held.steps = static_cast<std::int64_t>(steps(book, 100'000).size());
    return held;
}

void expect_same(const Held& found, const Held& frozen)
{
    EXPECT_EQ(found.orders, frozen.orders);
    EXPECT_EQ(found.parcels, frozen.parcels);
    EXPECT_EQ(found.ledger, frozen.ledger);
    EXPECT_EQ(found.lists, frozen.lists);
    EXPECT_EQ(found.weighings, frozen.weighings);
    EXPECT_EQ(found.steps, frozen.steps);
}

void expect_sound(const Book& book)
{
    for (const Finding& finding : verify(book)) ADD_FAILURE() << finding.where << ": " << finding.detail;
}

// From the rack and the shelf to the courier.
void send_off(Book& book, shop::ParcelId id)
{
    const auto held = parcel(book, id);
    ASSERT_TRUE(held);
    if (held->parcel.state == shop::ParcelState::planned) mark_picked(book, id).value();
    mark_packed(book, id).value();
    ASSERT_TRUE(held->plan.chosen);
    const postage::Quote& quote = held->plan.quotes.at(*held->plan.chosen);
    choose_service(book, id, quote.carrier, quote.service, quote.price()->total).value();
    mark_labelled(book, id).value();
    ASSERT_TRUE(hand_over(book, quote.carrier));
    EXPECT_EQ(parcel(book, id)->parcel.state, shop::ParcelState::handed_over);
}

class FrozenBook : public testing::TestWithParam<const char*> {
protected:
    Folder folder;
    fs::path path = folder / "shop.book";
    int version = 0;
    Held frozen;

    void SetUp() override
    {
        const std::string sql = whole(frozen_folder / (std::string(GetParam()) + ".sql"));
        ASSERT_FALSE(sql.empty());
        SQLite::Database db(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        db.exec(sql);
        db.exec("PRAGMA journal_mode = WAL"); // as every version kept its book
        version = db.execAndGet("PRAGMA user_version").getInt();
        frozen = by_plain_sql(db);
        ASSERT_GE(frozen.orders.size(), 5u);
        ASSERT_GE(frozen.parcels.size(), 4u);
        ASSERT_GE(frozen.ledger.size(), 20u);
        ASSERT_GE(frozen.lists.size(), 1u);
        ASSERT_GE(frozen.weighings.size(), 2u);
    }

    Book open() const
    {
        return open_or_throw(path, [] { return *parse_instant("2026-11-25T12:00:00Z"); });
    }
};

} // namespace

TEST_P(FrozenBook, HoldsAfterwardsWhatItHeld)
{
    const Book book = open();
    EXPECT_EQ(book.db().execAndGet("PRAGMA user_version").getInt(), book_version);
    expect_same(by_our_reading(book), frozen);
    expect_same(by_plain_sql(book.db()), frozen);
    expect_sound(book);
}

TEST_P(FrozenBook, IsKeptAsItWasBesideIt)
{
    open();
    const fs::path kept = path.string() + ".version-" + std::to_string(version);
    struct stat about {};
    ASSERT_EQ(::stat(kept.c_str(), &about), 0);
    EXPECT_EQ(about.st_mode & 0777U, 0600U);
    SQLite::Database copy(kept.string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(copy.execAndGet("PRAGMA user_version").getInt(), version);
    EXPECT_EQ(copy.execAndGet("PRAGMA integrity_check").getString(), "ok");
    expect_same(by_plain_sql(copy), frozen);
}

// Whatever a version left out while it was still being written: a book brought up to date is made as a new one is.
TEST_P(FrozenBook, IsMadeAsANewBookIs)
{
    const auto made = [](const Book& book) {
        return asked(book.db(), "SELECT type || ' ' || name || ': ' || sql FROM sqlite_schema WHERE type IN ('view', "
                                "'trigger', 'index') AND sql IS NOT NULL UNION ALL SELECT m.name || '.' || c.name || "
                                "' ' || c.type || ' ' || c.\"notnull\" || ' ' || coalesce(c.dflt_value, '-') FROM "
                                "sqlite_schema AS m, pragma_table_info(m.name) AS c WHERE m.type = 'table'");
    };
    EXPECT_EQ(made(open()), made(Book::open(folder / "new.book").value()));
}

TEST_P(FrozenBook, IsWorkedOn)
{
    Book book = open();
    const auto last = last_undoable(book);
    ASSERT_TRUE(last);
    ASSERT_TRUE(undo(book, last->id)) << "the old program's last step";
    EXPECT_NE(by_our_reading(book), frozen);
    expect_sound(book);
    ASSERT_TRUE(undo(book, last_redoable(book)->id));
    Held again = by_our_reading(book);
    again.steps -= 2;
    expect_same(again, frozen);

    // A parcel the old program planned.
    std::vector<shop::Parcel> waiting = parcels_in(book, shop::ParcelState::picked);
    for (const shop::Parcel& p : parcels_in(book, shop::ParcelState::planned)) waiting.push_back(p);
    std::erase_if(waiting, [&](const shop::Parcel& p) { return parcel_standing(book, p).stops(); });
    ASSERT_FALSE(waiting.empty());
    ASSERT_NO_FATAL_FAILURE(send_off(book, waiting.front().id));
    expect_sound(book);

    // An order of today, planned by today's program from the old goods, supplies and rate sheets.
    shop::Order order = orders(book).front().order;
    order.key.number += "-once more";
    order.called_off = false;
    const auto taken = take_in_orders(book, {order}, "more.csv");
    check_order(book, taken.touched.at(0)).value();
    planning::Wish wish;
    wish.day = *parse_date("2026-11-25");
    stow::Run run;
    const auto held = book::order(book, taken.touched.at(0));
    const auto day = planning::plan_day(cupboard(book), {*held}, rate_sheets(book), wish, run);
    ASSERT_EQ(day.parcels.size(), 1u);
    const auto ids = put_plan(book, taken.touched, day.parcels).value();
    ASSERT_NO_FATAL_FAILURE(send_off(book, ids.at(0)));
    expect_sound(book);
}

TEST_P(FrozenBook, ForgetsBuyersInItsOlderCopyToo)
{
    Book book = open();
    std::vector<std::string> names, staying;
    for (const shop::HeldOrder& held : orders(book)) {
        (may_be_erased(book, held) ? names : staying).push_back(held.order.to.name);
    }
    std::erase_if(names, [&](const auto& name) { return std::count(staying.begin(), staying.end(), name) > 0; });
    ASSERT_FALSE(names.empty());
    const fs::path kept = path.string() + ".version-" + std::to_string(version);
    EXPECT_NE(whole(kept).find(names.front()), std::string::npos);
    ASSERT_GE(erase_buyers(book, *parse_date("2027-01-01")), static_cast<int>(names.size()));
    EXPECT_EQ(erase_in_copies(book).rewritten, 1);
    for (const std::string& name : names) EXPECT_EQ(whole(kept).find(name), std::string::npos) << name;
    SQLite::Database copy(kept.string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(copy.execAndGet("PRAGMA user_version").getInt(), version) << "still what the older program reads";
    expect_sound(book);
}

INSTANTIATE_TEST_SUITE_P(Each, FrozenBook,
                         testing::Values("version_1", "version_2", "version_3", "version_4_early", "version_4",
                                         "version_5_early", "version_5"),
                         [](const auto& each) { return std::string(each.param); });

TEST(FrozenBooks, OneOfEveryEarlierVersion)
{
    std::set<int> versions;
    for (const auto& entry : fs::directory_iterator(frozen_folder)) {
        if (entry.path().extension() != ".sql") continue;
        SQLite::Database db(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        db.exec(whole(entry.path()));
        versions.insert(db.execAndGet("PRAGMA user_version").getInt());
    }
    constexpr int never_written = 6; // it and 7 came at once: no program ended a book there
    for (int version = 1; version < book_version; ++version)
        EXPECT_TRUE(version == never_written || versions.contains(version)) << version;
}
