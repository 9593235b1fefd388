// Opens the window on a shop book, walks every place and panel of it, takes a picture of each and looks it over. Fails
// on any word the QML engine says and on any fault. Without a book: a new, empty one.
//   screens [--book FILE] [--out DIR] [--size 1280x800] [--dark] [--clock 08:30] [--day 2026-11-25]
#include "app/day.h"
#include "app/painting/fonts.h"
#include "app/view/desk.h"
#include "app/words/translations.h"
#include "core/book/parcels.h"
#include "tests/quick/look_over.h"

#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

#include <array>
#include <iostream>
#include <set>

namespace {

using namespace stow;
using Place = view::Desk::Place;

int complaints = 0;

void listen(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    // The offscreen platform says so when it lacks a capability; that is not ours.
    const bool ours = !message.contains(QLatin1String("propagateSizeHints"));
    if (type != QtDebugMsg && type != QtInfoMsg && ours) ++complaints;
    std::cerr << qPrintable(qFormatLogMessage(type, context, message)) << '\n';
}

class Pictures {
public:
    Pictures(QQuickWindow& window, QDir out) : window_(window), out_(std::move(out)) {}

    void take(const QString& name)
    {
        std::cerr << "- " << qPrintable(name) << '\n';
        QTest::qWait(250); // animations are at most 150 ms
        QImage image = window_.grabWindow();
        QStringList faults = quick::look_over(window_, image);
        if (!faults.isEmpty()) { // on a busy machine rows out of sight are still being made
            QTest::qWait(1000);
            image = window_.grabWindow();
            faults = quick::look_over(window_, image);
        }
        if (image.isNull() || !image.save(out_.filePath(name + QStringLiteral(".png")))) {
            std::cerr << "no picture of " << qPrintable(name) << '\n';
            ++complaints;
        }
        for (const QString& fault : faults) {
            std::cerr << "  " << qPrintable(name) << ": " << qPrintable(fault) << '\n';
            ++complaints;
        }
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(&window_, key, with);
        QTest::qWait(80); // longer than characters are held back for a scanner
    }
    void type(const char* text)
    {
        for (const char* c = text; *c != '\0'; ++c) {
            QTest::keyClick(&window_, *c);
            QTest::qWait(60); // as a hand types
        }
    }

private:
    QQuickWindow& window_;
    QDir out_;
};

// A shop's file whose headings say nothing.
QString unknown_table(const QDir& folder)
{
    QFile file(folder.filePath(QStringLiteral("market_day.csv")));
    if (file.open(QIODevice::WriteOnly)) {
        file.write("Slip,Taken,Patron,Lane,Zip and place,Piece,How many\n"
                   "14,2026-11-24,Elna Karlsund,Kajen 9,9996 Siltholm,Ink Sea green 30 ml,2\n"
                   "15,2026-11-24,Bo Vinterby,Fyrvej 12,9996 Siltholm,Notebook A5,many\n");
    }
    return file.fileName();
}

} // namespace

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QCommandLineParser line;
    line.addOptions({{QStringLiteral("book"), {}, QStringLiteral("file")},
                     {QStringLiteral("out"), {}, QStringLiteral("folder")},
                     {QStringLiteral("size"), {}, QStringLiteral("WxH"), QStringLiteral("1280x800")},
                     {QStringLiteral("dark"), {}},
                     {QStringLiteral("language"), {}, QStringLiteral("en or de"), QStringLiteral("en")},
                     {QStringLiteral("day"), {}, QStringLiteral("date"), QStringLiteral("2026-11-25")},
                     {QStringLiteral("clock"), {}, QStringLiteral("time"), QStringLiteral("15:48")}});
    line.process(application);
    qInstallMessageHandler(listen);
    words::install_translations(application, line.value(QStringLiteral("language")));
    if (!painting::load_fonts()) return 2;

    const QTemporaryDir folder;
    const QString file = line.isSet(QStringLiteral("book")) ? line.value(QStringLiteral("book"))
                                                            : folder.filePath(QStringLiteral("shop.book"));
    auto book = book::Book::open(file.toStdString());
    const auto date = parse_date(line.value(QStringLiteral("day")).toStdString());
    const auto time = parse_time_of_day(line.value(QStringLiteral("clock")).toStdString());
    if (!book || !date || !time) {
        std::cerr << "book, day or clock cannot be read\n";
        return 2;
    }
    const LocalTime now{*date, *time};
    Day day(std::move(*book), [now] { return now; });

    QQuickStyle::setStyle(QStringLiteral("Stowbench.Style"));
    view::Desk desk(day);
    desk.setDark(line.isSet(QStringLiteral("dark")));
    QQmlApplicationEngine engine;
    engine.setInitialProperties({{QStringLiteral("desk"), QVariant::fromValue(&desk)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt-project.org/imports/Stowbench/Screens/Main.qml")));
    auto* window = engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().front());
    if (window == nullptr) return 1;
    const QStringList size = line.value(QStringLiteral("size")).split(QLatin1Char('x'));
    if (size.size() == 2) window->resize(size[0].toInt(), size[1].toInt());
    window->show();
    window->requestActivate();

    QDir out(line.isSet(QStringLiteral("out")) ? line.value(QStringLiteral("out")) : folder.path());
    out.mkpath(QStringLiteral("."));
    Pictures pictures(*window, out);
    using P = std::pair<Place, const char*>;
    for (const auto& [place, name] : {P{Place::Arrivals, "arrivals"}, P{Place::Plan, "plan"}, P{Place::Pick, "pick"},
                                      P{Place::Bench, "bench"}, P{Place::HandOver, "hand_over"}}) {
        desk.setPlace(place);
        pictures.take(QString::fromLatin1(name));
    }
    pictures.press(Qt::Key_F1);
    pictures.press(Qt::Key_N);
    pictures.take(QStringLiteral("arrivals_by_hand"));
    pictures.press(Qt::Key_Escape);
    if (!desk.arrivals()->empty()) {
        pictures.press(Qt::Key_E);
        pictures.take(QStringLiteral("arrivals_mend_address"));
        pictures.press(Qt::Key_F2); // leaves it
        pictures.press(Qt::Key_F1);
        pictures.press(Qt::Key_S);
        pictures.take(QStringLiteral("arrivals_set_aside"));
        pictures.press(Qt::Key_Escape);
        pictures.press(Qt::Key_Space);
        pictures.press(Qt::Key_Down);
        pictures.press(Qt::Key_Space);
        pictures.take(QStringLiteral("arrivals_marked"));
        pictures.press(Qt::Key_Escape);
    }
    desk.arrivals()->openFile(QUrl::fromLocalFile(unknown_table(QDir(folder.path()))));
    pictures.take(QStringLiteral("arrivals_columns"));
    desk.arrivals()->leaveFile();
    pictures.press(Qt::Key_F2);
    pictures.press(Qt::Key_O);
    pictures.take(QStringLiteral("plan_another_outer"));
    if (desk.plan()->choices()->count() > 1) {
        pictures.press(Qt::Key_Down);
        for (int waits = 0; desk.plan()->comparison()->working() && waits < 100; ++waits) QTest::qWait(100);
        pictures.take(QStringLiteral("plan_two_outers"));
    }
    pictures.press(Qt::Key_Escape);
    desk.setPlace(Place::Cupboard);
    const std::array<const char*, 7> shelves{"goods", "supplies", "rates",      "records",
                                             "house", "sending",  "before_sale"};
    for (std::size_t i = 0; i < shelves.size(); ++i) {
        pictures.press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(i)));
        pictures.take(QStringLiteral("cupboard_%1").arg(QLatin1String(shelves.at(i))));
        if (i == 3 && desk.cupboard()->records()->busy()) { // a long stretch is added up beside the window
            for (int waits = 0; desk.cupboard()->records()->busy() && waits < 300; ++waits) QTest::qWait(100);
            pictures.take(QStringLiteral("cupboard_records_long"));
        }
        if (i == 4) {
            pictures.press(Qt::Key_I, Qt::ControlModifier);
            pictures.take(QStringLiteral("cupboard_house_inserts"));
            pictures.press(Qt::Key_Escape);
            pictures.press(Qt::Key_W, Qt::ControlModifier);
            pictures.take(QStringLiteral("cupboard_house_wrappings"));
            pictures.press(Qt::Key_Escape);
        }
        if (i == 6) {
            desk.cupboard()->beforeSale()->ask(0, QStringLiteral("2"), QStringLiteral("DE"), {});
            if (!QTest::qWaitFor([&] { return !desk.cupboard()->beforeSale()->asking(); }, 30'000)) return 1;
            pictures.take(QStringLiteral("cupboard_before_sale_asked"));
        }
        if (i == 1) {
            pictures.press(Qt::Key_N);
            pictures.take(QStringLiteral("cupboard_supplies_new"));
            pictures.press(Qt::Key_Return, Qt::ControlModifier); // nothing is typed yet: it says what is missing
            pictures.take(QStringLiteral("cupboard_supplies_new_wrong"));
            pictures.press(Qt::Key_Escape);
            pictures.press(Qt::Key_F);
            pictures.type("100");
            pictures.press(Qt::Key_Tab);
            pictures.type("70");
            pictures.press(Qt::Key_Tab);
            pictures.type("40");
            pictures.press(Qt::Key_Return);
            pictures.take(QStringLiteral("cupboard_supplies_fold"));
            pictures.press(Qt::Key_Escape);
            pictures.press(Qt::Key_S);
            desk.cupboard()->sizes()->choose(
                QUrl::fromLocalFile(QStringLiteral(STOW_SOURCE_DIR "/demo_orders/supplies.csv")),
                QStringLiteral("0.10"));
            for (int waits = 0; desk.cupboard()->sizes()->running() && waits < 300; ++waits) QTest::qWait(100);
            pictures.take(QStringLiteral("cupboard_supplies_sizes"));
            pictures.press(Qt::Key_Escape);
        }
        if (i == 2) desk.cupboard()->rates()->tryParcel(QStringLiteral("250 180 90 812 DE 20095"));
        if (i == 2) pictures.take(QStringLiteral("cupboard_rates_tried"));
        if (i > 2) continue;
        pictures.press(i == 0 ? Qt::Key_N : i == 1 ? Qt::Key_Return : Qt::Key_P);
        pictures.take(QStringLiteral("cupboard_%1_one").arg(QLatin1String(shelves.at(i))));
        pictures.press(Qt::Key_Escape);
        if (i == 2) pictures.press(Qt::Key_Escape); // out of the grid, too
    }
    desk.setPlace(Place::HandOver);
    if (!desk.handOver()->empty()) {
        pictures.press(Qt::Key_F8);
        pictures.take(QStringLiteral("preview_hand_over"));
        pictures.press(Qt::Key_Escape);
        pictures.press(Qt::Key_D);
        pictures.take(QStringLiteral("hand_over_one"));
        pictures.press(Qt::Key_Escape);
        for (int row = 1; row < desk.handOver()->parcels()->count(); ++row) pictures.press(Qt::Key_Down);
        pictures.press(Qt::Key_C); // the last one has left
        pictures.take(QStringLiteral("hand_over_back"));
        pictures.press(Qt::Key_Escape);
    }
    pictures.press(Qt::Key_F, Qt::ControlModifier);
    pictures.type("al");
    pictures.take(QStringLiteral("find"));
    pictures.press(Qt::Key_Escape);
    desk.setPlace(Place::Bench);
    if (!desk.bench()->empty()) {
        while (!desk.bench()->weighing() && desk.bench()->currentStep() + 1 < desk.bench()->steps()->count()) {
            if (desk.bench()->currentStep() == 2) pictures.take(QStringLiteral("bench_step"));
            if (desk.bench()->currentStep() == 2 && desk.bench()->comesApart()) {
                pictures.press(Qt::Key_T);
                pictures.take(QStringLiteral("bench_apart"));
                pictures.press(Qt::Key_T);
            }
            pictures.press(Qt::Key_Space);
        }
        const double expected = desk.bench()->ruler().expected;
        desk.bench()->weigh(QString::number(expected + 4, 'f', 0));
        pictures.take(QStringLiteral("bench_weighed"));
        desk.bench()->weigh(QString::number(expected * 0.7, 'f', 0));
        pictures.take(QStringLiteral("bench_wrong"));
        pictures.press(Qt::Key_Space);
        pictures.take(QStringLiteral("bench_too_light"));
        pictures.press(Qt::Key_Y);
        pictures.take(QStringLiteral("bench_overrule"));
        pictures.press(Qt::Key_Escape);
        desk.bench()->labelMissing();
        pictures.take(QStringLiteral("bench_address"));
        desk.bench()->labelMissing();
    }
    desk.setPlace(Place::Pick);
    if (desk.hasPapers()) {
        pictures.press(Qt::Key_F8);
        pictures.take(QStringLiteral("preview_pick_list"));
        desk.preview()->setPaper(2);
        pictures.take(QStringLiteral("preview_packing_slips"));
        pictures.press(Qt::Key_Plus);
        pictures.take(QStringLiteral("preview_larger"));
        pictures.press(Qt::Key_Plus);
        pictures.press(Qt::Key_Escape);
    }
    pictures.press(Qt::Key_Return);
    pictures.press(Qt::Key_Space);
    pictures.take(QStringLiteral("pick_round"));
    for (int ticks = 0; !desk.pick()->empty() && !desk.pick()->roundDone() && ticks < 400; ++ticks) {
        desk.pick()->tick(desk.pick()->nextRow());
    }
    if (!desk.pick()->empty()) {
        pictures.take(QStringLiteral("pick_round_done"));
        pictures.press(Qt::Key_Return);
    }
    // One parcel of each kind of outer, in the middle of its steps.
    desk.setPlace(Place::Bench);
    std::set<QString> kinds;
    for (int parcel = 0; !desk.bench()->empty() && parcel < 40; ++parcel) {
        const QString kind = desk.bench()->outer().section(QLatin1Char(' '), 0, 0).toLower();
        if (kinds.insert(kind).second) {
            for (int step = 0; step < 2; ++step) desk.bench()->done();
            if (!desk.stopWord().isEmpty()) pictures.press(Qt::Key_Space);
            pictures.take(QStringLiteral("bench_in_a_") + kind);
            pictures.press(Qt::Key_A);
            if (kinds.size() == 1) pictures.take(QStringLiteral("bench_add"));
            pictures.press(Qt::Key_Escape);
        }
        desk.bench()->later();
    }
    // Words over everything.
    emit day.waiting(QCoreApplication::translate("stow::view::PlanController", "Writing the plan into the book"));
    QTest::qWait(600); // it fades in
    pictures.take(QStringLiteral("waits"));
    emit day.waiting({});
    constexpr int disk_full = 13; // SQLITE_FULL
    emit day.failed(book::BookFailure("the disk is full", disk_full));
    pictures.take(QStringLiteral("disk_full"));
    desk.tryAgain();
    // What a second start on the same book shows.
    QQmlApplicationEngine second;
    second.setInitialProperties({{QStringLiteral("book"), QString::fromStdString(day.book().path().string())},
                                 {QStringLiteral("dark"), desk.dark()}});
    second.load(QUrl(QStringLiteral("qrc:/qt-project.org/imports/Stowbench/Screens/AlreadyOpen.qml")));
    if (second.rootObjects().isEmpty()) return 1;
    Pictures(*qobject_cast<QQuickWindow*>(second.rootObjects().first()), out).take(QStringLiteral("already_open"));
    std::cerr << complaints << " complaints\n";
    return complaints == 0 ? 0 : 1;
}
