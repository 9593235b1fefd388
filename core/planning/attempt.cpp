#include "core/planning/attempt.h"

#include "core/fitting/check.h"
#include "core/planning/consumables.h"
#include "core/planning/inserts.h"

namespace stow::planning {

namespace {

using fitting::Effort;
using fitting::Verdict;

// The insert beneath the cushion that the floor has no room for, by how much.
std::optional<fitting::Refusal> refused_by_floor(const Load& load, const OuterForm& form)
{
    const auto [shorter, longer] = std::minmax(form.inner.x, form.inner.y);
    for (const PackedItem& item : load.items) {
        if (!item.under_cushion) continue;
        const Size sheet = sorted(bounding_size(item.shape));
        const Length over = std::max(sheet.x - longer, sheet.y - shorter);
        if (over <= Length{}) continue;
        return fitting::Refusal{{}, Verdict::cannot_fit, fitting::Proof::rules, fitting::Reason::edge, over, item.id};
    }
    return std::nullopt;
}

// Of two refusals the one that says more: undecided stays undecided, else the nearest miss.
bool says_more(const fitting::Refusal& a, const fitting::Refusal& b)
{
    if (a.verdict != b.verdict) return a.verdict == Verdict::undecided;
    if (a.short_by && b.short_by) return *a.short_by < *b.short_by;
    return a.short_by && !b.short_by;
}

} // namespace

Attempts::Attempts(const Bench& bench, const Task& task, const Contents& contents)
    : bench_(bench), task_(task), contents_(contents), cushion_(cushion_of(bench.cupboard, contents)),
      rolls_(can_be_rolled(contents))
{
    const auto papers = inserts_for(bench.cupboard, task.orders, contents, bench.wish.slip, task.first, true);
    folds_ = std::any_of(papers.begin(), papers.end(), [](const PackedItem& p) { return p.folded; });
}

std::vector<Manner> Attempts::manners_for(OuterKind kind, bool squeezed) const
{
    using Sheets = Manner::Sheets;
    std::vector<Sheets> sheets{Sheets::flat};
    if (rolls_ && kind == OuterKind::tube) sheets = {Sheets::rolled_short, Sheets::rolled_long};
    if (rolls_ && is_filled(kind)) sheets = {Sheets::flat, Sheets::rolled_short, Sheets::rolled_long};
    std::vector<Manner> manners;
    for (const Sheets s : sheets) {
        manners.push_back({s, false, squeezed});
        if (folds_) manners.push_back({s, true, squeezed});
    }
    return manners;
}

Attempts::Setting& Attempts::setting(Manner manner, OuterKind kind)
{
    const bool under = cushion_.gap > Length{} && is_lined(kind);
    const auto made = std::find_if(settings_.begin(), settings_.end(),
                                   [&](const Setting& s) { return s.manner == manner && s.under_cushion == under; });
    if (made != settings_.end()) return *made;
    auto inserts = inserts_for(bench_.cupboard, task_.orders, contents_, bench_.wish.slip, task_.first, manner.folded);
    const Length bed = under ? lay_under_cushion(inserts) : Length{};
    settings_.push_back({manner, under, load_of(bench_.cupboard, contents_, inserts, manner), bed, {}, {}});
    return settings_.back();
}

// Remembered answers first; what was remembered of an arrangement is checked like any other.
fitting::Answer Attempts::ask(const fitting::Question& question, Effort effort, std::uint64_t work,
                              std::optional<fitting::Resolved>& content)
{
    if (bench_.asked != nullptr && effort == Effort::quick) {
        if (const fitting::Answer* known = bench_.asked->recall(question)) return *known;
    }
    const std::string& outer = question.outers.front().id;
    const auto sound = [&](const fitting::Answer& answer) {
        return answer.verdict != Verdict::fits ||
               (answer.outer == outer && fitting::check(question, outer, answer.cut_height, answer.placements).empty());
    };
    if (bench_.memory != nullptr) {
        if (auto known = bench_.memory->recall(question)) {
            if (known->verdict != Verdict::undecided && sound(*known)) return *std::move(known);
        }
    }
    Run part = bench_.run.part({.time = {}, .work = work});
    fitting::Resolved inside = content ? *content : fitting::resolve_content(question, part);
    if (!content && !part.stopped()) content = inside; // otherwise another outer's work may get further
    fitting::Answer answer = fitting::fit_one(question, 0, effort, part, std::move(inside));
    work_done_ += part.work_done();
    if (!sound(answer)) return {}; // an arrangement that fails the check is no arrangement
    if (bench_.asked != nullptr && effort == Effort::quick && !part.stopped()) bench_.asked->keep(question, answer);
    const bool worth_keeping = answer.verdict != Verdict::undecided && effort == Effort::proven;
    if (bench_.memory != nullptr && worth_keeping) bench_.memory->keep(question, answer);
    return answer;
}

Tried Attempts::try_outer(const shop::Supply& outer, Effort effort, bool squeezed, std::uint64_t work)
{
    const OuterForm form = eased(*outer.form, bench_.cupboard.house.ease);
    Tried tried;
    bool refused_before = false;
    bool flat_enough = false; // papers beneath the cushion found room, and folding only makes them thicker
    for (const Manner manner : manners_for(form.kind, squeezed)) {
        if (manner.folded && flat_enough) continue;
        Setting& s = setting(manner, form.kind);
        auto refusal = refused_by_floor(s.load, form);
        flat_enough = !manner.folded && s.under_cushion && !refusal;
        if (!refusal) {
            fitting::Question question{.items = s.load.fitted,
                                       .outers = {{outer.code.text, form, outer.weight.mean, outer.max_load}},
                                       .gap = cushion_.gap,
                                       .lining = is_lined(form.kind) ? cushion_.lining : Length{},
                                       .bed = s.bed,
                                       .support = bench_.wish.support};
            question.outers.insert(question.outers.end(), s.load.boxes.begin(), s.load.boxes.end());
            fitting::Answer answer = ask(question, effort, work, is_lined(form.kind) ? s.in_lined : s.in_bare);
            if (answer.verdict == Verdict::fits) {
                tried.held = Held{&s.load, std::move(question), std::move(answer), squeezed};
                return tried;
            }
            refusal = answer.refused.empty() ? fitting::Refusal{} : answer.refused.front();
            refusal->verdict = answer.verdict;
            if (answer.stopped_by == Stop::work) tried.more_may_help = true;
        }
        refusal->outer = outer.code.text;
        if (!refused_before || says_more(*refusal, tried.refusal)) tried.refusal = *std::move(refusal);
        refused_before = true;
    }
    return tried;
}

Length Attempts::least_thickness(OuterKind kind)
{
    Length thickness;
    for (const fitting::Item& item : plain_load(kind).fitted) {
        const auto* soft = std::get_if<Soft>(&item.shape);
        thickness = std::max(thickness, soft != nullptr ? soft->least : sorted(bounding_size(item.shape)).z);
    }
    return thickness;
}

Length Attempts::gives(const std::string& item) const
{
    Length squeeze;
    for (const Several& s : off_the_shelf(contents_)) {
        const shop::Wrapping* wrapping = bench_.cupboard.wrapping(s.good->wrapping);
        if (wrapping != nullptr && (item.empty() || item == s.good->code.text)) {
            squeeze = std::max(squeeze, wrapping->squeeze);
        }
    }
    return squeeze;
}

} // namespace stow::planning
