// The rack and the records at the window: what comes in for what, what is spoilt, what is flagged and asked to be
// counted, the reorder list, the figures and the parcels behind them. By keys; the book is only read.
#include "app/her_papers.h"
#include "app/painting/fonts.h"
#include "core/book/ledger.h"
#include "tests/quick/workshop.h"

#include <QDir>
#include <QQuickStyle>
#include <QTest>

#include <cstdio>
#include <utility>

namespace stow::quick {

namespace {

QStringList complaints; // of the run under way

void listen(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    // The offscreen platform says so when it lacks a capability; that is not ours.
    const bool ours = !message.contains(QLatin1String("propagateSizeHints"));
    if (type != QtDebugMsg && type != QtInfoMsg && ours) complaints += qFormatLogMessage(type, context, message);
    std::fprintf(stderr, "%s\n", qPrintable(qFormatLogMessage(type, context, message)));
}

} // namespace

class SuppliesTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void cleanup();

    void receives_for_a_price_and_spoils_with_a_reason();
    void flags_what_is_less_than_none();
    void prints_the_reorder_list_by_key();
    void prints_the_making_list_by_key();
    void opens_the_parcels_behind_a_figure();
    void folds_a_box_and_keeps_it_as_an_outer();
    void weighs_up_the_sizes_a_supplier_offers();

private:
    void open_shelf(Qt::Key shelf);

    std::unique_ptr<Workshop> planned_;
    std::unique_ptr<Workshop> shop_; // of the test under way
};

void SuppliesTest::initTestCase()
{
    qInstallMessageHandler(listen);
    QVERIFY(painting::load_fonts());
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->plan_the_morning();
}

void SuppliesTest::cleanup()
{
    shop_.reset();
    const QStringList heard = std::exchange(complaints, {});
    QVERIFY2(heard.isEmpty(), qPrintable(heard.join(QLatin1Char('\n'))));
}

void SuppliesTest::open_shelf(Qt::Key shelf)
{
    shop_->at().press(Qt::Key_F9);
    QTRY_VERIFY(shop_->at().named(QStringLiteral("Supplies")));
    shop_->at().press(shelf);
    shop_->at().settle();
}

void SuppliesTest::receives_for_a_price_and_spoils_with_a_reason()
{
    shop_ = std::make_unique<Workshop>(*planned_);
    QVERIFY(shop_->open());
    open_shelf(Qt::Key_2);
    AtTheWindow& at = shop_->at();
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.named(QStringLiteral("Received: came in")));
    const auto last = [&] { return book::movements(shop_->book()).back(); };
    at.press(Qt::Key_Tab);
    at.press(Qt::Key_Tab); // past the button of the count
    at.type(QStringLiteral("20"));
    at.press(Qt::Key_Tab);
    at.type(QStringLiteral("8.40"));
    at.press(Qt::Key_Return);
    QTRY_COMPARE(last().kind, book::MovementKind::received);
    QCOMPARE(last().amount, shop::pieces(20));
    QCOMPARE(last().cost, (Money{840, {}}));
    QVERIFY(at.reads(QStringLiteral("on average when it came in")));
    at.press(Qt::Key_Tab);
    at.press(Qt::Key_Tab);
    at.type(QStringLiteral("3"));
    at.press(Qt::Key_Tab);
    at.type(QStringLiteral("wet"));
    at.press(Qt::Key_Return);
    QTRY_COMPARE(last().kind, book::MovementKind::spoilt);
    QCOMPARE(last().amount, shop::pieces(-3));
    QCOMPARE(last().reason, std::string("wet"));
    at.press(Qt::Key_Escape);
    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(last().amount, shop::pieces(3)); // taken back by a movement of its own
}

void SuppliesTest::flags_what_is_less_than_none()
{
    shop_ = std::make_unique<Workshop>(*planned_);
    const auto parcels = shop_->pick(1);
    const auto held = book::parcel(shop_->book(), parcels.front());
    QVERIFY(held.has_value());
    QVERIFY(book::count(shop_->day().book(), held->plan.outer, {}, "none left").has_value());
    shop_->pack(parcels); // she found one all the same
    QVERIFY(shop_->open());
    open_shelf(Qt::Key_2);
    QTRY_VERIFY2(shop_->at().reads(QStringLiteral("more was packed than the book knows: count it")),
                 qPrintable(shop_->at().all_words()));
}

void SuppliesTest::prints_the_reorder_list_by_key()
{
    shop_ = std::make_unique<Workshop>(*planned_);
    QVERIFY(book::count(shop_->day().book(), shop::SupplyCode{"TAPE"}, {}, "none left").has_value());
    shop_->day().moved();
    QVERIFY(shop_->open());
    open_shelf(Qt::Key_2);
    shop_->at().press(Qt::Key_P);
    const QDir papers(shop_->folder() + QStringLiteral("/papers"));
    QTRY_VERIFY(papers.exists(QStringLiteral("reorder-list.pdf")));
    QFile csv(papers.filePath(QStringLiteral("reorder-list.csv")));
    QVERIFY(csv.open(QIODevice::ReadOnly));
    QVERIFY(csv.readAll().contains("TAPE"));
}

void SuppliesTest::prints_the_making_list_by_key()
{
    shop_ = std::make_unique<Workshop>(*planned_);
    QVERIFY(shop_->open());
    open_shelf(Qt::Key_1);
    shop_->at().letter(Qt::Key_M);
    const QDir papers(shop_->folder() + QStringLiteral("/papers"));
    QTRY_VERIFY2(papers.exists(QStringLiteral("making-list.pdf")), qPrintable(shop_->at().all_words()));
}

void SuppliesTest::opens_the_parcels_behind_a_figure()
{
    shop_ = std::make_unique<Workshop>(*planned_);
    const auto parcels = shop_->pick(3);
    shop_->pack(parcels);
    QVERIFY(shop_->open());
    open_shelf(Qt::Key_4);
    AtTheWindow& at = shop_->at();
    QTRY_VERIFY2(at.reads(QStringLiteral("outers")), qPrintable(at.all_words()));
    at.press(Qt::Key_Return);
    const QString number = QString::fromStdString(book::parcel(shop_->book(), parcels.front())->parcel.number);
    QTRY_VERIFY2(at.reads(number), qPrintable(at.all_words()));
    at.press(Qt::Key_Escape);
    at.press(Qt::Key_W);
    QTRY_VERIFY(QFile::exists(shop_->folder() + QStringLiteral("/papers/packaging.csv")));
    // OWASP, CSV Injection: a cell that a table program would take for a formula.
    QCOMPARE(csv_cell("=1+1"), std::string("'=1+1"));
    QCOMPARE(csv_cell("@a,b"), std::string("\"'@a,b\""));
    QCOMPARE(csv_cell("ink, \"sea\""), std::string("\"ink, \"\"sea\"\"\""));
}

void SuppliesTest::folds_a_box_and_keeps_it_as_an_outer()
{
    shop_ = std::make_unique<Workshop>(*planned_);
    QVERIFY(shop_->open());
    open_shelf(Qt::Key_2);
    AtTheWindow& at = shop_->at();
    at.letter(Qt::Key_F);
    QTRY_VERIFY(at.reads(QStringLiteral("Fold it from paper")));
    at.type(QStringLiteral("100"));
    at.press(Qt::Key_Tab);
    at.type(QStringLiteral("70"));
    at.press(Qt::Key_Return);
    QVERIFY2(at.reads(QStringLiteral("lengths in millimetres")), qPrintable(at.all_words())); // a height is missing
    at.press(Qt::Key_Tab);
    at.type(QStringLiteral("40"));
    at.press(Qt::Key_Return);
    QTRY_VERIFY2(at.reads(QStringLiteral("201.8")), qPrintable(at.all_words())); // as tests/core/paperbox has it
    for (int field = 0; field < 3; ++field) at.press(Qt::Key_Tab);               // past the box to tick and the button
    at.type(QStringLiteral("SQUARE"));
    at.press(Qt::Key_Return);
    QTRY_VERIFY2(shop_->day().cupboard().supply({"SQUARE"}) != nullptr, qPrintable(at.all_words()));
    QCOMPARE(shop_->day().cupboard().supply({"SQUARE"})->made_from.text, std::string("SHEET-300"));
    at.click(at.named(QStringLiteral("Print the template"), QAccessible::Button));
    QTRY_VERIFY(QFile::exists(shop_->folder() + QStringLiteral("/papers/paper-box-one-square.pdf")));
}

void SuppliesTest::weighs_up_the_sizes_a_supplier_offers()
{
    shop_ = std::make_unique<Workshop>(*planned_);
    const auto parcels = shop_->pick(6);
    shop_->pack(parcels);
    shop_->day().moved();
    QVERIFY(shop_->open());
    auto* sizes = shop_->desk().cupboard()->sizes();
    const QString missing = sizes->choose(QUrl::fromLocalFile(shop_->folder() + QStringLiteral("/none.csv")), {});
    QVERIFY(missing.isEmpty());
    QVERIFY(!sizes->words().isEmpty());
    QVERIFY(!sizes->choose(QUrl(), QStringLiteral("cheap")).isEmpty());
    open_shelf(Qt::Key_2);
    AtTheWindow& at = shop_->at();
    at.letter(Qt::Key_S);
    QTRY_VERIFY(at.reads(QStringLiteral("Which sizes to buy")));
    sizes->choose(QUrl::fromLocalFile(QStringLiteral(STOW_SOURCE_DIR "/demo_orders/supplies.csv")),
                  QStringLiteral("0.10"));
    QTRY_VERIFY_WITH_TIMEOUT(!sizes->running(), 20'000);
    QTRY_VERIFY2(at.reads(QStringLiteral("kept back to judge by")), qPrintable(at.all_words()));
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::SuppliesTest)
#include "supplies_test.moc"
