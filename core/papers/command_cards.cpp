#include "core/papers/command_cards.h"

#include "core/papers/payload.h"
#include "core/papers/qr.h"
#include "core/papers/sheet.h"

#include <algorithm>

namespace stow::papers {

namespace {

constexpr int module = 100; // read at arm's length, on a card that lies on the bench for a year
constexpr int columns = 2;
constexpr int card_height = from_mm(54);

void cut(Sheet& s, Point from, Point to)
{
    s.page().add(Path{{from, to}, false, Pen{Role::hairline, hairline_width, Pen::Dash::dashed}, std::nullopt});
}

} // namespace

std::string_view word_of(Command command)
{
    switch (command) {
    case Command::done: return "DONE";
    case Command::back: return "BACK";
    case Command::later: return "LATER";
    case Command::box_gone: return "BOX-GONE";
    case Command::label_again: return "LABEL-AGAIN";
    case Command::undo: return "UNDO";
    case Command::go_on: return "GO-ON";
    }
    return {};
}

std::optional<Command> command(std::string_view word)
{
    const auto found =
        std::find_if(all_commands.begin(), all_commands.end(), [&](Command c) { return word_of(c) == word; });
    return found == all_commands.end() ? std::nullopt : std::optional(*found);
}

std::string_view name_of(Command command, const Words& words)
{
    switch (command) {
    case Command::done: return words(Word::command_done);
    case Command::back: return words(Word::command_back);
    case Command::later: return words(Word::command_later);
    case Command::box_gone: return words(Word::command_box_gone);
    case Command::label_again: return words(Word::command_label_again);
    case Command::undo: return words(Word::command_undo);
    case Command::go_on: return words(Word::command_go_on);
    }
    return {};
}

Document command_cards(const Blank& blank, const Words& words, const TextMeasure& measure)
{
    Sheet s(blank, words, measure, nullptr);
    s.line(s.left(), s.y(), std::string(words(Word::command_cards)), type::title);
    s.down(s.line_height(type::title) + from_mm(1));
    s.down(s.paragraph(s.left(), s.y(), s.width(), std::string(words(Word::command_cards_note)), type::quiet));
    s.down(from_mm(4));
    const int width = s.width() / columns;
    int column = 0;
    bool first_row = true;
    for (const Command command : all_commands) {
        const std::size_t pages = s.pages();
        if (column == 0) s.need(card_height);
        if (s.pages() != pages) first_row = true;
        const int left = s.left() + column * width, top = s.y(), right = left + width, bottom = top + card_height;
        // To cut along; an edge that two cards share is drawn once, or its dashes would run into each other.
        if (first_row) cut(s, {left, top}, {right, top});
        if (column == 0) cut(s, {left, top}, {left, bottom});
        cut(s, {right, top}, {right, bottom});
        cut(s, {left, bottom}, {right, bottom});
        const std::string code =
            to_text(Payload{Payload::Kind::command, std::string(word_of(command))}).value_or(std::string());
        const int edge = s.code({left + width, top + from_mm(4)}, code, module);
        s.paragraph(left + from_mm(5), top + from_mm(8), width - edge - from_mm(5),
                    std::string(name_of(command, words)), type::large);
        column = (column + 1) % columns;
        if (column > 0) continue;
        first_row = false;
        s.down(card_height);
    }
    return s.finish(std::string(words(Word::command_cards)), {});
}

} // namespace stow::papers
