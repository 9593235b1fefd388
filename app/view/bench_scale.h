// The scale's part of the bench: what it should say, what it means, and where that lies between the postage steps.
#pragma once

#include "app/day.h"
#include "app/view/scenes.h"
#include "core/book/parcels.h"
#include "core/postage/quote.h"

#include <QString>

#include <optional>

namespace stow::view {

struct ScaleWords {
    QString reading, verdict, more, service, edge;
    QString saving; // "3 mm thinner goes as a large letter: saves 2.40"
    int kind = 0;   // 0 nothing yet, 1 right, 2 look here, 3 stop
    bool edge_at_risk = false;
    RulerScene ruler;
};

// The parcel as the carrier sees it, at this weight.
postage::ParcelFacts facts_of(const Day& day, const planning::ParcelPlan& plan, Weight weight);

// The quote of the parcel's own service at this weight; nothing when it does not take it.
std::optional<postage::Quote> quote_at(const Day& day, const book::HeldParcel& held, Weight weight);

ScaleWords scale_words(const Day& day, const book::HeldParcel& held, shop::WeighingStage stage,
                       std::optional<Weight> reading);

// What the least change that lowers the price would save; empty: none within reach.
QString saving_words(const Day& day, const postage::ParcelFacts& facts, const postage::Quote& now);

} // namespace stow::view
