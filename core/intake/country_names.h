// Countries by code or by name in English, German or French, as shops write them.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace stow::intake {

class CountryNames {
public:
    CountryNames(); // names from ICU's locale data, everyday names from a table of ours

    // The ISO 3166-1 alpha-2 code; letter case, accents and punctuation aside.
    std::optional<std::string> code(std::string_view text) const;

private:
    std::map<std::string, std::string> by_name_; // folded
};

} // namespace stow::intake
