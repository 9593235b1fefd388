// Cards with codes that tell the program what a key would: for who works with the scanner alone.
#pragma once

#include "core/papers/display_list.h"
#include "core/papers/text.h"
#include "core/papers/words.h"

#include <array>
#include <optional>
#include <string_view>

namespace stow::papers {

enum class Command { done, back, later, box_gone, label_again, undo, go_on };
inline constexpr std::array all_commands{Command::done,        Command::back, Command::later, Command::box_gone,
                                         Command::label_again, Command::undo, Command::go_on};
std::string_view word_of(Command command); // in its code: "DONE", "BOX-GONE"
std::optional<Command> command(std::string_view word);
std::string_view name_of(Command command, const Words& words); // for people

Document command_cards(const Blank& blank, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
