// The window on the day.
#pragma once

class QGuiApplication;

namespace stow {

class Day;

// Shows the window until it is closed; gives the exit code.
int open_window(QGuiApplication& application, Day& day);

} // namespace stow
