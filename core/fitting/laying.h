// Lays many pieces: clusters put one after the other into the free space nearest to a corner, and a beam search over
// which cluster comes next, each branch judged by laying on greedily to the end. Anytime and deterministic: the beam
// widens until nothing is left to lay or the run stops.
// After Araya & Riff, "A beam search approach to the container loading problem", C&OR 43 2014 (the beam and its greedy
// judgement) and Araya, Guerrero & Nuñez, "VCS: a new heuristic function for selecting boxes in the single container
// loading problem", C&OR 82 2017 (volume, contact and loss as the merit of a cluster); residual spaces nearest to a
// corner after Zhu & Lim, EJOR 222 2012.
#pragma once

#include "core/fitting/cluster.h"
#include "core/run/run.h"

#include <functional>

namespace stow::fitting {

struct Laid { // one cluster in the yard
    std::size_t cluster = 0;
    Coords at{};
};

struct Laying {
    std::vector<Laid> laid;
    std::int64_t volume = 0; // of the pieces, in cubes of the yard's unit
    std::int64_t pieces = 0;
};

// `better` is told of each fuller laying, and of every one that holds all; it ends the search by returning true.
void lay(const Yard& yard, const std::vector<Cluster>& clusters, Run& run,
         const std::function<bool(const Laying&)>& better);

} // namespace stow::fitting
