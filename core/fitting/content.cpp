#include "core/fitting/content.h"

#include "core/fitting/fit.h"

namespace stow::fitting {

namespace {

std::optional<std::size_t> find_outer(const Question& question, const std::string& id)
{
    for (std::size_t i = 0; i < question.outers.size(); ++i) {
        if (question.outers[i].id == id) return i;
    }
    return std::nullopt;
}

Weight weight_of(const Item& item, const Question& question)
{
    if (item.packed_in.empty()) return item.weight;
    Weight sum;
    if (const auto own = find_outer(question, item.packed_in)) sum = question.outers[*own].tare;
    for (const Item& inner : item.content) sum += weight_of(inner, question) * inner.count;
    return sum;
}

} // namespace

Resolved resolve_content(const Question& question, Run& run)
{
    Resolved resolved{question, std::vector<std::vector<Placement>>(question.items.size()), std::nullopt};
    for (std::size_t i = 0; i < question.items.size(); ++i) {
        Item& item = resolved.question.items[i];
        if (item.packed_in.empty()) continue;
        const std::optional<std::size_t> own = find_outer(question, item.packed_in);
        Refusal refusal;
        refusal.item = item.id;
        if (!own) {
            resolved.refusal = refusal;
            return resolved;
        }
        Question inner = question;
        inner.items = item.content;
        const Answer answer = fit_one(inner, *own, Effort::proven, run);
        if (answer.verdict != Verdict::fits) {
            if (!answer.refused.empty()) refusal = answer.refused.front();
            refusal.item = item.id;
            resolved.refusal = refusal;
            return resolved;
        }
        resolved.content[i] = answer.placements;
        item.weight = weight_of(item, question);
        const Size closed = closed_size(question.outers[*own].form, answer.contents_thickness);
        item.shape = Block{{closed.x, closed.y, closed.z + item.bow}};
        item.turns = {Turns::Rule::upright, {true, true, true}};
        if (item.bow > Length{}) item.top_load = Weight{}; // a bow may not be pressed
        item.content.clear();
        item.packed_in.clear();
    }
    return resolved;
}

} // namespace stow::fitting
