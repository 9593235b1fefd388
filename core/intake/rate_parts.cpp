#include "core/intake/rate_parts.h"

#include "core/intake/rate_details.h"
#include "core/intake/text_encoding.h"

#include <algorithm>
#include <array>
#include <map>

namespace stow::intake {

namespace {

using Says = PartWord::Says;

constexpr std::string_view dash = "–";

const std::map<std::string_view, std::vector<PartWord>>& all_words()
{
    static const std::map<std::string_view, std::vector<PartWord>> words{
        {"service",
         {{"tracked", Says::alone},
          {"days", Says::range},
          {"cut-off", Says::several},
          {"collected"},
          {"cover"},
          {"not sent"},
          {"tax"},
          {"parcel post", Says::alone},
          {"divisor"},
          {"rounding"},
          {"above"},
          {"sides"},
          {"rolls count"}}},
        {"zone", {{"", Says::places}}},
        {"format",
         {{"length", Says::limit},
          {"width", Says::limit},
          {"height", Says::limit},
          {"sum", Says::limit},
          {"girth", Says::limit},
          {"roll length", Says::limit},
          {"roll sum", Says::limit},
          {"ratio", Says::limit},
          {"tolerance"}}},
        {"beyond", {{"service"}, {"zone"}, {"format"}, {"grams"}}},
        {"volume", {{"service"}, {"zone"}, {"format"}, {"grams"}, {"litres"}}},
        {"surcharge",
         {{"service"},
          {"zone"},
          {"format"},
          {"longer than"},
          {"wider than"},
          {"girth over"},
          {"heavier than"},
          {"larger than"},
          {"value above"},
          {"rolls", Says::alone},
          {"not boxed", Says::alone},
          {"per kg", Says::alone},
          {"of value", Says::alone},
          {"with"},
          {"in"},
          {"from"},
          {"until"}}},
        {"holiday", {{"from"}, {"until"}}}};
    return words;
}

std::string replaced(std::string_view text, std::string_view what, std::string_view with)
{
    std::string out;
    for (auto at = text.find(what); at != std::string_view::npos; at = text.find(what)) {
        out += text.substr(0, at);
        out += with;
        text.remove_prefix(at + what.size());
    }
    return out += text;
}

// "140 to 240", "from 140", "to 240" for the eye.
std::string span_shown(std::string_view phrase, bool limit)
{
    if (const auto most = after(phrase, "to"); most && limit) return std::string(*most);
    if (const auto least = after(phrase, "from"); least && limit) return std::string(*least) + std::string(dash);
    return replaced(phrase, " to ", dash);
}

// And back. A dash may be the keyboard's.
std::string span_kept(std::string_view typed, bool limit)
{
    const std::string text = replaced(replaced(typed, dash, " to "), "-", " to ") + ' '; // so that an open end is found
    const Ends ends = ends_of(text);
    const auto from = trimmed(ends.from), to = trimmed(ends.to);
    if (ends.from.data() == ends.to.data()) {
        const bool said = after(from, "to") || after(from, "from");
        return (limit && !said ? "to " : "") + std::string(from);
    }
    if (to.empty()) return "from " + std::string(from);
    return (from.empty() ? "" : std::string(from) + ' ') + "to " + std::string(to);
}

std::string shown(const PartWord& word, std::string_view said)
{
    switch (word.says) {
    case Says::alone: return std::string(word.word);
    case Says::range: return span_shown(said, false);
    case Says::limit: return span_shown(said, true);
    case Says::one:
    case Says::several:
    case Says::places: break;
    }
    return std::string(said);
}

// A country in small letters is meant as one.
std::string place_kept(std::string_view place)
{
    std::string kept(place);
    for (std::size_t i = 0; i < std::min<std::size_t>(2, kept.size()); ++i) {
        if (kept[i] >= 'a' && kept[i] <= 'z') kept[i] = static_cast<char>(kept[i] - 'a' + 'A');
    }
    return kept;
}

} // namespace

const std::vector<PartWord>& part_words(std::string_view record)
{
    static const std::vector<PartWord> none;
    const auto found = all_words().find(record);
    return found == all_words().end() ? none : found->second;
}

std::vector<std::string> part_values(std::string_view record, std::string_view details)
{
    const std::vector<PartWord>& words = part_words(record);
    std::vector<std::string> values(words.size());
    for (const std::string_view phrase : phrases(details)) {
        const auto word = std::find_if(words.begin(), words.end(), [&](const PartWord& w) {
            return w.says == Says::places ||
                   (w.says == Says::alone ? phrase == w.word : after(phrase, w.word).has_value());
        });
        if (word == words.end()) continue;
        const auto said = word->says == Says::places ? phrase : *after(phrase, word->word);
        std::string& value = values[static_cast<std::size_t>(word - words.begin())];
        value += (value.empty() ? "" : ", ") + shown(*word, said);
    }
    return values;
}

std::string part_details(std::string_view record, const std::vector<std::string>& values)
{
    const std::vector<PartWord>& words = part_words(record);
    std::string details;
    const auto add = [&](std::string_view word, std::string_view said) {
        details += details.empty() ? "" : " / ";
        details += word;
        details += word.empty() || said.empty() ? "" : " ";
        details += said;
    };
    for (std::size_t i = 0; i < std::min(words.size(), values.size()); ++i) {
        const PartWord& word = words[i];
        const std::string_view value = trimmed(values[i]);
        if (value.empty()) continue;
        const std::string listed = replaced(value, ",", "/");
        switch (word.says) {
        case Says::alone: add(word.word, {}); break;
        case Says::one: add(word.word, value); break;
        case Says::range: add(word.word, span_kept(value, false)); break;
        case Says::limit: add(word.word, span_kept(value, true)); break;
        case Says::several:
            for (const std::string_view one : phrases(listed)) add(word.word, one);
            break;
        case Says::places:
            for (const std::string_view one : phrases(listed)) add({}, place_kept(one));
            break;
        }
    }
    return details;
}

} // namespace stow::intake
