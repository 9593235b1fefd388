// What shops call the goods, from a table. A star marks what must be there.
//
//   shop*, title*, variant   as the shop's export says them
//   good*                    code of ours
#pragma once

#include "core/intake/orders_csv.h"

namespace stow::intake {

struct Matched {
    TitleKey called;
    shop::GoodCode good;
};
Taken<Matched> read_matches(const Csv& csv, const std::map<shop::GoodCode, shop::Good>& goods);

} // namespace stow::intake
