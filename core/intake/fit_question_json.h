// A packing question written as `stowbench fit` reads it, so that any plan can be asked again or judged from outside.
#pragma once

#include "core/fitting/question.h"

#include <string>

namespace stow::intake {

// Read back by read_fit_question it is the same question; sizes of items packed in another outer are worked out anew.
std::string write_fit_question(const fitting::Question& question);

} // namespace stow::intake
