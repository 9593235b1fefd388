// The texts of our papers in the reader's language, and how numbers, dates and money are written in it.
#pragma once

#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/measure/quantity.h"
#include "core/measure/shape.h"
#include "core/papers/reprint.h"
#include "core/shop/goods.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace stow::papers {

// English and German know every word; the others those of papers that go to buyers, and say the rest in English.
enum class Language { english, german, french, italian, spanish };
inline constexpr std::array all_languages{Language::english, Language::german, Language::french, Language::italian,
                                          Language::spanish};
std::string_view code_of(Language language); // ISO 639-1: "en", "de"
// Of a buyer in this country (ISO 3166-1 alpha-2): what most speak there, where it is one of ours; English elsewhere.
Language language_for(std::string_view country);

// clang-format off: a list to be read at a glance
enum class Word {
    pick_list,
    pick_list_by_order,
    round,
    trays,
    tray,
    shelf,
    no_shelf,
    pieces,
    continued,
    page,
    of,
    packing_slip,
    order,
    orders,
    from_date,
    for_whom,
    item,
    count,
    price,
    sum,
    goods_total,
    postage,
    total,
    part,
    follows_apart,
    thank_you,
    gift_slip,
    a_gift_from,
    exchange_number,
    questions,
    bench_card,
    put_in,
    layer,
    filler,
    filler_none,
    tape,
    weigh,
    service,
    no_service,
    closed_size,
    gift_no_prices,
    note_from_buyer,
    smallest_proven,
    caution_heavy,
    caution_glass,
    caution_flammable,
    caution_liquid,
    carton,
    gift_box,
    mailer,
    padded_mailer,
    board_mailer,
    tube,
    from,
    to,
    parcel,
    parcels,
    hand_over_list,
    number,
    tracking,
    untracked,
    all_together,
    one_together,
    handed_over_by,
    taken_by,
    name_time_signature,
    reprint,
    label_print,
    insert_slip,
    up_to_layer,
    gift,
    under_cushion,
    folded,
    rolled,
    cut_down,
    inside_it,
    gift_note,
    customs_data,
    customs_note,
    category,
    sold_goods,
    gift_category,
    documents,
    sample,
    returned,
    description,
    net_weight,
    gross_weight,
    value,
    tariff_number,
    origin,
    missing,
    date_signature,
    reorder_list,
    making_list,
    on_hand,
    to_order,
    to_make,
    no_supplier,
    material_report,
    material_covers,
    all_countries,
    goods_own,
    used_again,
    return_parcel,
    command_cards,
    command_cards_note,
    command_done,
    command_back,
    command_later,
    command_box_gone,
    command_label_again,
    command_undo,
    command_go_on,
    material_paper,
    material_plastic,
    material_glass,
    material_wood,
    material_steel,
    material_aluminium,
    material_composite,
    material_other,
    how_many // last: the number of words
};
// clang-format on

class Words {
public:
    explicit Words(Language language) : language_(language) {}
    Language language() const { return language_; }

    std::string_view operator()(Word word) const;
    std::string with(Word word, const std::string& first, const std::string& second = {}) const; // fills its gaps {}

    std::string reprinted(const Reprint& reprint) const;            // "Reprint (print 2): 25 November 2026, 15:48"
    std::string quoted(const std::string& text) const;              // “text”; „text“; « text »
    std::string date(Date date) const;                              // 25 November 2026; 25. November 2026
    std::string money(Money amount) const;                          // 1,234.50 EUR; 1.234,50 EUR
    std::string weight(Weight weight) const;                        // 812 g; 1.25 kg from a kilogram on
    std::string weight(const shop::WeightEstimate& estimate) const; // 812 ± 28 g: two standard deviations
    std::string size(const Size& size) const;                       // 226 × 166 × 126 mm
    std::string flat_size(const Size& size) const;                  // 260 × 180 mm: x and y
    std::string length(Length length) const;                        // 12.5 mm; 0.8 m from half a metre on
    std::string litres(Volume volume) const;                        // 1.4 L

private:
    Language language_;
};

} // namespace stow::papers
