// The address label, 100 × 150 mm or A6, alone or four on an A4 sheet.
#pragma once

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
    std::string code; // payload
    bool reprint = false;
};

LabelData label(const shop::Parcel& parcel, const shop::Address& to, const shop::House& house,
                const std::string& service, int part, int parts);

// `format`: label_100x150 or a6.
DisplayList lay_out(const LabelData& label, const Words& words, const TextMeasure& measure,
                    Format format = Format::label_100x150);

// Labels of A6 on A4 sheets of four, from place `start_at` (1 to 4) of the first sheet on: begun sheets are used up.
Document on_a4_sheets(const std::vector<LabelData>& labels, int start_at, const Words& words,
                      const TextMeasure& measure);

} // namespace stow::papers
