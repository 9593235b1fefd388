// Which zone a place lies in: the longest postcode rule wins, then the country, then "*".
#pragma once

#include "core/postage/rate_sheet.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::postage {

// Postcodes are compared in capitals, without spaces and hyphens.
std::string plain_postcode(std::string_view postcode);

// How long a postcode rule is, a prefix before a range of the same length; zero: the whole country.
int closeness(const Place& place);

// Places by number, looked up in logarithmic time: a carrier's list of postcodes has 100,000 of them. Of rules that
// describe an address equally well the first added wins.
class PlaceFinder {
public:
    void add(const Place& place, std::size_t number);
    void ready(); // after the last
    std::optional<std::size_t> find(const std::string& country, std::string_view plain_postcode) const;

private:
    struct Rule {
        std::string from, to;
        std::size_t number;
    };
    struct Rules {               // equally close
        std::vector<Rule> rules; // rising, unless they overlap
        bool apart = false;      // none overlaps another and all have one length: one look is enough
    };
    struct Country {
        std::map<int, Rules, std::greater<>> by_closeness;
        std::optional<std::size_t> whole;
    };
    std::map<std::string, Country, std::less<>> countries_;
    std::optional<std::size_t> everywhere_;
};

} // namespace stow::postage
