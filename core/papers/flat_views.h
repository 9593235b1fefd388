// Drawings of outers that are not boxes, and parts shared by all drawings.
#pragma once

#include "core/papers/drawing.h"

namespace stow::papers {

DisplayList draw_sleeve(const Arrangement& arrangement, const View& view); // from above, its thickness beneath
DisplayList draw_tube(const Arrangement& arrangement, const View& view);   // from the side, its section beside

// A number in a ring; filled when it is the one to look at.
DisplayList number_disc(Point centre, int number, int size, bool lit_up);

} // namespace stow::papers
