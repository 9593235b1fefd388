// A parcel does not weigh what it should: which explanation is most likely?
//
// Each explanation says what the parcel would weigh and with what spread; its probability is its prior times the normal
// density of the reading, divided by the sum over all explanations (Bayes). One of them is "something else": anything
// from nothing to twice the weight, equally likely, so that a reading far from all others is not forced onto the
// nearest.
#pragma once

#include "core/weighing/expected.h"

#include <string>
#include <vector>

namespace stow::weighing {

struct Thing {                                      // in the parcel, as planned
    enum class Kind { good, insert, outer, other }; // other: wraps, filler, tape; never suspected
    std::string id;
    Kind kind = Kind::good;
    Share share;
};

struct Stranger { // what might have been taken instead
    std::string id;
    shop::WeightEstimate one;
};

struct Scene {
    std::vector<Thing> things;    // for the stage weighed: before closing there is no outer among them
    std::vector<Stranger> goods;  // any of her goods
    std::vector<Stranger> outers; // any of her outers
    Circumstances circumstances;
};

// How often things go wrong before anything is weighed. About 0.3 % of picks are wrong (a university study in Munich);
// a third each missing, too many and swapped is our judgement, and so are the other three.
struct Priors {
    double missing = 0.001;    // of a line: one piece
    double extra = 0.001;      // of a line: one piece
    double swapped = 0.001;    // of a line: one piece, by any other good
    double each_further = 0.2; // a second, third piece: so much less likely than the one before
    double insert_missing = 0.005;
    double wrong_outer = 0.001; // any other outer
    double something_else = 0.0005;
};

struct Explanation {
    enum class Kind { right, missing, extra, swapped, wrong_outer, insert_missing, something_else };
    Kind kind = Kind::right;
    std::string thing;   // that is missing, too many, or not what it should be
    std::string instead; // swapped, wrong_outer: what is there
    int count = 0;       // pieces missing, too many or swapped
    Expected expected;   // what the parcel would weigh
    double probability = 0;
};

struct Finding {
    // right: the alarm is silent. named: the first explanation is the one. cannot_tell: the alarm rang, but the best
    // two are close, or nothing that can be named explains it.
    enum class Verdict { right, named, cannot_tell };
    Verdict verdict = Verdict::right;
    Weight off;                            // reading less expected
    Expected expected;                     // of the parcel as planned
    std::vector<Explanation> explanations; // most likely first; probabilities add up to 1
    std::vector<std::string> unseen;       // goods and inserts of which one piece could be missing unseen, in order
};

// An explanation is named if it is so many times as likely as the next.
constexpr double clearly = 3;

Finding investigate(const Scene& scene, Weight reading, const Priors& priors = {});

} // namespace stow::weighing
