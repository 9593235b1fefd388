#include "core/postage/size_limits.h"

namespace stow::postage {

namespace {

// Collects the greatest miss; limits are tried in the order people measure.
class Misses {
public:
    explicit Misses(Length tolerance) : tolerance_(tolerance) {}

    void most(std::string_view limit, const std::optional<Length>& most, Length is)
    {
        if (most) note({limit, is - *most, false});
    }
    void least(std::string_view limit, const std::optional<Length>& least, Length is)
    {
        if (least) note({limit, *least - is, true});
    }
    std::optional<Miss> worst() const { return worst_; }

private:
    void note(const Miss& m)
    {
        if (m.by > tolerance_ && (!worst_ || m.by > worst_->by)) worst_ = m;
    }

    Length tolerance_;
    std::optional<Miss> worst_;
};

bool has_roll_limits(const Format& f)
{
    return f.roll_most_length || f.roll_most_sum || f.roll_least_length || f.roll_least_sum;
}

} // namespace

Outline outline(const Size& closed, bool roll)
{
    return {sorted(closed), roll, closed.z, closed.x};
}

Length sum(const Outline& parcel)
{
    return parcel.edges.x + parcel.edges.y + parcel.edges.z;
}

Length length_and_girth(const Outline& parcel)
{
    return parcel.edges.x + (parcel.edges.y + parcel.edges.z) * 2;
}

std::optional<Miss> miss(const Format& format, const Outline& parcel)
{
    Misses misses(format.tolerance);
    if (parcel.roll && has_roll_limits(format)) {
        const Length roll_sum = parcel.roll_length + parcel.diameter * 2;
        misses.most("roll length", format.roll_most_length, parcel.roll_length);
        misses.most("roll sum", format.roll_most_sum, roll_sum);
        misses.least("roll length", format.roll_least_length, parcel.roll_length);
        misses.least("roll sum", format.roll_least_sum, roll_sum);
        return misses.worst();
    }
    misses.most("length", format.most_length, parcel.edges.x);
    misses.most("width", format.most_width, parcel.edges.y);
    misses.most("height", format.most_height, parcel.edges.z);
    misses.most("sum", format.most_sum, sum(parcel));
    misses.most("girth", format.most_girth, length_and_girth(parcel));
    misses.least("length", format.least_length, parcel.edges.x);
    misses.least("width", format.least_width, parcel.edges.y);
    misses.least("height", format.least_height, parcel.edges.z);
    // Length as the width asks for it, rounded in the parcel's favour.
    const auto times_width = [&](std::int64_t permille, std::int64_t rounding) {
        return Length{(parcel.edges.y.units * permille + rounding) / 1000};
    };
    if (format.least_ratio) misses.least("ratio", times_width(*format.least_ratio, 0), parcel.edges.x);
    if (format.most_ratio) misses.most("ratio", times_width(*format.most_ratio, 999), parcel.edges.x);
    return misses.worst();
}

} // namespace stow::postage
