// The packing slip, and its gift form: no prices, the giver and the message.
#pragma once

#include "core/papers/reprint.h"
#include "core/papers/text.h"
#include "core/papers/words.h"
#include "core/shop/cupboard.h"
#include "core/shop/house.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

struct Slip {
    std::vector<std::string> sender; // lines
    std::string contact;
    std::vector<std::string> to; // lines
    std::vector<std::string> order_numbers;
    Date ordered;
    std::string parcel; // number
    int part = 1, parts = 1;
    struct Line {
        int count = 1;
        std::string name, variant, personal_text;
        std::optional<Money> price; // of one
    };
    std::vector<Line> lines;
    std::vector<Line> apart; // of the same orders, travelling in another parcel
    bool prices = true;      // never shown on a gift slip
    std::optional<Money> postage;
    std::optional<shop::Gift> gift;
    std::string code; // payload of the QR code
    std::optional<Reprint> reprint{};
    std::string logo{}; // a picture file; empty: none
};

Slip slip(const shop::Parcel& parcel, const std::vector<shop::HeldOrder>& orders, const shop::Cupboard& cupboard,
          int part, int parts);

Document lay_out(const Slip& slip, const Blank& blank, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
