// Agreement with a search that tries every whole-unit place of every turned piece, on boxes of at most 6×6×6 units.
// Nothing is shared with the engine but the question.
#include "make.h"

#include <bitset>
#include <gtest/gtest.h>
#include <random>

namespace stow::fitting {
namespace {

using Cells = std::bitset<216>;

struct Tiny {
    std::array<int, 3> box{};
    std::vector<std::array<int, 3>> pieces;
    bool turned = true; // may the pieces be turned?
};

std::vector<Cells> places_of(std::array<int, 3> edges, const std::array<int, 3>& box, bool turned)
{
    std::vector<Cells> places;
    if (turned) std::sort(edges.begin(), edges.end());
    do {
        for (int x = 0; x + edges[0] <= box[0]; ++x) {
            for (int y = 0; y + edges[1] <= box[1]; ++y) {
                for (int z = 0; z + edges[2] <= box[2]; ++z) {
                    Cells cells;
                    for (int a = x; a < x + edges[0]; ++a) {
                        for (int b = y; b < y + edges[1]; ++b) {
                            for (int c = z; c < z + edges[2]; ++c)
                                cells.set(static_cast<std::size_t>((a * 6 + b) * 6 + c));
                        }
                    }
                    places.push_back(cells);
                }
            }
        }
    } while (turned && std::next_permutation(edges.begin(), edges.end()));
    return places;
}

bool goes_in(const std::vector<std::vector<Cells>>& places, std::size_t piece, const Cells& taken)
{
    if (piece == places.size()) return true;
    for (const Cells& place : places[piece]) {
        if ((place & taken).none() && goes_in(places, piece + 1, taken | place)) return true;
    }
    return false;
}

bool brute_force(const Tiny& tiny)
{
    std::vector<std::vector<Cells>> places;
    for (const auto& piece : tiny.pieces) places.push_back(places_of(piece, tiny.box, tiny.turned));
    std::sort(places.begin(), places.end(), [](const auto& a, const auto& b) { return a.size() < b.size(); });
    return goes_in(places, 0, {});
}

// Pieces that pass edges and volume, filling at least half of the box.
Tiny random_tiny(std::mt19937& random)
{
    const auto from_to = [&](int a, int b) {
        return a + static_cast<int>(random() % static_cast<unsigned>(b - a + 1));
    };
    for (;;) {
        Tiny tiny;
        tiny.turned = random() % 3 != 0;
        tiny.box = {from_to(3, 6), from_to(3, 6), from_to(3, 6)};
        const int room = tiny.box[0] * tiny.box[1] * tiny.box[2];
        const int count = from_to(2, 5);
        int volume = 0;
        std::array<int, 3> last{};
        for (int i = 0; i < count; ++i) {
            if (i == 0 || random() % 3 != 0) last = {from_to(1, 5), from_to(1, 5), from_to(1, 5)};
            tiny.pieces.push_back(last);
            volume += last[0] * last[1] * last[2];
        }
        if (volume <= room && 2 * volume >= room) return tiny;
    }
}

Question question_of(const Tiny& tiny)
{
    Question q;
    for (std::size_t i = 0; i < tiny.pieces.size(); ++i) {
        const auto& p = tiny.pieces[i];
        q.items.push_back(item("p" + std::to_string(i), 1, Block{{Length{p[0]}, Length{p[1]}, Length{p[2]}}},
                               tiny.turned ? Turns::Rule::any : Turns::Rule::fixed));
    }
    q.outers = {carton("box", 0, 0, 0)};
    q.outers[0].form.inner = {Length{tiny.box[0]}, Length{tiny.box[1]}, Length{tiny.box[2]}};
    return q;
}

TEST(BruteForce, AgreesOnEveryTinyBox)
{
    std::mt19937 random(20'261'125);
    int fitting = 0, refused = 0, searched = 0;
    for (int k = 0; k < 1500; ++k) {
        const Tiny tiny = random_tiny(random);
        const Question q = question_of(tiny);
        const Answer a = solve(q, 0);
        const bool truth = brute_force(tiny);
        ASSERT_EQ(a.verdict, truth ? Verdict::fits : Verdict::cannot_fit) << "case " << k;
        (truth ? fitting : refused) += 1;
        if (truth) {
            ASSERT_TRUE(violations(q, a).empty()) << "case " << k;
        } else {
            ASSERT_EQ(a.refused.at(0).proof, Proof::geometry);
            if (a.refused.at(0).reason == Reason::exhausted || a.refused.at(0).reason == Reason::bound) ++searched;
        }
    }
    // The set is only worth something when both answers occur often, past the simple bounds too.
    EXPECT_GT(fitting, 300);
    EXPECT_GT(refused, 300);
    EXPECT_GT(searched, 100);
    std::cout << fitting + refused << " cases against brute force: " << fitting << " fit, " << refused << " do not, "
              << searched << " of them past edges, volume and pairs\n";
}

} // namespace
} // namespace stow::fitting
