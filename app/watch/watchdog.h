// Notices when one event holds up the thread of the screen: meanwhile nothing is drawn and no key is taken.
#pragma once

#include <QEvent>
#include <QObject>
#include <QString>

#include <chrono>
#include <functional>

namespace stow::watch {

using Nanoseconds = std::chrono::nanoseconds;

struct Held {                                      // longer than allowed
    Nanoseconds on_the_wall{}, of_the_processor{}; // of the one thread; the machine may be shared
    QString by;                                    // "key F2 to Window, in PlanController::plan"
};
QString to_words(const Held& held); // one line

struct Clocks { // handed in, so that a test can let time pass
    std::function<Nanoseconds()> wall, processor;
};
Clocks system_clocks();

class Watchdog {
public:
    static constexpr Nanoseconds longest = std::chrono::milliseconds(100);

    explicit Watchdog(std::function<void(const Held&)> tell, Nanoseconds most = longest,
                      Clocks clocks = system_clocks());

    // Around every event handed to its receiver; of events within events the outermost counts.
    void begins(const QObject* receiver, const QEvent& event);
    void ends();
    // A loop within an event (a dialog, work on another thread) waits for the next one: nothing is held up meanwhile.
    void waits();
    void wakes();
    // What is called while the event is handled; the last one is told.
    void calls(const char* of, const QByteArray& what);

private:
    void start();
    void judge() const;

    std::function<void(const Held&)> tell_;
    Nanoseconds most_;
    Clocks clocks_;
    int depth_ = 0;
    Nanoseconds wall_{}, processor_{};
    QString by_, in_;
};

} // namespace stow::watch
