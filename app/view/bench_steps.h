// What is done with one parcel at the bench, from making up the outer to the label on it.
#pragma once

#include "app/day.h"
#include "core/book/parcels.h"

#include <QString>

#include <vector>

namespace stow::view {

struct ParcelStep {
    enum class Kind { make_up, put_in, fill, close, weigh, label } kind = Kind::make_up;
    std::vector<int> numbers; // on the drawing
    QString mark;             // those numbers, short: "2", "3+4", "3–5"
    QString words;            // in the list
    QString now;              // large
    QString more;
    int layer = 0;       // drawn up to this one; 0: all
    shop::GoodCode good; // of put_in, for the scanner
    int pieces = 0;
    bool unscannable = false; // goods inside it that no scan at the bench can check: a gift box
};

std::vector<ParcelStep> parcel_steps(const Day& day, const book::HeldParcel& held);

// What softens, and the days in which it would lie in the heat over a weekend; empty: it may go.
QString heat_words(const Day& day, const planning::ParcelPlan& plan);

// What the tool warns of with this parcel; empty: nothing.
QString cautions(const Day& day, const planning::ParcelPlan& plan);

} // namespace stow::view
