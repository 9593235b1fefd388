// An invented tariff of three zones and eight steps in two formats, with two surcharges: priced by hand in the tests of
// postage, typed in by keys in those of the window.
#pragma once

#include "core/postage/rate_sheet.h"

#include <array>

namespace stow::postage {

struct TypedLadder {
    const char *zone, *format;
    std::array<int, 8> grams, cents;
};

inline const std::array<TypedLadder, 6>& typed_ladders()
{
    static const std::array<TypedLadder, 6> all{{
        {"home", "flat", {{20, 50, 100, 150, 250, 500, 750, 1000}}, {{110, 120, 160, 180, 220, 300, 360, 420}}},
        {"near", "flat", {{20, 50, 100, 150, 250, 500, 750, 1000}}, {{150, 190, 260, 310, 400, 590, 740, 900}}},
        {"far", "flat", {{20, 50, 100, 150, 250, 500, 750, 1000}}, {{180, 240, 360, 450, 620, 980, 1300, 1650}}},
        {"home",
         "box",
         {{250, 500, 1000, 2000, 3000, 5000, 7000, 10000}},
         {{440, 490, 560, 680, 790, 950, 1150, 1400}}},
        {"near",
         "box",
         {{250, 500, 1000, 2000, 3000, 5000, 7000, 10000}},
         {{690, 870, 1120, 1480, 1790, 2300, 2800, 3500}}},
        {"far",
         "box",
         {{250, 500, 1000, 2000, 3000, 5000, 7000, 10000}},
         {{960, 1320, 1980, 2840, 3600, 4900, 6200, 8000}}},
    }};
    return all;
}

inline RateSheet tariff_of_three_zones()
{
    RateSheet sheet;
    sheet.carrier = "Petrel Parcels";
    Service service;
    service.code = "petrel";
    service.name = "Petrel";
    sheet.services = {service};
    sheet.zones = {{"home", {{"DK", "", ""}}},
                   {"near", {{"DE", "", ""}, {"SE", "", ""}, {"NL", "", ""}}},
                   {"far", {{"*", "", ""}, {"DK", "37", "37"}}}}; // an island of the home country goes as far
    Format flat;
    flat.name = "flat";
    flat.most_length = mm(353);
    flat.most_width = mm(250);
    flat.most_height = mm(25);
    Format box;
    box.name = "box";
    box.most_length = mm(600);
    box.most_girth = mm(2000);
    sheet.formats = {flat, box};
    for (const TypedLadder& l : typed_ladders()) {
        for (std::size_t i = 0; i < l.grams.size(); ++i) {
            sheet.steps.push_back({"petrel", l.zone, l.format, grams(l.grams[i]), Money{l.cents[i], {}}});
        }
    }
    Surcharge fuel;
    fuel.name = "fuel";
    fuel.kind = Surcharge::Kind::percent;
    fuel.permille = 75;
    Surcharge lengthy;
    lengthy.name = "long";
    lengthy.amount = Money{400, {}};
    lengthy.longer_than = mm(450);
    sheet.surcharges = {fuel, lengthy};
    return sheet;
}

} // namespace stow::postage
