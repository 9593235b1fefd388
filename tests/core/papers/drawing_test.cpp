#include "core/papers/drawing.h"
#include "core/papers/isometry.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numeric>

namespace stow::papers {
namespace {

using fitting::Axis;
using fitting::Placement;

Placement block(const std::string& item, Size at, Size size)
{
    return {item, 1, at, size, std::nullopt, {}};
}

Size whole_mm(std::int64_t x, std::int64_t y, std::int64_t z)
{
    return {mm(x), mm(y), mm(z)};
}

std::vector<std::size_t> all_of(const std::vector<Placement>& placements)
{
    std::vector<std::size_t> indices(placements.size());
    std::iota(indices.begin(), indices.end(), std::size_t{0});
    return indices;
}

// A carton cut into blocks at random, some of them taken away: blocks that never overlap and often touch.
rc::Gen<std::vector<Placement>> heaps()
{
    return rc::gen::map(
        rc::gen::container<std::vector<std::tuple<int, int, int>>>(
            6, rc::gen::tuple(rc::gen::inRange(0, 1000), rc::gen::inRange(0, 3), rc::gen::inRange(1, 9))),
        [](const std::vector<std::tuple<int, int, int>>& cuts) {
            std::vector<Placement> heap{block("b", {}, whole_mm(90, 80, 70))};
            for (const auto& [which, axis, tenths] : cuts) {
                const std::size_t i = static_cast<std::size_t>(which) % heap.size();
                Placement far = heap[i];
                const auto halve = [&, tenths = tenths](Length Size::*side) {
                    const Length first{(heap[i].size.*side).units * tenths / 10};
                    if (first.units == 0 || first == heap[i].size.*side) return;
                    far.size.*side = far.size.*side - first;
                    far.at.*side = far.at.*side + first;
                    heap[i].size.*side = first;
                    heap.push_back(far);
                };
                halve(axis == 0 ? &Size::x : axis == 1 ? &Size::y : &Size::z);
            }
            if (heap.size() > 3) heap.erase(heap.begin() + 1); // a hole to look through
            return heap;
        });
}

// Where the line of sight (x0 + t, y0 + t, z0 + t) is inside the block.
std::optional<std::pair<double, double>> inside(const Size& at, const Size& size, std::array<double, 3> from)
{
    const std::array<double, 3> low{in_mm(at.x), in_mm(at.y), in_mm(at.z)};
    const std::array<double, 3> edge{in_mm(size.x), in_mm(size.y), in_mm(size.z)};
    double enter = -1e9, leave = 1e9;
    for (std::size_t k = 0; k < 3; ++k) {
        enter = std::max(enter, low[k] - from[k]);
        leave = std::min(leave, low[k] + edge[k] - from[k]);
    }
    if (enter + 1e-6 >= leave) return std::nullopt;
    return std::pair(enter, leave);
}

// Along every line of sight, what is nearer to the viewer must be painted later.
bool painted_back_to_front(const std::vector<Part>& parts)
{
    for (int u = -90; u <= 90; u += 3) {
        for (int v = -90; v <= 90; v += 3) {
            double before = -1e9;
            for (const Part& part : parts) {
                const auto hit = inside(part.at, part.size, {u + 0.217, v + 0.431, 0});
                if (!hit) continue;
                if (hit->first + 1e-6 < before) return false;
                before = hit->second;
            }
        }
    }
    return true;
}

TEST(PaintingOrder, PaintsNearerThingsLater)
{
    EXPECT_TRUE(rc::check([] {
        const auto heap = *heaps();
        const auto parts = painting_order(heap, all_of(heap));
        RC_ASSERT(painted_back_to_front(parts));
    }));
}

// Three sticks, each in front of the next: no order of whole sticks is right.
TEST(PaintingOrder, CutsBlocksThatCoverEachOtherInARing)
{
    const std::vector<Placement> ring{block("along x", whole_mm(0, 10, 0), whole_mm(30, 10, 10)),
                                      block("along y, over it", whole_mm(0, 0, 10), whole_mm(10, 30, 10)),
                                      block("upright", whole_mm(10, 0, 0), whole_mm(10, 10, 30))};
    const std::vector<Part> parts = painting_order(ring, all_of(ring));
    EXPECT_GT(parts.size(), ring.size());
    EXPECT_TRUE(painted_back_to_front(parts));
    std::vector<Volume> sum(ring.size());
    for (const Part& part : parts) sum[part.whole] += volume(part.size);
    for (std::size_t i = 0; i < ring.size(); ++i) EXPECT_EQ(sum[i], volume(ring[i].size));
}

TEST(PaintingOrder, LeavesBlocksWholeWhereItCan)
{
    const std::vector<Placement> stack{block("top", whole_mm(0, 0, 10), whole_mm(50, 50, 10)),
                                       block("bottom", whole_mm(0, 0, 0), whole_mm(50, 50, 10))};
    const std::vector<Part> parts = painting_order(stack, all_of(stack));
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_EQ(parts[0].whole, 1U);
    EXPECT_EQ(parts[1].whole, 0U);
}

bool lies_beneath(const Placement& lower, const Placement& upper)
{
    const bool over_each_other = lower.at.x < upper.at.x + upper.size.x && upper.at.x < lower.at.x + lower.size.x &&
                                 lower.at.y < upper.at.y + upper.size.y && upper.at.y < lower.at.y + lower.size.y;
    return over_each_other && lower.at.z + lower.size.z <= upper.at.z;
}

TEST(PuttingIn, NothingHasToGoUnderWhatIsAlreadyIn)
{
    EXPECT_TRUE(rc::check([] {
        const auto heap = *heaps();
        const auto order = putting_in_order(heap);
        auto sorted = order;
        std::sort(sorted.begin(), sorted.end());
        RC_ASSERT(sorted == all_of(heap));
        for (std::size_t later = 0; later < order.size(); ++later) {
            for (std::size_t earlier = 0; earlier < later; ++earlier) {
                RC_ASSERT(!lies_beneath(heap[order[later]], heap[order[earlier]]));
            }
        }
    }));
}

TEST(PuttingIn, LayersRiseWithWhatLiesBeneath)
{
    EXPECT_TRUE(rc::check([] {
        const auto heap = *heaps();
        const auto layer = layers(heap);
        for (std::size_t i = 0; i < heap.size(); ++i) {
            bool rests_on_layer_below = layer[i] == 1;
            for (std::size_t j = 0; j < heap.size(); ++j) {
                if (!lies_beneath(heap[j], heap[i])) continue;
                RC_ASSERT(layer[j] < layer[i]);
                rests_on_layer_below = rests_on_layer_below || layer[j] + 1 == layer[i];
            }
            RC_ASSERT(rests_on_layer_below);
        }
    }));
}

TEST(PuttingIn, GoesFromBackToFrontWithinALayer)
{
    const std::vector<Placement> row{block("front", whole_mm(60, 60, 0), whole_mm(20, 20, 20)),
                                     block("back", whole_mm(0, 0, 0), whole_mm(20, 20, 20)),
                                     block("on top", whole_mm(0, 0, 20), whole_mm(20, 20, 20))};
    EXPECT_EQ(putting_in_order(row), (std::vector<std::size_t>{1, 0, 2}));
    EXPECT_EQ(numbers(row), (std::vector<int>{2, 1, 3}));
    EXPECT_EQ(layers(row), (std::vector<int>{1, 1, 2}));
}

Arrangement carton_of(std::vector<Placement> placements, Size inner = whole_mm(90, 80, 70))
{
    Arrangement a;
    a.form.kind = OuterKind::carton;
    a.form.inner = inner;
    a.form.outer = {inner.x + mm(6), inner.y + mm(6), inner.z + mm(6)};
    a.looks = looks_by_item(placements);
    a.placements = std::move(placements);
    return a;
}

std::vector<std::string> texts(const DisplayList& list)
{
    std::vector<std::string> found;
    for (const Mark& mark : list.marks) {
        if (const auto* text = std::get_if<TextLine>(&mark)) found.push_back(text->text);
    }
    return found;
}

TEST(Isometric, StaysInsideItsExtentAndFillsIt)
{
    EXPECT_TRUE(rc::check([] {
        View view;
        view.extent = {*rc::gen::inRange(2000, 20000), *rc::gen::inRange(2000, 20000)};
        view.number_size = 100;
        view.filler = true;
        view.apart = *rc::gen::inRange(0, 3) / 2.0;
        const auto list = draw(carton_of(*heaps()), view);
        const auto box = bounds(list);
        RC_ASSERT(box.has_value());
        RC_ASSERT(box->least.x >= 0 && box->least.y >= 0);
        RC_ASSERT(box->most.x <= view.extent.width && box->most.y <= view.extent.height);
        const bool full_width = box->most.x - box->least.x >= view.extent.width - 4 * view.pen;
        const bool full_height = box->most.y - box->least.y >= view.extent.height - 4 * view.pen;
        RC_ASSERT(full_width || full_height);
    }));
}

// ISO 5456-3, isometric: a circle of diameter d is an ellipse with axes 1.22 d and 0.71 d (from memory).
TEST(Isometric, DrawsCirclesAsTrueEllipses)
{
    for (const Axis axis : {Axis::x, Axis::y, Axis::z}) {
        Placement can{"can", 1, {}, whole_mm(40, 40, 40), axis, {}};
        View view;
        view.extent = {10000, 10000};
        const DisplayList list = draw(carton_of({can}, whole_mm(40, 40, 40)), view);
        // An edge of the cube along x, from the floor's outline: the unit of the scale.
        const double edge = (view.extent.height - 2 * view.pen) / 80.0 * 40.0;
        int caps = 0;
        for (const Mark& mark : list.marks) {
            const auto* arc = std::get_if<Arc>(&mark);
            if (arc == nullptr || arc->first == arc->second) continue;
            ++caps;
            EXPECT_NEAR(2.0 * arc->first / edge, 1.2247, 0.001);
            EXPECT_NEAR(2.0 * arc->second / edge, 0.7071, 0.001);
            EXPECT_EQ(arc->turn, (axis == Axis::z ? 0 : axis == Axis::x ? 60 : -60) * 16);
        }
        EXPECT_EQ(caps, 2);
    }
}

// The round body touches the sides of its block's outline, and never leaves it.
TEST(Isometric, KeepsARoundThingInItsBlock)
{
    for (const Axis axis : {Axis::x, Axis::y, Axis::z}) {
        Placement can{"can", 1, {}, whole_mm(40, 40, 40), axis, {}};
        View view;
        view.extent = {9000, 10000};
        view.number_items = false;
        const DisplayList list = draw(carton_of({can}, whole_mm(40, 40, 40)), view);
        const auto box = bounds(list);
        ASSERT_TRUE(box);
        EXPECT_GE(box->least.x, 0);
        EXPECT_LE(box->most.x, 9000);
    }
}

TEST(Isometric, NumbersWhatIsShown)
{
    const Arrangement a = carton_of({block("a", whole_mm(0, 0, 0), whole_mm(40, 40, 20)),
                                     block("b", whole_mm(0, 0, 20), whole_mm(40, 40, 20)),
                                     block("c", whole_mm(45, 0, 0), whole_mm(40, 40, 20))});
    View view;
    view.extent = {12000, 12000};
    EXPECT_EQ(texts(draw(a, view)).size(), 3U);
    view.up_to_layer = 1;
    EXPECT_EQ(texts(draw(a, view)), (std::vector<std::string>{"1", "2"}));
    view.up_to_layer = 2;
    view.number_layer = 2;
    EXPECT_EQ(texts(draw(a, view)), (std::vector<std::string>{"3"}));
    view.number_items = false;
    EXPECT_TRUE(texts(draw(a, view)).empty());
}

TEST(Isometric, ShowsTheOneToLookAtInTheAccent)
{
    const Arrangement a =
        carton_of({block("a", {}, whole_mm(40, 40, 20)), block("b", whole_mm(45, 0, 0), whole_mm(40, 40, 20))});
    View view;
    view.extent = {12000, 12000};
    const auto accents = [&] {
        int count = 0;
        for (const Mark& mark : draw(a, view).marks) {
            const auto* path = std::get_if<Path>(&mark);
            if (path != nullptr && path->fill && path->fill->role == Role::highlight) ++count;
        }
        return count;
    };
    EXPECT_EQ(accents(), 0);
    view.highlight = {1};
    EXPECT_EQ(accents(), 3); // its three faces
}

// Lifted layers go straight up, each by as much again, and dashed lines tell where they came from.
TEST(Isometric, TakesTheLayersApart)
{
    const Arrangement a =
        carton_of({block("low", {}, whole_mm(60, 60, 20)), block("middle", whole_mm(0, 0, 20), whole_mm(50, 50, 20)),
                   block("top", whole_mm(0, 0, 40), whole_mm(40, 40, 20))},
                  whole_mm(80, 80, 80));
    View view;
    view.extent = {20000, 20000};
    view.number_items = false;
    struct Feet {
        std::vector<Point> near_corners; // of the three tops, lowest first
        int ways = 0;
    };
    const auto feet = [&] {
        Feet found;
        for (const Mark& mark : draw(a, view).marks) {
            const auto* path = std::get_if<Path>(&mark);
            if (path == nullptr) continue;
            if (path->pen && path->pen->role == Role::accent && path->pen->dash == Pen::Dash::dashed) ++found.ways;
            const bool top = path->fill && path->fill->shade == Shade::lit && path->fill->role != Role::board;
            if (top) found.near_corners.push_back(path->points[2]);
        }
        return found;
    };
    const Feet together = feet();
    view.apart = 1;
    const Feet apart = feet();
    ASSERT_EQ(together.near_corners.size(), 3U);
    ASSERT_EQ(apart.near_corners.size(), 3U);
    EXPECT_EQ(together.ways, 0);
    EXPECT_EQ(apart.ways, 6); // three corners of each lifted block

    // Steps of 20 mm between the tops and 10 mm along both axes: 20 + 10 down the paper as it lies; lifted, a quarter
    // of 80 + 80 mm more. The scale is what fills the height: (80 + 80) / 2 + 80, or with the top layer at 140 mm.
    const double as_it_lies = (20000 - 2 * 25) / 160.0, lifted = (20000 - 2 * 25) / 220.0;
    for (const std::size_t k : {0U, 1U}) {
        EXPECT_NEAR(together.near_corners[k].y - together.near_corners[k + 1].y, 30 * as_it_lies, 2);
        EXPECT_NEAR(apart.near_corners[k].y - apart.near_corners[k + 1].y, 70 * lifted, 2);
        EXPECT_EQ(apart.near_corners[k].x, apart.near_corners[k + 1].x);
    }
}

TEST(Isometric, DashesTheNearWallsAfterTheContents)
{
    const Arrangement a = carton_of({block("a", {}, whole_mm(40, 40, 20))});
    View view;
    view.extent = {12000, 12000};
    view.number_items = false;
    const DisplayList list = draw(a, view);
    std::size_t last_fill = 0;
    int dashed_after = 0;
    for (std::size_t i = 0; i < list.marks.size(); ++i) {
        const auto* path = std::get_if<Path>(&list.marks[i]);
        if (path != nullptr && path->fill) {
            last_fill = i;
            dashed_after = 0;
        }
        if (path != nullptr && path->pen && path->pen->dash == Pen::Dash::dashed) ++dashed_after;
    }
    EXPECT_GT(last_fill, 0U);
    EXPECT_EQ(dashed_after, 3); // two upper edges and the upright one
}

TEST(Isometric, TellsHiddenNumbersFromSeenOnes)
{
    // A small thing wholly behind a large one has no place for its number in this drawing.
    const Arrangement a = carton_of({block("small", whole_mm(0, 0, 0), whole_mm(10, 10, 10)),
                                     block("large", whole_mm(20, 20, 0), whole_mm(50, 50, 60))});
    View view;
    view.extent = {12000, 12000};
    EXPECT_EQ(texts(draw(a, view)), (std::vector<std::string>{"2"}));
}

TEST(SideView, IsToScale)
{
    const Arrangement a = carton_of({block("a", {}, whole_mm(30, 20, 40))}, whole_mm(200, 100, 80));
    const Scale one_to_four{10, 4};
    const DisplayList list = side_view(a, one_to_four, Standing::chosen);
    EXPECT_EQ(list.extent, (Extent{20600 / 4, 8600 / 4}));
    bool found = false; // 30 × 40 mm at a quarter
    for (const Mark& mark : list.marks) {
        const auto* path = std::get_if<Path>(&mark);
        if (path == nullptr || path->points.size() != 4) continue;
        if (path->points[2].x - path->points[0].x != 750 || path->points[2].y - path->points[0].y != 1000) continue;
        found = true;
        EXPECT_EQ(path->points[0].x, 75);            // the wall: 3 mm
        EXPECT_EQ(path->points[2].y, 8600 / 4 - 75); // on the floor
    }
    EXPECT_TRUE(found);
}

TEST(SideView, ShowsTheLongSide)
{
    const Arrangement a = carton_of({}, whole_mm(100, 200, 80));
    EXPECT_EQ(side_view(a, {10, 10}, Standing::empty).extent, (Extent{2060, 860}));
}

TEST(SideView, CrossesOutWhatWasPassedOver)
{
    const Arrangement a = carton_of({}, whole_mm(100, 50, 40));
    const auto bricks = [](const DisplayList& list) {
        int count = 0;
        for (const Mark& mark : list.marks) {
            const auto* path = std::get_if<Path>(&mark);
            if (path != nullptr && path->pen && path->pen->role == Role::brick) ++count;
        }
        return count;
    };
    EXPECT_EQ(bricks(side_view(a, {10, 1}, Standing::chosen)), 0);
    EXPECT_EQ(bricks(side_view(a, {10, 1}, Standing::passed_over)), 2);
    const DisplayList with_bottle = side_view(a, {10, 1}, Standing::passed_over, whole_mm(30, 30, 90));
    EXPECT_EQ(bricks(with_bottle), 3);
    EXPECT_EQ(with_bottle.extent.height, 9000); // taller than the carton
    EXPECT_EQ(bounds(with_bottle)->least.y, 0);
}

TEST(SideView, LaysATubeDown)
{
    Arrangement a;
    a.form.kind = OuterKind::tube;
    a.form.inner = whole_mm(80, 80, 430);
    a.form.outer = whole_mm(84, 84, 440);
    EXPECT_EQ(side_view(a, {10, 10}, Standing::chosen).extent, (Extent{4400, 840}));
}

TEST(CommonScale, FillsTheRowButNoMore)
{
    EXPECT_TRUE(rc::check([] {
        const auto sides = *rc::gen::suchThat(
            rc::gen::container<std::vector<std::tuple<int, int, int>>>(
                rc::gen::tuple(rc::gen::inRange(200, 6000), rc::gen::inRange(200, 6000), rc::gen::inRange(20, 4000))),
            [](const auto& v) { return !v.empty() && v.size() < 12; });
        std::vector<Size> sizes;
        for (const auto& [x, y, z] : sides) sizes.push_back({{x}, {y}, {z}});
        const Extent room{*rc::gen::inRange(15000, 30000), *rc::gen::inRange(2000, 5000)};
        const int between = 500;
        const Scale scale = common_scale(sizes, room, between);
        int width = between * static_cast<int>(sizes.size() - 1), height = 0;
        for (const Size& s : sizes) {
            width += scale(std::max(s.x, s.y));
            height = std::max(height, scale(s.z));
        }
        const int rounding = static_cast<int>(sizes.size());
        RC_ASSERT(width <= room.width + rounding && height <= room.height + 1);
        RC_ASSERT(width >= room.width - rounding || height >= room.height - 1);
    }));
}

TEST(Sleeve, ShowsContentsInTheMiddleAndTheirNumbers)
{
    Arrangement a;
    a.form.kind = OuterKind::mailer;
    a.form.inner = whole_mm(260, 180, 0);
    a.form.outer = whole_mm(270, 190, 1);
    a.contents_thickness = mm(5);
    a.placements = {block("print", {}, whole_mm(200, 140, 3)),
                    block("card", whole_mm(10, 10, 3), whole_mm(100, 70, 2))};
    a.looks = looks_by_item(a.placements);
    View view;
    view.extent = {13000, 10000};
    const DisplayList list = draw(a, view);
    EXPECT_EQ(texts(list), (std::vector<std::string>{"1", "2"}));
    const auto box = bounds(list);
    EXPECT_GE(box->least.x, 0);
    EXPECT_LE(box->most.x, 13000);
    EXPECT_LE(box->most.y, 10000);
}

} // namespace
} // namespace stow::papers
