// How many keys the hurried moments take: a plain parcel from its tray to its label, and a courier who comes early.
#include "core/book/orders.h"
#include "core/papers/payload.h"
#include "tests/quick/print_system.h"
#include "tests/quick/recorded_scale.h"
#include "tests/quick/workshop.h"

#include <QQuickStyle>
#include <QTest>

namespace stow::quick {

using shop::ParcelState;

class PressesTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void a_plain_parcel_takes_four_by_key();
    void a_plain_parcel_takes_four_by_scan();
    void a_courier_four_hours_early_takes_two();

private:
    // A parcel of one line and one piece, in its tray, on the bench; the scale is plugged in and the printer ready.
    shop::ParcelId a_plain_one_at_the_bench(Workshop& shop);
    void put_on_the_scale(Workshop& shop, shop::ParcelId id);
    ParcelState state(Workshop& shop, shop::ParcelId id) { return book::parcel(shop.book(), id)->parcel.state; }

    std::unique_ptr<Workshop> planned_;
    std::shared_ptr<RecordedScale::Cable> cable_;
    int presses_ = 0; // keys and scans
};

void PressesTest::initTestCase()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->furnish();
    planned_->remember_titles();
    planned_->take_in("Harbour Stall", "harbour_stall.csv");
    planned_->take_in("Federkai", "federkai.csv");
    planned_->check_what_is_sound();
    planned_->plan();
}

shop::ParcelId PressesTest::a_plain_one_at_the_bench(Workshop& shop)
{
    presses_ = 0;
    shop::ParcelId plain;
    for (const shop::ParcelId id : shop.pick(26)) {
        const auto held = book::parcel(shop.book(), id);
        const shop::HeldOrder* order = shop.day().order(held->plan.pieces.front().order);
        const bool one = held->plan.pieces.size() == 1 && held->plan.pieces.front().count == 1;
        const bool plain_order = order != nullptr && !order->order.gift && order->order.note.empty();
        if (plain == shop::ParcelId{} && one && plain_order) plain = id;
    }
    cable_ = std::make_shared<RecordedScale::Cable>();
    cable_->plugged = true;
    if (!shop.open()) return {};
    shop.desk().plugIn(std::make_unique<RecordedScale>(cable_));
    shop.desk().cupboard()->house()->set(QStringLiteral("printer of labels"), QStringLiteral("LABELS"));
    shop.desk().openParcel(plain.value);
    shop.at().settle();
    return plain;
}

void PressesTest::put_on_the_scale(Workshop& shop, shop::ParcelId id)
{
    const auto held = book::parcel(shop.book(), id);
    cable_->put_on(static_cast<int>((held->plan.weight.mean.units + 5) / 10));
    QTRY_VERIFY2(shop.desk().bench()->doNow().startsWith(QStringLiteral("Stick label")),
                 qPrintable(shop.desk().bench()->doNow()));
}

void PressesTest::a_plain_parcel_takes_four_by_key()
{
    const FakePrintSystem system;
    Workshop shop(*planned_);
    const shop::ParcelId plain = a_plain_one_at_the_bench(shop);
    QVERIFY(plain != shop::ParcelId{});
    while (!shop.desk().bench()->doNow().startsWith(QStringLiteral("Close")) &&
           !shop.desk().bench()->doNow().startsWith(QStringLiteral("Fill")) && presses_ < 10) {
        const int step = shop.desk().bench()->currentStep();
        shop.at().press(Qt::Key_Space);
        ++presses_;
        QTRY_COMPARE(shop.desk().bench()->currentStep(), step + 1);
    }
    QVERIFY(system.asked("lp").empty()); // not before it is right
    put_on_the_scale(shop, plain);
    QTRY_COMPARE(system.asked("lp").size(), 1);
    shop.at().press(Qt::Key_Space); // the label is stuck on
    ++presses_;
    QTRY_COMPARE(state(shop, plain), ParcelState::labelled);
    QVERIFY2(presses_ <= 4, qPrintable(QString::number(presses_)));
    QCOMPARE(system.asked("lp").size(), 1);
}

void PressesTest::a_plain_parcel_takes_four_by_scan()
{
    const FakePrintSystem system;
    Workshop shop(*planned_);
    const shop::ParcelId plain = a_plain_one_at_the_bench(shop);
    QVERIFY(plain != shop::ParcelId{});
    const auto held = *book::parcel(shop.book(), plain);
    const QString good = QString::fromStdString(held.plan.pieces.front().good.text);
    const auto now_is = [&](const char* word) { return shop.desk().bench()->doNow().startsWith(QLatin1String(word)); };
    const QString name = QString::fromStdString(shop.day().cupboard().good(held.plan.pieces.front().good)->name);
    while (!now_is("Close") && !now_is("Fill") && presses_ < 10) { // the good by its code, the rest by key
        const int before = shop.desk().bench()->currentStep();
        if (now_is("Put in:") && shop.desk().bench()->doNow().contains(name))
            shop.at().scan(good);
        else
            shop.at().press(Qt::Key_Space);
        ++presses_;
        QTRY_COMPARE(shop.desk().bench()->currentStep(), before + 1);
    }
    put_on_the_scale(shop, plain);
    QTRY_COMPARE(system.asked("lp").size(), 1);
    shop.at().scan(QString::fromStdString(*papers::to_text({papers::Payload::Kind::label, held.parcel.number, 1})));
    ++presses_;
    QTRY_COMPARE(state(shop, plain), ParcelState::labelled);
    QVERIFY2(presses_ <= 4, qPrintable(QString::number(presses_)));
}

void PressesTest::a_courier_four_hours_early_takes_two()
{
    const FakePrintSystem system;
    Workshop shop(*planned_);
    const auto parcels = shop.pick(24);
    QVERIFY2(parcels.size() >= 20, qPrintable(QString::number(parcels.size())));
    // One of those that stay was promised for the very day it would come if it left today.
    const auto last = book::parcel(shop.book(), parcels.back());
    const shop::HeldOrder* order = shop.day().order(last->plan.pieces.front().order);
    QVERIFY(order != nullptr);
    shop::Order promised = order->order;
    promised.promised = last->plan.delivered;
    QVERIFY(book::edit_order(shop.day().book(), order->id, promised));
    QVERIFY(book::accept_changes(shop.day().book(), parcels.back()));
    shop.day().moved();
    const std::vector<shop::ParcelId> done(parcels.begin(), parcels.begin() + 15);
    shop.pack(done);
    shop.label(done);
    QVERIFY(shop.open());
    shop.desk().cupboard()->house()->set(QStringLiteral("printer of hand-over-list"), QStringLiteral("DESK"));
    shop.at().press(Qt::Key_F4); // at the bench, in the middle of a parcel
    shop.at().settle();

    shop.at().press(Qt::Key_F5);
    shop.at().press(Qt::Key_1);
    QTRY_COMPARE(system.asked("lp").size(), 1); // two keys, and the list is on paper
    const auto lists = book::hand_over_lists(shop.book());
    QCOMPARE(lists.size(), std::size_t{1});
    for (const shop::ParcelId id : parcels) {
        const auto held = book::parcel(shop.book(), id);
        const bool was_labelled = std::find(done.begin(), done.end(), id) != done.end();
        const bool its_carrier = held->parcel.carrier == lists.front().carrier;
        QCOMPARE(held->parcel.state == ParcelState::handed_over, was_labelled && its_carrier);
    }
    // What stays, and what that breaks, stands on the screen without a further key.
    QTRY_VERIFY2(shop.at().reads(QStringLiteral("not labelled yet and would stay")), qPrintable(shop.at().all_words()));
    QVERIFY2(shop.at().reads(QString::fromStdString(last->parcel.number) + QStringLiteral(" was promised")),
             qPrintable(shop.at().all_words()));
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::PressesTest)
#include "presses_test.moc"
