// Judges a net as a pair of hands would find it: does it fold to the box it promises?
#pragma once

#include "core/paperbox/net.h"

namespace stow::paperbox {

struct Findings {
    bool on_the_sheet = true; // no mark leaves the sheet
    bool lid_covered = true;  // one square, envelope: the flaps folded in leave nothing of the lid bare
    bool walls_apart = true;  // tray, lid: no two walls of the net overlap, and together with base and corners they are
                              // the whole sheet
    double bare_permille = 0; // of the lid
    bool sound() const { return on_the_sheet && lid_covered && walls_apart; }
};
Findings check(const Wanted& wanted, const Net& net);

} // namespace stow::paperbox
