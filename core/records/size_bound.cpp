#include "core/records/size_bound.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace stow::records {

namespace {

constexpr int rounds = 4, steps_a_round = 1'500, branch_steps = 1'000;
constexpr int most_branchings = 40;
constexpr double good_enough = 0.009; // of the cost: no branching for less
constexpr int patience = 150;         // steps without a better bound before they get shorter
constexpr double memory = 0.95;       // of the mean of subgradients and of uses
constexpr double first_step = 0.1, last_step = 1e-5;
constexpr double promising = 1.02; // times the best cost: worth offering
constexpr double close_enough = 1e-9;

} // namespace

double SizeCosts::least(std::size_t kind, const std::vector<std::size_t>& open) const
{
    double best = std::numeric_limits<double>::infinity();
    for (const std::size_t s : open) best = std::min(best, at(kind, s));
    return best;
}

double SizeCosts::total(const std::vector<std::size_t>& open) const
{
    double sum = 0;
    for (std::size_t i = 0; i < kinds; ++i) sum += least(i, open);
    return sum;
}

SizeBound::SizeBound(SizeCosts costs, std::size_t k, Offer offer, Run& run)
    : costs_(std::move(costs)), names_(costs_.sizes), k_(k), offer_(std::move(offer)), run_(run)
{
    std::iota(names_.begin(), names_.end(), std::size_t{0});
}

double SizeBound::offer(const std::vector<std::size_t>& picked) const
{
    std::vector<std::size_t> named;
    named.reserve(picked.size());
    for (const std::size_t s : picked) named.push_back(names_[s]);
    return offer_(named);
}

bool SizeBound::settled(double bound) const
{
    return upper_ - bound <= close_enough * std::abs(upper_);
}

// What opening each size saves at these prices: zero or less.
void SizeBound::reduce(const std::vector<double>& price, std::vector<double>& reduced) const
{
    std::fill(reduced.begin(), reduced.end(), 0.0);
    for (std::size_t i = 0; i < costs_.kinds; ++i) {
        const double* row = &costs_.of[i * costs_.sizes];
        for (std::size_t s = 0; s < costs_.sizes; ++s) reduced[s] += std::min(0.0, row[s] - price[i]);
    }
}

// The k that save most: those fixed open, then the free ones.
void SizeBound::pick(const Node& node, const std::vector<double>& reduced, std::vector<std::size_t>& picked) const
{
    picked.clear();
    for (std::size_t s = 0; s < costs_.sizes; ++s) {
        if (node.fixed[s] != Fixed::shut) picked.push_back(s);
    }
    const std::size_t take = std::min(k_, picked.size());
    std::partial_sort(picked.begin(), picked.begin() + static_cast<std::ptrdiff_t>(take), picked.end(),
                      [&](std::size_t a, std::size_t b) {
                          const bool a_open = node.fixed[a] == Fixed::open, b_open = node.fixed[b] == Fixed::open;
                          if (a_open != b_open) return a_open;
                          return std::pair(reduced[a], a) < std::pair(reduced[b], b);
                      });
    picked.resize(take);
}

void SizeBound::relax(Node& node, int steps)
{
    std::vector<double> price = node.price, direction(costs_.kinds, 0), reduced(costs_.sizes);
    std::vector<std::size_t> picked;
    node.use.assign(costs_.sizes, 0);
    double step = first_step;
    int since = 0;
    for (int t = 0; t < steps && run_.go_on(256); ++t) {
        reduce(price, reduced);
        pick(node, reduced, picked);
        double bound = std::accumulate(price.begin(), price.end(), 0.0);
        for (const std::size_t s : picked) bound += reduced[s];
        if (bound > node.bound + close_enough * std::abs(upper_)) {
            node.bound = bound;
            node.price = price;
            since = 0;
        } else if (++since == patience) {
            step /= 2;
            since = 0;
            price = node.price;
            std::fill(direction.begin(), direction.end(), 0.0);
            if (step < last_step) return;
            continue;
        }
        for (double& u : node.use) u *= memory;
        for (const std::size_t s : picked) node.use[s] += 1 - memory;
        if (costs_.total(picked) < upper_ * promising) upper_ = offer(picked);
        if (settled(node.bound)) return;
        double norm = 0;
        bool all_once = true;
        for (std::size_t i = 0; i < costs_.kinds; ++i) {
            double missing = 1;
            for (const std::size_t s : picked) missing -= costs_.at(i, s) < price[i] ? 1 : 0;
            all_once = all_once && missing == 0;
            direction[i] = memory * direction[i] + (1 - memory) * missing;
            norm += direction[i] * direction[i];
        }
        if (all_once || norm == 0) return; // every kind is served once: there is nothing better here
        const double by = step * (upper_ - bound) / norm;
        for (std::size_t i = 0; i < costs_.kinds; ++i) price[i] += by * direction[i];
    }
}

// A size in place of the one that saves least of those picked raises the bound by their difference.
void SizeBound::leave_out_hopeless(Node& root)
{
    std::vector<double> reduced(costs_.sizes);
    std::vector<std::size_t> picked, kept;
    reduce(root.price, reduced);
    pick(root, reduced, picked);
    const double least_saved = reduced[picked.back()];
    for (std::size_t s = 0; s < costs_.sizes; ++s) {
        if (root.bound + reduced[s] - least_saved < upper_) kept.push_back(s);
    }
    if (kept.size() < k_ || kept.size() == costs_.sizes) return;
    SizeCosts fewer{costs_.kinds, kept.size(), {}};
    fewer.of.reserve(fewer.kinds * fewer.sizes);
    for (std::size_t i = 0; i < costs_.kinds; ++i) {
        for (const std::size_t s : kept) fewer.of.push_back(costs_.at(i, s));
    }
    costs_ = std::move(fewer);
    for (std::size_t& s : kept) s = names_[s];
    names_ = std::move(kept);
    root.fixed.assign(costs_.sizes, Fixed::no);
}

double SizeBound::prove(const std::vector<std::size_t>& open)
{
    Node root{std::vector<Fixed>(costs_.sizes, Fixed::no), {}, {}, 0};
    for (std::size_t i = 0; i < costs_.kinds; ++i) root.price.push_back(costs_.least(i, open));
    upper_ = costs_.total(open);
    for (int round = 0; round < rounds && !settled(root.bound); ++round) {
        relax(root, steps_a_round);
        leave_out_hopeless(root);
    }
    std::vector<Node> nodes{std::move(root)};
    const auto weakest = [&] {
        return std::min_element(nodes.begin(), nodes.end(),
                                [](const Node& a, const Node& b) { return a.bound < b.bound; });
    };
    for (int branching = 0; branching < most_branchings && run_.go_on(1); ++branching) {
        const auto at = weakest();
        if (upper_ - at->bound <= good_enough * upper_) break;
        std::size_t doubtful = costs_.sizes;
        double doubt = 0;
        for (std::size_t s = 0; s < costs_.sizes; ++s) {
            const double d = std::min(at->use[s], 1 - at->use[s]);
            if (at->fixed[s] != Fixed::no || d <= doubt) continue;
            doubt = d;
            doubtful = s;
        }
        if (doubtful == costs_.sizes) break;
        Node with = *at, without = std::move(*at);
        nodes.erase(at);
        with.fixed[doubtful] = Fixed::open;
        without.fixed[doubtful] = Fixed::shut;
        for (Node* node : {&with, &without}) {
            relax(*node, branch_steps);
            nodes.push_back(std::move(*node));
        }
    }
    return std::min(upper_, weakest()->bound);
}

} // namespace stow::records
