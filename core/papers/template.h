// The template of a paper box at 1:1: cuts as lines, scores dashed, over as many pages as it needs, with a check ruler
// of 100 mm on every page.
#pragma once

#include "core/paperbox/net.h"
#include "core/papers/text.h"
#include "core/papers/words.h"

namespace stow::papers {

struct BoxTemplate {
    std::string name;        // "Gift box 100 × 70 × 40"
    std::string instruction; // "Cut along the lines, score the dashed ones"
    paperbox::Net net;
};

// Pages are cut edge to edge and overlap by 10 mm; where a page goes on, a small cross marks the same spot on both.
Document lay_out(const BoxTemplate& box, Format format, const Words& words, const TextMeasure& measure);

// The net as large as the extent allows, centred; cuts as lines, scores dashed.
DisplayList draw(const paperbox::Net& net, Extent extent);

} // namespace stow::papers
