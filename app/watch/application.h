// An application whose events are watched. Debug builds and the tests of the window run on it.
#pragma once

#include "app/watch/watchdog.h"

#include <QGuiApplication>

namespace stow::watch {

class Application : public QGuiApplication {
public:
    // Tells on the terminal unless `tell` is given.
    Application(int& argc, char** argv, std::function<void(const Held&)> tell = {},
                Nanoseconds most = Watchdog::longest, Clocks clocks = system_clocks());

    void calls(const char* of, const QByteArray& what) { dog_.calls(of, what); }
    bool notify(QObject* receiver, QEvent* event) override;

private:
    Watchdog dog_;
};

} // namespace stow::watch
