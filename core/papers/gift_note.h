// The gift note: the giver's words on a card of A6, nothing else.
#pragma once

#include "core/papers/text.h"
#include "core/shop/orders.h"

namespace stow::papers {

// Centred, as large as it fits from 16 points down to 9; what is longer still goes on to a second card.
Document gift_note(const shop::Gift& gift, const TextMeasure& measure);

} // namespace stow::papers
