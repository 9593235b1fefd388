// The address label, 100 × 150 mm.
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

DisplayList lay_out(const LabelData& label, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
