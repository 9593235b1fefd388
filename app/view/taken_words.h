// What came of a file taken in, in a line.
#pragma once

#include "app/take_in.h"

#include <QString>

namespace stow::view {

QString taken_words(const TakenIn& taken); // "12 new, 3 changed · row 4: ... · 2 more"

} // namespace stow::view
