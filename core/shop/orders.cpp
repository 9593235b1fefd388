#include "core/shop/orders.h"

#include "core/shop/countries.h"
#include "core/shop/word_list.h"

#include <algorithm>

namespace stow::shop {

namespace {

constexpr WordList<OrderState, 4> states{{{OrderState::arrived, "arrived"},
                                          {OrderState::checked, "checked"},
                                          {OrderState::set_aside, "set aside"},
                                          {OrderState::called_off, "called off"}}};

// The small letter of a code point of two UTF-8 bytes: Latin-1, Latin Extended-A, Greek and Cyrillic.
unsigned small_letter(unsigned c)
{
    if ((c >= 0xC0 && c <= 0xDE && c != 0xD7) || (c >= 0x391 && c <= 0x3A9) || (c >= 0x410 && c <= 0x42F))
        return c + 32;
    if (c >= 0x400 && c <= 0x40F) return c + 80;
    if (c == 0x178) return 0xFF;
    const bool capital_is_odd = (c >= 0x139 && c <= 0x148) || (c >= 0x179 && c <= 0x17E);
    if (c >= 0x100 && c <= 0x17E && c != 0x130 && c != 0x138 && c != 0x149) {
        if ((c % 2 == 1) == capital_is_odd) return c + 1;
    }
    return c;
}

// Letters and digits only, in small letters; input is UTF-8, damaged bytes are kept as they are.
void add_bare(std::string& result, std::string_view text)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte < 0x80) {
            const bool capital = byte >= 'A' && byte <= 'Z';
            if (capital)
                result += static_cast<char>(byte - 'A' + 'a');
            else if ((byte >= 'a' && byte <= 'z') || (byte >= '0' && byte <= '9'))
                result += text[i];
        } else if ((byte & 0xE0U) == 0xC0 && i + 1 < text.size() &&
                   (static_cast<unsigned char>(text[i + 1]) & 0xC0U) == 0x80) {
            const unsigned c = (byte & 0x1FU) << 6 | (static_cast<unsigned char>(text[i + 1]) & 0x3FU);
            ++i;
            if (c < 0xC0) continue; // no-break space and signs
            const unsigned small = small_letter(c);
            result += static_cast<char>(0xC0U | small >> 6);
            result += static_cast<char>(0x80U | (small & 0x3FU));
        } else if (byte == 0xE2 && i + 2 < text.size() && static_cast<unsigned char>(text[i + 1]) <= 0x81) {
            i += 2; // U+2000 to U+206F: dashes, quotes, narrow spaces
        } else {
            result += text[i];
        }
    }
}

std::string bare(std::string_view text)
{
    std::string result;
    add_bare(result, text);
    return result;
}

// Numbers next to each other stay apart: house 4, floor 2 is not house 42.
void add_bare_street(std::string& result, const std::vector<std::string>& lines)
{
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    const std::size_t start = result.size();
    for (const std::string& line : lines) {
        std::string_view rest = line;
        while (!rest.empty()) {
            const std::size_t end = rest.find_first_of(" .,/-");
            const std::size_t before = result.size();
            add_bare(result, rest.substr(0, end));
            if (before > start && result.size() > before && digit(result[before - 1]) && digit(result[before]))
                result.insert(before, 1, ' ');
            if (end == std::string_view::npos) break;
            rest.remove_prefix(end + 1);
        }
    }
}

} // namespace

std::string_view name_of(OrderState state)
{
    return word_for(states, state);
}

std::optional<OrderState> order_state(std::string_view name)
{
    return value_of(states, name);
}

std::string joining_key(const Address& to)
{
    std::string key; // grown in place: the window asks it of thousands of orders at once
    key.reserve(80);
    add_bare(key, to.name);
    add_bare_street(key += '|', to.street);
    add_bare(key += '|', to.postcode);
    add_bare(key += '|', to.town);
    add_bare(key += '|', to.country);
    return key;
}

std::vector<OrderFinding> look_over(const Order& order, Date today)
{
    std::vector<OrderFinding> findings;
    const auto find = [&](OrderProblem problem, bool blocks, std::size_t line = 0) {
        findings.push_back({problem, blocks, line});
    };
    if (!order.paid) find(OrderProblem::unpaid, true);
    const Address& to = order.to;
    const bool street_given =
        std::any_of(to.street.begin(), to.street.end(), [](const std::string& line) { return !bare(line).empty(); });
    if (!street_given || bare(to.name + to.company).empty() || bare(to.town).empty())
        find(OrderProblem::missing_street, true);
    if (!is_country(to.country))
        find(OrderProblem::unknown_country, true);
    else if (!postcode_ok(to.country, to.postcode))
        find(OrderProblem::bad_postcode, true);
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        if (order.lines[i].good.empty()) find(OrderProblem::unmatched_good, true, i);
    }
    if (order.promised && *order.promised < today) find(OrderProblem::promised_passed, false);
    if (!order.note.empty()) find(OrderProblem::note_to_read, false);
    return findings;
}

} // namespace stow::shop
