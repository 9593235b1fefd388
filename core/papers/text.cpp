#include "core/papers/text.h"

namespace stow::papers {

namespace {

std::size_t length_of_letter(unsigned char lead)
{
    if (lead < 0x80) return 1;
    if (lead < 0xE0) return 2;
    return lead < 0xF0 ? 3 : 4;
}

} // namespace

// Letters of damaged UTF-8 are cut at the end of the text, never read past it.
std::vector<std::string_view> letters(std::string_view text)
{
    std::vector<std::string_view> parts;
    while (!text.empty()) {
        const std::size_t n = std::min(text.size(), length_of_letter(static_cast<unsigned char>(text[0])));
        parts.push_back(text.substr(0, n));
        text.remove_prefix(n);
    }
    return parts;
}

std::uint32_t code_point(std::string_view letter)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(letter[i]); };
    if (letter.size() == 1) return byte(0);
    std::uint32_t value = byte(0) & (0x7FU >> letter.size());
    for (std::size_t i = 1; i < letter.size(); ++i) value = value << 6 | (byte(i) & 0x3FU);
    return value;
}

namespace {

// No line begins with the dot between two words.
bool before_a_dot(std::string_view rest)
{
    return rest.substr(0, 3) == "· ";
}

// Pieces that stay together: a word with the spaces after it, or up to and with a hyphen or slash.
std::vector<std::string_view> unbreakable(std::string_view line)
{
    std::vector<std::string_view> pieces;
    std::size_t from = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool last = i + 1 == line.size();
        const bool break_after = line[i] == ' ' ? last || (line[i + 1] != ' ' && !before_a_dot(line.substr(i + 1)))
                                                : (line[i] == '-' || line[i] == '/') && !last && line[i + 1] != ' ';
        if (break_after || last) {
            pieces.push_back(line.substr(from, i + 1 - from));
            from = i + 1;
        }
    }
    return pieces;
}

std::string_view without_end_spaces(std::string_view text)
{
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return text;
}

class Wrapping {
public:
    Wrapping(int width, const Style& style, const TextMeasure& measure)
        : width_(width), style_(style), measure_(measure)
    {
    }

    void paragraph(std::string_view text)
    {
        for (const std::string_view piece : unbreakable(text)) {
            if (fits(line_ + std::string(piece))) {
                line_ += piece;
                continue;
            }
            if (!line_.empty()) end_line();
            if (fits(std::string(piece)))
                line_ = piece;
            else
                letter_by_letter(piece);
        }
        end_line();
    }
    std::vector<std::string> lines() { return std::move(lines_); }

private:
    bool fits(const std::string& text) const { return measure_.width(without_end_spaces(text), style_) <= width_; }
    void end_line()
    {
        lines_.emplace_back(without_end_spaces(line_));
        line_.clear();
    }
    void letter_by_letter(std::string_view word)
    {
        for (const std::string_view letter : letters(word)) {
            if (!line_.empty() && !fits(line_ + std::string(letter))) end_line();
            line_ += letter;
        }
    }

    int width_;
    const Style& style_;
    const TextMeasure& measure_;
    std::string line_;
    std::vector<std::string> lines_;
};

} // namespace

std::vector<std::string> wrap(std::string_view utf8, int width, const Style& style, const TextMeasure& measure)
{
    Wrapping wrapping(width, style, measure);
    while (true) {
        const std::size_t end = utf8.find('\n');
        std::string_view paragraph = utf8.substr(0, end);
        if (!paragraph.empty() && paragraph.back() == '\r') paragraph.remove_suffix(1);
        wrapping.paragraph(paragraph);
        if (end == std::string_view::npos) break;
        utf8.remove_prefix(end + 1);
    }
    return wrapping.lines();
}

std::string shorten(std::string_view utf8, int width, const Style& style, const TextMeasure& measure)
{
    if (measure.width(utf8, style) <= width) return std::string(utf8);
    std::vector<std::string_view> parts = letters(utf8);
    while (!parts.empty()) {
        parts.pop_back();
        std::string shorter;
        for (const std::string_view letter : parts) shorter += letter;
        shorter = std::string(without_end_spaces(shorter)) + "…";
        if (measure.width(shorter, style) <= width) return shorter;
    }
    return "…";
}

namespace {

std::optional<Direction> first_direction(std::string_view utf8)
{
    for (const std::string_view letter : letters(utf8)) {
        const std::uint32_t c = code_point(letter);
        const bool right_to_left =
            (c >= 0x0590 && c <= 0x08FF) || (c >= 0xFB1D && c <= 0xFDFF) || (c >= 0xFE70 && c <= 0xFEFF);
        if (right_to_left) return Direction::right_to_left;
        const bool latin = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
        if (latin || c >= 0x00C0) return Direction::left_to_right;
    }
    return std::nullopt;
}

} // namespace

Direction direction_of(std::string_view utf8)
{
    return first_direction(utf8).value_or(Direction::left_to_right);
}

Direction direction_of(const std::vector<std::string>& lines)
{
    int more = 0;
    for (const std::string& line : lines) {
        if (const auto direction = first_direction(line)) more += *direction == Direction::right_to_left ? 1 : -1;
    }
    return more > 0 ? Direction::right_to_left : Direction::left_to_right;
}

} // namespace stow::papers
