// How little k sizes can cost at least: the relaxation of SizeChooser's problem, branched where it leaves a gap.
// Internal to the records.
#pragma once

#include "core/run/run.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace stow::records {

struct SizeCosts { // of all orders of a kind in a size
    std::size_t kinds = 0, sizes = 0;
    std::vector<double> of; // kind by kind
    double at(std::size_t kind, std::size_t size) const { return of[kind * sizes + size]; }
    double least(std::size_t kind, const std::vector<std::size_t>& open) const;
    double total(const std::vector<std::size_t>& open) const; // each kind in its cheapest open size
};

// Each kind must be served once: that rule is priced (Lagrangian relaxation; G. Cornuejols, M. L. Fisher,
// G. L. Nemhauser, Management Science 23, 1977), and prices follow the mean of the subgradients met so far, which keeps
// them from swinging (as in F. Barahona, R. Anbil, Mathematical Programming 87, 2000). A size
// with which no choice can be better than the best one known is left out; what gap is left then is worked on by
// branching on the size that is most in doubt.
class SizeBound {
public:
    // Shown every promising choice met on the way; gives the cost of the best one known.
    using Offer = std::function<double(const std::vector<std::size_t>&)>;
    SizeBound(SizeCosts costs, std::size_t k, Offer offer, Run& run);

    // No choice of k sizes costs less. `open`: the best one known.
    double prove(const std::vector<std::size_t>& open);

private:
    enum class Fixed : char { no, open, shut };
    struct Node {
        std::vector<Fixed> fixed;  // by size
        std::vector<double> price; // of serving each kind; the best met
        std::vector<double> use;   // of each size: mean over the steps, 0 to 1
        double bound = 0;
    };
    void relax(Node& node, int steps);
    void leave_out_hopeless(Node& root);
    double offer(const std::vector<std::size_t>& picked) const;
    void pick(const Node& node, const std::vector<double>& reduced, std::vector<std::size_t>& picked) const;
    void reduce(const std::vector<double>& price, std::vector<double>& reduced) const;
    bool settled(double bound) const;

    SizeCosts costs_;
    std::vector<std::size_t> names_; // of its sizes, as they were given
    std::size_t k_;
    Offer offer_;
    Run& run_;
    double upper_ = 0;
};

} // namespace stow::records
