// Postage, weight and the scale, at the window: a tariff typed in by keys, a simulated scale from unplugged to
// accepted, every stage of weighing and its undo, what is bought and told when a parcel goes.
#include "core/book/cupboard.h"
#include "core/book/rate_sheets.h"
#include "core/intake/rate_grid.h"
#include "tests/core/postage/tariff_of_three_zones.h"
#include "tests/quick/recorded_scale.h"
#include "tests/quick/workshop.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QQuickStyle>
#include <QTest>

#include <algorithm>

namespace stow::quick {

namespace {

using weighing::ScaleState;

// A letter alone: the scanner's catcher lets go of it after a moment.
void sort_steps(postage::RateSheet& sheet)
{
    std::sort(sheet.steps.begin(), sheet.steps.end(), [](const auto& a, const auto& b) {
        return std::tie(a.service, a.format, a.zone, a.up_to) < std::tie(b.service, b.format, b.zone, b.up_to);
    });
}

} // namespace

class PostageTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void a_tariff_is_typed_in_by_keys();
    void a_table_is_pasted_from_a_spreadsheet();
    void faults_are_seen_while_typing();
    void the_scale_drives_the_bench();
    void pulling_the_scale_out_harms_nothing();
    void every_stage_is_weighed_and_undone();
    void a_wrong_weight_waits_for_her();
    void what_no_service_takes_does_not_go();
    void postage_is_bought_once();

private:
    // The first parcel stands at the bench, all its goods ticked or scanned, at the step before the filler.
    static shop::ParcelId at_the_bench(Workshop& shop);
    static void to_step(Workshop& shop, const QString& beginning);
    std::unique_ptr<Workshop> planned_;
};

void PostageTest::initTestCase()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->plan_the_morning();
}

void PostageTest::a_tariff_is_typed_in_by_keys()
{
    Workshop shop;
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    int keys = 0;
    const auto type = [&](const QString& words) {
        at.type(words);
        keys += static_cast<int>(words.size());
    };
    const auto press = [&](Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        at.press(key, with);
        ++keys;
    };
    const auto tab = [&](int times = 1) {
        for (int i = 0; i < times; ++i) press(Qt::Key_Tab);
    };
    press(Qt::Key_F9);
    at.settle();
    at.letter(Qt::Key_3); // rate sheets
    at.letter(Qt::Key_N);
    keys += 2;
    type(QStringLiteral("Petrel Parcels"));
    const auto part = [&](const char* what, const QString& words) {
        QQuickItem* field = nullptr;
        for (QQuickItem* item : at.seen()) {
            // The blank one at the end of its chapter is the last of its name; of the rest, the one named last.
            if (AtTheWindow::name_of(item) == QLatin1String(what) &&
                AtTheWindow::role_of(item) == QAccessible::EditableText)
                field = item;
        }
        QVERIFY2(field != nullptr, what);
        field->forceActiveFocus(Qt::TabFocusReason);
        type(words);
        at.settle();
    };
    const auto same_row = [&](const QString& words) {
        tab();
        type(words);
        at.settle();
    };
    part("service: Short name", QStringLiteral("petrel"));
    same_row(QStringLiteral("Petrel"));
    for (const auto& [zone, places] :
         {std::pair{"home", "DK"}, std::pair{"near", "de, SE, NL"}, std::pair{"far", "*, DK 37"}}) {
        part("zone: Name", QString::fromLatin1(zone));
        same_row(QString::fromLatin1(places));
    }
    part("format: Name", QStringLiteral("flat"));
    for (const char* most : {"353", "250", "25"}) same_row(QString::fromLatin1(most)); // length, width, height
    part("format: Name", QStringLiteral("box"));
    same_row(QStringLiteral("600"));
    part("format: Length and girth", QStringLiteral("2000"));
    part("surcharge: Name", QStringLiteral("fuel"));
    same_row(QStringLiteral("7.5 %"));
    part("surcharge: Name", QStringLiteral("long"));
    same_row(QStringLiteral("4.00"));
    part("surcharge: Longer than", QStringLiteral("450"));
    press(Qt::Key_Escape);
    at.settle();

    auto* rates = shop.desk().cupboard()->rates();
    const auto& ladders = postage::typed_ladders();
    for (int format = 0; format < 2; ++format) { // "any size" stands first in the list
        rates->setFormat(format + 1);
        at.settle();
        const auto* first = &ladders[static_cast<std::size_t>(format) * 3];
        QQuickItem* cell = at.named(QStringLiteral("up to, row 1"), QAccessible::EditableText);
        QVERIFY2(cell != nullptr, qPrintable(at.all_words()));
        cell->forceActiveFocus(Qt::TabFocusReason);
        for (std::size_t row = 0; row < 8; ++row) {
            type(QString::number(first->grams[row]));
            for (std::size_t zone = 0; zone < 3; ++zone) {
                tab();
                type(QString::number(first[zone].cents[row] / 100.0, 'f', 2));
            }
            tab();
        }
    }
    press(Qt::Key_S, Qt::ControlModifier);
    at.settle();
    const auto kept = book::rate_sheets(shop.book());
    QVERIFY2(kept.size() == 1, qPrintable(rates->problems().join(QLatin1Char('\n'))));
    postage::RateSheet typed = kept.front(), wanted = postage::tariff_of_three_zones();
    sort_steps(typed);
    sort_steps(wanted);
    QVERIFY(typed == wanted);
    // At 0.28 s a key (Card, Moran and Newell 1980, an average typist who is not a secretary) and as much again for
    // looking at the paper.
    qInfo("%d keys: %.1f minutes at 0.56 s a key", keys, keys * 0.56 / 60);
}

void PostageTest::a_table_is_pasted_from_a_spreadsheet()
{
    Workshop shop;
    QVERIFY(shop.open());
    auto* rates = shop.desk().cupboard()->rates();
    shop.at().press(Qt::Key_F9);
    shop.at().settle();
    shop.at().letter(Qt::Key_3);
    shop.at().letter(Qt::Key_N);
    rates->setHead(QStringLiteral("carrier"), QStringLiteral("Petrel Parcels"));
    rates->setPart(0, QStringLiteral("name"), QStringLiteral("petrel"));
    const auto zone = [&](int which) { return which + 2; }; // behind the service and its blank row
    rates->setPart(zone(0), QStringLiteral("name"), QStringLiteral("home"));
    rates->setValue(zone(0), 0, QStringLiteral("DK"));
    rates->setPart(zone(1), QStringLiteral("name"), QStringLiteral("away"));
    rates->setValue(zone(1), 0, QStringLiteral("*"));
    shop.at().press(Qt::Key_Escape);
    shop.at().settle();
    QQuickItem* cell = shop.at().named(QStringLiteral("up to, row 1"), QAccessible::EditableText);
    QVERIFY2(cell != nullptr, qPrintable(shop.at().all_words()));
    cell->forceActiveFocus(Qt::TabFocusReason);
    QGuiApplication::clipboard()->setText(QStringLiteral("500 g\t4,40 €\t6,90 €\n1000 g\t4,90 €\t8,70 €\n"));
    shop.at().press(Qt::Key_V, Qt::ControlModifier);
    shop.at().settle();
    QCOMPARE(rates->grid()->value(1, QStringLiteral("grams")).toString(), QStringLiteral("1000"));
    QVERIFY2(rates->problems().isEmpty(), qPrintable(rates->problems().join(QLatin1Char('\n'))));
    rates->tryParcel(QStringLiteral("250 180 90 812 DE 20095"));
    QCOMPARE(rates->tried().size(), 1);
    QVERIFY2(rates->tried().front().contains(QStringLiteral("8.70")), qPrintable(rates->tried().front()));
    shop.at().press(Qt::Key_S, Qt::ControlModifier);
    shop.at().settle();
    QCOMPARE(book::rate_sheets(shop.book()).size(), std::size_t{1});
    rates->nextYear();
    QVERIFY(rates->unkept() || rates->from().isEmpty());
}

void PostageTest::faults_are_seen_while_typing()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F9);
    shop.at().settle();
    shop.at().letter(Qt::Key_3);
    auto* rates = shop.desk().cupboard()->rates();
    const QStringList before = rates->problems();
    QQuickItem* cell = shop.at().beginning(QStringLiteral("up to, row 2"), QAccessible::EditableText);
    QVERIFY2(cell != nullptr, qPrintable(shop.at().all_words()));
    cell->forceActiveFocus(Qt::TabFocusReason);
    shop.at().press(Qt::Key_Tab);
    shop.at().press(Qt::Key_A, Qt::ControlModifier);
    shop.at().type(QStringLiteral("0.01"));
    shop.at().settle();
    const QStringList after = rates->problems();
    QVERIFY(after.size() > before.size());
    QVERIFY2(shop.at().reads(QStringLiteral("falls")), qPrintable(after.join(QLatin1Char('\n'))));
    QVERIFY(rates->unkept());
    shop.at().press(Qt::Key_Backspace, Qt::ControlModifier | Qt::AltModifier); // nothing
    rates->putAway();
    QVERIFY(!rates->unkept());
    QCOMPARE(rates->problems(), before);
}

shop::ParcelId PostageTest::at_the_bench(Workshop& shop)
{
    const auto ids = shop.pick(3);
    if (!shop.open()) return {};
    shop.at().press(Qt::Key_F4);
    shop.at().settle();
    return ids.empty() ? shop::ParcelId{} : ids.front();
}

// Ticks steps off until the one to be done begins so.
void PostageTest::to_step(Workshop& shop, const QString& beginning)
{
    auto* bench = shop.desk().bench();
    for (int most = 40; most > 0 && !bench->doNow().startsWith(beginning); --most) {
        shop.at().press(Qt::Key_Space);
        shop.at().settle();
    }
}

void PostageTest::the_scale_drives_the_bench()
{
    Workshop shop(*planned_);
    at_the_bench(shop);
    auto* bench = shop.desk().bench();
    QVERIFY(!bench->empty());
    const auto cable = std::make_shared<RecordedScale::Cable>();
    shop.desk().plugIn(std::make_unique<RecordedScale>(cable));
    to_step(shop, QStringLiteral("Put it on the scale"));
    QVERIFY2(bench->weighing(), qPrintable(bench->doNow()));
    QTest::qWait(250);
    QVERIFY2(bench->scale().isEmpty(), "no scale is plugged in, and nothing is said of one");
    cable->plugged = true;
    cable->say(2, 0, 3);
    QTRY_COMPARE(bench->scale(), QStringLiteral("scale ready"));

    const QString parcel = bench->parcel();
    const auto held = book::parcel_by_number(shop.book(), parcel.section(QLatin1Char(' '), -1).toStdString());
    QVERIFY(held);
    const int right = static_cast<int>(held->plan.weight.mean.units / 10);
    cable->put_on(right);
    QTRY_VERIFY(bench->doNow().startsWith(QStringLiteral("Stick label"))); // accepted, hands free
    const auto after = book::parcel(shop.book(), held->parcel.id);
    QVERIFY(after->parcel.state == shop::ParcelState::packed);
    QCOMPARE(after->parcel.weighings.size(), std::size_t{1});
    QVERIFY(after->parcel.weighings.back().weight == grams(right));
    QVERIFY(after->parcel.weighings.back().expected.has_value());
    QVERIFY(after->parcel.postage.has_value());
    QVERIFY2(book::lessons(shop.book()).empty(), "nothing was scanned, so nothing is learnt");
}

void PostageTest::pulling_the_scale_out_harms_nothing()
{
    Workshop shop(*planned_);
    at_the_bench(shop);
    auto* bench = shop.desk().bench();
    const auto cable = std::make_shared<RecordedScale::Cable>();
    shop.desk().plugIn(std::make_unique<RecordedScale>(cable));
    cable->plugged = true;
    to_step(shop, QStringLiteral("Put it on the scale"));
    cable->say(3, 300, 2);
    QTRY_COMPARE(bench->scale(), QStringLiteral("scale: settling"));
    cable->plugged = false;
    cable->reports.clear();
    QTRY_VERIFY(bench->scale().isEmpty());
    QVERIFY(bench->weighing());
    QVERIFY(bench->reading().isEmpty());
    cable->plugged = true;
    cable->say(6, 0);
    QTRY_VERIFY(bench->scaleStops());
    QVERIFY(shop.at().reads(QStringLiteral("too heavy for the scale")));
    // Typed by hand it goes on as before.
    const auto held = book::parcel_by_number(shop.book(), bench->parcel().section(QLatin1Char(' '), -1).toStdString());
    shop.at().press(Qt::Key_W);
    shop.at().type(QString::number(static_cast<int>(held->plan.weight.mean.units / 10)));
    shop.at().press(Qt::Key_Return);
    shop.at().settle();
    QCOMPARE(bench->verdictKind(), 1);
}

void PostageTest::every_stage_is_weighed_and_undone()
{
    Workshop shop(*planned_);
    at_the_bench(shop);
    auto* bench = shop.desk().bench();
    const auto held = book::parcel_by_number(shop.book(), bench->parcel().section(QLatin1Char(' '), -1).toStdString());
    QVERIFY(held);
    const auto weighings = [&] { return book::parcel(shop.book(), held->parcel.id)->parcel.weighings; };
    const auto weigh = [&](Weight weight) {
        shop.at().press(Qt::Key_W);
        shop.at().press(Qt::Key_A, Qt::ControlModifier);
        shop.at().type(QString::number(static_cast<int>(weight.units / 10)));
        shop.at().press(Qt::Key_Return);
        shop.at().settle();
    };
    const auto undo = [&] {
        shop.at().press(Qt::Key_Z, Qt::ControlModifier);
        shop.at().settle();
    };
    const bool filled = held->plan.filler_volume.units > 0;
    to_step(shop, filled ? QStringLiteral("Fill") : QStringLiteral("Close"));
    weigh(held->plan.contents_weight.mean);
    QCOMPARE(weighings().size(), std::size_t{1});
    QVERIFY(weighings().back().stage == shop::WeighingStage::contents);
    QCOMPARE(bench->verdictKind(), 1);
    undo();
    QCOMPARE(weighings().size(), std::size_t{0});
    QVERIFY(bench->reading().isEmpty());

    to_step(shop, QStringLiteral("Put it on the scale"));
    weigh(held->plan.weight.mean);
    QVERIFY(weighings().back().stage == shop::WeighingStage::closed);
    undo();
    QCOMPARE(weighings().size(), std::size_t{0});
    weigh(held->plan.weight.mean);
    shop.at().press(Qt::Key_Space);
    shop.at().settle();
    QVERIFY2(bench->doNow().startsWith(QStringLiteral("Stick label")), qPrintable(bench->doNow()));
    weigh(held->plan.weight.mean + grams(2));
    QCOMPARE(weighings().size(), std::size_t{2});
    QVERIFY(weighings().back().stage == shop::WeighingStage::labelled);
    undo();
    QCOMPARE(weighings().size(), std::size_t{1});
    undo(); // the tick
    undo(); // packed
    QVERIFY(book::parcel(shop.book(), held->parcel.id)->parcel.state == shop::ParcelState::picked);
}

void PostageTest::a_wrong_weight_waits_for_her()
{
    Workshop shop(*planned_);
    at_the_bench(shop);
    auto* bench = shop.desk().bench();
    const auto cable = std::make_shared<RecordedScale::Cable>();
    shop.desk().plugIn(std::make_unique<RecordedScale>(cable));
    cable->plugged = true;
    to_step(shop, QStringLiteral("Put it on the scale"));
    const auto held = book::parcel_by_number(shop.book(), bench->parcel().section(QLatin1Char(' '), -1).toStdString());
    cable->put_on(static_cast<int>(held->plan.weight.mean.units / 10) + 150);
    QTRY_VERIFY(bench->verdictKind() >= 2);
    shop.at().settle();
    QVERIFY(bench->weighing());
    QVERIFY(book::parcel(shop.book(), held->parcel.id)->parcel.state == shop::ParcelState::picked);
    if (!shop.desk().stopWord().isEmpty()) shop.at().letter(Qt::Key_Space);
    shop.at().letter(Qt::Key_Y); // it is right all the same
    shop.at().type(QStringLiteral("damp"));
    shop.at().press(Qt::Key_Return);
    const auto after = book::parcel(shop.book(), held->parcel.id);
    QVERIFY(after->parcel.state == shop::ParcelState::packed);
    QVERIFY(after->parcel.weighings.back().overridden);
    QCOMPARE(after->parcel.weighings.back().why, std::string("damp"));
    QVERIFY(book::lessons(shop.book()).empty());
}

void PostageTest::what_no_service_takes_does_not_go()
{
    Workshop shop(*planned_);
    at_the_bench(shop);
    auto* bench = shop.desk().bench();
    to_step(shop, QStringLiteral("Put it on the scale"));
    const auto held = book::parcel_by_number(shop.book(), bench->parcel().section(QLatin1Char(' '), -1).toStdString());
    QVERIFY(!held->parcel.carrier.empty());
    bench->weigh(QStringLiteral("500000")); // half a ton: beyond every table
    shop.at().settle();
    if (!shop.desk().stopWord().isEmpty()) shop.at().letter(Qt::Key_Space);
    shop.at().letter(Qt::Key_Y);
    shop.at().press(Qt::Key_Return); // however right she says it is
    QTRY_VERIFY(shop.at().reads(QStringLiteral("does not take it at this weight")));
    const auto after = book::parcel(shop.book(), held->parcel.id);
    QVERIFY(after->parcel.state == shop::ParcelState::picked);
    QVERIFY(!after->parcel.weighings.back().overridden);
}

void PostageTest::postage_is_bought_once()
{
    Workshop shop(*planned_);
    const auto ids = shop.pick(3);
    shop.pack(ids);
    shop.label(ids);
    shop::Dispatch settings = book::dispatch(shop.book());
    settings.tax_numbers.eori = "DK00000001";
    QVERIFY(book::put_dispatch(shop.day().book(), settings));
    shop.day().moved();
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F5);
    shop.at().settle();
    shop.at().letter(Qt::Key_D);
    auto* dispatch = shop.desk().handOver()->dispatch();
    QVERIFY2(dispatch->title().startsWith(QStringLiteral("Parcel")), qPrintable(shop.at().all_words()));
    QVERIFY(!dispatch->message().isEmpty());
    shop.at().type(QStringLiteral("6.90"));
    shop.at().press(Qt::Key_Tab);
    shop.at().type(QStringLiteral("R-77"));
    shop.at().press(Qt::Key_Return);
    shop.at().settle();
    QVERIFY(dispatch->boughtBefore());
    QCOMPARE(dispatch->bought()->count(), 1);
    const QString warned = dispatch->buy(QStringLiteral("6.90"), QStringLiteral("R-78"), {}, false);
    QVERIFY2(warned.contains(QStringLiteral("already")), qPrintable(warned));
    QCOMPARE(dispatch->bought()->count(), 1);
    dispatch->refund(0);
    QVERIFY(!dispatch->boughtBefore());
    // The check digit of a number is looked at (UPU S10: 47312482 closes with 9).
    QVERIFY(!dispatch->setTracking(QStringLiteral("RR473124828DK")).isEmpty());
    QVERIFY(dispatch->setTracking(QStringLiteral("RR 473 124 829 DK")).isEmpty());
    QCOMPARE(dispatch->tracking(), QStringLiteral("RR473124829DK"));
    QVERIFY(dispatch->message().contains(QStringLiteral("RR473124829DK")));
    QVERIFY(!dispatch->message().contains(QStringLiteral("DK00000001")));
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::PostageTest)
#include "postage_test.moc"
