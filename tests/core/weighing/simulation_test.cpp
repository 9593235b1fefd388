// The detective tried on parcels drawn at random: from the model it assumes, and from another. 10,000 of each in the
// full run (STOW_EXTENT=full), a tenth of them in the usual one; the seeds are fixed, so its word does not depend on
// luck.
#include "core/weighing/detective.h"
#include "core/weighing/drift.h"
#include "tests/bench/extent.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <iostream>
#include <random>

namespace stow::weighing {
namespace {

using Kind = Explanation::Kind;

const Weight filler_weight = grams(12);

int parcels()
{
    return bench::cases(1'000, 10'000);
}

class Draw {
public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    double normal(double spread) { return spread * normal_(engine_); }
    double between(double from, double to) { return std::uniform_real_distribution<double>(from, to)(engine_); }
    std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(engine_); }
    int whole(int from, int to) { return std::uniform_int_distribution<int>(from, to)(engine_); }

private:
    std::mt19937_64 engine_;
    std::normal_distribution<double> normal_;
};

// Twelve goods from 9 to 400 g, each with 1 % of spread, and a carton, filler and a card.
Scene scene(Draw& draw)
{
    Scene scene;
    std::vector<Stranger> shelf;
    for (int g = 0; g < 12; ++g) {
        const auto tenths = static_cast<std::int64_t>(90 * std::pow(4000.0 / 90, g / 11.0));
        shelf.push_back(
            {"good " + std::to_string(g), {Weight{tenths}, Weight{std::max<std::int64_t>(tenths / 100, 2)}}});
    }
    const int lines = draw.whole(1, 3);
    while (static_cast<int>(scene.things.size()) < lines) {
        const Stranger& good = shelf[draw.below(shelf.size())];
        const bool there =
            std::any_of(scene.things.begin(), scene.things.end(), [&](const Thing& t) { return t.id == good.id; });
        if (!there) scene.things.push_back({good.id, Thing::Kind::good, {good.one, draw.whole(1, 3), 10, false}});
    }
    for (int s = 0; s < 2; ++s) scene.goods.push_back(shelf[draw.below(shelf.size())]);
    scene.things.push_back({"card", Thing::Kind::insert, {{grams(14), tenth_g(2)}, 1, 0, true}});
    scene.things.push_back({"carton", Thing::Kind::outer, {{grams(95), tenth_g(10)}, 1, 0, true}});
    scene.things.push_back({"filler", Thing::Kind::other, {{filler_weight, tenth_g(20)}, 1, 0, true}});
    scene.outers = {{"carton", {grams(95), tenth_g(10)}}, {"carton L", {grams(160), tenth_g(16)}}};
    scene.circumstances = {20, grams(1)};
    return scene;
}

struct World {                // what the readings are drawn from
    double bias_permille = 0; // of a batch, besides its own spread
    double humidity_permille = 20;
    double scale_g = 1;
    double filler_share = 0; // if set, filler is off by up to this share to either side, all alike likely
    double outliers = 0;     // this share of pieces differs five times as much
};

Weight reading(const std::vector<Share>& shares, const World& world, Draw& draw)
{
    double sum = 0, board = 0;
    for (const Share& share : shares) {
        const double mean = in_grams(share.one.mean), spread = in_grams(share.one.spread);
        double all = 0;
        for (int n = 0; n < share.count; ++n) {
            const double far = draw.between(0, 1) < world.outliers ? 5 : 1;
            all += mean + draw.normal(spread) * far;
        }
        all += share.count * mean * draw.normal((share.batch_permille + world.bias_permille) / 1000.0);
        if (world.filler_share > 0 && share.one.mean == filler_weight) {
            all = mean * (1 + draw.between(-world.filler_share, world.filler_share));
        }
        if (share.board) board += share.count * mean;
        sum += all;
    }
    sum += board * draw.normal(world.humidity_permille / 1000.0);
    return Weight{std::llround(std::round(sum / world.scale_g) * world.scale_g * 10)};
}

struct Mistake {
    Kind kind = Kind::right;
    std::string thing;
    std::vector<Share> shares; // what is really in the parcel
};

// A piece missing, too many, or the card forgotten; the goods drawn evenly.
Mistake mistaken(const Scene& scene, Draw& draw)
{
    Mistake m;
    for (const Thing& t : scene.things) m.shares.push_back(t.share);
    std::size_t i = draw.below(scene.things.size());
    while (scene.things[i].kind != Thing::Kind::good && scene.things[i].kind != Thing::Kind::insert) {
        i = draw.below(scene.things.size());
    }
    m.thing = scene.things[i].id;
    if (scene.things[i].kind == Thing::Kind::insert) {
        m.kind = Kind::insert_missing;
        m.shares[i].count = 0;
        return m;
    }
    m.kind = draw.whole(0, 1) == 0 ? Kind::missing : Kind::extra;
    m.shares[i].count += m.kind == Kind::missing ? -1 : 1;
    return m;
}

struct Rates {
    int right = 0, false_alarms = 0;
    int seen = 0, missed = 0; // things of at least 4.15 spreads: the alarm rang, or not
    int apart4 = 0, named4 = 0, apart35 = 0, named35 = 0;
    static double of(int part, int all) { return all > 0 ? part / double(all) : 0; }
};

bool is(const Explanation& e, const Mistake& m)
{
    return e.kind == m.kind && e.thing == m.thing && e.count == 1;
}

// How far, in spreads, the nearest other explanation that can be named lies from the true one.
double apart(const Finding& finding, const Mistake& truth)
{
    const auto own = std::find_if(finding.explanations.begin(), finding.explanations.end(),
                                  [&](const Explanation& e) { return is(e, truth); });
    if (own == finding.explanations.end()) return 0;
    double nearest = std::numeric_limits<double>::infinity();
    for (const Explanation& e : finding.explanations) {
        if (&e == &*own || e.kind == Kind::something_else) continue;
        const double spread = std::max(in_grams(e.expected.spread), in_grams(own->expected.spread));
        nearest = std::min(nearest, std::abs(in_grams(e.expected.mean - own->expected.mean)) / spread);
    }
    return nearest;
}

Rates tried(const World& world, std::uint64_t seed)
{
    Rates rates;
    Draw draw(seed);
    // The newest weighings, from which the scale's step and the true scatter are seen as the program sees them.
    std::vector<Weight> readings;
    std::vector<Weighed> record;
    for (int n = 0; n < parcels(); ++n) {
        Scene planned = scene(draw);
        if (const auto step = step_seen(readings)) {
            planned.circumstances.scale_step = std::max(planned.circumstances.scale_step, *step);
        }
        std::vector<Share> shares;
        for (const Thing& t : planned.things) shares.push_back(t.share);
        const Expected by_parts = expected_weight(shares, planned.circumstances);
        planned.circumstances.spread_permille = spread_permille(record);
        ++rates.right;
        readings.push_back(reading(shares, world, draw));
        record.push_back({by_parts, readings.back()});
        if (readings.size() > 20) readings.erase(readings.begin());
        rates.false_alarms += investigate(planned, readings.back()).verdict != Finding::Verdict::right;

        const Mistake mistake = mistaken(planned, draw);
        const Finding finding = investigate(planned, reading(mistake.shares, world, draw));
        const auto wrong = std::find_if(planned.things.begin(), planned.things.end(),
                                        [&](const Thing& t) { return t.id == mistake.thing; });
        if (in_grams(wrong->share.one.mean) >= 4.15 * in_grams(finding.expected.spread)) {
            ++(finding.verdict != Finding::Verdict::right ? rates.seen : rates.missed);
        }
        const double distance = apart(finding, mistake);
        const bool named = is(finding.explanations.front(), mistake);
        if (distance >= 4) {
            ++rates.apart4;
            rates.named4 += named;
        }
        if (distance >= 3.5) {
            ++rates.apart35;
            rates.named35 += named;
        }
    }
    return rates;
}

void report(const char* world, const Rates& r)
{
    std::cout << world << ": " << r.right << " right parcels, false alarms " << 100 * Rates::of(r.false_alarms, r.right)
              << " %; of " << r.seen + r.missed << " things of at least 4.15 spreads found "
              << 100 * Rates::of(r.seen, r.seen + r.missed) << " %; first named rightly "
              << 100 * Rates::of(r.named4, r.apart4) << " % of " << r.apart4 << " where 4 spreads apart, "
              << 100 * Rates::of(r.named35, r.apart35) << " % of " << r.apart35 << " where 3.5\n";
}

// Of a share p of n that is to be at least (or at most) so much: three standard errors are granted where n is small.
double grace(double p, int n)
{
    return n >= 5'000 ? 0 : 3 * std::sqrt(p * (1 - p) / n);
}

TEST(Simulation, ParcelsOfItsOwnModel)
{
    const Rates r = tried({}, 20261125);
    report("its own model", r);
    EXPECT_LE(Rates::of(r.false_alarms, r.right), 0.015 + grace(0.015, r.right));
    ASSERT_GT(r.seen + r.missed, parcels() / 5);
    EXPECT_GE(Rates::of(r.seen, r.seen + r.missed), 0.95);
    ASSERT_GT(r.apart4, parcels() / 10);
    EXPECT_GE(Rates::of(r.named4, r.apart4), 0.95);
    EXPECT_GE(Rates::of(r.named35, r.apart35), 0.90);
}

TEST(Simulation, ParcelsOfAnotherModel)
{
    World world;
    world.bias_permille = 5;      // batches differ half as much again as it thinks
    world.humidity_permille = 35; // a damp winter
    world.scale_g = 5;            // shows 5 g, and it was told 1 g
    world.filler_share = 0.3;
    world.outliers = 0.01;
    const Rates r = tried(world, 20261126);
    report("another model", r);
    EXPECT_LE(Rates::of(r.false_alarms, r.right), 0.05 + grace(0.05, r.right));
}

} // namespace
} // namespace stow::weighing
