// Few equal rooms for all pieces: takes a few rooms apart and packs them again together with what has no room yet,
// again and again; when all have found one, a room is given up and the search goes on with one fewer. Anytime,
// deterministic. Ruin and recreate with a goal: Gardeyn & Wauters, "A goal-driven ruin and recreate heuristic for the
// 2D variable-sized bin packing problem with guillotine constraints", EJOR 301(2) 2022. Free space as maximal spaces:
// Parreño, Alvarez-Valdes, Oliveira & Tamarit, "A hybrid GRASP/VND algorithm for two- and three-dimensional bin
// packing", Ann. Oper. Res. 179 2010.
#pragma once

#include "core/fitting/cluster.h"
#include "core/fitting/quick.h"
#include "core/run/run.h"

#include <functional>

namespace stow::fitting {

struct Stowed { // one piece in a room
    std::uint32_t piece = 0;
    std::uint32_t way = 0;
    Coords at{};
};
using RoomContent = std::vector<Stowed>;

// Pieces are counted through the goods of the yard: those of the first goods, of the second, ... Every base may hang:
// `yard.supported` is not looked at. `better` is told of each packing of all pieces in fewer rooms; it ends the search
// by returning true. Ends by itself at one room, or when the run stops. Each piece must go into the room by itself.
void repack(const Yard& yard, Run& run, const std::function<bool(const std::vector<RoomContent>&)>& better);

// All pieces into one room, by the same search with the room taken apart again and again; nothing after `rounds` of
// them.
std::optional<RoomContent> repack_one(const Yard& yard, std::uint64_t rounds, Run& run);

// The same for a load: an arrangement that `accept` takes. Rigid goods; upright round ones as their squares; bases may
// hang, so that it is of use where no support is asked for. A failure proves nothing.
std::optional<Arrangement> find_repacked(const Load& load, const Space& space, std::uint64_t rounds, Run& run,
                                         const Accept& accept);

} // namespace stow::fitting
