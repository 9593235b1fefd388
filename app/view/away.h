// What would hold the window up is done on another thread, on a day of its own over the same book. Meanwhile the window
// is drawn and says what it waits for; keys, scans and presses wait their turn, so that no second step crosses the
// first. Gives what the job gives, and throws what it throws.
#pragma once

#include "app/day.h"

#include <QEventLoop>
#include <QThread>

#include <exception>
#include <optional>

namespace stow::view {

// `job(Day&)` may use what it captured and that day, nothing of the window. What it touched is read there too, and the
// caller's day takes that over.
template <class Job>
auto away(Day& day, const QString& waits_for, const Job& job)
{
    using Result = std::decay_t<decltype(job(day))>;
    std::optional<Result> result;
    std::optional<Day::Reading> reading;
    std::exception_ptr thrown;
    QEventLoop loop;
    const std::unique_ptr<QThread> thread(QThread::create([&, seen = day.seen()] {
        try {
            const std::unique_ptr<Day> beside = day.beside();
            result.emplace(job(*beside));
            reading.emplace(beside->read(seen));
        } catch (...) { // taken to the thread that waits
            thrown = std::current_exception();
        }
    }));
    QObject::connect(thread.get(), &QThread::finished, &loop, &QEventLoop::quit);
    emit day.waiting(waits_for);
    thread->start();
    loop.exec(QEventLoop::ExcludeUserInputEvents);
    thread->wait(); // the loop ends early when the program is closed
    emit day.waiting({});
    if (thrown) std::rethrow_exception(thrown);
    day.take(*std::move(reading));
    return *std::move(result);
}

} // namespace stow::view
