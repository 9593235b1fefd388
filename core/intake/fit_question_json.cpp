#include "core/intake/fit_question_json.h"

#include "core/intake/json_measures.h"
#include "core/measure/overload.h"

namespace stow::intake {

namespace {

using Json = nlohmann::ordered_json;

void write_shape(Json& out, const Shape& shape)
{
    std::visit(Overload{[&](const Block& b) {
                            out["shape"] = "block";
                            out["size_mm"] = mm_of(b.size);
                        },
                        [&](const Cylinder& c) {
                            out["shape"] = "cylinder";
                            out["size_mm"] = Json::array({mm_of(c.diameter), mm_of(c.height)});
                        },
                        [&](const Sheet& s) {
                            out["shape"] = "sheet";
                            out["size_mm"] = Json::array({mm_of(s.length), mm_of(s.width), mm_of(s.thickness)});
                            if (s.least_roll) out["least_roll_mm"] = mm_of(*s.least_roll);
                        },
                        [&](const Roll& r) {
                            out["shape"] = "roll";
                            out["size_mm"] = Json::array({mm_of(r.diameter), mm_of(r.length)});
                        },
                        [&](const Soft& s) {
                            out["shape"] = "soft";
                            out["volume_l"] = static_cast<double>(s.volume.units) / 1e9;
                            out["least_mm"] = mm_of(s.least);
                        }},
               shape);
}

Json json_of(const Turns& turns)
{
    switch (turns.rule) {
    case Turns::Rule::any: return "any";
    case Turns::Rule::upright: return "upright";
    case Turns::Rule::flat: return "flat";
    case Turns::Rule::fixed: return "fixed";
    case Turns::Rule::listed: break;
    }
    Json edges = Json::array();
    for (std::size_t i = 0; i < 3; ++i) {
        if (turns.vertical[i]) edges.push_back(std::string(1, "lwh"[i]));
    }
    return Json{{"vertical", std::move(edges)}};
}

Json json_of(const fitting::Item& item)
{
    Json out{{"id", item.id}, {"count", item.count}};
    if (item.content.empty()) {
        write_shape(out, item.shape);
        out["weight_g"] = grams_of(item.weight);
        out["turns"] = json_of(item.turns);
    } else {
        out["shape"] = "inside";
        out["packed_in"] = item.packed_in;
        if (item.bow > Length{}) out["bow_mm"] = mm_of(item.bow);
        out["items"] = Json::array();
        for (const fitting::Item& inner : item.content) out["items"].push_back(json_of(inner));
    }
    if (item.top_load) out["top_load_g"] = grams_of(*item.top_load);
    if (item.fragile) out["fragile"] = true;
    return out;
}

Json json_of(const fitting::Outer& outer)
{
    const OuterForm& form = outer.form;
    Json out{{"id", outer.id}, {"kind", name_of(form.kind)}};
    if (form.kind == OuterKind::tube) {
        out["inner_mm"] = Json::array({mm_of(form.inner.x), mm_of(form.inner.z)});
        out["outer_mm"] = Json::array({mm_of(form.outer.x), mm_of(form.outer.z)});
    } else {
        out["inner_mm"] = mm_of(form.inner);
        out["outer_mm"] = mm_of(form.outer);
    }
    if (is_sleeve(form.kind)) {
        out["ease_mm"] = Json::array({mm_of(form.ease[0]), mm_of(form.ease[1])});
        out["wall_mm"] = mm_of(form.wall);
    }
    if (!form.cut_heights.empty()) {
        out["cut_heights_mm"] = Json::array();
        for (const Length cut : form.cut_heights) out["cut_heights_mm"].push_back(mm_of(cut));
    }
    out["tare_g"] = grams_of(outer.tare);
    if (outer.max_load) out["max_load_g"] = grams_of(*outer.max_load);
    return out;
}

const char* word(fitting::Support support)
{
    switch (support) {
    case fitting::Support::none: return "none";
    case fitting::Support::partial: return "partial";
    case fitting::Support::full: break;
    }
    return "full";
}

} // namespace

std::string write_fit_question(const fitting::Question& question)
{
    Json out{{"items", Json::array()}, {"outers", Json::array()}};
    for (const fitting::Item& item : question.items) out["items"].push_back(json_of(item));
    for (const fitting::Outer& outer : question.outers) out["outers"].push_back(json_of(outer));
    out["gap_mm"] = mm_of(question.gap);
    out["lining_mm"] = mm_of(question.lining);
    out["bed_mm"] = mm_of(question.bed);
    out["support"] = word(question.support);
    return out.dump();
}

} // namespace stow::intake
