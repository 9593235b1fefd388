#include "core/shop/countries.h"

namespace stow::shop {

namespace {

// Two letters and a space each, in the order of the alphabet.
constexpr std::string_view all_codes =
    "AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY "
    "BZ CA CC CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM DO DZ EC EE EG EH ER ES ET FI FJ FK "
    "FM FO FR GA GB GD GE GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR "
    "IS IT JE JM JO JP KE KG KH KI KM KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK "
    "ML MM MN MO MP MQ MR MS MT MU MV MW MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM "
    "PN PR PS PT PW PY QA RE RO RS RU RW SA SB SC SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TC TD TF "
    "TG TH TJ TK TL TM TN TO TR TT TV TW TZ UA UG UM US UY UZ VA VC VE VG VI VN VU WF WS YE YT ZA ZM ZW ";
constexpr std::string_view union_codes =
    "AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK ";

bool holds(std::string_view codes, std::string_view alpha2)
{
    if (alpha2.size() != 2 || alpha2.find(' ') != std::string_view::npos) return false;
    for (std::size_t i = 0; i < codes.size(); i += 3) {
        if (codes.substr(i, 2) == alpha2) return true;
    }
    return false;
}

} // namespace

bool is_country(std::string_view alpha2)
{
    return holds(all_codes, alpha2);
}

bool in_european_union(std::string_view alpha2)
{
    return holds(union_codes, alpha2);
}

} // namespace stow::shop
