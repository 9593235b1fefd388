// Finds an arrangement of a set too large for the exact search, or too tight for the quick one: clusters laid by a beam
// search (laying.h). A failure proves nothing.
#pragma once

#include "core/fitting/load.h"
#include "core/fitting/quick.h"
#include "core/run/run.h"

namespace stow::fitting {

// Rigid goods only; upright round ones as their squares; with support asked for, every base rests wholly. Spends at
// most `work` nodes of the run.
std::optional<Arrangement> find_large(const Load& load, const Space& space, std::uint64_t work, Run& run,
                                      const Accept& accept);

} // namespace stow::fitting
