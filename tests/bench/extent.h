// How much of the long tests to run: all of it when the environment says STOW_EXTENT=full (sh tests/run.sh full).
#pragma once

#include <cstdlib>
#include <string_view>

namespace stow::bench {

inline int cases(int usual, int full)
{
    const char* extent = std::getenv("STOW_EXTENT");
    return extent != nullptr && std::string_view(extent) == "full" ? full : usual;
}

} // namespace stow::bench
