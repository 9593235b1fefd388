#include "core/shop/house.h"

namespace stow::shop {

std::string_view name_of(PaperSize size)
{
    switch (size) {
    case PaperSize::a4: return "a4";
    case PaperSize::letter: return "letter";
    }
    return {};
}

std::optional<PaperSize> paper_size(std::string_view name)
{
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
        if (name_of(size) == name) return size;
    }
    return std::nullopt;
}

std::string_view name_of(LabelForm form)
{
    switch (form) {
    case LabelForm::single_100x150: return "100x150";
    case LabelForm::single_a6: return "a6";
    case LabelForm::roll_62: return "62";
    case LabelForm::a4_of_4: return "a4x4";
    case LabelForm::a4_of_6: return "a4x6";
    }
    return {};
}

std::optional<LabelForm> label_form(std::string_view name)
{
    for (const LabelForm form : all_label_forms) {
        if (name_of(form) == name) return form;
    }
    return std::nullopt;
}

void use_where_none_is(House& house, const Supply& supply)
{
    const auto use = [&](SupplyCode& used) {
        if (used.empty()) used = supply.code;
    };
    if (supply.kind == SupplyKind::filler) use(house.filler);
    if (supply.kind == SupplyKind::tape) use(house.tape);
    if (supply.kind == SupplyKind::label) use(house.label);
}

} // namespace stow::shop
