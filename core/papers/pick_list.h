// The pick list: one walk along the shelves, one tray an order.
#pragma once

#include "core/papers/reprint.h"
#include "core/papers/text.h"
#include "core/papers/words.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

struct PickSheet {
    Date day;
    int round = 1;
    struct Tray {
        std::string letter, parcel, buyer;
        bool gift = false;
        std::string note;                  // the buyer's, to be read before picking
        std::vector<std::string> orders{}; // numbers
    };
    std::vector<Tray> trays;
    struct Into {
        std::string tray;
        int count = 1;
    };
    struct Line { // one good (or one personal text of it), for all trays
        std::string shelf, code, name, variant, personal_text;
        std::vector<Into> into;
    };
    std::vector<Line> lines; // in the order of the walk
    std::optional<Reprint> reprint{};
};

// Shelf places in walking order: digits compare as numbers, so that B2 comes before B10; no place comes last.
bool shelf_before(const std::string& a, const std::string& b);

// One round: parcels with their trays. Sets are picked as their parts; equal goods of one tray are one line, but every
// personal text is a line of its own.
PickSheet pick_sheet(Date day, int round, const std::vector<shop::Parcel>& parcels,
                     const std::vector<shop::HeldOrder>& orders, const shop::Cupboard& cupboard);

// By shelf and tray: one walk.
Document lay_out(const PickSheet& sheet, const Blank& blank, const Words& words, const TextMeasure& measure);
// Tray by tray, each with all of its order, to pick one alone or to look a tray over before it is packed.
Document lay_out_by_order(const PickSheet& sheet, const Blank& blank, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
