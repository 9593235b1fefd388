#include "core/papers/dispatch_message.h"

#include <algorithm>

namespace stow::papers {

namespace {

struct Filled {
    std::string text;
    int gaps = 0, empty = 0;
};

Filled fill(std::string_view line, const std::map<std::string, std::string, std::less<>>& values)
{
    Filled filled;
    while (!line.empty()) {
        const auto open = line.find('{');
        filled.text += line.substr(0, open);
        if (open == std::string_view::npos) break;
        const auto close = line.find('}', open);
        if (close == std::string_view::npos) {
            filled.text += line.substr(open);
            break;
        }
        const std::string_view name = line.substr(open + 1, close - open - 1);
        const auto value = values.find(name);
        if (value == values.end()) {
            filled.text += line.substr(open, close - open + 1);
        } else {
            filled.text += value->second;
            ++filled.gaps;
            filled.empty += value->second.empty() ? 1 : 0;
        }
        line.remove_prefix(close + 1);
    }
    return filled;
}

} // namespace

std::string dispatch_message(const std::vector<shop::DispatchText>& texts, Language language, const MessageFacts& facts)
{
    if (texts.empty()) return {};
    const auto own =
        std::find_if(texts.begin(), texts.end(), [&](const auto& t) { return t.language == code_of(language); });
    std::string_view text = own != texts.end() ? own->text : texts.front().text;
    const Words words(language);
    const std::map<std::string, std::string, std::less<>> values{
        {"name", facts.name},
        {"order", facts.order},
        {"number", facts.number},
        {"carrier", facts.carrier},
        {"service", facts.service},
        {"workshop", facts.workshop},
        {"arrives", facts.arrives ? words.date(*facts.arrives) : std::string()}};
    std::string message;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const Filled line = fill(text.substr(0, end), values);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.gaps == 1 && line.empty == 1) continue;
        message += (message.empty() ? "" : "\n") + line.text;
    }
    return message;
}

} // namespace stow::papers
