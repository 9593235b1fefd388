// Capitals of Latin, Greek and Cyrillic letters, as mail abroad wants the names of towns.
#pragma once

#include <string>
#include <string_view>

namespace stow::papers {

// Letters of other scripts, and what is no letter, stay as they are; ß becomes SS.
std::string in_capitals(std::string_view utf8);

} // namespace stow::papers
