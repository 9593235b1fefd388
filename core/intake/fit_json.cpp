#include "core/intake/fit_json.h"

#include "core/intake/json_measures.h"
#include "core/intake/strict_json.h"
#include "core/measure/decimal.h"

#include <cmath>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <set>

namespace stow::intake {

namespace {

using fitting::Item;
using fitting::Outer;
using fitting::Question;
using Json = nlohmann::json;

class Reader {
public:
    explicit Reader(const FitLimits& limits) : limits_(limits) {}

    FitRequest request(const Json& json)
    {
        Members m(json, {});
        FitRequest request;
        Question& q = request.question;
        q.outers = outers(m.need("outers"), m.at("outers"));
        for (const Outer& outer : q.outers) outer_ids_.insert(outer.id);
        q.items = items(m.need("items"), m.at("items"), 1, 0);
        if (const Json* v = m.find("gap_mm")) q.gap = length(*v, m.at("gap_mm"), Rounding::up, true);
        if (const Json* v = m.find("lining_mm")) q.lining = length(*v, m.at("lining_mm"), Rounding::up, true);
        if (const Json* v = m.find("bed_mm")) q.bed = length(*v, m.at("bed_mm"), Rounding::up, true);
        if (const Json* v = m.find("support")) q.support = support(*v, m.at("support"));
        if (const Json* v = m.find("time_ms")) {
            request.time = std::chrono::milliseconds(number(*v, m.at("time_ms"), 0, Rounding::up, 86'400'000, true));
            if (request.time->count() == 0) request.time.reset();
        }
        if (const Json* v = m.find("work")) {
            request.work = static_cast<std::uint64_t>(whole(*v, m.at("work"), 0, 1'000'000'000'000'000));
        }
        m.no_others();
        return request;
    }

private:
    // A number above zero (or from zero on) in whole units of 10^-places.
    std::int64_t number(const Json& v, const std::string& path, int places, Rounding rounding, std::int64_t most,
                        bool may_be_zero) const
    {
        if (!v.is_number()) refuse(ProblemKind::not_a_number, path, v.dump());
        const std::string text = v.dump();
        const std::optional<std::int64_t> units = scaled(text, places, rounding);
        if (!units) refuse(ProblemKind::out_of_range, path, text);
        const bool below = v.is_number_float() ? v.get<double>() < 0 : *units < 0;
        const bool zero = v.is_number_float() ? v.get<double>() == 0 : *units == 0;
        if (below || (zero && !may_be_zero)) refuse(ProblemKind::not_positive, path, text);
        if (*units == 0 && !may_be_zero) refuse(ProblemKind::out_of_range, path, text); // rounded away
        if (*units > most) refuse(ProblemKind::out_of_range, path, text, "≤ " + unscaled(most, places));
        return *units;
    }
    Length length(const Json& v, const std::string& path, Rounding rounding, bool may_be_zero = false) const
    {
        return Length{number(v, path, 1, rounding, limits_.metres * 10'000, may_be_zero)};
    }
    Weight weight(const Json& v, const std::string& path, Rounding rounding) const
    {
        return Weight{number(v, path, 1, rounding, 10'000'000, true)}; // a tonne
    }
    std::int64_t whole(const Json& v, const std::string& path, std::int64_t least, std::int64_t most) const
    {
        if (!v.is_number()) refuse(ProblemKind::not_a_number, path, v.dump());
        const auto down = scaled(v.dump(), 0, Rounding::down), up = scaled(v.dump(), 0, Rounding::up);
        if (!down || down != up) refuse(ProblemKind::out_of_range, path, v.dump(), "a whole number");
        if (*down < least) refuse(ProblemKind::not_positive, path, v.dump());
        if (*down > most) refuse(ProblemKind::out_of_range, path, v.dump(), "≤ " + std::to_string(most));
        return *down;
    }
    static std::string text(const Json& v, const std::string& path)
    {
        if (!v.is_string() || v.get_ref<const std::string&>().empty()) {
            refuse(ProblemKind::missing_value, path, v.dump(), "a text");
        }
        return v.get<std::string>();
    }
    static bool yes_or_no(const Json& v, const std::string& path)
    {
        if (!v.is_boolean()) refuse(ProblemKind::unknown_word, path, v.dump(), "true, false");
        return v.get<bool>();
    }
    static const Json& list(const Json& v, const std::string& path)
    {
        if (!v.is_array()) refuse(ProblemKind::bad_json, path, v.dump(), "a list");
        return v;
    }
    static std::string nth(const std::string& path, std::size_t i) { return path + '[' + std::to_string(i) + ']'; }

    std::vector<Length> lengths(const Json& v, const std::string& path, std::size_t count, Rounding rounding,
                                bool may_be_zero = false) const
    {
        list(v, path);
        if (v.size() != count) {
            refuse(ProblemKind::out_of_range, path, v.dump(), std::to_string(count) + " numbers");
        }
        std::vector<Length> all;
        for (std::size_t i = 0; i < count; ++i) all.push_back(length(v[i], nth(path, i), rounding, may_be_zero));
        return all;
    }
    Size size(const Json& v, const std::string& path, Rounding rounding) const
    {
        const std::vector<Length> l = lengths(v, path, 3, rounding);
        return {l[0], l[1], l[2]};
    }

    static fitting::Support support(const Json& v, const std::string& path)
    {
        const std::string word = text(v, path);
        if (word == "none") return fitting::Support::none;
        if (word == "partial") return fitting::Support::partial;
        if (word == "full") return fitting::Support::full;
        refuse(ProblemKind::unknown_word, path, word, "none, partial, full");
    }

    static Turns turns(const Json& v, const std::string& path)
    {
        if (v.is_object()) {
            Members m(v, path);
            Turns t{Turns::Rule::listed, {false, false, false}};
            const Json& edges = list(m.need("vertical"), m.at("vertical"));
            for (std::size_t i = 0; i < edges.size(); ++i) {
                const std::string where = nth(m.at("vertical"), i), edge = text(edges[i], where);
                const std::size_t k = edge == "l" ? 0 : edge == "w" ? 1 : edge == "h" ? 2 : 3;
                if (k == 3) refuse(ProblemKind::unknown_word, where, edge, "l, w, h");
                if (t.vertical[k]) refuse(ProblemKind::duplicate, where, edge);
                t.vertical[k] = true;
            }
            if (edges.empty()) refuse(ProblemKind::missing_value, m.at("vertical"));
            m.no_others();
            return t;
        }
        const std::string word = text(v, path);
        if (word == "any") return {};
        if (word == "upright") return {Turns::Rule::upright, {true, true, true}};
        if (word == "flat") return {Turns::Rule::flat, {true, true, true}};
        if (word == "fixed") return {Turns::Rule::fixed, {true, true, true}};
        refuse(ProblemKind::unknown_word, path, word, "any, upright, flat, fixed");
    }

    std::vector<Item> items(const Json& v, const std::string& path, std::int64_t times, int depth)
    {
        if (depth > limits_.nesting)
            refuse(ProblemKind::out_of_range, path, {}, "≤ " + std::to_string(limits_.nesting));
        list(v, path);
        std::vector<Item> all;
        std::set<std::string> ids;
        for (std::size_t i = 0; i < v.size(); ++i) {
            all.push_back(one_item(v[i], nth(path, i), times, depth));
            if (!ids.insert(all.back().id).second) refuse(ProblemKind::duplicate, nth(path, i) + ".id", all.back().id);
        }
        return all;
    }

    Item one_item(const Json& v, const std::string& path, std::int64_t times, int depth)
    {
        Members m(v, path);
        Item item;
        item.id = text(m.need("id"), m.at("id"));
        if (const Json* c = m.find("count")) item.count = static_cast<int>(whole(*c, m.at("count"), 1, limits_.pieces));
        pieces_ += times * item.count;
        if (pieces_ > limits_.pieces) {
            refuse(ProblemKind::out_of_range, m.at("count"), std::to_string(pieces_),
                   "≤ " + std::to_string(limits_.pieces));
        }
        if (const Json* w = m.find("top_load_g")) item.top_load = weight(*w, m.at("top_load_g"), Rounding::down);
        if (const Json* f = m.find("fragile")) item.fragile = yes_or_no(*f, m.at("fragile"));
        const std::string shape = text(m.need("shape"), m.at("shape"));
        if (shape == "inside") {
            read_inside(m, item, times, depth);
        } else {
            item.shape = read_shape(m, shape);
            if (const Json* w = m.find("weight_g")) item.weight = weight(*w, m.at("weight_g"), Rounding::up);
            if (const Json* t = m.find("turns")) item.turns = turns(*t, m.at("turns"));
        }
        m.no_others();
        return item;
    }

    Shape read_shape(Members& m, const std::string& shape) const
    {
        if (shape == "soft") {
            Soft soft;
            const std::int64_t litres = 1'000'000'000;
            soft.volume = Volume{number(m.need("volume_l"), m.at("volume_l"), 9, Rounding::up, 1000 * litres, false)};
            if (const Json* l = m.find("least_mm")) soft.least = length(*l, m.at("least_mm"), Rounding::up, true);
            return soft;
        }
        const std::string path = m.at("size_mm");
        if (shape == "block") return Block{size(m.need("size_mm"), path, Rounding::up)};
        if (shape == "sheet") {
            const Size s = size(m.need("size_mm"), path, Rounding::up);
            Sheet sheet{s.x, s.y, s.z, std::nullopt};
            if (const Json* l = m.find("least_roll_mm"))
                sheet.least_roll = length(*l, m.at("least_roll_mm"), Rounding::up);
            return sheet;
        }
        if (shape == "cylinder" || shape == "roll") {
            const std::vector<Length> l = lengths(m.need("size_mm"), path, 2, Rounding::up);
            if (shape == "roll") return Roll{l[0], l[1]};
            return Cylinder{l[0], l[1]};
        }
        refuse(ProblemKind::unknown_word, m.at("shape"), shape, "block, cylinder, sheet, roll, soft, inside");
    }

    void read_inside(Members& m, Item& item, std::int64_t times, int depth)
    {
        item.packed_in = text(m.need("packed_in"), m.at("packed_in"));
        if (outer_ids_.count(item.packed_in) == 0) refuse(ProblemKind::unknown_code, m.at("packed_in"), item.packed_in);
        if (const Json* b = m.find("bow_mm")) item.bow = length(*b, m.at("bow_mm"), Rounding::up, true);
        item.content = items(m.need("items"), m.at("items"), times * item.count, depth + 1);
    }

    std::vector<Outer> outers(const Json& v, const std::string& path)
    {
        list(v, path);
        std::vector<Outer> all;
        std::set<std::string> ids;
        for (std::size_t i = 0; i < v.size(); ++i) {
            all.push_back(one_outer(v[i], nth(path, i)));
            if (!ids.insert(all.back().id).second) refuse(ProblemKind::duplicate, nth(path, i) + ".id", all.back().id);
        }
        return all;
    }

    Outer one_outer(const Json& v, const std::string& path) const
    {
        Members m(v, path);
        Outer outer;
        outer.id = text(m.need("id"), m.at("id"));
        const std::string word = text(m.need("kind"), m.at("kind"));
        const std::optional<OuterKind> kind = outer_kind(word);
        if (!kind) {
            refuse(ProblemKind::unknown_word, m.at("kind"), word,
                   "carton, gift-box, mailer, padded-mailer, board-mailer, tube");
        }
        outer.form.kind = *kind;
        read_inner(m, outer.form);
        outer.form.outer = outer.form.inner;
        if (const Json* o = m.find("outer_mm")) outer.form.outer = outer_size(*o, m.at("outer_mm"), *kind);
        if (const Json* t = m.find("tare_g")) outer.tare = weight(*t, m.at("tare_g"), Rounding::up);
        if (const Json* l = m.find("max_load_g")) outer.max_load = weight(*l, m.at("max_load_g"), Rounding::down);
        if (*kind == OuterKind::carton) read_cuts(m, outer.form);
        if (is_sleeve(*kind)) {
            if (const Json* e = m.find("ease_mm")) {
                const std::vector<Length> ease = lengths(*e, m.at("ease_mm"), 2, Rounding::up, true);
                outer.form.ease = {ease[0], ease[1]};
            }
        }
        if (is_sleeve(*kind) || *kind == OuterKind::board_mailer) {
            if (const Json* w = m.find("wall_mm")) outer.form.wall = length(*w, m.at("wall_mm"), Rounding::up, true);
        }
        m.no_others();
        return outer;
    }

    void read_inner(Members& m, OuterForm& form) const
    {
        const Json& v = m.need("inner_mm");
        const std::string path = m.at("inner_mm");
        if (form.kind == OuterKind::tube) {
            const std::vector<Length> l = lengths(v, path, 2, Rounding::down);
            form.inner = {l[0], l[0], l[1]};
        } else if (is_sleeve(form.kind)) {
            const std::vector<Length> l = lengths(v, path, 3, Rounding::down, true);
            if (l[0] == Length{}) refuse(ProblemKind::not_positive, nth(path, 0), v.dump());
            if (l[1] == Length{}) refuse(ProblemKind::not_positive, nth(path, 1), v.dump());
            if (l[2] != Length{}) refuse(ProblemKind::out_of_range, nth(path, 2), v.dump(), "0");
            form.inner = {l[0], l[1], l[2]};
        } else {
            form.inner = size(v, path, Rounding::down);
        }
    }

    // A tube's may be written [diameter, length]; a sleeve may be empty and flat.
    Size outer_size(const Json& v, const std::string& path, OuterKind kind) const
    {
        if (kind == OuterKind::tube && v.is_array() && v.size() == 2) {
            const std::vector<Length> l = lengths(v, path, 2, Rounding::up);
            return {l[0], l[0], l[1]};
        }
        const std::vector<Length> l = lengths(v, path, 3, Rounding::up, is_sleeve(kind));
        return {l[0], l[1], l[2]};
    }

    void read_cuts(Members& m, OuterForm& form) const
    {
        const Json* v = m.find("cut_heights_mm");
        if (v == nullptr) return;
        const std::string path = m.at("cut_heights_mm");
        list(*v, path);
        if (v->size() > 100) refuse(ProblemKind::out_of_range, path, std::to_string(v->size()), "100");
        for (std::size_t i = 0; i < v->size(); ++i) {
            const Length cut = length((*v)[i], nth(path, i), Rounding::down);
            if (cut > form.inner.z) refuse(ProblemKind::out_of_range, nth(path, i), (*v)[i].dump());
            form.cut_heights.push_back(cut);
        }
    }

    FitLimits limits_;
    std::set<std::string> outer_ids_;
    std::int64_t pieces_ = 0;
};

nlohmann::ordered_json json_of(const std::vector<fitting::Placement>& placements)
{
    auto all = nlohmann::ordered_json::array();
    for (const fitting::Placement& p : placements) {
        nlohmann::ordered_json one{
            {"item", p.item}, {"copy", p.copy}, {"at_mm", mm_of(p.at)}, {"size_mm", mm_of(p.size)}};
        if (p.axis) one["axis"] = std::string(1, "xyz"[static_cast<std::size_t>(*p.axis)]);
        if (!p.content.empty()) one["content"] = json_of(p.content);
        all.push_back(std::move(one));
    }
    return all;
}

const char* word(fitting::Verdict v)
{
    switch (v) {
    case fitting::Verdict::fits: return "fits";
    case fitting::Verdict::cannot_fit: return "cannot_fit";
    case fitting::Verdict::undecided: break;
    }
    return "undecided";
}

const char* word(fitting::Proof p)
{
    switch (p) {
    case fitting::Proof::geometry: return "geometry";
    case fitting::Proof::rules: return "rules";
    case fitting::Proof::none: break;
    }
    return "none";
}

const char* word(fitting::Reason r)
{
    using fitting::Reason;
    switch (r) {
    case Reason::volume: return "volume";
    case Reason::edge: return "edge";
    case Reason::turns: return "turns";
    case Reason::cross_section: return "cross_section";
    case Reason::weight: return "weight";
    case Reason::bound: return "bound";
    case Reason::exhausted: return "exhausted";
    case Reason::sleeve: return "sleeve";
    case Reason::tube_section: return "tube_section";
    }
    return "";
}

const char* word(Stop s)
{
    switch (s) {
    case Stop::cancelled: return "cancelled";
    case Stop::work: return "work";
    case Stop::time: break;
    }
    return "time";
}

} // namespace

tl::expected<FitRequest, Problem> read_fit_question(std::string_view json, const FitLimits& limits)
{
    try {
        return Reader(limits).request(parse_strictly(json, limits.bytes));
    } catch (JsonFault& fault) {
        return tl::unexpected(std::move(fault.problem));
    }
}

std::string write_fit_answer(const FitRequest& request, const fitting::Answer& answer, double milliseconds)
{
    nlohmann::ordered_json out{{"verdict", word(answer.verdict)}};
    const bool fits = answer.verdict == fitting::Verdict::fits;
    if (fits) {
        out["outer"] = answer.outer;
        out["proven_smallest"] = answer.proven_smallest;
        if (answer.cut_height) out["cut_height_mm"] = mm_of(*answer.cut_height);
        for (const Outer& outer : request.question.outers) {
            const bool grows = is_sleeve(outer.form.kind) || outer.form.kind == OuterKind::board_mailer;
            if (outer.id == answer.outer && grows) out["contents_thickness_mm"] = mm_of(answer.contents_thickness);
        }
    }
    out["time_ms"] = std::round(milliseconds * 1000) / 1000;
    out["work"] = answer.work;
    if (answer.stopped_by) out["stopped_by"] = word(*answer.stopped_by);
    if (fits) out["placements"] = json_of(answer.placements);
    out["refused"] = nlohmann::ordered_json::array();
    for (const fitting::Refusal& r : answer.refused) {
        nlohmann::ordered_json one{
            {"outer", r.outer}, {"verdict", word(r.verdict)}, {"proof", word(r.proof)}, {"reason", word(r.reason)}};
        if (r.short_by) one["short_by_mm"] = mm_of(*r.short_by);
        if (!r.item.empty()) one["item"] = r.item;
        out["refused"].push_back(std::move(one));
    }
    // Ids came in as UTF-8 (the parser sees to it), so nothing needs replacing.
    return out.dump();
}

} // namespace stow::intake
