// The address label: alone on its page, several on a sheet, or from a roll, cut to length.
#pragma once

#include "core/papers/handling_marks.h"
#include "core/papers/text.h"
#include "core/papers/words.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"

#include <string>
#include <vector>

namespace stow::papers {

struct LabelData {
    std::vector<std::string> to; // lines, the country last if abroad
    bool abroad = false;
    std::vector<std::string> from; // lines
    std::string parcel;            // number
    std::string service;           // "Skua Post, tracked packet"
    int part = 1, parts = 1;
    std::string code;     // payload
    int print = 1;        // from 2 on the label says which it is: only the last one printed may be on the parcel
    bool returns = false; // on its way back to the workshop
    std::vector<HandlingMark> marks{};
};

LabelData label(const shop::Parcel& parcel, const shop::Address& to, const shop::House& house,
                const std::string& service, int part, int parts, int print = 1);
// From the buyer to the workshop, to be put into the parcel; who pays its postage is between them.
LabelData return_label(const shop::Parcel& parcel, const shop::Address& from, const shop::House& house, int print = 1);

// Of one label; a roll's is cut as long as the longest label that lay_out makes of it.
Extent extent_of(shop::LabelForm form);
int labels_on_a_sheet(shop::LabelForm form); // 1: each has a page of its own

// What of it the label has room for, at 9 points at least.
enum class LabelFit {
    all_of_it,
    without_marks /* one at most is left */,
    too_long /* the address runs into the foot */
};
LabelFit fit_of(const LabelData& label, const Words& words, const TextMeasure& measure, shop::LabelForm form);

DisplayList lay_out(const LabelData& label, const Words& words, const TextMeasure& measure,
                    shop::LabelForm form = shop::LabelForm::single_100x150);

// Where several go on a sheet, from place `start_at` (from 1) of the first one on: begun sheets are used up.
Document lay_out(const std::vector<LabelData>& labels, int start_at, const Words& words, const TextMeasure& measure,
                 shop::LabelForm form);

} // namespace stow::papers
