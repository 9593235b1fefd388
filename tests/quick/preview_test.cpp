// Papers looked at before they are printed: one key everywhere, each page as it will come out, nothing printed by it.
#include "app/day_papers.h"
#include "app/painting/paint.h"
#include "core/book/orders.h"
#include "core/book/prints.h"
#include "tests/quick/workshop.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QQuickItemGrabResult>
#include <QQuickStyle>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>

#include <functional>

namespace stow::quick {

namespace {

// What a PDF says of its making, and of nothing else.
QByteArray undated(QByteArray pdf)
{
    QString text = QString::fromLatin1(pdf);
    for (const char* stamp : {"/CreationDate \\(D:[^)]*\\)", "<xmp:(Create|Modify|Metadata)Date>[^<]*<",
                              "uuid:[0-9a-f-]+", "/ID \\[[^\\]]*\\]"}) {
        text.remove(QRegularExpression(QString::fromLatin1(stamp)));
    }
    return text.toLatin1();
}

QByteArray pdf_of(const view::PageScene& scene)
{
    QBuffer buffer;
    if (!scene.document || !buffer.open(QIODevice::WriteOnly)) return {};
    painting::write_pdf(buffer, *scene.document, *scene.palette);
    return undated(buffer.data());
}

QByteArray file_of(const Workshop& shop, const QString& name)
{
    QFile file(shop.folder() + QStringLiteral("/papers/") + name);
    return file.open(QIODevice::ReadOnly) ? undated(file.readAll()) : QByteArray();
}

int pdfs_of(const Workshop& shop)
{
    return static_cast<int>(
        QDir(shop.folder() + QStringLiteral("/papers")).entryList({QStringLiteral("*.pdf")}).size());
}

} // namespace

class PreviewTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void shows_a_round_before_it_is_started_as_it_will_come_out();
    void turns_pages_and_papers_by_keys_and_buttons();
    void prints_nothing_when_it_is_put_away();
    void paints_the_page_that_it_names();
    void shows_a_list_before_it_is_closed_and_prints_it_again_marked();
    void shows_the_papers_of_the_parcel_on_the_bench();
    void shows_what_a_shelf_of_the_cupboard_prints();
    void shows_at_the_plan_what_its_key_would_print();
    void shows_a_box_template_before_it_is_printed();
    void says_so_where_there_is_nothing_to_print();
    void warns_of_letters_that_no_font_has();
    void warns_of_what_a_label_has_no_room_for();

private:
    static std::string readdressed(Workshop& shop, const std::function<void(shop::Address&)>& change);
    std::unique_ptr<Workshop> planned_;
};

void PreviewTest::initTestCase()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->plan_the_morning();
}

void PreviewTest::shows_a_round_before_it_is_started_as_it_will_come_out()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F3);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.at().named(QStringLiteral("Start the round and print"), QAccessible::Button) != nullptr);
    const view::PreviewController& preview = *shop.desk().preview();
    QVERIFY(preview.papers().contains(QStringLiteral("Pick list")));
    QVERIFY(preview.papers().contains(QStringLiteral("Pick list by order")));
    std::map<QString, QByteArray> shown;
    const std::map<QString, QString> files{
        {QStringLiteral("Pick list"), QStringLiteral("pick-list.pdf")},
        {QStringLiteral("Pick list by order"), QStringLiteral("pick-list-by-order.pdf")},
        {QStringLiteral("Packing slips"), QStringLiteral("packing-slips.pdf")},
        {QStringLiteral("Bench cards"), QStringLiteral("bench-cards.pdf")},
        {QStringLiteral("Labels"), QStringLiteral("labels.pdf")}};
    for (int paper = 0; paper < preview.papers().size(); ++paper) {
        shown[preview.title()] = pdf_of(preview.scene());
        shop.at().press(Qt::Key_Down);
    }
    QCOMPARE(pdfs_of(shop), 0); // looking prints nothing
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY(!shop.desk().pick()->empty());
    for (const auto& [name, file] : files) {
        QVERIFY2(!shown[name].isEmpty(), qPrintable(name));
        QVERIFY2(shown[name] == file_of(shop, file), qPrintable(name));
    }
    // Now it is under way, the same papers are reprints, and say so.
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.at().named(QStringLiteral("Print all again"), QAccessible::Button) != nullptr);
    QVERIFY(pdf_of(preview.scene()) != shown[QStringLiteral("Pick list")]);
    const QByteArray again = pdf_of(preview.scene());
    shop.at().press(Qt::Key_Return);
    QTRY_COMPARE(file_of(shop, QStringLiteral("pick-list.pdf")), again);
    QVERIFY(shop.at().reads(QStringLiteral("marked as reprints")));
}

void PreviewTest::turns_pages_and_papers_by_keys_and_buttons()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F3);
    shop.at().press(Qt::Key_F8);
    const view::PreviewController& preview = *shop.desk().preview();
    QTRY_VERIFY(shop.at().reads(QStringLiteral("Page 1 of")));
    shop.at().press(Qt::Key_Left); // before the first is nothing
    QCOMPARE(preview.page(), 1);
    const int slips = static_cast<int>(preview.papers().indexOf(QStringLiteral("Packing slips")));
    QVERIFY(slips > 0);
    shop.at().settle();
    QQuickItem* tab = shop.at().named(QStringLiteral("Packing slips"), QAccessible::Button);
    QVERIFY(tab != nullptr);
    shop.at().click(tab);
    QTRY_COMPARE(preview.paper(), slips);
    QVERIFY(preview.pages() > 2);
    QVERIFY(shop.at().named(QStringLiteral("Packing slips: Page 1 of %1").arg(preview.pages()), QAccessible::Graphic));
    shop.at().press(Qt::Key_Right);
    QTRY_COMPARE(preview.page(), 2);
    shop.at().click(shop.at().named(QStringLiteral("Next"), QAccessible::Button));
    QTRY_COMPARE(preview.page(), 3);
    shop.at().click(shop.at().named(QStringLiteral("Back"), QAccessible::Button));
    QTRY_COMPARE(preview.page(), 2);
    // Larger: half a page at a time, every half of every page.
    shop.at().press(Qt::Key_Plus);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("Page 2 of %1, upper half").arg(preview.pages())));
    shop.at().press(Qt::Key_Right);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("Page 2 of %1, lower half").arg(preview.pages())));
    shop.at().press(Qt::Key_Right);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("Page 3 of %1, upper half").arg(preview.pages())));
    shop.at().press(Qt::Key_Left);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("Page 2 of %1, lower half").arg(preview.pages())));
    shop.at().press(Qt::Key_Plus);
    QTRY_VERIFY(!shop.at().reads(QStringLiteral("half")));
    QCOMPARE(preview.page(), 2);
    const int left = preview.pages() - preview.page() + 1;
    for (int turn = 0; turn < left; ++turn) shop.desk().preview()->nextPage();
    QCOMPARE(preview.paper(), slips + 1); // past the last page comes the next paper
    QCOMPARE(preview.page(), 1);
    shop.desk().preview()->previousPage();
    QCOMPARE(preview.paper(), slips);
    QCOMPARE(preview.page(), preview.pages());
}

void PreviewTest::prints_nothing_when_it_is_put_away()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F3);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.desk().preview()->open());
    shop.at().press(Qt::Key_Escape);
    QTRY_VERIFY(!shop.desk().preview()->open());
    QTRY_VERIFY(!shop.at().reads(QStringLiteral("Page 1 of")));
    QCOMPARE(pdfs_of(shop), 0);
    QVERIFY(shop.desk().pick()->empty());
    for (const shop::Parcel& parcel : book::parcels(shop.book())) {
        QCOMPARE(book::next_print(shop.book(), "pick-list", {parcel.number}), 1);
    }
    shop.at().press(Qt::Key_Return); // the keys are the screen's again
    QTRY_VERIFY(!shop.desk().pick()->empty());
}

void PreviewTest::paints_the_page_that_it_names()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F3);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.desk().preview()->open());
    shop.at().settle();
    const view::PageScene scene = shop.desk().preview()->scene();
    QQuickItem* item = shop.at().named(scene.sentence, QAccessible::Graphic);
    QVERIFY(item != nullptr);
    QVERIFY(item->height() > 300);
    // The sheet as it lies in the item, drawn by the painter of the PDF.
    const papers::Extent extent = scene.document->pages[scene.page].extent;
    const QSize room(static_cast<int>(item->width()) - 2, static_cast<int>(item->height()) - 2);
    const QSizeF sheet = QSizeF(extent.width, extent.height).scaled(room, Qt::KeepAspectRatio);
    const QImage expected = painting::to_image(scene.document->pages[scene.page], sheet.toSize(), *scene.palette);
    const auto grab = item->grabToImage();
    QVERIFY(grab);
    QSignalSpy ready(grab.data(), &QQuickItemGrabResult::ready);
    QVERIFY(ready.wait());
    const QImage seen = grab->image();
    const auto dark = [](const QImage& image, const QRect& part) {
        int pixels = 0;
        for (int y = part.top(); y <= part.bottom(); ++y) {
            for (int x = part.left(); x <= part.right(); ++x) pixels += qGray(image.pixel(x, y)) < 140 ? 1 : 0;
        }
        return pixels;
    };
    const QPoint corner((seen.width() - expected.width()) / 2, (seen.height() - expected.height()) / 2);
    // Quarter by quarter: as much ink in the same places.
    for (int part = 0; part < 16; ++part) {
        const QRect there(expected.width() / 4 * (part % 4), expected.height() / 4 * (part / 4), expected.width() / 4,
                          expected.height() / 4);
        const int wanted = dark(expected, there.adjusted(3, 3, -3, -3)),
                  found = dark(seen, there.adjusted(3, 3, -3, -3).translated(corner));
        QVERIFY2(std::abs(wanted - found) <= 40 + wanted / 4,
                 qPrintable(QStringLiteral("part %1: %2 and %3").arg(part).arg(wanted).arg(found)));
    }
    QVERIFY(dark(seen, QRect(corner, expected.size()).adjusted(3, 3, -3, -3)) > 500);
}

void PreviewTest::shows_a_list_before_it_is_closed_and_prints_it_again_marked()
{
    Workshop shop(*planned_);
    const auto picked = shop.pick(3);
    shop.pack(picked);
    shop.label(picked);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F5);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.at().named(QStringLiteral("Close the list and print"), QAccessible::Button) != nullptr);
    QVERIFY(book::hand_over_lists(shop.book()).empty());
    const QByteArray shown = pdf_of(shop.desk().preview()->scene());
    shop.at().press(Qt::Key_Return);
    QTRY_COMPARE(book::hand_over_lists(shop.book()).size(), std::size_t(1));
    const book::HandOverList list = book::hand_over_lists(shop.book()).front();
    QString name = QStringLiteral("hand-over-list-%1-1.pdf").arg(QString::fromStdString(list.carrier));
    name.replace(QLatin1Char(' '), QLatin1Char('-'));
    QVERIFY(shown == file_of(shop, name));
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.desk().preview()->open());
    while (!shop.at().named(QStringLiteral("Print again"), QAccessible::Button) &&
           shop.desk().preview()->paper() + 1 < shop.desk().preview()->papers().size()) {
        shop.at().press(Qt::Key_Down);
    }
    QVERIFY(shop.at().named(QStringLiteral("Print again"), QAccessible::Button) != nullptr);
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("marked as a reprint")));
    QVERIFY(shown != file_of(shop, name));
    QCOMPARE(book::hand_over_lists(shop.book()).size(), std::size_t(1)); // no second list
}

void PreviewTest::shows_the_papers_of_the_parcel_on_the_bench()
{
    Workshop shop(*planned_);
    const auto picked = shop.pick(1);
    const std::string number = book::parcel(shop.book(), picked.front())->parcel.number;
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F4);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.desk().preview()->open());
    QCOMPARE(shop.desk().preview()->papers().first(), QStringLiteral("Labels"));
    shop.at().press(Qt::Key_Down);
    QTRY_COMPARE(shop.desk().preview()->title(), QStringLiteral("Packing slips"));
    shop.at().press(Qt::Key_Return);
    const QString file = QString::fromStdString(number) + QStringLiteral("/packing-slips.pdf");
    QTRY_VERIFY(!file_of(shop, file).isEmpty());
    QCOMPARE(book::next_print(shop.book(), "packing-slips", {number}), 2);
    QCOMPARE(book::next_print(shop.book(), "labels", {number}), 1);
}

void PreviewTest::shows_what_a_shelf_of_the_cupboard_prints()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F9);
    shop.at().letter(Qt::Key_5);
    shop.at().press(Qt::Key_F8);
    QTRY_COMPARE(shop.desk().preview()->title(), QStringLiteral("Command cards"));
    QVERIFY(shop.at().named(QStringLiteral("Print"), QAccessible::Button) != nullptr);
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY(!file_of(shop, QStringLiteral("command-cards.pdf")).isEmpty());
}

void PreviewTest::shows_at_the_plan_what_its_key_would_print()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F2);
    QTRY_VERIFY(shop.at().named(QStringLiteral("Look at the papers"), QAccessible::Button) != nullptr);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.at().named(QStringLiteral("Start the round and print"), QAccessible::Button) != nullptr);
    QCOMPARE(shop.desk().preview()->title(), QStringLiteral("Pick list"));
    const QByteArray shown = pdf_of(shop.desk().preview()->scene());
    QCOMPARE(pdfs_of(shop), 0);
    shop.at().press(Qt::Key_Return);
    QTRY_COMPARE(shop.desk().place(), view::Desk::Place::Pick);
    QVERIFY(!shop.desk().pick()->empty());
    QVERIFY(!shown.isEmpty() && shown == file_of(shop, QStringLiteral("pick-list.pdf")));
}

void PreviewTest::shows_a_box_template_before_it_is_printed()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(Qt::Key_F9);
    at.letter(Qt::Key_2);
    at.letter(Qt::Key_F);
    QTRY_VERIFY(at.reads(QStringLiteral("Fold it from paper")));
    at.press(Qt::Key_F8); // nothing is laid out yet
    QTRY_VERIFY(at.reads(QStringLiteral("There is nothing to print here now.")));
    for (const char* length : {"60", "60", "40"}) {
        at.type(QString::fromLatin1(length));
        at.press(Qt::Key_Tab);
    }
    at.click(at.named(QStringLiteral("Lay it out"), QAccessible::Button));
    QTRY_VERIFY(shop.desk().cupboard()->paperBoxes()->laid());
    at.settle();
    at.press(Qt::Key_F8);
    QTRY_COMPARE(shop.desk().preview()->title(), QStringLiteral("Paper box template"));
    const QByteArray shown = pdf_of(shop.desk().preview()->scene());
    QCOMPARE(pdfs_of(shop), 0);
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("with a ruler of 100 mm")));
    QVERIFY(!shown.isEmpty() && shown == file_of(shop, QStringLiteral("paper-box-one-square.pdf")));
    at.settle();
    at.click(at.named(QStringLiteral("Look at it"), QAccessible::Button)); // the sheet is still there
    QTRY_COMPARE(shop.desk().preview()->title(), QStringLiteral("Paper box template"));
    at.press(Qt::Key_Escape);
    at.press(Qt::Key_Escape);
    QTRY_VERIFY(!shop.desk().cupboard()->paperBoxes()->open());
    at.press(Qt::Key_F8); // the shelf has a list of its own, and nothing on it
    QTRY_VERIFY(at.reads(QStringLiteral("There is nothing to print here now.")));
    QVERIFY(!shop.desk().preview()->open());
}

void PreviewTest::says_so_where_there_is_nothing_to_print()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    QVERIFY(shop.at().named(QStringLiteral("Look at the papers"), QAccessible::Button) == nullptr);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("There is nothing to print here now.")));
    QVERIFY(!shop.desk().preview()->open());
    shop.at().press(Qt::Key_F3);
    QTRY_VERIFY(shop.at().named(QStringLiteral("Look at the papers"), QAccessible::Button) != nullptr);
    shop.at().click(shop.at().named(QStringLiteral("Look at the papers"), QAccessible::Button));
    QTRY_VERIFY(shop.desk().preview()->open());
}

// An order that is in the next round, its address changed; the parcel still serves it.
std::string PreviewTest::readdressed(Workshop& shop, const std::function<void(shop::Address&)>& change)
{
    const shop::Parcel parcel = book::parcels_in(shop.book(), shop::ParcelState::planned).front();
    shop::HeldOrder held = *book::order(shop.book(), parcel.pieces.front().order);
    change(held.order.to);
    if (!book::edit_order(shop.day().book(), held.id, held.order) ||
        !book::accept_changes(shop.day().book(), parcel.id))
        return {};
    shop.day().moved();
    return parcel.number;
}

// Before the round and when it starts: boxes on a label must not go out unseen.
void PreviewTest::warns_of_letters_that_no_font_has()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F3);
    shop.at().press(Qt::Key_F8);
    const view::PreviewController& preview = *shop.desk().preview();
    QTRY_VERIFY(preview.open());
    QCOMPARE(preview.warning(), QString()); // the demo's letters are all there
    shop.at().press(Qt::Key_Escape);
    QTRY_VERIFY(!preview.open());

    const std::string number = readdressed(shop, [](shop::Address& to) { to.town += " \u0378"; }); // in no writing
    QVERIFY(!number.empty());
    const QString told =
        QStringLiteral("This computer has no font for some letters of ") + QString::fromStdString(number);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.at().reads(told));
    QVERIFY(!shop.at().reads(QStringLiteral("Install")));
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY(!shop.desk().pick()->empty());
    QTRY_VERIFY(shop.at().named(QStringLiteral("Something is wrong on paper")));
    QVERIFY(shop.at().reads(told));
    QVERIFY(shop.at().reads(QStringLiteral("mend the order")));
    shop.at().press(Qt::Key_Space);
    QTRY_VERIFY(!shop.at().reads(QStringLiteral("Something is wrong on paper")));
    QVERIFY(pdfs_of(shop) > 0);
}

void PreviewTest::warns_of_what_a_label_has_no_room_for()
{
    Workshop shop(*planned_);
    const std::string number = readdressed(shop, [](shop::Address& to) {
        to.street.resize(16, "Second staircase, third door on the left, please ring twice");
    });
    QVERIFY(!number.empty());
    QVERIFY(shop.open());
    QVERIFY(shop.desk().cupboard()->house()->set(QStringLiteral("labels"), QStringLiteral("a4x6")).isEmpty());
    shop.at().press(Qt::Key_F3);
    shop.at().press(Qt::Key_F8);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("The address of ") + QString::fromStdString(number) +
                                QStringLiteral(" is too long for this label")));
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::PreviewTest)
#include "preview_test.moc"
