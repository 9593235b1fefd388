// The spaces worth looking at, smallest closed volume first: a carton at each height it may be cut to, a sleeve or
// board mailer at each thickness its contents may have.
#pragma once

#include "core/fitting/load.h"

namespace stow::fitting {

struct Candidate {
    std::size_t outer = 0; // of the question
    Room room = Room::box;
    std::optional<Length> cut; // a carton cut down
    Space space;               // to find an arrangement in
    Space widest;              // holds every arrangement the candidate stands for: to prove that there is none
    Size origin;               // of the space, from the bare inner corner
    Volume closed;             // least closed volume the candidate stands for
};

// Thickness of contents that can occur: sums of edges that may stand, with the gaps between; ascending, at most `most`.
std::vector<Units> thicknesses(const Load& load, Units most);

// All candidates of the outers named by index. Candidates of one outer hold everything that the outer can hold.
std::vector<Candidate> candidates_of(const Question& question, const std::vector<std::size_t>& outers,
                                     const Load& boxed, const Load& sleeved);

// Closed volume of a candidate's outer once its contents are known to be `t` thick.
Volume closed_with(const Question& question, const Candidate& candidate, Length t);

} // namespace stow::fitting
