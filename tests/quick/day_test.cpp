// A whole day at the window, as a person lives it: keys, a scanner, a pointer, a file dropped. The book is only read,
// to see whether what was done is what she meant. Any word of warning from the QML engine fails.
#include "app/day_papers.h"
#include "app/painting/fonts.h"
#include "app/view/bench_steps.h"
#include "app/words/book.h"
#include "core/book/cupboard.h"
#include "core/book/orders.h"
#include "core/book/prints.h"
#include "core/book/settings.h"
#include "core/book/steps.h"
#include "core/papers/payload.h"
#include "tests/quick/workshop.h"

#include <QFile>
#include <QQuickStyle>
#include <QRegularExpression>
#include <QTest>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <set>

namespace stow::quick {

namespace {

using shop::OrderState;
using shop::ParcelState;

constexpr int background_work_ms = 300'000; // a wide net, nothing is timed

QStringList complaints; // of the run under way

void listen(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    // The offscreen platform says so when it lacks a capability; that is not ours.
    const bool ours = !message.contains(QLatin1String("propagateSizeHints"));
    if (type != QtDebugMsg && type != QtInfoMsg && ours) complaints += qFormatLogMessage(type, context, message);
    std::fprintf(stderr, "%s\n", qPrintable(qFormatLogMessage(type, context, message)));
}

// A file of the demo with other words in its first line.
QString with_heading(const Workshop& shop, const QString& file, const QByteArray& heading, const QByteArray& instead)
{
    QFile from(QStringLiteral(STOW_SOURCE_DIR "/demo_orders/") + file), to(shop.folder() + QLatin1Char('/') + file);
    if (!from.open(QIODevice::ReadOnly) || !to.open(QIODevice::WriteOnly)) return {};
    QByteArray text = from.readAll();
    const auto at = text.indexOf(heading);
    if (at < 0 || at > text.indexOf('\n')) return {};
    to.write(text.replace(at, heading.size(), instead));
    return to.fileName();
}

std::optional<shop::HeldOrder> order(const Workshop& shop, const char* number, const char* from = "Harbour Stall")
{
    return book::order_by_key(shop.book(), {from, number});
}

shop::Parcel parcel(const Workshop& shop, shop::ParcelId id)
{
    const auto held = book::parcel(shop.book(), id);
    return held ? held->parcel : shop::Parcel{};
}

QString code_of(const shop::Parcel& parcel)
{
    return QString::fromStdString(papers::to_text({papers::Payload::Kind::paper, parcel.number}).value());
}

QString code_of_label(const shop::Parcel& parcel, int print = 1)
{
    return QString::fromStdString(papers::to_text({papers::Payload::Kind::label, parcel.number, print}).value());
}

QString title_of(const shop::Parcel& parcel) // at the bench
{
    return QStringLiteral("Parcel ") + QString::fromStdString(parcel.number);
}

QString last_step(const Workshop& shop)
{
    const auto last = book::last_undoable(shop.book());
    return last ? words::step(*last) : QString();
}

std::size_t steps_made(const Workshop& shop)
{
    return book::steps(shop.book(), 10'000).size();
}

// Every checked order that is in no parcel.
std::vector<shop::HeldOrder> without_parcel(const Workshop& shop)
{
    std::vector<shop::HeldOrder> found;
    for (const shop::HeldOrder& held : book::orders_in(shop.book(), OrderState::checked)) {
        const auto parcels = book::parcels_of(shop.book(), held.joined_to.value_or(held.id));
        if (parcels.empty()) found.push_back(held);
    }
    return found;
}

QString grams(Weight weight)
{
    return QString::number((weight.units + 5) / 10);
}

bool has_file(const Workshop& shop, const QString& pattern, const std::string& folder = {})
{
    return !QDir(QString::fromStdString((shop.book().path().parent_path() / "papers" / folder).string()))
                .entryList({pattern}, QDir::Files)
                .isEmpty();
}

} // namespace

class DayTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void cleanup();

    void takes_in_a_file_once_its_column_is_named();
    void matches_a_title_once_and_checks_by_key();
    void plans_by_key_and_takes_another_outer_by_hand();
    void picks_by_scan_and_by_key();
    void sets_aside_what_is_not_there();
    void packs_weighs_and_ties_the_label();
    void keeps_which_print_was_stuck_on();
    void stops_at_a_wrong_code();
    void stops_a_parcel_whose_order_was_called_off();
    void hands_over_and_notes_the_tracking_number();
    void names_all_that_takes_the_keys();
    void counts_on_the_day_line_as_the_book_does();
    void reaches_every_place_by_key();
    void leads_the_tab_key_round();
    void opens_where_she_stopped();

private:
    void begin(const Workshop& like) { shop_ = std::make_unique<Workshop>(like); }
    bool packs_up_to_the_scale();
    void begin_with_something_everywhere();
    void walk(const std::function<void(const QString&)>& look);

    std::unique_ptr<Workshop> bare_;    // cupboard and carriers, nothing of the shops
    std::unique_ptr<Workshop> arrived_; // the morning's orders, none looked at
    std::unique_ptr<Workshop> planned_;
    std::unique_ptr<Workshop> shop_; // of the test under way
};

void DayTest::initTestCase()
{
    qInstallMessageHandler(listen);
    QVERIFY(painting::load_fonts());
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    bare_ = std::make_unique<Workshop>();
    bare_->furnish();
    arrived_ = std::make_unique<Workshop>(*bare_);
    arrived_->remember_titles();
    arrived_->take_in("Harbour Stall", "harbour_stall.csv");
    arrived_->take_in("Federkai", "federkai.csv");
    planned_ = std::make_unique<Workshop>(*arrived_);
    planned_->check_what_is_sound();
    planned_->plan();
}

void DayTest::init()
{
    complaints.clear();
}

void DayTest::cleanup()
{
    shop_.reset();
    QVERIFY2(complaints.isEmpty(), qPrintable(complaints.join(QLatin1Char('\n'))));
}

// 1 Take in -----------------------------------------------------------------------------------------------------------

void DayTest::takes_in_a_file_once_its_column_is_named()
{
    begin(*bare_);
    shop_->remember_titles();
    const QString file = with_heading(*shop_, QStringLiteral("harbour_stall.csv"), "Recipient", "Goes to");
    QVERIFY(!file.isEmpty());
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();

    at.drop_file(file);
    QTRY_VERIFY(at.reads(QStringLiteral("1 still missing: name")));
    at.press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(book::orders(shop_->book()).empty()); // not without the name

    at.click(at.named(QStringLiteral("Goes to: – not used –"), QAccessible::ComboBox));
    QTRY_VERIFY(at.named(QStringLiteral("name")));
    at.click(at.named(QStringLiteral("name")));
    QTRY_VERIFY(at.reads(QStringLiteral("All that is needed is there")));
    at.click(at.named(QStringLiteral("Shop"), QAccessible::EditableText));
    at.press(Qt::Key_A, Qt::ControlModifier);
    at.type(QStringLiteral("Harbour Stall"));
    at.press(Qt::Key_Return, Qt::ControlModifier);
    QTRY_COMPARE(book::orders(shop_->book()).size(), 16U);
    QVERIFY(order(*shop_, "HS-2041"));
    QCOMPARE(order(*shop_, "HS-2041")->order.to.name, "Ada Brinkmoor"); // out of the column she named
    QCOMPARE(order(*shop_, "HS-2041")->order.lines.size(), 3U);
    QTRY_VERIFY(at.beginning(QStringLiteral("Order "), QAccessible::Heading)); // the first one is looked at

    // The same file again: its columns are known by now, and nothing in it is new.
    const auto steps = steps_made(*shop_);
    at.press(Qt::Key_Escape);
    at.drop_file(file);
    QTRY_VERIFY(at.reads(QStringLiteral("known already")));
    QCOMPARE(steps_made(*shop_), steps);
}

void DayTest::matches_a_title_once_and_checks_by_key()
{
    begin(*bare_);
    shop_->remember_titles("Tin of nibs");
    shop_->take_in("Harbour Stall", "harbour_stall.csv");
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();

    at.click(at.beginning(QStringLiteral("HS-2043"), QAccessible::ListItem));
    QTRY_VERIFY(at.named(QStringLiteral("Order HS-2043")));
    at.press(Qt::Key_M);
    QTRY_VERIFY(at.focused() == at.named(QStringLiteral("Which good is this?"), QAccessible::EditableText));
    at.type(QStringLiteral("NIB-FINE"));
    at.press(Qt::Key_Return);
    const auto fine_nibs = [&](const char* number) {
        const auto held = order(*shop_, number);
        return std::any_of(held->order.lines.begin(), held->order.lines.end(),
                           [](const auto& line) { return line.good == shop::GoodCode{"NIB-FINE"}; });
    };
    QTRY_VERIFY(fine_nibs("HS-2043"));
    QVERIFY(fine_nibs("HS-2056")); // the other order with that title is matched by the same word

    // All that is fine is checked by one key; what has a word to read waits for its own.
    std::set<std::string> fine, blocked;
    for (const shop::HeldOrder& held : book::orders(shop_->book())) {
        const auto found = shop::look_over(held.order, shop_->day().today());
        if (found.empty()) fine.insert(held.order.key.number);
        if (std::any_of(found.begin(), found.end(), [](const auto& f) { return f.blocks; }))
            blocked.insert(held.order.key.number);
    }
    QVERIFY(!fine.empty() && !blocked.empty());
    at.press(Qt::Key_R);
    QTRY_COMPARE(order(*shop_, fine.begin()->c_str())->state, OrderState::checked);
    QCOMPARE(order(*shop_, "HS-2042")->state, OrderState::arrived); // the buyer wrote a note
    at.click(at.beginning(QStringLiteral("HS-2042"), QAccessible::ListItem));
    QTRY_VERIFY(at.named(QStringLiteral("Order HS-2042")));
    at.press(Qt::Key_Return);
    QTRY_COMPARE(order(*shop_, "HS-2042")->state, OrderState::checked);

    at.click(at.beginning(QStringLiteral("HS-2051"), QAccessible::ListItem)); // not paid
    QTRY_VERIFY(at.named(QStringLiteral("Order HS-2051")));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("Not yet: ")));
    for (const std::string& number : blocked) QCOMPARE(order(*shop_, number.c_str())->state, OrderState::arrived);

    QVERIFY(!at.named(QStringLiteral("Ready"), QAccessible::Button)); // not offered where it would be refused
    at.press(Qt::Key_P);
    QTRY_VERIFY(order(*shop_, "HS-2051")->order.paid);
    QTRY_VERIFY(at.named(QStringLiteral("Ready"), QAccessible::Button));
    at.press(Qt::Key_Return);
    QTRY_COMPARE(order(*shop_, "HS-2051")->state, OrderState::checked);
    at.press(Qt::Key_Z, Qt::ControlModifier);
    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_VERIFY(!order(*shop_, "HS-2051")->order.paid);
}

// 2 Plan --------------------------------------------------------------------------------------------------------------

void DayTest::plans_by_key_and_takes_another_outer_by_hand()
{
    begin(*arrived_);
    shop_->check_what_is_sound();
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    QVERIFY(!without_parcel(*shop_).empty());

    at.press(Qt::Key_F2);
    QTRY_VERIFY(at.named(QStringLiteral("Plan the day"), QAccessible::Button));
    at.press(Qt::Key_Return);
    QTRY_VERIFY_WITH_TIMEOUT(!book::parcels(shop_->book()).empty(), background_work_ms);
    QTRY_VERIFY(at.reads(QStringLiteral("parcels planned")));
    for (const shop::HeldOrder& held : without_parcel(*shop_)) {
        const QString number = QString::fromStdString(held.order.key.number);
        QVERIFY2(at.beginning(number, QAccessible::ListItem), qPrintable(number + QStringLiteral(" is forgotten")));
    }

    // Another outer for the first. One that cannot hold it is refused in words, and nothing has changed.
    const shop::Parcel first = book::parcels_in(shop_->book(), ParcelState::planned).front();
    const auto parcels = book::parcels(shop_->book()).size();
    const auto outer = [&] { return book::parcel(shop_->book(), first.id)->plan.outer; };
    const auto choose = [&](const QString& name) { // O, down to it, Enter
        at.press(Qt::Key_O);
        if (!QTest::qWaitFor([&] { return at.beginning(QStringLiteral("An outer for"), QAccessible::Heading); }))
            return false;
        for (int i = 0; i < 30 && !at.selected().startsWith(name); ++i) at.press(Qt::Key_Down);
        const bool found = at.selected().startsWith(name);
        at.press(Qt::Key_Return);
        return found;
    };
    const shop::SupplyCode before = outer();
    const auto larger = shop_->day().cupboard().supplies.at({"K3"});
    QVERIFY(before != larger.code);
    QVERIFY(choose(QStringLiteral("Carton 160 × 115 × 95")));
    QTRY_VERIFY(at.reads(QStringLiteral("K1 does not take HS-2056")));
    QCOMPARE(outer().text, before.text);
    QVERIFY(at.beginning(QStringLiteral("An outer for"), QAccessible::Heading)); // still, for another choice
    at.press(Qt::Key_Escape);
    QVERIFY(choose(QString::fromStdString(larger.name)));
    QTRY_COMPARE(outer().text, larger.code.text);
    QVERIFY(parcel(*shop_, first.id).locked); // and kept, whatever is planned again

    at.press(Qt::Key_Z, Qt::ControlModifier); // one step: puts it back and lets it go
    QTRY_COMPARE(outer().text, before.text);
    QVERIFY(!parcel(*shop_, first.id).locked);
    QCOMPARE(book::parcels(shop_->book()).size(), parcels);
}

// 3 Pick --------------------------------------------------------------------------------------------------------------

void DayTest::picks_by_scan_and_by_key()
{
    begin(*planned_);
    // One good bears a GTIN of the kind kept for use inside a shop (GS1 General Specifications, prefixes 200-299).
    shop::Good good = *shop_->day().cupboard().good({"NIB-FINE"});
    good.gtin = "2000000000015";
    QVERIFY(book::put_good(shop_->day().book(), good));
    shop_->day().moved();
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    const auto in_a_tray = [&] {
        const auto planned = book::parcels_in(shop_->book(), ParcelState::planned);
        return std::count_if(planned.begin(), planned.end(), [](const auto& p) { return !p.tray.empty(); });
    };

    at.press(Qt::Key_F3);
    QTRY_VERIFY(at.named(QStringLiteral("Start a round"), QAccessible::Button));
    at.press(Qt::Key_Return);
    QTRY_COMPARE(in_a_tray(), shop_->day().cupboard().house.trays);
    QVERIFY(has_file(*shop_, QStringLiteral("pick-list.pdf")));
    QVERIFY(has_file(*shop_, QStringLiteral("labels.pdf")));

    const auto to_go = [&] { return at.names(QAccessible::ListItem).filter(QStringLiteral("Shelf ")); };
    QVERIFY(!to_go().empty());
    const QStringList picked_before = to_go().filter(QStringLiteral(", picked"));
    QVERIFY(picked_before.empty());
    at.scan(QStringLiteral("2000000000015"));
    QTRY_VERIFY(at.reads(QStringLiteral("1 of ")));
    // A tick is taken back alone; the round stays.
    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_VERIFY(!at.reads(QStringLiteral("1 of ")));
    QCOMPARE(in_a_tray(), shop_->day().cupboard().house.trays);
    QVERIFY(at.reads(QStringLiteral("The tick is gone.")));
    at.press(Qt::Key_Y, Qt::ControlModifier);
    QTRY_VERIFY(at.reads(QStringLiteral("1 of ")));

    while (!at.named(QStringLiteral("To the bench"), QAccessible::Button)) {
        const QString now = at.names(QAccessible::Heading).join(QLatin1Char('|'));
        at.press(Qt::Key_Space);
        QTRY_VERIFY(at.names(QAccessible::Heading).join(QLatin1Char('|')) != now);
    }
    // A code too many is stopped at, with the trays full as without.
    at.scan(QStringLiteral("2000000000015"));
    QTRY_VERIFY(at.reads(QStringLiteral("Put it back")));
    at.press(Qt::Key_Space);
    QTRY_VERIFY(!at.reads(QStringLiteral("Put it back")));
    at.press(Qt::Key_Return);
    QTRY_COMPARE(book::parcels_in(shop_->book(), ParcelState::picked).size(),
                 static_cast<std::size_t>(shop_->day().cupboard().house.trays));
    QTRY_VERIFY(at.reads(QStringLiteral("Do this now"))); // she stands at the bench
}

void DayTest::sets_aside_what_is_not_there()
{
    begin(*planned_);
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    at.press(Qt::Key_F3);
    QTRY_VERIFY(at.named(QStringLiteral("Start a round"), QAccessible::Button));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("Round 1")));
    const auto before = book::parcels_in(shop_->book(), ParcelState::planned);
    const auto pieces = [&] {
        int all = 0;
        for (const auto& [code, good] : book::cupboard(shop_->book()).goods) all += good.pieces;
        return all;
    };
    const int pieces_before = pieces();

    at.press(Qt::Key_N);
    QTRY_VERIFY(!book::orders_in(shop_->book(), OrderState::set_aside).empty());
    const auto after = book::parcels_in(shop_->book(), ParcelState::planned);
    QVERIFY(after.size() < before.size()); // its outer is free again
    for (const shop::HeldOrder& held : book::orders_in(shop_->book(), OrderState::set_aside)) {
        QVERIFY(!held.aside_reason.empty());
        QVERIFY(book::parcels_of(shop_->book(), held.id).empty());
    }
    QVERIFY(pieces() < pieces_before); // and the shelf is counted right
}

// 4 Bench -------------------------------------------------------------------------------------------------------------

bool DayTest::packs_up_to_the_scale()
{
    AtTheWindow& at = shop_->at();
    for (int step = 0; step < 60; ++step) {
        if (at.named(QStringLiteral("Put it on the scale"), QAccessible::Heading)) return true;
        const auto made = steps_made(*shop_);
        at.press(Qt::Key_Space);
        if (!QTest::qWaitFor([&] { return steps_made(*shop_) > made; })) return false;
    }
    return false;
}

void DayTest::packs_weighs_and_ties_the_label()
{
    begin(*planned_);
    const auto picked = shop_->pick(2);
    const shop::ParcelId here = book::parcels_of(shop_->book(), order(*shop_, "HS-2056")->id).front().id;
    const auto held = *book::parcel(shop_->book(), here);
    QVERIFY(std::find(picked.begin(), picked.end(), here) != picked.end());
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    at.press(Qt::Key_F4);
    QTRY_VERIFY(at.reads(QStringLiteral("Do this now")));
    if (!at.named(title_of(held.parcel))) at.press(Qt::Key_V); // the other one first: its courier comes sooner
    QTRY_VERIFY(at.named(title_of(held.parcel)));
    QVERIFY(packs_up_to_the_scale());
    QVERIFY(parcel(*shop_, here).steps_done > 1);

    // Without a weight it does not go on: the key leads to where it is typed.
    const auto typing = [&] { return AtTheWindow::name_of(at.focused()) == QLatin1String("Weight from the scale"); };
    QVERIFY(!typing());
    at.press(Qt::Key_Space);
    QTRY_VERIFY(typing());
    QCOMPARE(parcel(*shop_, here).state, ParcelState::picked);

    // A piece is missing: said at once, over the whole window, until a key is pressed.
    const shop::Good good = *shop_->day().cupboard().good({"SEAL-ANCHOR"});
    at.type(grams(held.plan.weight.mean - good.weight.mean));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("most likely missing: 1 × ") + QString::fromStdString(good.name)));
    QVERIFY(at.reads(QStringLiteral("Look into it")));
    at.press(Qt::Key_Space);
    QTRY_VERIFY(!at.reads(QStringLiteral("Look into it")));
    QVERIFY(!typing());
    at.press(Qt::Key_Space); // does not pass it either: to be weighed again
    QTRY_VERIFY(typing());
    QCOMPARE(parcel(*shop_, here).state, ParcelState::picked);
    at.press(Qt::Key_Escape);
    QTRY_VERIFY(!at.reads(QStringLiteral("Look into it")));
    QCOMPARE(parcel(*shop_, here).state, ParcelState::picked);

    // The right one.
    at.press(Qt::Key_W);
    at.type(grams(held.plan.weight.mean));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("✓ as expected")));
    at.press(Qt::Key_Space);
    QTRY_COMPARE(parcel(*shop_, here).state, ParcelState::packed);
    QVERIFY(parcel(*shop_, here).postage);

    at.press(Qt::Key_P);
    QTRY_VERIFY(at.reads(QStringLiteral("labels.pdf")));
    at.press(Qt::Key_P); // it came out creased: which of the two is to be stuck on is said
    QTRY_VERIFY(at.reads(QStringLiteral("Print 2 of label")));
    QTRY_VERIFY(at.reads(QStringLiteral("the one marked print 2; tear up the one before")));
    QVERIFY(has_file(*shop_, QStringLiteral("labels.pdf"), held.parcel.number));
    // The first print, or another paper of the parcel, does not tie it.
    at.scan(code_of_label(held.parcel, 1));
    QTRY_VERIFY(at.named(QStringLiteral("An older label")));
    QVERIFY(at.reads(QStringLiteral("Print 2 was made later: stick that one on and destroy this one")));
    at.press(Qt::Key_Return);
    at.scan(code_of(held.parcel));
    QTRY_VERIFY(at.named(QStringLiteral("Not the label")));
    at.press(Qt::Key_Return);
    QCOMPARE(parcel(*shop_, here).state, ParcelState::packed);
    at.scan(code_of_label(held.parcel, 2));
    QTRY_COMPARE(parcel(*shop_, here).state, ParcelState::labelled);
    // The next one lies on the bench.
    QTRY_VERIFY(!at.named(title_of(held.parcel)));
    QVERIFY(at.reads(QStringLiteral("Do this now")));
    QVERIFY(last_step(*shop_).endsWith(QLatin1String("print 2, the last")));
}

// Of two prints of a label the book knows afterwards which one went out.
void DayTest::keeps_which_print_was_stuck_on()
{
    begin(*planned_);
    const shop::ParcelId here = shop_->pick(2).front();
    shop_->pack({here});
    const auto steps = view::parcel_steps(shop_->day(), *book::parcel(shop_->book(), here));
    QVERIFY(book::bench_tick(shop_->day().book(), here, static_cast<int>(steps.size()) - 1));
    const shop::Parcel packed = parcel(*shop_, here);
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    const auto lay_on_the_bench = [&] {
        at.scan(code_of(packed));
        QTRY_VERIFY(at.named(title_of(packed)));
        QTRY_VERIFY(
            at.named(QStringLiteral("Stick label ") + QString::fromStdString(packed.number) + QStringLiteral(" on")));
    };
    const auto stick_on_and_undo = [&](const char* told) {
        at.press(Qt::Key_Space);
        QTRY_COMPARE(parcel(*shop_, here).state, ParcelState::labelled);
        QVERIFY2(last_step(*shop_).endsWith(QLatin1String(told)), qPrintable(last_step(*shop_)));
        shop_->desk().undo();
        QTRY_COMPARE(parcel(*shop_, here).state, ParcelState::packed);
    };
    lay_on_the_bench();
    at.press(Qt::Key_P);
    QTRY_VERIFY(at.reads(QStringLiteral("labels.pdf")));
    stick_on_and_undo(packed.number.c_str()); // of one print there is nothing to tell

    lay_on_the_bench();
    at.press(Qt::Key_P);
    QTRY_VERIFY(at.reads(QStringLiteral("tear up the one before")));
    stick_on_and_undo("not scanned; it was printed 2 times");

    lay_on_the_bench();
    at.scan(code_of_label(packed, 1));
    QTRY_VERIFY(at.named(QStringLiteral("An older label")));
    at.press(Qt::Key_Return);
    stick_on_and_undo("print 1, though print 2 was made later");

    lay_on_the_bench(); // what was scanned for the step before is not remembered
    stick_on_and_undo("not scanned; it was printed 2 times");
}

void DayTest::stops_at_a_wrong_code()
{
    begin(*planned_);
    const auto picked = shop_->pick(2);
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    at.scan(code_of(parcel(*shop_, picked[0]))); // from wherever she is, to this parcel at the bench
    QTRY_VERIFY(at.named(title_of(parcel(*shop_, picked[0]))));

    at.scan(QStringLiteral("NO-SUCH-GOOD"));
    QTRY_VERIFY(at.reads(QStringLiteral("Not in this parcel")));
    QString damaged = code_of(parcel(*shop_, picked[0]));
    at.press(Qt::Key_X); // some key is not enough
    at.press(Qt::Key_Down);
    QVERIFY(at.reads(QStringLiteral("Not in this parcel")));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(!at.reads(QStringLiteral("Not in this parcel")));
    QCOMPARE(parcel(*shop_, picked[0]).steps_done, 0);

    std::swap(damaged[7], damaged[8]);
    damaged[9] = QLatin1Char('7');
    at.scan(damaged);
    QTRY_VERIFY(at.reads(QStringLiteral("Scan it again")));
    at.press(Qt::Key_Space);
    QTRY_VERIFY(!at.reads(QStringLiteral("Scan it again")));

    // The label of the other parcel, when this one is closed and waits for its own.
    QVERIFY(packs_up_to_the_scale());
    at.type(grams(book::parcel(shop_->book(), picked[0])->plan.weight.mean));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("✓ as expected")));
    at.press(Qt::Key_Space);
    QTRY_COMPARE(parcel(*shop_, picked[0]).state, ParcelState::packed);
    at.scan(code_of_label(parcel(*shop_, picked[1])));
    QTRY_VERIFY(at.named(QStringLiteral("Wrong label")));
    at.scan(code_of_label(parcel(*shop_, picked[0]))); // a scan does not wave it away
    QVERIFY(at.named(QStringLiteral("Wrong label")));
    QCOMPARE(parcel(*shop_, picked[0]).state, ParcelState::packed);
    QCOMPARE(parcel(*shop_, picked[1]).state, ParcelState::picked);
    at.press(Qt::Key_Space);
    QTRY_VERIFY(!at.named(QStringLiteral("Wrong label")));
    // A label of the time when labels did not say which print they are.
    const std::string first = *papers::to_text({papers::Payload::Kind::unmarked, parcel(*shop_, picked[0]).number});
    at.scan(QString::fromStdString(first));
    QTRY_COMPARE(parcel(*shop_, picked[0]).state, ParcelState::labelled);
    // Found later with an earlier print on it: the scan says so.
    for (int print = 1; print <= 2; ++print)
        book::count_print(shop_->day().book(), "labels", {parcel(*shop_, picked[0]).number});
    at.scan(code_of_label(parcel(*shop_, picked[0]), 1));
    QTRY_VERIFY(at.reads(QStringLiteral("print 2 was made later")));
    at.scan(QStringLiteral("SB9:P:1:") + QLatin1Char(papers::check_37_2("SB9P1").value()));
    QTRY_VERIFY(at.named(QStringLiteral("A newer code")));
}

void DayTest::stops_a_parcel_whose_order_was_called_off()
{
    begin(*planned_);
    const auto all = book::parcels_in(shop_->book(), ParcelState::planned);
    const auto picked = shop_->pick(all.size());
    const auto off = book::parcels_of(shop_->book(), order(*shop_, "HS-2055")->id).front();
    shop_->take_in("Harbour Stall", "harbour_stall_later.csv");
    QVERIFY(order(*shop_, "HS-2055")->order.called_off);
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    at.press(Qt::Key_F4);
    QTRY_VERIFY(at.reads(QStringLiteral("Do this now")));

    at.scan(code_of(off));
    QTRY_VERIFY(at.reads(QStringLiteral("HS-2055 was called off")));
    QVERIFY(at.named(QStringLiteral("Stop")));
    const auto steps = steps_made(*shop_);
    at.press(Qt::Key_Z, Qt::ControlModifier); // no key reaches what lies behind, but those that go on
    at.press(Qt::Key_F1);
    QVERIFY(at.named(QStringLiteral("Stop")));
    at.press(Qt::Key_Space);
    QTRY_VERIFY(!at.named(QStringLiteral("Stop")));
    QVERIFY(at.reads(QStringLiteral("Do this now")));
    QCOMPARE(steps_made(*shop_), steps);
    at.scan(code_of(book::parcels_of(shop_->book(), order(*shop_, "HS-2056")->id).front()));
    QTRY_VERIFY(at.reads(QStringLiteral("HS-2056 changed since"))); // another street, another tin
    at.press(Qt::Key_Space);
    QTRY_VERIFY(!at.named(QStringLiteral("Stop")));
    const auto found = parcel(*shop_, off.id);
    QCOMPARE(found.state, ParcelState::picked);
    QCOMPARE(found.steps_done, 0);

    // What only changed goes on once she has looked at it and says that the parcel still serves.
    const auto changed = book::parcels_of(shop_->book(), order(*shop_, "HS-2056")->id).front();
    QTRY_VERIFY(at.reads(QString::fromStdString(changed.number)));
    QVERIFY(book::parcel_standing(shop_->book(), changed).stops());
    at.press(Qt::Key_S);
    QTRY_VERIFY(!book::parcel_standing(shop_->book(), parcel(*shop_, changed.id)).stops());
}

// 5 Hand-over ---------------------------------------------------------------------------------------------------------

void DayTest::hands_over_and_notes_the_tracking_number()
{
    begin(*planned_);
    const auto parcels = shop_->pick(6);
    shop_->pack(parcels);
    shop_->label({parcels.begin(), parcels.begin() + 5});
    QVERIFY(shop_->open());
    AtTheWindow& at = shop_->at();
    at.press(Qt::Key_F5);
    QTRY_VERIFY(at.reads(QStringLiteral("5 parcels ready to go")));
    const QStringList here = at.names(QAccessible::Button).filter(QStringLiteral(": courier is here"));
    QVERIFY(!here.empty());
    const std::string carrier = here.front().section(QLatin1Char(':'), 0, 0).toStdString();
    std::set<shop::ParcelId> labelled, others;
    for (const shop::ParcelId id : parcels) {
        const auto now = parcel(*shop_, id);
        (now.state == ParcelState::labelled && now.carrier == carrier ? labelled : others).insert(id);
    }
    QVERIFY(!labelled.empty());

    at.press(Qt::Key_1);
    QTRY_COMPARE(book::hand_over_lists(shop_->book()).size(), 1U);
    const auto list = book::hand_over_lists(shop_->book()).front();
    QCOMPARE(list.carrier, carrier);
    QVERIFY(std::set<shop::ParcelId>(list.parcels.begin(), list.parcels.end()) == labelled);
    for (const shop::ParcelId id : labelled) QCOMPARE(parcel(*shop_, id).state, ParcelState::handed_over);
    for (const shop::ParcelId id : others) QVERIFY(parcel(*shop_, id).state != ParcelState::handed_over);
    QTRY_VERIFY(has_file(*shop_, QStringLiteral("hand-over-list-*.pdf")));

    const QString number = QString::fromStdString(parcel(*shop_, *labelled.begin()).number);
    at.click(at.beginning(number, QAccessible::ListItem));
    at.press(Qt::Key_T);
    const QString field = QStringLiteral("Tracking number of ") + number;
    QTRY_VERIFY(at.named(field, QAccessible::EditableText));
    at.type(QStringLiteral("ZT-4471-0098"));
    at.press(Qt::Key_Return);
    QTRY_COMPARE(parcel(*shop_, *labelled.begin()).tracking, "ZT-4471-0098");
    QTRY_VERIFY(at.beginning(number, QAccessible::ListItem) != nullptr);
    QTRY_VERIFY(at.reads(QStringLiteral("ZT-4471-0098")));
}

// 6 Everywhere --------------------------------------------------------------------------------------------------------

// Something at every place: arrived, planned, in a tray, picked, packed, labelled.
void DayTest::begin_with_something_everywhere()
{
    begin(*planned_);
    const auto parcels = shop_->pick(5);
    shop_->pack({parcels.begin(), parcels.begin() + 3});
    shop_->label({parcels.begin(), parcels.begin() + 2});
    const shop::Parcel next = book::parcels_in(shop_->book(), ParcelState::planned).front();
    QVERIFY(book::start_round(shop_->day().book(), {{next.id, "A"}}));
    shop_->day().moved();
    QVERIFY(shop_->open());
}

// To every place of the window and every sheet that is laid over one; `look` is called at each.
void DayTest::walk(const std::function<void(const QString&)>& look)
{
    struct Stop {
        const char* name;
        std::vector<Qt::Key> keys; // to be pressed one after another
    };
    static const std::vector<Stop> stops{
        {"arrivals", {Qt::Key_F1}},
        {"an order by hand", {Qt::Key_F1, Qt::Key_N}},
        {"an order set aside", {Qt::Key_F1, Qt::Key_Down, Qt::Key_S}},
        {"plan", {Qt::Key_F2}},
        {"another outer", {Qt::Key_F2, Qt::Key_O}},
        {"pick", {Qt::Key_F3}},
        {"bench", {Qt::Key_F4}},
        {"something added", {Qt::Key_F4, Qt::Key_A}},
        {"hand-over", {Qt::Key_F5}},
        {"goods", {Qt::Key_F9, Qt::Key_1}},
        {"a new good", {Qt::Key_F9, Qt::Key_1, Qt::Key_N}},
        {"supplies", {Qt::Key_F9, Qt::Key_2}},
        {"a supply", {Qt::Key_F9, Qt::Key_2, Qt::Key_Return}},
        {"rate sheets", {Qt::Key_F9, Qt::Key_3}},
        {"records", {Qt::Key_F9, Qt::Key_4}},
        {"house", {Qt::Key_F9, Qt::Key_5}},
    };
    AtTheWindow& at = shop_->at();
    for (const Stop& stop : stops) {
        for (const Qt::Key key : stop.keys) {
            at.press(key);
            at.press(Qt::Key_End); // lets go of a key that might be a scanner's, and does nothing here
            at.settle();
        }
        look(QString::fromLatin1(stop.name));
        if (QTest::currentTestFailed()) return;
        at.press(Qt::Key_Escape);
    }
}

void DayTest::names_all_that_takes_the_keys()
{
    begin_with_something_everywhere();
    if (QTest::currentTestFailed()) return;
    AtTheWindow& at = shop_->at();
    static const std::set<QAccessible::Role> worked_with{
        QAccessible::Button,   QAccessible::EditableText, QAccessible::CheckBox, QAccessible::ComboBox,
        QAccessible::ListItem, QAccessible::PageTab,      QAccessible::Slider,   QAccessible::List};
    walk([&](const QString& stop) {
        int named = 0;
        QString nameless;
        const auto all_named = [&] {
            named = 0;
            nameless.clear();
            for (QQuickItem* item : at.seen()) {
                const bool takes_keys = item->activeFocusOnTab() || item == at.focused();
                if (!takes_keys && !worked_with.contains(AtTheWindow::role_of(item))) continue;
                const bool has_name = !AtTheWindow::name_of(item).trimmed().isEmpty();
                if (!has_name && (item != at.focused() || item->activeFocusOnTab())) {
                    nameless = QStringLiteral("%1: a nameless %2 in %3")
                                   .arg(stop, QString::fromLatin1(item->metaObject()->className()),
                                        at.name_of(item->parentItem()));
                }
                named += has_name ? 1 : 0;
            }
            return nameless.isEmpty();
        };
        QVERIFY2(QTest::qWaitFor(all_named), qPrintable(nameless)); // rows out of sight are still being made
        QVERIFY2(named > 7, qPrintable(stop));                      // the day line alone has seven
    });
}

void DayTest::counts_on_the_day_line_as_the_book_does()
{
    begin_with_something_everywhere();
    if (QTest::currentTestFailed()) return;
    AtTheWindow& at = shop_->at();
    std::set<shop::OrderId> arrived, to_plan, to_pick, at_bench, to_go; // what is planned waits to be picked
    for (const auto& held : book::orders_in(shop_->book(), OrderState::arrived)) arrived.insert(held.id);
    for (const auto& held : without_parcel(*shop_)) to_plan.insert(held.id);
    for (const shop::Parcel& parcel : book::parcels(shop_->book())) {
        auto& place = parcel.state == ParcelState::labelled  ? to_go
                      : parcel.state != ParcelState::planned ? at_bench
                                                             : to_pick;
        for (const shop::Piece& piece : parcel.pieces) place.insert(piece.order);
    }
    const auto says = [&](const char* step) {
        QQuickItem* tab = at.beginning(QString::fromLatin1(step) + QLatin1Char(','), QAccessible::PageTab);
        return tab != nullptr ? AtTheWindow::name_of(tab) : QString();
    };
    const auto words = [](const char* step, const std::set<shop::OrderId>& orders) {
        return QStringLiteral("%1, %2 waiting").arg(QLatin1String(step)).arg(orders.size());
    };
    for (const auto* orders : {&arrived, &to_plan, &to_pick, &at_bench, &to_go}) QVERIFY(!orders->empty());
    QCOMPARE(says("Arrivals"), words("Arrivals", arrived));
    QCOMPARE(says("Plan"), words("Plan", to_plan));
    QCOMPARE(says("Pick"), words("Pick", to_pick));
    QCOMPARE(says("Bench"), words("Bench", at_bench));
    QCOMPARE(says("Hand-over"), words("Hand-over", to_go));
}

void DayTest::reaches_every_place_by_key()
{
    begin_with_something_everywhere();
    if (QTest::currentTestFailed()) return;
    AtTheWindow& at = shop_->at();
    const auto stands_at = [&](const char* step) {
        QQuickItem* tab = at.beginning(QString::fromLatin1(step) + QLatin1Char(','), QAccessible::PageTab);
        return tab != nullptr && QAccessible::queryAccessibleInterface(tab)->state().selected;
    };
    struct Place {
        Qt::Key key;
        const char* step;
        const char* list; // that is there and nowhere else
    };
    for (const Place& place : {Place{Qt::Key_F5, "Hand-over", "Parcels"}, Place{Qt::Key_F1, "Arrivals", "Orders"},
                               Place{Qt::Key_F3, "Pick", "The walk"}, Place{Qt::Key_F2, "Plan", "Parcels"},
                               Place{Qt::Key_F4, "Bench", "Steps"}}) {
        at.press(place.key);
        QTRY_VERIFY2(stands_at(place.step), place.step);
        QTRY_VERIFY2(at.named(QString::fromLatin1(place.list), QAccessible::List), place.step);
        at.press(Qt::Key_F, Qt::ControlModifier);
        const QString find = QStringLiteral("Name, postcode, order or tracking number");
        QTRY_VERIFY2(at.named(find, QAccessible::EditableText), place.step);
        QCOMPARE(at.focused(), at.named(find, QAccessible::EditableText));
        at.press(Qt::Key_Escape);
        QTRY_VERIFY2(!at.named(find, QAccessible::EditableText), place.step);
    }
    at.press(Qt::Key_F9);
    QTRY_VERIFY(at.reads(QStringLiteral("Rate sheets")));
    QVERIFY(!stands_at("Bench"));

    // Found by a part of the name, and on to the bench with Enter.
    const auto waiting = book::parcels_in(shop_->book(), ParcelState::picked).front();
    const auto held = book::order(shop_->book(), waiting.pieces.front().order);
    at.press(Qt::Key_F, Qt::ControlModifier);
    at.type(QString::fromStdString(waiting.number));
    QTRY_VERIFY(at.beginning(QString::fromStdString(held->order.key.number), QAccessible::ListItem));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(stands_at("Bench"));
    QVERIFY(at.named(title_of(waiting)));
}

void DayTest::leads_the_tab_key_round()
{
    begin_with_something_everywhere();
    if (QTest::currentTestFailed()) return;
    AtTheWindow& at = shop_->at();
    walk([&](const QString& stop) {
        std::set<QQuickItem*> met;
        constexpr int most = 400;
        for (int i = 0; i < most; ++i) {
            QQuickItem* before = at.focused();
            at.press(Qt::Key_Tab);
            QVERIFY2(at.focused() != nullptr && at.focused() != before,
                     qPrintable(stop + QStringLiteral(": Tab does not leave ") + at.name_of(before)));
            if (!met.insert(at.focused()).second) break;
        }
        // One round, and it came by everything.
        QVERIFY2(met.size() < most, qPrintable(stop));
        const auto came_by = [&](QQuickItem* item) {
            return std::any_of(met.begin(), met.end(),
                               [&](QQuickItem* one) { return item == one || item->isAncestorOf(one); });
        };
        QQuickItem* panel = *met.begin(); // over the screen: then the round is in it
        while (panel != nullptr && AtTheWindow::role_of(panel) != QAccessible::Dialog) panel = panel->parentItem();
        for (QQuickItem* item : at.seen()) {
            if (!item->activeFocusOnTab() || !item->isEnabled()) continue;
            if (panel != nullptr && !panel->isAncestorOf(item)) continue;
            QVERIFY2(came_by(item), qPrintable(stop + QStringLiteral(": Tab misses ") + at.name_of(item)));
        }
        // What is worked with the arrow keys is come by as well: else there is no way back to it.
        for (const char* list : {"Orders", "Parcels", "The walk", "Goods", "Supplies"}) {
            QQuickItem* seen = at.named(QString::fromLatin1(list), QAccessible::List);
            if (seen == nullptr || (panel != nullptr && !panel->isAncestorOf(seen))) continue;
            QVERIFY2(came_by(seen),
                     qPrintable(stop + QStringLiteral(": Tab does not come back to ") + QLatin1String(list)));
        }
    });
}

// 7 The next morning --------------------------------------------------------------------------------------------------

void DayTest::opens_where_she_stopped()
{
    begin(*planned_);
    const auto picked = shop_->pick(3);
    QVERIFY(shop_->open());
    shop_->at().press(Qt::Key_F4);
    QTRY_VERIFY(shop_->at().reads(QStringLiteral("Do this now")));
    const auto here = [&] {
        const auto found = std::find_if(picked.begin(), picked.end(), [&](shop::ParcelId id) {
            return shop_->at().named(title_of(parcel(*shop_, id))) != nullptr;
        });
        return found != picked.end() ? *found : shop::ParcelId{};
    };
    const shop::ParcelId first = here();
    shop_->at().press(Qt::Key_V); // this one later
    QTRY_VERIFY(here() != first);
    const shop::ParcelId second = here();
    shop_->at().press(Qt::Key_Space);
    QTRY_COMPARE(parcel(*shop_, second).steps_done, 1);
    shop_->at().press(Qt::Key_Space);
    QTRY_COMPARE(parcel(*shop_, second).steps_done, 2);
    const QStringList headings = shop_->at().names(QAccessible::Heading);
    QVERIFY(!headings.empty());

    shop_->at().press(Qt::Key_Q, Qt::ControlModifier);
    QTRY_VERIFY(!shop_->is_open());
    shop_->close();
    QVERIFY(shop_->open());
    QTRY_VERIFY(shop_->at().named(title_of(parcel(*shop_, second))));
    QCOMPARE(shop_->at().names(QAccessible::Heading), headings);
    QCOMPARE(parcel(*shop_, second).steps_done, 2);
    shop_->at().press(Qt::Key_Space); // and goes on from there
    QTRY_COMPARE(parcel(*shop_, second).steps_done, 3);
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::DayTest)
#include "day_test.moc"
