// How this workshop works: settings that many subjects read.
#pragma once

#include "core/measure/money.h"
#include "core/measure/quantity.h"
#include "core/shop/orders.h"
#include "core/shop/supplies.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace stow::shop {

enum class PaperSize { a4, letter };
std::string_view name_of(PaperSize size);
std::optional<PaperSize> paper_size(std::string_view name);

// What address labels are printed on: one a page (100 × 150 mm, A6, or a roll of 62 mm cut to length), or several on an
// A4 sheet.
enum class LabelForm { single_100x150, single_a6, roll_62, a4_of_4, a4_of_6 };
inline constexpr std::array all_label_forms{LabelForm::single_100x150, LabelForm::single_a6, LabelForm::roll_62,
                                            LabelForm::a4_of_4, LabelForm::a4_of_6};
std::string_view name_of(LabelForm form); // "100x150", "a6", "62", "a4x4", "a4x6"
std::optional<LabelForm> label_form(std::string_view name);

inline constexpr Length least_margin = mm(8), most_margin = mm(40); // of sheets

struct House {
    Address address; // sender on labels and lists
    std::string contact;
    Currency currency;
    int trays = 6;          // picking trays she owns
    Length ease = mm(2);    // for hands, in every outer
    Length lining;          // least kept free along the walls
    Length rattle = mm(15); // narrower slack cannot be filled by hand
    int overfill_percent = 7;
    Length bulge = mm(2);           // closed size grows by this before postal limits are checked
    Weight heavy = grams(15000);    // lifting caution from here
    SupplyCode filler, tape, label; // used unless something else is said
    int batch_percent = 1;          // common spread of a batch of goods, in percent of the mean
    int humidity_percent = 2;       // common spread of all board and paper
    Weight scale_step = grams(1);
    int cut_minutes = 3; // to score a carton lower and cut it down
    Money hour{};        // what an hour of her time counts for when ways to pack are compared; nothing: it does not
    int service_percent = 95; // chance of not running out of a supply while an order of it is on its way
    int forget_months = 0;    // buyers' names and addresses are erased so long after the order; 0: kept
    PaperSize paper = PaperSize::a4;
    Length margin = mm(18); // left and right on sheets
    LabelForm label_form = LabelForm::single_100x150;
    std::string logo{};      // a picture file, for slips; empty: none
    bool black_only = false; // papers without colours and tints: what a laser printer prints cleanly
    friend bool operator==(const House&, const House&) = default;
};

// The first filler, tape or label that comes into the house is what she fills, tapes and labels with.
void use_where_none_is(House& house, const Supply& supply);

} // namespace stow::shop
