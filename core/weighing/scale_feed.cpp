#include "core/weighing/scale_feed.h"

namespace stow::weighing {

namespace {

ScaleState state_of(ScaleFault fault)
{
    switch (fault) {
    case ScaleFault::not_a_report:
    case ScaleFault::unknown_unit:
    case ScaleFault::out_of_range: return ScaleState::unreadable;
    case ScaleFault::fault: return ScaleState::faulty;
    case ScaleFault::in_motion: return ScaleState::moving;
    case ScaleFault::over_limit: return ScaleState::over_limit;
    case ScaleFault::needs_calibration: return ScaleState::needs_calibration;
    case ScaleFault::needs_zero: return ScaleState::needs_zero;
    }
    return ScaleState::unreadable;
}

} // namespace

ScaleSays ScaleFeed::say(ScaleState state, Weight weight, bool fresh)
{
    return now_ = {state, weight, fresh};
}

ScaleSays ScaleFeed::unplugged()
{
    last_.reset();
    told_.reset();
    seen_ = 0;
    return say(ScaleState::absent);
}

ScaleSays ScaleFeed::report(const std::vector<std::uint8_t>& bytes)
{
    const auto read = read_scale_report(bytes);
    if (!read) {
        last_.reset();
        seen_ = 0;
        return say(state_of(read.error()));
    }
    seen_ = last_ == *read ? seen_ + 1 : 1;
    last_ = *read;
    if (*read < Weight{}) return say(ScaleState::under_zero, *read);
    if (*read == Weight{}) {
        if (seen_ >= alike_) told_.reset(); // the parcel was taken off
        return say(ScaleState::zero);
    }
    if (seen_ < alike_) return say(ScaleState::moving, *read);
    const bool fresh = told_ != *read;
    told_ = *read;
    return say(ScaleState::settled, *read, fresh);
}

} // namespace stow::weighing
