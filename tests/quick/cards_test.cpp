// Worked by the scanner alone: command cards, at the bench and elsewhere; labels on begun sheets.
#include "app/day_papers.h"
#include "core/papers/command_cards.h"
#include "core/papers/payload.h"
#include "tests/quick/workshop.h"

#include <QQuickStyle>
#include <QTest>

namespace stow::quick {

class CardsTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void do_at_the_bench_what_keys_do();
    void are_for_the_bench_but_for_undo();
    void a_worn_card_does_nothing();
    void labels_go_on_where_the_sheet_was_begun();

private:
    static void show(Workshop& shop, papers::Command command);
    std::unique_ptr<Workshop> planned_;
};

void CardsTest::initTestCase()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->plan_the_morning();
}

void CardsTest::show(Workshop& shop, papers::Command command)
{
    const papers::Payload card{papers::Payload::Kind::command, std::string(papers::word_of(command))};
    shop.at().scan(QString::fromStdString(*papers::to_text(card)));
    shop.at().settle();
}

void CardsTest::do_at_the_bench_what_keys_do()
{
    Workshop shop(*planned_);
    const auto picked = shop.pick(2);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F4);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("Do this now")));
    const auto steps_done = [&] {
        int sum = 0;
        for (const shop::ParcelId id : picked) sum += book::parcel(shop.book(), id)->parcel.steps_done;
        return sum;
    };
    const int before = steps_done();
    show(shop, papers::Command::done);
    QTRY_COMPARE(steps_done(), before + 1);
    show(shop, papers::Command::back);
    QTRY_COMPARE(steps_done(), before);

    const QString first = shop.desk().bench()->property("parcel").toString();
    QVERIFY(!first.isEmpty());
    show(shop, papers::Command::later);
    QTRY_VERIFY(shop.desk().bench()->property("parcel").toString() != first);
    show(shop, papers::Command::later);
    QTRY_COMPARE(shop.desk().bench()->property("parcel").toString(), first);

    shop.at().scan(QStringLiteral("NO-SUCH-GOOD")); // a word over the whole window: only one card passes it
    QTRY_VERIFY(shop.at().reads(QStringLiteral("Not in this parcel")));
    show(shop, papers::Command::done);
    QVERIFY(shop.at().reads(QStringLiteral("Not in this parcel")));
    QCOMPARE(steps_done(), before);
    show(shop, papers::Command::go_on);
    QTRY_VERIFY(!shop.at().reads(QStringLiteral("Not in this parcel")));

    show(shop, papers::Command::label_again);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("labels.pdf")));
    QVERIFY(!shop.at().reads(QStringLiteral("tear up the one before")));
    show(shop, papers::Command::label_again);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("tear up the one before")));
}

void CardsTest::are_for_the_bench_but_for_undo()
{
    Workshop shop(*planned_);
    const auto picked = shop.pick(1);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F2);
    show(shop, papers::Command::done);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("This card is for the bench.")));
    QCOMPARE(book::parcel(shop.book(), picked.front())->parcel.state, shop::ParcelState::picked);
    show(shop, papers::Command::undo);
    QTRY_VERIFY(book::parcel(shop.book(), picked.front())->parcel.state != shop::ParcelState::picked);
}

void CardsTest::a_worn_card_does_nothing()
{
    Workshop shop(*planned_);
    shop.pick(1);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F4);
    shop.at().scan(QStringLiteral("SB1:C:DOME:0")); // a letter misread
    QTRY_VERIFY(shop.at().reads(QStringLiteral("The code was not read whole")));
}

void CardsTest::labels_go_on_where_the_sheet_was_begun()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    view::HouseController& house = *shop.desk().cupboard()->house();
    QVERIFY(house.set(QStringLiteral("labels"), QStringLiteral("a4x4")).isEmpty());
    QVERIFY(!house.set(QStringLiteral("labels"), QStringLiteral("a4x5")).isEmpty());
    QVERIFY(house.set(QStringLiteral("next label"), QStringLiteral("4")).isEmpty());
    QVERIFY(house.set(QStringLiteral("printer of labels"), QStringLiteral("LABELS")).isEmpty());
    QCOMPARE(next_label(shop.day()), 4);
    shop.at().press(Qt::Key_F2);
    shop.at().press(Qt::Key_Return);
    shop.at().settle();
    QVERIFY(shop.desk().place() == view::Desk::Place::Pick);
    const auto picked = book::parcels_in(shop.book(), shop::ParcelState::planned);
    const auto in_round = std::count_if(picked.begin(), picked.end(), [](const auto& p) { return !p.tray.empty(); });
    QVERIFY(in_round > 0);
    QCOMPARE(next_label(shop.day()), static_cast<int>((3 + in_round) % 4 + 1));
    use_labels(shop.day(), 1);
    QVERIFY(house.set(QStringLiteral("labels"), QStringLiteral("100x150")).isEmpty());
    QCOMPARE(next_label(shop.day()), 1); // each on its own
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::CardsTest)
#include "cards_test.moc"
