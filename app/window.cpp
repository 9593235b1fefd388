#include "app/window.h"

#include "app/day.h"
#include "app/privacy.h"
#include "app/scale/hid_scale.h"
#include "app/sound/speaker.h"
#include "app/view/background.h"
#include "app/view/desk.h"
#include "app/words/book.h"
#include "core/book/daily_copies.h"
#include "core/book/erasing.h"
#ifdef STOW_WATCHED
#include "app/watch/application.h"
#endif

#include <QGuiApplication>
#include <QLockFile>
#include <QQmlApplicationEngine>
#include <QQuickStyle>

#include <iostream>
#include <utility>

namespace stow {

namespace {

// Beside the window, of a second connection, since the first belongs to the screens: old buyers are forgotten, in the
// copies too, then today's copy of the book is made.
void look_after(view::Work& work, view::Desk& desk, Day& day)
{
    if (work.running()) return;
    work.start([&desk, &day, path = day.book().path(), today = day.today()](Run&) -> view::Work::Finish {
        auto book = book::Book::open(path);
        QString wrong = book ? QString() : words::problem(book.error());
        const int forgotten = book ? forget_old_buyers(*book, today) : 0;
        std::vector<std::filesystem::path> unreached;
        if (book && book::copies_are_behind(*book)) unreached = book::erase_in_copies(*book).unreached;
        const auto copies = book::daily_copies(path);
        const bool there =
            std::any_of(copies.begin(), copies.end(), [&](const auto& copy) { return copy.day == today; });
        if (book && !there) {
            if (const auto made = book::copy_of_today(*book, today); !made) wrong = words::problem(made.error());
        }
        return [&desk, &day, wrong, forgotten, unreached] {
            if (!wrong.isEmpty()) desk.say(QObject::tr("No copy of the shop book was made today: %1").arg(wrong));
            for (const auto& copy : unreached) desk.say(words::may_still_show(copy));
            if (forgotten == 0) return;
            desk.say(QObject::tr("The data of %n buyers is old and was erased.", nullptr, forgotten));
            day.moved();
        };
    });
}

constexpr const char* screens = "qrc:/qt-project.org/imports/Stowbench/Screens/";

int show_already_open(QGuiApplication& application, const QString& book, bool dark)
{
    QQmlApplicationEngine engine;
    engine.setInitialProperties({{QStringLiteral("book"), book}, {QStringLiteral("dark"), dark}});
    engine.load(QUrl(QLatin1String(screens) + QStringLiteral("AlreadyOpen.qml")));
    if (engine.rootObjects().isEmpty()) return 1;
    application.exec();
    return 4; // the shop book cannot be opened
}

} // namespace

int open_window(QGuiApplication& application, Day& day)
{
    QQuickStyle::setStyle(QStringLiteral("Basic")); // beneath our own controls, whatever the desktop says
    // One window a book: a second one would show what the first has changed since. The lock of a program that was
    // killed is known by its process and does not count.
    const QString book = QString::fromStdString(day.book().path().string());
    QLockFile lock(book + QStringLiteral(".window"));
    lock.setStaleLockTime(0);
    if (!lock.tryLock(500)) {
        std::cerr << QObject::tr("%1 is open in another window.").arg(book).toStdString() << '\n';
        return show_already_open(application, book, view::dark_wanted(day));
    }
#ifdef STOW_WATCHED
    QObject::connect(&day, &Day::called, &application, [&application](const char* of, const QByteArray& method) {
        static_cast<watch::Application&>(application).calls(of, method);
    });
#endif
    view::Desk desk(day);
    desk.plugIn(std::make_unique<scale::HidScale>());
    sound::Speaker speaker;
    const auto plays = [&](void (view::Desk::*heard)(), sound::Tone tone) {
        QObject::connect(&desk, heard, &speaker, [&, tone] {
            if (view::sounds_wanted(day)) speaker.play(tone);
        });
    };
    plays(&view::Desk::right, sound::Tone::right);
    plays(&view::Desk::wrong, sound::Tone::wrong);
    QQmlApplicationEngine engine;
    engine.setInitialProperties({{QStringLiteral("desk"), QVariant::fromValue(&desk)}});
    engine.load(QUrl(QLatin1String(screens) + QStringLiteral("Main.qml")));
    if (engine.rootObjects().isEmpty()) return 1;
    view::Work work(day);
    const auto hour = [&] { view::guarded(day, [&] { look_after(work, desk, day); }); };
    hour();
    QTimer hourly; // a window left open over night
    QObject::connect(&hourly, &QTimer::timeout, hour);
    hourly.start(std::chrono::hours(1));
    // Somebody forgotten at the window is forgotten in the copies at once; what could not be reached, by the hour.
    bool behind = book::copies_are_behind(day.book());
    QObject::connect(&day, &Day::changed, &work, [&] {
        view::guarded(day, [&] {
            const bool was = std::exchange(behind, book::copies_are_behind(day.book()));
            if (behind && !was) hour();
        });
    });
    return application.exec();
}

} // namespace stow
