// What the drawing items draw: small values the controllers make and QML only hands on.
#pragma once

#include <QRectF>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace stow::view {

// Outers of one order on one floor line, smallest first, the chosen one last. Millimetres.
struct OuterSide {
    double width = 0, height = 0; // of the outer, from the side
    std::vector<QRectF> contents; // from the side, y up from the floor; rounded ones marked
    std::vector<bool> round;
    QString name, words;          // "S2", "0.8 mm short"
    std::vector<QRectF> left_out; // of a refused one: what stayed out, drawn beside it
    bool chosen = false, tube = false;
    double cut_from = 0; // full height of a carton cut down; 0: not cut
};
struct OuterRowScene {
    Q_GADGET
    QML_ANONYMOUS
public:
    std::vector<OuterSide> outers;
    QString sentence;               // for the screen reader
    double widest = 0, tallest = 0; // of all rows of the day, so that all share one scale
    friend bool operator==(const OuterRowScene&, const OuterRowScene&) { return false; }
};

// The postage steps along the weight axis, the expected band and what the scale says. Grams.
struct RulerScene {
    Q_GADGET
    QML_ANONYMOUS
public:
    struct Step {
        double up_to = 0;
        QString price;
    };
    std::vector<Step> steps;
    double expected = 0, sigma = 0;
    double reading = -1; // below zero: nothing on the scale
    int at_risk = -1;    // index into steps: the edge the band crosses
    bool stop = false;   // the reading is wrong
    QString sentence;
    friend bool operator==(const RulerScene&, const RulerScene&) { return false; }
};

} // namespace stow::view
