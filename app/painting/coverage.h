// Which letters the fonts of this machine have.
#pragma once

#include <string>
#include <string_view>

namespace stow::painting {

// Those that no font has, each once, in their order: a box would stand in their place. Empty: all can be drawn.
std::string letters_without_font(std::string_view utf8);

// The Debian package whose fonts should have this letter; empty: none that we know.
std::string package_with(std::string_view letter);

} // namespace stow::painting
