#include "core/intake/dates.h"

#include "core/intake/numbers.h"

#include <algorithm>
#include <array>
#include <string>

namespace stow::intake {

namespace {

struct Token { // a run of digits, or of anything else that is not a sign
    std::string text;
    bool number = false;
    char before = '\0'; // the sign in front of it
};

std::vector<Token> tokens(std::string_view cell)
{
    constexpr std::string_view signs = " \t.,/-:";
    std::vector<Token> result;
    char before = '\0';
    for (const char c : cell) {
        if (signs.find(c) != std::string_view::npos) {
            before = c;
            continue;
        }
        const bool number = c >= '0' && c <= '9';
        if (result.empty() || before != '\0' || result.back().number != number) result.push_back({{}, number, before});
        result.back().text += c;
        before = '\0';
    }
    return result;
}

// 1 to 12 by an English or German name, or its first three letters; else nothing.
std::optional<int> month_by_name(const std::string& text)
{
    constexpr std::array<std::array<std::string_view, 2>, 12> names{{{"january", "januar"},
                                                                     {"february", "februar"},
                                                                     {"march", "marz"},
                                                                     {"april", "april"},
                                                                     {"may", "mai"},
                                                                     {"june", "juni"},
                                                                     {"july", "juli"},
                                                                     {"august", "august"},
                                                                     {"september", "september"},
                                                                     {"october", "oktober"},
                                                                     {"november", "november"},
                                                                     {"december", "dezember"}}};
    const std::string word = folded(text);
    if (word.size() < 3) return std::nullopt;
    for (std::size_t i = 0; i < names.size(); ++i) {
        for (const std::string_view name : names[i]) {
            if (name.substr(0, word.size()) == word) return static_cast<int>(i) + 1;
        }
    }
    return std::nullopt;
}

std::optional<Date> real_date(int year, int month, int day)
{
    if (year < 100) year += 2000;
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok() || year < 1990 || year > 2200) return std::nullopt;
    return Date{date};
}

std::optional<int> small_number(const Token& token)
{
    if (!token.number || token.text.size() > 4) return std::nullopt;
    return std::stoi(token.text);
}

} // namespace

std::string_view name_of(DateOrder order)
{
    return order == DateOrder::day_month ? "day month" : "month day";
}

std::optional<DateOrder> date_order(std::string_view name)
{
    for (const DateOrder order : {DateOrder::day_month, DateOrder::month_day}) {
        if (name_of(order) == name) return order;
    }
    return std::nullopt;
}

std::optional<Date> read_date(std::string_view cell, DateOrder order)
{
    const std::vector<Token> parts = tokens(cell);
    std::vector<int> numbers;
    std::vector<std::size_t> widths;
    std::optional<int> month;
    bool dots = false;
    for (const Token& part : parts) {
        if (part.before == ':') break; // the time of day begins one token earlier, past the date
        if (const auto number = small_number(part)) {
            if (numbers.size() == 1 && part.before == '.') dots = true;
            numbers.push_back(*number);
            widths.push_back(part.text.size());
        } else if (part.number) {
            return std::nullopt;
        } else if (const auto named = month_by_name(part.text)) {
            if (month) return std::nullopt;
            month = named;
        } else if (part.text.size() > 2 && numbers.size() < 2) {
            // The name of a weekday may stand in front; other words are no date.
            if (!numbers.empty()) return std::nullopt;
        }
        if (numbers.size() + (month ? 1U : 0U) == 3) break;
    }
    if (month && numbers.size() == 2) {
        if (widths[0] == 4) return real_date(numbers[0], *month, numbers[1]);
        return real_date(numbers[1], *month, numbers[0]);
    }
    if (month || numbers.size() != 3) return std::nullopt;
    if (widths[0] == 4) return real_date(numbers[0], numbers[1], numbers[2]);
    if (widths[2] != 4 && widths[2] != 2) return std::nullopt;
    if (dots || order == DateOrder::day_month) return real_date(numbers[2], numbers[1], numbers[0]);
    return real_date(numbers[2], numbers[0], numbers[1]);
}

DateOrder tell_date_order(const std::vector<std::string_view>& cells, DateOrder usual)
{
    const auto readable = [&](DateOrder order) {
        return std::count_if(cells.begin(), cells.end(),
                             [&](std::string_view cell) { return read_date(cell, order).has_value(); });
    };
    const auto day_first = readable(DateOrder::day_month), month_first = readable(DateOrder::month_day);
    if (day_first == month_first) return usual;
    return day_first > month_first ? DateOrder::day_month : DateOrder::month_day;
}

} // namespace stow::intake
