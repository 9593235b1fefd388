// The answer to a packing question: where everything lies, or why each outer is refused.
#pragma once

#include "core/fitting/question.h"
#include "core/run/run.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace stow::fitting {

enum class Verdict { fits, cannot_fit, undecided };

// How far a refusal reaches. `geometry`: it holds under every rule of support and load. `rules`: complete under the
// rules of this question only. `none`: no proof; the search ended.
enum class Proof { geometry, rules, none };

enum class Reason { volume, edge, turns, cross_section, weight, bound, exhausted, sleeve, tube_section };

enum class Axis { x, y, z };

struct Placement { // coordinates from the bare inner corner of the outer
    std::string item;
    int copy = 1; // 1, 2, ... among equal items
    Size at;
    Size size;                      // turned; the bounding block of a round item
    std::optional<Axis> axis;       // of a round item
    std::vector<Placement> content; // of an item packed in an outer of its own, from that outer's inner corner
};

struct Refusal {
    std::string outer;
    Verdict verdict = Verdict::undecided; // cannot_fit or undecided
    Proof proof = Proof::none;
    Reason reason = Reason::exhausted;
    // How much too small the outer is for the nearest miss, where a single measure decides (edge, sleeve, tube, turns).
    std::optional<Length> short_by;
    std::string item; // the item that stays out, where one decides
};

struct Answer {
    Verdict verdict = Verdict::undecided;
    std::string outer;                 // the smallest found, by closed volume, ties by id
    std::optional<Length> cut_height;  // inner height of a carton cut down
    Length contents_thickness;         // of what lies in a sleeve or board mailer
    std::vector<Placement> placements; // of `fits`
    std::vector<Refusal> refused;      // every outer that closes smaller than the answer, smallest first
    bool proven_smallest = false;      // every outer that could close smaller is proven not to hold it
    std::optional<Stop> stopped_by;
    std::uint64_t work = 0; // search nodes spent
};

} // namespace stow::fitting
