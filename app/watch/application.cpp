#include "app/watch/application.h"

#include <QAbstractEventDispatcher>

#include <cstdio>

namespace stow::watch {

namespace {

void tell_on_the_terminal(const Held& held)
{
    std::fprintf(stderr, "%s\n", qPrintable(to_words(held)));
}

class Around { // whichever way the event is left
public:
    Around(Watchdog& dog, const QObject* receiver, const QEvent& event) : dog_(dog) { dog_.begins(receiver, event); }
    ~Around() { dog_.ends(); }
    Around(const Around&) = delete;
    Around& operator=(const Around&) = delete;

private:
    Watchdog& dog_;
};

} // namespace

Application::Application(int& argc, char** argv, std::function<void(const Held&)> tell, Nanoseconds most, Clocks clocks)
    : QGuiApplication(argc, argv), dog_(tell ? std::move(tell) : tell_on_the_terminal, most, std::move(clocks))
{
    const auto* loop = QAbstractEventDispatcher::instance();
    connect(loop, &QAbstractEventDispatcher::aboutToBlock, this, [this] { dog_.waits(); });
    connect(loop, &QAbstractEventDispatcher::awake, this, [this] { dog_.wakes(); });
}

bool Application::notify(QObject* receiver, QEvent* event)
{
    if (receiver->thread() != thread()) return QGuiApplication::notify(receiver, event);
    const Around around(dog_, receiver, *event);
    return QGuiApplication::notify(receiver, event);
}

} // namespace stow::watch
