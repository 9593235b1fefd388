#include "core/papers/gift_note.h"

namespace stow::papers {

namespace {

constexpr int margin = from_mm(12);

int line_of(const Style& style)
{
    return style.size * 3 / 2; // handwriting's air
}

} // namespace

Document gift_note(const shop::Gift& gift, const TextMeasure& measure)
{
    const Extent card = extent_of(Format::a6);
    const int width = card.width - 2 * margin, room = card.height - 2 * margin;
    Style style{from_pt(16), Face::regular, Role::ink};
    std::vector<std::string> lines;
    const auto set = [&] {
        lines = gift.message.empty() ? std::vector<std::string>() : wrap(gift.message, width, style, measure);
        if (gift.giver.empty()) return;
        if (!lines.empty()) lines.emplace_back();
        for (std::string& line : wrap(gift.giver, width, style, measure)) lines.push_back(std::move(line));
    };
    set();
    while (style.size > from_pt(9) && static_cast<int>(lines.size()) * line_of(style) > room) {
        style.size = std::max(from_pt(9), style.size - from_pt(1));
        set();
    }
    Document document;
    document.title = gift.giver;
    const auto a_card = static_cast<std::size_t>(room / line_of(style));
    for (std::size_t from = 0; from < lines.size(); from += a_card) {
        const std::size_t to = std::min(lines.size(), from + a_card);
        const int height = static_cast<int>(to - from) * line_of(style);
        DisplayList page{card, {}};
        int y = (card.height - height) / 2 + style.size;
        for (std::size_t i = from; i < to; ++i) {
            page.add(TextLine{{card.width / 2, y}, lines[i], style, Align::centre, direction_of(lines[i])});
            y += line_of(style);
        }
        document.pages.push_back(std::move(page));
    }
    return document;
}

} // namespace stow::papers
