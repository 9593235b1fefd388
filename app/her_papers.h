// What her own papers share: her language, her sheets, where they are written. Buyers' papers speak the buyer's.
#pragma once

#include "app/day.h"
#include "app/painting/palette.h"
#include "core/papers/display_list.h"
#include "core/papers/words.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace stow {

papers::Words her_words(); // the language of the window, where the papers know it
papers::Format format_of(const Day& day);
papers::Blank blank_of(const Day& day);              // her sheets, with her margins
const painting::Palette& palette_of(const Day& day); // colours, or black only

// Of the print that comes next of this paper; nothing: it is the first. `of`: what it was counted for.
std::optional<papers::Reprint> reprint_of(const Day& day, const std::string& paper, const std::vector<std::string>& of);

// NAME.pdf in the folder, which is made if need be. Nothing: there is no page, or it cannot be written.
std::optional<std::filesystem::path> write_document(const std::filesystem::path& folder, const std::string& name,
                                                    const papers::Document& document, const painting::Palette& palette);

// Text for a table program: what would be taken for a formula (= + - @, tab or return at its beginning) gets an
// apostrophe before it (OWASP, CSV Injection).
std::string no_formula(const std::string& text);
std::string csv_cell(const std::string& text); // the same as a cell of a file with commas

} // namespace stow
