// What leaves the house as a file, at the window: the send file of a carrier, numbers pasted back, the files and
// messages of what was handed over, and the table of postage to charge.
#include "core/book/orders.h"
#include "core/papers/payload.h"
#include "tests/quick/workshop.h"

#include <QClipboard>
#include <QDirIterator>
#include <QFile>
#include <QGuiApplication>
#include <QQuickStyle>
#include <QTest>

namespace stow::quick {

namespace {

// The lines of the one file whose name begins so; none if it is not there.
QStringList lines_of(const Workshop& shop, const QString& beginning)
{
    QDirIterator files(shop.folder(), {beginning + QStringLiteral("*")}, QDir::Files, QDirIterator::Subdirectories);
    if (!files.hasNext()) return {};
    QFile file(files.next());
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

} // namespace

class SendingTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void a_send_file_holds_her_columns();
    void numbers_are_pasted_in_turn();
    void shops_and_buyers_are_told();
    void nothing_is_told_before_it_went();
    void a_number_is_tied_to_its_parcel_by_scan();
    void a_parcel_that_came_back_goes_out_again();
    void the_table_of_postage_holds_every_good();
    void what_the_settings_show_is_read_back();

private:
    static bool at_hand_over(Workshop& shop);
    std::unique_ptr<Workshop> planned_;
};

void SendingTest::initTestCase()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->plan_the_morning();
}

// Six parcels labelled, the window at the hand-over.
bool SendingTest::at_hand_over(Workshop& shop)
{
    const auto ids = shop.pick(6);
    shop.pack(ids);
    shop.label(ids);
    if (!shop.open()) return false;
    shop.at().press(Qt::Key_F5);
    shop.at().settle();
    return shop.desk().handOver()->parcels()->count() > 0;
}

void SendingTest::a_send_file_holds_her_columns()
{
    Workshop shop(*planned_);
    const std::string carrier = book::parcels(shop.book()).front().carrier;
    QVERIFY(at_hand_over(shop));
    auto* sending = shop.desk().cupboard()->sending();
    const QString key = QStringLiteral("carrier ") + QString::fromStdString(carrier);
    QVERIFY(!sending->set(key, QStringLiteral("between columns = x")).isEmpty());
    QVERIFY(!sending->set(key, QStringLiteral("Which = no such thing")).isEmpty());
    const QString told = sending->set(
        key, QStringLiteral("between columns = ;\ndecimal mark = ,\nWhich = parcel\nTo = name\nGrams = weight g"));
    QVERIFY2(told.isEmpty(), qPrintable(told));
    shop.at().letter(Qt::Key_S);
    const QStringList lines = lines_of(shop, QStringLiteral("send-"));
    QVERIFY2(lines.size() > 1, qPrintable(shop.at().all_words()));
    QCOMPARE(lines.front().trimmed(), QStringLiteral("Which;To;Grams"));
    int found = 0;
    for (const shop::Parcel& parcel : book::parcels(shop.book())) {
        if (parcel.state != shop::ParcelState::labelled) continue;
        for (const QString& line : lines) found += line.contains(QString::fromStdString(parcel.number)) ? 1 : 0;
    }
    QCOMPARE(found, static_cast<int>(lines.size()) - 1); // a line a parcel of this carrier, and no other
}

void SendingTest::numbers_are_pasted_in_turn()
{
    Workshop shop(*planned_);
    QVERIFY(at_hand_over(shop));
    // The first is sound; the check digit of the second is wrong (UPU S10: 47312482 closes with 9).
    QGuiApplication::clipboard()->setText(QStringLiteral("RR473124829DK\nRR473124828DK\n"));
    shop.at().letter(Qt::Key_V);
    int taken = 0;
    for (const shop::Parcel& parcel : book::parcels(shop.book())) taken += parcel.tracking.empty() ? 0 : 1;
    QCOMPARE(taken, 1);
    QVERIFY2(shop.at().reads(QStringLiteral("1 tracking number")), qPrintable(shop.at().all_words()));
    // And taken back as one step.
    shop.at().press(Qt::Key_Z, Qt::ControlModifier);
    shop.at().settle();
    for (const shop::Parcel& parcel : book::parcels(shop.book())) QVERIFY(parcel.tracking.empty());
}

void SendingTest::shops_and_buyers_are_told()
{
    Workshop shop(*planned_);
    QVERIFY(at_hand_over(shop));
    QGuiApplication::clipboard()->setText(QStringLiteral("RR473124829DK\n"));
    shop.at().letter(Qt::Key_V);
    std::string numbered;
    for (const shop::Parcel& parcel : book::parcels(shop.book())) {
        if (!parcel.tracking.empty()) numbered = parcel.number;
    }
    QVERIFY(!numbered.empty());
    const int carriers = shop.desk().handOver()->carriers()->count();
    for (int carrier = 0; carrier < carriers; ++carrier) shop.at().letter(static_cast<Qt::Key>(Qt::Key_1 + carrier));
    QVERIFY(book::parcel_by_number(shop.book(), numbered)->parcel.state == shop::ParcelState::handed_over);
    shop.at().letter(Qt::Key_X);
    const QStringList shops = lines_of(shop, QStringLiteral("sent-Harbour-Stall"));
    QVERIFY2(shops.size() > 1, qPrintable(shop.at().all_words()));
    QVERIFY(shops.join(QLatin1Char('\n')).contains(QStringLiteral("RR473124829DK")));
    shop.at().letter(Qt::Key_M);
    const QString messages = lines_of(shop, QStringLiteral("messages-")).join(QLatin1Char('\n'));
    QVERIFY(messages.contains(QStringLiteral("RR473124829DK")));
    const auto held = book::parcel_by_number(shop.book(), numbered);
    shop.desk().openParcel(held->parcel.id.value); // from Find: what is gone is not at the bench
    QVERIFY(shop.desk().place() == view::Desk::Place::HandOver);
    QVERIFY2(shop.at().reads(QStringLiteral("is not here any more: handed over")), qPrintable(shop.at().all_words()));
    for (const shop::HeldOrder& order : shop.day().orders()) {
        if (order.id != held->parcel.pieces.front().order) continue;
        QVERIFY2(messages.contains(QString::fromStdString(order.order.to.name)), qPrintable(messages));
    }
}

void SendingTest::nothing_is_told_before_it_went()
{
    Workshop shop(*planned_);
    QVERIFY(at_hand_over(shop));
    auto* hand_over = shop.desk().handOver();
    QVERIFY(hand_over->setTracking(0, QStringLiteral("!!")).contains(QStringLiteral("no tracking number")));
    QVERIFY(hand_over->setTracking(0, QStringLiteral("12 345-67/8")).isEmpty());
    QVERIFY(hand_over->setTracking(0, {}).isEmpty()); // taken away again
    shop.at().letter(Qt::Key_M);
    QVERIFY2(shop.at().reads(QStringLiteral("Nothing was handed over today")), qPrintable(shop.at().all_words()));
    QVERIFY(lines_of(shop, QStringLiteral("messages-")).isEmpty());
}

// Packed, at the step of the label: the carrier's label is scanned, then ours on the same parcel.
void SendingTest::a_number_is_tied_to_its_parcel_by_scan()
{
    Workshop shop(*planned_);
    const auto ids = shop.pick(2);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F4);
    shop.at().settle();
    auto* bench = shop.desk().bench();
    for (int most = 40; most > 0 && !bench->doNow().startsWith(QStringLiteral("Stick")); --most) {
        if (bench->weighing()) {
            const auto number = bench->parcel().section(QLatin1Char(' '), -1).toStdString();
            const auto plan = book::parcel_by_number(shop.book(), number)->plan;
            QVERIFY(bench->weigh(QString::number(plan.weight.mean.units / 10)).isEmpty());
        }
        shop.at().letter(Qt::Key_Space);
    }
    const auto held = [&](shop::ParcelId id) { return book::parcel(shop.book(), id)->parcel; };
    const QString shown = shop.desk().bench()->parcel();
    const shop::ParcelId here = shown.contains(QString::fromStdString(held(ids[0]).number)) ? ids[0] : ids[1];
    shop.at().scan(QStringLiteral("RR473124828DK")); // misread: the check digit is wrong
    QVERIFY2(shop.desk().stopWord().contains(QStringLiteral("again")), qPrintable(shop.desk().stopWord()));
    shop.at().letter(Qt::Key_Space);
    QVERIFY(held(here).tracking.empty());
    shop.at().scan(QStringLiteral("RR473124829DK"));
    QTRY_COMPARE(QString::fromStdString(held(here).tracking), QStringLiteral("RR473124829DK"));
    QVERIFY(held(here).state == shop::ParcelState::packed);
    for (const shop::ParcelId id : ids) {
        if (id.value != here.value) QVERIFY(held(id).tracking.empty());
    }
    shop.at().scan(
        QString::fromStdString(papers::to_text({papers::Payload::Kind::label, held(here).number, 1}).value()));
    QTRY_VERIFY(held(here).state == shop::ParcelState::labelled);
}

void SendingTest::a_parcel_that_came_back_goes_out_again()
{
    Workshop shop(*planned_);
    QVERIFY(at_hand_over(shop));
    shop.at().letter(Qt::Key_C); // with its courier to come, it cannot have come back
    QVERIFY2(shop.at().reads(QStringLiteral("has not left yet")), qPrintable(shop.at().all_words()));
    const int carriers = shop.desk().handOver()->carriers()->count();
    for (int carrier = 0; carrier < carriers; ++carrier) shop.at().letter(static_cast<Qt::Key>(Qt::Key_1 + carrier));
    const auto to_plan = book::orders_to_plan(shop.book()).size();
    shop.at().letter(Qt::Key_C);
    shop.at().type(QStringLiteral("crushed"));
    shop.at().click(shop.at().named(QStringLiteral("written off")));
    shop.at().click(shop.at().beginning(QStringLiteral("Send it again"), QAccessible::CheckBox));
    shop.at().click(shop.at().beginning(QStringLiteral("Note it"), QAccessible::Button));
    shop.at().settle();
    const auto back = book::parcels_in(shop.book(), shop::ParcelState::came_back);
    QVERIFY2(back.size() == 1, qPrintable(shop.at().all_words()));
    QCOMPARE(back.front().back_why, std::string("crushed"));
    QVERIFY(back.front().written_off && back.front().sent_again);
    QVERIFY(book::orders_to_plan(shop.book()).size() > to_plan);
    shop.at().press(Qt::Key_Z, Qt::ControlModifier); // one step
    shop.at().settle();
    QVERIFY(book::parcels_in(shop.book(), shop::ParcelState::came_back).empty());
    QCOMPARE(book::orders_to_plan(shop.book()).size(), to_plan);
}

void SendingTest::the_table_of_postage_holds_every_good()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F9);
    shop.at().settle();
    shop.at().letter(Qt::Key_7);
    auto* sale = shop.desk().cupboard()->beforeSale();
    sale->ask(0, QStringLiteral("1000"), QStringLiteral("Narnia"), {}); // each fault at its field
    QVERIFY(sale->answer().isEmpty());
    QVERIFY2(shop.at().reads(QStringLiteral("1 to 99")) && shop.at().reads(QStringLiteral("“Narnia” is not a country")),
             qPrintable(shop.at().all_words()));
    sale->ask(0, QStringLiteral("1"), QStringLiteral("de"), {});
    QTRY_VERIFY(!sale->answer().isEmpty());
    QVERIFY(!shop.at().reads(QStringLiteral("1 to 99")));
    shop.at().letter(Qt::Key_E);
    QTRY_VERIFY(!sale->writing());
    const QStringList lines = lines_of(shop, QStringLiteral("postage-to-charge-"));
    QVERIFY2(lines.size() > 1, qPrintable(shop.at().all_words()));
    for (const auto& [key, good] : shop.day().cupboard().goods) {
        const QString code = QString::fromStdString(key.text);
        QVERIFY2(std::any_of(lines.begin(), lines.end(), [&](const QString& l) { return l.startsWith(code); }),
                 qPrintable(code));
    }
}

// A field is shown as it may be typed: left as it stands, or changed in one place, it is understood.
void SendingTest::what_the_settings_show_is_read_back()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F9);
    shop.at().letter(Qt::Key_6);
    view::SendingController& sending = *shop.desk().cupboard()->sending();
    const QString supply = QString::fromStdString(shop.day().cupboard().supplies.begin()->first.text);
    QCOMPARE(sending.set(QStringLiteral("stamps"), supply + QStringLiteral(" = 1.10")), QString());
    sending.refresh();
    QVERIFY(sending.rows()->count() > 3);
    for (int row = 0; row < sending.rows()->count(); ++row) {
        const QString key = sending.rows()->value(row, QStringLiteral("key")).toString();
        const QString shown = sending.rows()->value(row, QStringLiteral("words")).toString();
        const QString fault = sending.set(key, shown);
        QVERIFY2(fault.isEmpty(), qPrintable(key + QStringLiteral(": ") + fault));
    }
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::SendingTest)
#include "sending_test.moc"
