#include "core/fitting/check.h"

#include "core/fitting/contact.h"

#include <cmath>
#include <numeric>
#include <set>

namespace stow::fitting {

namespace {

using Units = std::int64_t;

struct Body { // one placement with what the question says of it
    const Item* item = nullptr;
    const Placement* placement = nullptr;
    Size body; // as given, worked out for items with content
    std::int64_t milligrams = 0;
    bool round = false;
    bool upright_round = false; // judged as a circle
    bool lying_round = false;
    std::optional<std::int64_t> top_load; // mg

    Size end() const
    {
        return {placement->at.x + placement->size.x, placement->at.y + placement->size.y,
                placement->at.z + placement->size.z};
    }
};

class Judge {
public:
    Judge(const Question& question, const Outer& outer, std::optional<Length> cut,
          const std::vector<Placement>& placements)
        : question_(question), outer_(outer), cut_(cut), placements_(placements)
    {
    }

    std::vector<Violation> judge()
    {
        gather();
        for (const Body& body : bodies_) judge_turn(body);
        if (is_sleeve(outer_.form.kind))
            judge_sleeve();
        else if (outer_.form.kind == OuterKind::tube)
            judge_tube();
        else
            judge_box();
        judge_apart();
        judge_load();
        if (question_.support != Support::none && outer_.form.kind != OuterKind::tube) judge_support();
        return std::move(violations_);
    }

private:
    static std::string label(const Placement& p) { return p.item + ' ' + std::to_string(p.copy); }
    void object(Rule rule, const Placement& p, Length by = {}, const Placement* other = nullptr)
    {
        violations_.push_back({rule, label(p), other != nullptr ? label(*other) : std::string{}, by});
    }

    static const Outer* find_outer(const Question& question, const std::string& id)
    {
        for (const Outer& outer : question.outers) {
            if (outer.id == id) return &outer;
        }
        return nullptr;
    }

    // 0.1 g of one piece, with its content and the tare of its own outer.
    std::int64_t weight_of_one(const Item& item) const
    {
        if (item.packed_in.empty()) return item.weight.units;
        const Outer* own = find_outer(question_, item.packed_in);
        std::int64_t sum = own != nullptr ? own->tare.units : 0;
        for (const Item& inner : item.content) sum += weight_of_one(inner) * inner.count;
        return sum;
    }

    // Every copy of every item exactly once.
    void gather()
    {
        std::set<std::pair<std::string, int>> seen;
        for (const Placement& p : placements_) {
            const Item* item = nullptr;
            for (const Item& candidate : question_.items) {
                if (candidate.id == p.item) item = &candidate;
            }
            if (item == nullptr || p.copy < 1 || p.copy > item->count || !seen.emplace(p.item, p.copy).second) {
                object(Rule::complete, p);
                continue;
            }
            bodies_.push_back(describe(*item, p));
        }
        for (const Item& item : question_.items) {
            for (int copy = 1; copy <= item.count; ++copy) {
                if (seen.count({item.id, copy}) == 0) {
                    violations_.push_back({Rule::complete, item.id + ' ' + std::to_string(copy), {}, {}});
                }
            }
        }
    }

    Body describe(const Item& item, const Placement& p)
    {
        Body body;
        body.item = &item;
        body.placement = &p;
        body.body = bounding_size(item.shape);
        body.milligrams = weight_of_one(item) * 100;
        if (item.top_load)
            body.top_load = item.top_load->units * 100;
        else if (item.fragile)
            body.top_load = 0;
        if (!item.packed_in.empty()) judge_content(item, p, body);
        body.round = std::holds_alternative<Cylinder>(item.shape) || std::holds_alternative<Roll>(item.shape);
        body.round = body.round && item.packed_in.empty();
        const bool rolled = std::holds_alternative<Sheet>(item.shape) && outer_.form.kind == OuterKind::tube;
        const bool stands = p.axis == Axis::z;
        body.upright_round = (body.round || rolled) && stands && !is_sleeve(outer_.form.kind);
        body.lying_round = body.round && !stands;
        return body;
    }

    // The content lies well in its own outer; that outer with the bow is the body, and nothing may press the bow.
    void judge_content(const Item& item, const Placement& p, Body& body)
    {
        const Outer* own = find_outer(question_, item.packed_in);
        if (own == nullptr) {
            object(Rule::known_outer, p);
            return;
        }
        Question inner = question_;
        inner.items = item.content;
        for (Violation& v : Judge(inner, *own, std::nullopt, p.content).judge()) {
            v.item = label(p) + " / " + v.item;
            violations_.push_back(std::move(v));
        }
        const Size closed = closed_size(own->form, thickness_of(*own, p.content));
        body.body = {closed.x, closed.y, closed.z + item.bow};
        if (item.bow > Length{}) body.top_load = 0;
    }

    // Of what lies in a sleeve or board mailer; the other kinds of outers close the same however full they are.
    Length thickness_of(const Outer& own, const std::vector<Placement>& content) const
    {
        if (content.empty()) return {};
        Length low = content.front().at.z, high = low;
        for (const Placement& p : content) {
            low = std::min(low, p.at.z);
            high = std::max(high, p.at.z + p.size.z);
        }
        const bool lined = own.form.kind == OuterKind::board_mailer;
        return high - low + (lined ? question_.lining * 2 + question_.bed : Length{});
    }

    void judge_turn(const Body& body)
    {
        if (!turn_allowed(body)) object(Rule::turned, *body.placement);
    }

    bool turn_allowed(const Body& body) const
    {
        const Size& size = body.placement->size;
        const Item& item = *body.item;
        if (!item.packed_in.empty()) {
            return size.z == body.body.z && ((size.x == body.body.x && size.y == body.body.y) ||
                                             (size.x == body.body.y && size.y == body.body.x));
        }
        if (const auto* soft = std::get_if<Soft>(&item.shape)) {
            return std::min({size.x, size.y, size.z}) >= soft->least && volume(size) >= soft->volume;
        }
        if (body.round) return round_turn_allowed(body);
        if (const auto* sheet = std::get_if<Sheet>(&item.shape)) {
            if (body.placement->axis) return rolled_up(*sheet, body);
        }
        const std::vector<Size> sizes = turned_sizes(body.body, item.turns);
        return std::find(sizes.begin(), sizes.end(), size) != sizes.end();
    }

    // A sheet that travels rolled in a tube: see rolled_diameter.
    bool rolled_up(const Sheet& sheet, const Body& body) const
    {
        const Size& size = body.placement->size;
        if (!sheet.least_roll || outer_.form.kind != OuterKind::tube || body.placement->axis != Axis::z) return false;
        for (const auto& [along, across] :
             {std::pair{sheet.length, sheet.width}, std::pair{sheet.width, sheet.length}}) {
            const Length diameter = rolled_diameter(*sheet.least_roll, across, sheet.thickness);
            if (size == Size{diameter, diameter, along}) return true;
        }
        return false;
    }

    static bool round_turn_allowed(const Body& body)
    {
        const bool roll = std::holds_alternative<Roll>(body.item->shape);
        const Length along = roll ? body.body.x : body.body.z;
        const Length across = body.body.y;
        const Turns& turns = body.item->turns;
        bool stand = true, lie = true;
        switch (turns.rule) {
        case Turns::Rule::any: break;
        case Turns::Rule::upright: lie = false; break;
        case Turns::Rule::flat: stand = along <= across, lie = across <= along; break;
        case Turns::Rule::fixed: stand = !roll, lie = roll; break;
        case Turns::Rule::listed:
            stand = turns.vertical[roll ? 0 : 2];
            lie = turns.vertical[1] || turns.vertical[roll ? 2 : 0];
            break;
        }
        const Size& size = body.placement->size;
        if (!body.placement->axis) return false;
        switch (*body.placement->axis) {
        case Axis::z: return stand && size == Size{across, across, along};
        case Axis::x: return lie && size == Size{along, across, across};
        case Axis::y: return lie && turns.rule != Turns::Rule::fixed && size == Size{across, along, across};
        }
        return false;
    }

    void judge_within(const Body& body, const Size& low, const Size& high)
    {
        const Size end = body.end();
        const Size& at = body.placement->at;
        const Length out =
            std::max({low.x - at.x, low.y - at.y, low.z - at.z, end.x - high.x, end.y - high.y, end.z - high.z});
        if (out > Length{}) object(Rule::inside, *body.placement, out);
    }

    void judge_box()
    {
        const OuterForm& form = outer_.form;
        Length height = form.inner.z;
        if (cut_) {
            if (std::find(form.cut_heights.begin(), form.cut_heights.end(), *cut_) == form.cut_heights.end()) {
                violations_.push_back({Rule::known_outer, outer_.id, {}, {}});
            }
            height = *cut_;
        }
        const Length lining = question_.lining;
        low_ = {lining, lining, lining + question_.bed};
        high_ = {form.inner.x - lining, form.inner.y - lining, height - lining};
        for (const Body& body : bodies_) judge_within(body, low_, high_);
    }

    // t + w ≤ width − ease and t + l ≤ length − ease, for the block l×w×t around the contents.
    void judge_sleeve()
    {
        if (bodies_.empty()) return;
        low_ = bodies_.front().placement->at;
        high_ = bodies_.front().end();
        for (const Body& body : bodies_) {
            const Size& at = body.placement->at;
            const Size end = body.end();
            low_ = {std::min(low_.x, at.x), std::min(low_.y, at.y), std::min(low_.z, at.z)};
            high_ = {std::max(high_.x, end.x), std::max(high_.y, end.y), std::max(high_.z, end.z)};
            const Length out = -std::min({at.x, at.y, at.z});
            if (out > Length{}) object(Rule::inside, *body.placement, out);
        }
        const OuterForm& form = outer_.form;
        const Length t = high_.z - low_.z;
        const Length short_by = std::max(t + high_.x - low_.x - (form.inner.x - form.ease[0]),
                                         t + high_.y - low_.y - (form.inner.y - form.ease[1]));
        if (short_by > Length{}) violations_.push_back({Rule::sleeve, {}, {}, short_by});
    }

    void judge_tube()
    {
        const Units diameter = outer_.form.inner.x.units;
        for (const Body& body : bodies_) {
            const Size& at = body.placement->at;
            const Size end = body.end();
            const Length out = std::max(-at.z, end.z - outer_.form.inner.z);
            if (out > Length{}) object(Rule::inside, *body.placement, out);
            if (!in_section(body, end, diameter)) object(Rule::tube, *body.placement);
        }
    }

    // Twice the coordinates, from the middle of the tube.
    static bool in_section(const Body& body, const Size& end, Units diameter)
    {
        const Placement& p = *body.placement;
        if (body.upright_round) {
            const Units dx = p.at.x.units + end.x.units - diameter;
            const Units dy = p.at.y.units + end.y.units - diameter;
            const Units room = diameter - p.size.x.units;
            return room >= 0 && dx * dx + dy * dy <= room * room;
        }
        const auto far = [&](Length low, Length high) {
            return std::max(std::abs(2 * low.units - diameter), std::abs(2 * high.units - diameter));
        };
        const Units x = far(p.at.x, end.x);
        const Units y = far(p.at.y, end.y);
        return x * x + y * y <= diameter * diameter;
    }

    void judge_apart()
    {
        for (std::size_t i = 0; i < bodies_.size(); ++i) {
            for (std::size_t j = i + 1; j < bodies_.size(); ++j) {
                const Length overlap = overlap_of(bodies_[i], bodies_[j]);
                if (overlap > Length{}) {
                    object(Rule::apart, *bodies_[i].placement, overlap, bodies_[j].placement);
                }
            }
        }
    }

    // How deep two enlarged bodies reach into each other; zero or less: they are apart.
    Length overlap_of(const Body& a, const Body& b) const
    {
        const Length gap = question_.gap;
        const Size ea = a.end(), eb = b.end();
        const Size& pa = a.placement->at;
        const Size& pb = b.placement->at;
        const Length x = std::min(ea.x, eb.x) - std::max(pa.x, pb.x) + gap;
        const Length y = std::min(ea.y, eb.y) - std::max(pa.y, pb.y) + gap;
        const Length z = std::min(ea.z, eb.z) - std::max(pa.z, pb.z) + gap;
        const Length blocks = std::min({x, y, z});
        if (blocks <= Length{}) return blocks;
        if (a.upright_round && b.upright_round) return circles_apart(a, b) ? Length{} : blocks;
        if (a.upright_round) return circle_apart_from_block(a, b) ? Length{} : blocks;
        if (b.upright_round) return circle_apart_from_block(b, a) ? Length{} : blocks;
        return blocks;
    }

    bool circles_apart(const Body& a, const Body& b) const
    {
        const Units dx = a.placement->at.x.units + a.end().x.units - b.placement->at.x.units - b.end().x.units;
        const Units dy = a.placement->at.y.units + a.end().y.units - b.placement->at.y.units - b.end().y.units;
        const Units least = a.placement->size.x.units + b.placement->size.x.units + 2 * question_.gap.units;
        return dx * dx + dy * dy >= least * least;
    }

    bool circle_apart_from_block(const Body& circle, const Body& block) const
    {
        const Units gap = question_.gap.units;
        const Units cx = circle.placement->at.x.units + circle.end().x.units; // twice the middle
        const Units cy = circle.placement->at.y.units + circle.end().y.units;
        const auto off = [](Units middle, Units low, Units high) {
            return middle < low ? low - middle : std::max<Units>(middle - high, 0);
        };
        const Units dx = off(cx, 2 * block.placement->at.x.units - gap, 2 * block.end().x.units + gap);
        const Units dy = off(cy, 2 * block.placement->at.y.units - gap, 2 * block.end().y.units + gap);
        const Units least = circle.placement->size.x.units + gap;
        return dx * dx + dy * dy >= least * least;
    }

    void judge_load()
    {
        if (!outer_.max_load) return;
        std::int64_t sum = 0;
        for (const Item& item : question_.items) sum += weight_of_one(item) * item.count;
        if (sum > outer_.max_load->units) violations_.push_back({Rule::load, {}, {}, {}});
    }

    // Contacts below each body; then the weights handed down from the top.
    void judge_support()
    {
        const std::size_t n = bodies_.size();
        std::vector<std::vector<std::pair<std::size_t, std::int64_t>>> below(n);
        for (std::size_t i = 0; i < n; ++i) {
            const Body& body = bodies_[i];
            if (body.placement->at.z == low_.z) {
                if (body.lying_round && !held_on_both_sides(body)) object(Rule::supported, *body.placement);
                continue;
            }
            if (body.lying_round) {
                object(Rule::supported, *body.placement);
                continue;
            }
            Contact contact(base_of(body));
            for (std::size_t j = 0; j < n; ++j) {
                const Body& under = bodies_[j];
                if (j == i || under.lying_round || under.end().z + question_.gap != body.placement->at.z) continue;
                const std::int64_t area = contact.add(base_of(under));
                if (area > 0) below[i].emplace_back(j, area);
            }
            const bool held = question_.support == Support::full ? contact.full() : contact.partial();
            if (!held) object(Rule::supported, *body.placement);
        }
        judge_loads(below);
    }

    static Base base_of(const Body& body)
    {
        const Size end = body.end();
        return {body.placement->at.x.units, body.placement->at.y.units, end.x.units, end.y.units, body.upright_round};
    }

    // A wall or a neighbour at most 2 mm away on both sides, or it would roll.
    bool held_on_both_sides(const Body& roll) const
    {
        const bool along_x = roll.placement->axis == Axis::x;
        const auto low = [&](const Size& s) { return along_x ? s.y : s.x; };
        const auto other = [&](const Size& s) { return along_x ? s.x : s.y; };
        const Length reach = mm(2);
        const Size end = roll.end();
        const Size& at = roll.placement->at;
        bool before = low(at) - low(low_) <= reach;
        bool behind = low(high_) - low(end) <= reach;
        for (const Body& body : bodies_) {
            const Size e = body.end();
            const Size& a = body.placement->at;
            if (&body == &roll || e.z <= at.z || a.z >= end.z || other(e) <= other(at) || other(a) >= other(end))
                continue;
            const Length to_before = low(at) - low(e) - question_.gap;
            const Length to_behind = low(a) - low(end) - question_.gap;
            before = before || (to_before >= Length{} && to_before <= reach);
            behind = behind || (to_behind >= Length{} && to_behind <= reach);
        }
        return before && behind;
    }

    void judge_loads(const std::vector<std::vector<std::pair<std::size_t, std::int64_t>>>& below)
    {
        std::vector<std::size_t> order(bodies_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return std::pair{bodies_[b].placement->at.z, a} < std::pair{bodies_[a].placement->at.z, b};
        });
        std::vector<std::int64_t> carried(bodies_.size(), 0);
        for (const std::size_t i : order) {
            hand_down(below[i], bodies_[i].milligrams + carried[i], carried);
            if (bodies_[i].top_load && carried[i] > *bodies_[i].top_load) {
                object(Rule::overloaded, *bodies_[i].placement);
            }
        }
    }

    // In proportion to contact area; the remainder to the largest contact, then the lowest id.
    void hand_down(const std::vector<std::pair<std::size_t, std::int64_t>>& below, std::int64_t mg,
                   std::vector<std::int64_t>& carried) const
    {
        std::int64_t area = 0;
        for (const auto& contact : below) area += contact.second;
        if (area == 0) return;
        std::int64_t rest = mg;
        std::size_t largest = 0;
        for (std::size_t k = 0; k < below.size(); ++k) {
            const std::int64_t part = mul_div(mg, below[k].second, area);
            carried[below[k].first] += part;
            rest -= part;
            const auto id = [&](std::size_t c) {
                const Placement& p = *bodies_[below[c].first].placement;
                return std::pair{p.item, p.copy};
            };
            if (below[k].second > below[largest].second ||
                (below[k].second == below[largest].second && id(k) < id(largest))) {
                largest = k;
            }
        }
        carried[below[largest].first] += rest;
    }

    static std::int64_t mul_div(std::int64_t a, std::int64_t b, std::int64_t c)
    {
        __extension__ using Wide = __int128;
        return static_cast<std::int64_t>(static_cast<Wide>(a) * b / c);
    }

    const Question& question_;
    const Outer& outer_;
    std::optional<Length> cut_;
    const std::vector<Placement>& placements_;
    std::vector<Body> bodies_;
    std::vector<Violation> violations_;
    Size low_, high_; // walls, floor and lid as the contents meet them
};

} // namespace

std::string_view name_of(Rule rule)
{
    switch (rule) {
    case Rule::complete: return "complete";
    case Rule::inside: return "inside";
    case Rule::apart: return "apart";
    case Rule::turned: return "turned";
    case Rule::load: return "load";
    case Rule::supported: return "supported";
    case Rule::overloaded: return "overloaded";
    case Rule::sleeve: return "sleeve";
    case Rule::tube: return "tube";
    case Rule::known_outer: return "known outer";
    }
    return {};
}

std::vector<Violation> check(const Question& question, const std::string& outer, std::optional<Length> cut_height,
                             const std::vector<Placement>& placements)
{
    for (const Outer& candidate : question.outers) {
        if (candidate.id == outer) return Judge(question, candidate, cut_height, placements).judge();
    }
    return {{Rule::known_outer, outer, {}, {}}};
}

} // namespace stow::fitting
