// Does a parcel need customs data, and which form?
#pragma once

#include "core/shop/dispatch.h"
#include "core/shop/orders.h"

namespace stow::shop {

struct Areas { // of the European Union
    bool customs = false, tax = false;
    friend bool operator==(const Areas&, const Areas&) = default;
};
// Of the special places that hold the address the longest postcode rule wins; else membership of the country.
Areas areas_of(const CustomsRules& rules, std::string_view country, std::string_view postcode);

// none: nothing to declare. tax_only: in the customs area and outside the tax area, so a declaration is made as for
// goods from outside.
enum class Border { none, tax_only, customs };
// Within one country outside the Union there is none.
Border border_between(const CustomsRules& rules, const Address& from, const Address& to);

enum class CustomsForm { none, cn22, cn23 };
// `value` of the goods, if known in the currency of the rules; not known counts as above the limit.
CustomsForm form_for(const CustomsRules& rules, Border border, bool parcel_post, std::optional<Money> value,
                     Weight gross);

// Six to ten digits, dots and spaces aside (chapter, heading, subheading; chapters 01 to 97 without the reserved 77).
bool hs_code_ok(std::string_view code);

// Words too vague to be let through, as posts refuse them ("samples", "spare parts"); letter case aside.
bool vague_words(std::string_view customs_words);

} // namespace stow::shop
