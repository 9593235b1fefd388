// The shop book may fail underneath at any step (disk full, a cable pulled). What is thrown then must not pass through
// Qt, which has no word for it: it is caught where the window calls in, and told to the day.
#pragma once

#include "app/day.h"

#include <QCoreApplication>
#include <QMetaMethod>
#include <QMetaType>

#include <type_traits>
#include <utility>

namespace stow::view {

// For what is called by a timer or a signal. False: the book failed.
template <class Job>
bool guarded(Day& day, Job&& job)
{
    try {
        std::forward<Job>(job)();
        return true;
    } catch (const book::BookFailure& failure) {
        day.fails(failure);
        return false;
    }
}

// A controller as the desk holds it: every invokable that QML calls is guarded. (Properties that QML writes are called
// past this: a setter that reaches the book guards itself.)
template <class Controller>
class Guarded final : public Controller {
public:
    explicit Guarded(Day& day) requires std::is_constructible_v<Controller, Day&> : Controller(day), its_day_(day) {}
    explicit Guarded(Day& day) : its_day_(day) {}

    int qt_metacall(QMetaObject::Call call, int id, void** arguments) override
    {
        if (call != QMetaObject::InvokeMetaMethod) return Controller::qt_metacall(call, id, arguments);
        int left = -1;
        const auto method = this->metaObject()->method(id);
        emit its_day_.called(this->metaObject()->className(), method.name());
        const bool done = guarded(its_day_, [&] { left = Controller::qt_metacall(call, id, arguments); });
        // Where an answer in words is waited for, none would mean that all went well.
        if (!done && arguments[0] != nullptr && method.returnMetaType() == QMetaType::fromType<QString>())
            *static_cast<QString*>(arguments[0]) =
                QCoreApplication::translate("stow::view::Guarded", "The shop book failed; nothing was kept.");
        return left;
    }

private:
    Day& its_day_;
};

} // namespace stow::view
