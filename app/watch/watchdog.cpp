#include "app/watch/watchdog.h"

#include <QKeyEvent>
#include <QKeySequence>
#include <QMetaEnum>

#include <ctime>

namespace stow::watch {

namespace {

Nanoseconds now_by(clockid_t clock)
{
    timespec t{};
    clock_gettime(clock, &t);
    return std::chrono::seconds(t.tv_sec) + Nanoseconds(t.tv_nsec);
}

QString described(const QObject* receiver, const QEvent& event)
{
    QString what = QString::fromLatin1(QMetaEnum::fromType<QEvent::Type>().valueToKey(event.type()));
    if (event.type() == QEvent::KeyPress || event.type() == QEvent::KeyRelease) {
        const auto& key = static_cast<const QKeyEvent&>(event);
        what += QLatin1Char(' ') + QKeySequence(key.keyCombination()).toString(QKeySequence::PortableText);
    }
    return what + QStringLiteral(" to ") + QString::fromLatin1(receiver->metaObject()->className());
}

} // namespace

QString to_words(const Held& held)
{
    const auto ms = [](Nanoseconds time) { return std::chrono::round<std::chrono::milliseconds>(time).count(); };
    return QStringLiteral("The window stood still for %1 ms (processor %2 ms): %3")
        .arg(ms(held.on_the_wall))
        .arg(ms(held.of_the_processor))
        .arg(held.by);
}

Clocks system_clocks()
{
    return {[] { return now_by(CLOCK_MONOTONIC); }, [] { return now_by(CLOCK_THREAD_CPUTIME_ID); }};
}

Watchdog::Watchdog(std::function<void(const Held&)> tell, Nanoseconds most, Clocks clocks)
    : tell_(std::move(tell)), most_(most), clocks_(std::move(clocks))
{
}

void Watchdog::start()
{
    wall_ = clocks_.wall();
    processor_ = clocks_.processor();
    in_.clear();
}

void Watchdog::begins(const QObject* receiver, const QEvent& event)
{
    if (depth_++ > 0) return;
    by_ = described(receiver, event); // now: the handler may delete its receiver
    start();
}

void Watchdog::ends()
{
    if (--depth_ == 0) judge();
}

void Watchdog::judge() const
{
    const Nanoseconds wall = clocks_.wall() - wall_;
    if (wall <= most_) return;
    tell_({wall, clocks_.processor() - processor_, in_.isEmpty() ? by_ : by_ + QStringLiteral(", in ") + in_});
}

void Watchdog::waits()
{
    if (depth_ > 0) judge();
}

void Watchdog::wakes()
{
    if (depth_ > 0) start();
}

void Watchdog::calls(const char* of, const QByteArray& what)
{
    in_ = QString::fromLatin1(of).section(QStringLiteral("::"), -1) + QStringLiteral("::") + QString::fromLatin1(what);
}

} // namespace stow::watch
