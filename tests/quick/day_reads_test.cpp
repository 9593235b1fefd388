// After every kind of step, what the day read again is what reading all anew gives.
#include "core/book/erasing.h"
#include "core/book/orders.h"
#include "core/book/steps.h"
#include "tests/quick/workshop.h"

#include <algorithm>
#include <sstream>

namespace stow::quick {

namespace {

std::string all_of(const Day& day)
{
    std::ostringstream all;
    for (const shop::HeldOrder& held : day.orders()) {
        const shop::Order& order = held.order;
        all << held.id.value << ' ' << order.key.number << ' ' << name_of(held.state) << ' ' << held.aside_reason << ' '
            << held.version << ' ' << held.changed << ' ' << (held.joined_to ? held.joined_to->value : 0) << ' '
            << order.to.name << ' ' << order.note;
        for (const shop::OrderLine& line : order.lines) all << ' ' << line.count << ' ' << line.good.text;
        all << (day.to_plan().contains(held.id) ? " to plan\n" : "\n");
    }
    for (const shop::Parcel& parcel : day.parcels()) {
        all << parcel.number << ' ' << name_of(parcel.state) << ' ' << parcel.locked << ' ' << parcel.tray << ' '
            << parcel.steps_done << ' ' << parcel.scanned << ' ' << parcel.carrier << ' ' << parcel.tracking << ' '
            << parcel.weighings.size() << ' ' << (parcel.handed_over_on ? parcel.handed_over_on->value : 0) << ' '
            << parcel.sent_again;
        for (const shop::Piece& piece : parcel.pieces) all << ' ' << piece.order.value << ':' << piece.count;
        all << '\n';
    }
    for (const auto& [code, amount] : day.cupboard().on_hand) all << code.text << ' ' << amount.thousandths << '\n';
    for (const auto& [code, good] : day.cupboard().goods) all << code.text << ' ' << good.name << '\n';
    all << day.rate_sheets().size();
    return all.str();
}

} // namespace

class DayReadsTest : public QObject {
    Q_OBJECT
private slots:
    void what_every_step_of_a_day_touched();
    void what_another_program_did();
    void no_more_than_was_touched();
    void what_was_read_beside();
    void nothing_older_than_what_is_held();
};

void DayReadsTest::what_every_step_of_a_day_touched()
{
    Workshop shop;
    Day& day = shop.day();
    int compared = 0;
    const auto same = [&](const char* after) {
        day.moved();
        QVERIFY2(all_of(day) == all_of(*day.beside()), after);
        ++compared;
    };
    shop.furnish();
    shop.remember_titles();
    shop.take_in("Harbour Stall", "harbour_stall.csv");
    same("orders taken in");
    shop.check_what_is_sound();
    same("checked");
    const auto arrived = book::orders_in(day.book(), shop::OrderState::arrived);
    const auto checked = book::orders_in(day.book(), shop::OrderState::checked);
    QVERIFY(!arrived.empty() && checked.size() > 6);
    QVERIFY(book::set_aside(day.book(), checked[0].id, "waits", std::nullopt));
    same("set aside");
    QVERIFY(book::take_back(day.book(), checked[0].id));
    same("taken back");
    QVERIFY(book::call_off(day.book(), checked[1].id));
    same("called off");
    QVERIFY(book::undo(day.book(), book::last_undoable(day.book())->id));
    same("undone");
    shop::Order edited = checked[2].order;
    edited.note = "another one";
    edited.lines.pop_back();
    edited.lines.push_back(checked[3].order.lines.front());
    edited.lines.push_back(checked[3].order.lines.front());
    QVERIFY(book::edit_order(day.book(), checked[2].id, edited));
    same("edited");
    shop.plan();
    same("planned");
    auto parcels = book::parcels_in(day.book(), shop::ParcelState::planned);
    QVERIFY(parcels.size() > 6);
    QVERIFY(book::lock_parcel(day.book(), parcels[0].id));
    same("locked");
    QVERIFY(book::unlock_parcel(day.book(), parcels[0].id));
    same("let go");
    QVERIFY(book::drop_parcel(day.book(), parcels[1].id));
    same("dropped");
    QVERIFY(book::undo(day.book(), book::last_undoable(day.book())->id));
    same("and put back");
    shop.plan();
    same("planned again");
    const auto trays = shop.pick(4);
    same("picked");
    QVERIFY(book::bench_tick(day.book(), trays[0], 1, true));
    same("a step at the bench");
    shop.pack(trays);
    same("packed");
    shop.label(trays);
    same("labelled");
    const auto number = book::parcel(day.book(), trays[0])->parcel;
    QVERIFY(book::set_tracking(day.book(), trays[0], "RR473124829DK"));
    same("a tracking number");
    QVERIFY(book::hand_over(day.book(), number.carrier));
    same("handed over");
    QVERIFY(book::mark_came_back(day.book(), trays[0], {"refused", book::GoodsBack::on_the_shelf, true}));
    same("came back");
    QVERIFY(book::undo(day.book(), book::last_undoable(day.book())->id));
    same("that undone");
    QVERIFY(book::erase_buyer(day.book(), number.pieces.front().order));
    same("a buyer erased");
    QVERIFY(compared > 20);
}

void DayReadsTest::what_another_program_did()
{
    Workshop shop;
    shop.plan_the_morning();
    Day& day = shop.day();
    auto other = book::Book::open(day.book().path());
    QVERIFY(other.has_value());
    const auto parcels = book::parcels_in(*other, shop::ParcelState::planned);
    QVERIFY(book::lock_parcel(*other, parcels.front().id));
    QVERIFY(book::call_off(*other, parcels.back().pieces.front().order));
    day.moved();
    QVERIFY(all_of(day) == all_of(*day.beside()));
}

void DayReadsTest::no_more_than_was_touched()
{
    Workshop shop;
    shop.plan_the_morning();
    Day& day = shop.day();
    const auto parcels = day.parcels_in(shop::ParcelState::planned);
    const shop::Parcel& locked = parcels.front();
    const shop::Parcel& other = parcels.back();
    const int before = day.revision(other.id), order_before = day.revision(other.pieces.front().order);
    QVERIFY(book::lock_parcel(day.book(), locked.id));
    day.moved();
    QVERIFY(day.revision(locked.id) > before);
    QCOMPARE(day.revision(other.id), before);
    QCOMPARE(day.revision(other.pieces.front().order), order_before);
}

void DayReadsTest::what_was_read_beside()
{
    Workshop shop;
    shop.plan_the_morning();
    Day& day = shop.day();
    const auto take_over = [&](const auto& job) {
        const Day::Seen seen = day.seen();
        const std::unique_ptr<Day> beside = day.beside();
        job(beside->book());
        const std::string before = all_of(day);
        day.take(beside->read(seen));
        QVERIFY(all_of(day) != before);
        QVERIFY(all_of(day) == all_of(*day.beside()));
    };
    const auto parcels = day.parcels_in(shop::ParcelState::planned);
    const shop::ParcelId last = parcels.back().id;
    const int revision = day.revision(last);
    take_over([&](book::Book& book) { QVERIFY(book::lock_parcel(book, parcels.front().id)); });
    take_over([&](book::Book& book) { QVERIFY(book::undo(book, book::last_undoable(book)->id)); });
    QCOMPARE(day.revision(last), revision);
    take_over([&](book::Book& book) { // all but the first: those in between stay sorted
        for (std::size_t i = parcels.size() - 1; i > 0; --i) QVERIFY(book::drop_parcel(book, parcels[i].id));
    });
    take_over([&](book::Book& book) {
        for (std::size_t i = 1; i < parcels.size(); i += 2) QVERIFY(book::undo(book, book::last_undoable(book)->id));
    });
}

void DayReadsTest::nothing_older_than_what_is_held()
{
    Workshop shop;
    shop.plan_the_morning();
    Day& day = shop.day();
    const auto parcels = day.parcels_in(shop::ParcelState::planned);
    const Day::Seen seen = day.seen();
    const std::unique_ptr<Day> beside = day.beside();
    QVERIFY(book::lock_parcel(beside->book(), parcels.front().id));
    Day::Reading read = beside->read(seen);
    QVERIFY(book::unlock_parcel(day.book(), parcels.front().id)); // and the day goes on meanwhile
    QVERIFY(book::drop_parcel(day.book(), parcels.front().id));
    day.moved();
    day.take(std::move(read));
    QVERIFY(all_of(day) == all_of(*day.beside()));
    QCOMPARE(day.parcels_in(shop::ParcelState::planned).size(), parcels.size() - 1);
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::DayReadsTest)
#include "day_reads_test.moc"
