// What a scale says over time: reports come several a second, she needs one weight a parcel.
#pragma once

#include "core/weighing/scale_report.h"

#include <optional>

namespace stow::weighing {

enum class ScaleState {
    absent, // not plugged in, or pulled out
    zero,
    moving,
    settled, // a weight stands
    under_zero,
    over_limit,
    needs_zero,
    needs_calibration,
    faulty,
    unreadable // a unit or report that is not understood
};

struct ScaleSays {
    ScaleState state = ScaleState::absent;
    Weight weight;      // settled or under zero
    bool fresh = false; // settled, and not told before: to be taken once
};

// A weight counts as settled when so many reports in a row say the same one; it is fresh once, until the scale was
// empty or another weight has settled.
class ScaleFeed {
public:
    explicit ScaleFeed(int alike = 3) : alike_(alike) {}

    ScaleSays report(const std::vector<std::uint8_t>& bytes);
    ScaleSays unplugged();
    const ScaleSays& now() const { return now_; }

private:
    ScaleSays say(ScaleState state, Weight weight = {}, bool fresh = false);

    int alike_;
    int seen_ = 0; // reports in a row of `last_`
    std::optional<Weight> last_, told_;
    ScaleSays now_;
};

} // namespace stow::weighing
