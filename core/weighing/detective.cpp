#include "core/weighing/detective.h"

#include <algorithm>
#include <cmath>

namespace stow::weighing {

namespace {

using Kind = Explanation::Kind;

constexpr int most_extra = 2;   // pieces too many that are worth asking about
constexpr int most_missing = 3; // and missing, besides the whole line
const double pi = std::acos(-1.0);

// Density at the reading, per gram.
double density(const Expected& expected, Weight reading)
{
    const double spread = std::max(in_grams(expected.spread), 0.1);
    const double z = in_grams(reading - expected.mean) / spread;
    return std::exp(-z * z / 2) / (spread * std::sqrt(2 * pi));
}

class Detective {
public:
    Detective(const Scene& scene, Weight reading, const Priors& priors)
        : scene_(scene), reading_(reading), priors_(priors)
    {
        for (const Thing& thing : scene.things) planned_.push_back(thing.share);
        expected_ = expected_weight(planned_, scene.circumstances);
    }

    Finding find()
    {
        for (std::size_t i = 0; i < scene_.things.size(); ++i) {
            switch (scene_.things[i].kind) {
            case Thing::Kind::good: suspect_good(i); break;
            case Thing::Kind::insert: suspect_insert(i); break;
            case Thing::Kind::outer: suspect_outer(i); break;
            case Thing::Kind::other: break;
            }
        }
        const double range = 2 * in_grams(expected_.mean) + 1; // at least a gram
        weigh({Kind::something_else, {}, {}, 0, expected_, 0}, priors_.something_else, 1 / range);
        // What is left of the prior: nothing wrong. Never less than half, however long the order.
        weigh({Kind::right, {}, {}, 0, expected_, 0}, std::max(1 - suspected_, 0.5), density(expected_, reading_));
        return finding();
    }

private:
    // `probability` holds prior times density until all are known.
    void weigh(Explanation e, double prior, double density_there)
    {
        suspected_ += prior;
        e.probability = prior * density_there;
        explanations_.push_back(std::move(e));
    }

    // The parcel with some pieces of a thing more or fewer, and perhaps one stranger in it.
    void suppose(Explanation e, std::size_t thing, int more, const Stranger* stranger, double prior)
    {
        std::vector<Share> shares = planned_;
        shares[thing].count += more;
        if (stranger != nullptr) {
            Share instead = shares[thing];
            instead.one = stranger->one;
            instead.count = 1;
            shares.push_back(instead);
        }
        e.expected = expected_weight(shares, scene_.circumstances);
        const double there = density(e.expected, reading_);
        weigh(std::move(e), prior, there);
    }

    void suspect_good(std::size_t i)
    {
        const Thing& thing = scene_.things[i];
        for (int k = 1; k <= thing.share.count; ++k) {
            if (k > most_missing && k < thing.share.count) continue;
            suppose({Kind::missing, thing.id, {}, k, {}, 0}, i, -k, nullptr, priors_.missing * further(k));
        }
        for (int k = 1; k <= most_extra; ++k) {
            suppose({Kind::extra, thing.id, {}, k, {}, 0}, i, k, nullptr, priors_.extra * further(k));
        }
        swap_for(scene_.goods, Kind::swapped, i, priors_.swapped);
    }

    void suspect_insert(std::size_t i)
    {
        const Thing& thing = scene_.things[i];
        const int all = thing.share.count;
        suppose({Kind::insert_missing, thing.id, {}, all, {}, 0}, i, -all, nullptr, priors_.insert_missing);
    }

    void suspect_outer(std::size_t i) { swap_for(scene_.outers, Kind::wrong_outer, i, priors_.wrong_outer); }

    // The prior is shared by all that might be there instead.
    void swap_for(const std::vector<Stranger>& strangers, Kind kind, std::size_t i, double prior)
    {
        const std::string& id = scene_.things[i].id;
        const auto others =
            std::count_if(strangers.begin(), strangers.end(), [&](const Stranger& s) { return s.id != id; });
        for (const Stranger& s : strangers) {
            if (s.id != id) suppose({kind, id, s.id, 1, {}, 0}, i, -1, &s, prior / static_cast<double>(others));
        }
    }

    double further(int k) const { return std::pow(priors_.each_further, std::min(k, most_missing + 1) - 1); }

    Finding finding()
    {
        Finding found;
        found.expected = expected_;
        found.off = reading_ - expected_.mean;
        double sum = 0;
        for (const Explanation& e : explanations_) sum += e.probability;
        for (Explanation& e : explanations_) e.probability /= sum; // "something else" keeps the sum above zero
        std::stable_sort(explanations_.begin(), explanations_.end(),
                         [](const Explanation& a, const Explanation& b) { return a.probability > b.probability; });
        found.verdict = verdict(found.off);
        found.explanations = std::move(explanations_);
        for (const Thing& thing : scene_.things) {
            const bool asked = thing.kind == Thing::Kind::good || thing.kind == Thing::Kind::insert;
            if (asked && thing.share.one.mean < least_detectable(expected_.spread)) found.unseen.push_back(thing.id);
        }
        return found;
    }

    Finding::Verdict verdict(Weight off) const
    {
        if (std::abs(in_grams(off)) <= alarm_spreads * in_grams(expected_.spread)) return Finding::Verdict::right;
        const Explanation& best = explanations_[0]; // at least "right" and "something else" are there
        const bool nameable = best.kind != Kind::right && best.kind != Kind::something_else;
        const bool clear = best.probability >= clearly * explanations_[1].probability;
        return nameable && clear ? Finding::Verdict::named : Finding::Verdict::cannot_tell;
    }

    const Scene& scene_;
    Weight reading_;
    const Priors& priors_;
    std::vector<Share> planned_;
    Expected expected_;
    std::vector<Explanation> explanations_;
    double suspected_ = 0;
};

} // namespace

Finding investigate(const Scene& scene, Weight reading, const Priors& priors)
{
    return Detective(scene, reading, priors).find();
}

} // namespace stow::weighing
