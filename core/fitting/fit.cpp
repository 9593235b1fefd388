#include "core/fitting/fit.h"

#include "core/fitting/bounds.h"
#include "core/fitting/candidate.h"
#include "core/fitting/check.h"
#include "core/fitting/content.h"
#include "core/fitting/exact.h"
#include "core/fitting/large.h"
#include "core/fitting/quick.h"
#include "core/fitting/repack.h"
#include "core/fitting/rounds.h"
#include "core/fitting/tube.h"

#include <numeric>
#include <stdexcept>

namespace stow::fitting {

namespace {

enum class Standing { open, refused, found };

struct Looked { // a candidate and what is known of it
    Candidate candidate;
    Standing standing = Standing::open;
    Refusal refusal;
    std::vector<Placement> placements; // of `found`
    Length thickness;
    Volume closed;          // of `found`
    bool exhausted = false; // all that is known was tried; it stays open
};

class Fitter {
public:
    // `before`: work done by the run when this question began.
    Fitter(const Question& question, const std::vector<std::size_t>& outers, Run& run, std::uint64_t before,
           Resolved content)
        : question_(question), outers_(outers), run_(run), work_before_(before), resolved_(std::move(content))
    {
        resolved_.question.outers = question.outers;
    }

    Answer fit(Effort effort)
    {
        if (resolved_.refusal) return blocked();
        boxed_ = make_load(resolved_.question, Room::box);
        sleeved_ = make_load(resolved_.question, Room::sleeve);
        tubed_ = make_load(resolved_.question, Room::tube);
        for (const Candidate& candidate : candidates_of(resolved_.question, outers_, boxed_, sleeved_)) {
            looked_.emplace_back();
            looked_.back().candidate = candidate;
            looked_.back().refusal.outer = question_.outers[candidate.outer].id;
        }
        for (Looked& looked : looked_) {
            if (better_found(looked)) break;
            refuse(looked);
            if (looked.standing == Standing::open && !too_tight_at_first(looked.candidate)) {
                look_quickly(looked, first_tries(load_of(looked.candidate)));
            }
            if (looked.standing == Standing::open) look_for_rounds(looked, first_rounds);
            if (looked.standing == Standing::open && large(looked.candidate)) look_at_large(looked, first_laying);
        }
        if (best() == nullptr) look_at_the_tight_ones();
        if (effort == Effort::proven) decide();
        return answer();
    }

private:
    // A large set is dear to lay out: one look an outer, so that some outer is found; better ones are sought
    // afterwards.
    static int first_tries(const Load& load)
    {
        return load.pieces.size() <= most_exact_pieces ? 12 : load.pieces.size() <= 60 ? 3 : 1;
    }
    static constexpr int more_tries = 400;
    static constexpr int few_tries = 40;
    static constexpr int first_rounds = 10; // circles on a floor
    static constexpr int more_rounds = 120;
    static constexpr std::size_t few_for_laying = 7;
    static constexpr std::uint64_t first_laying = 600; // nodes; a few complete layings
    static constexpr std::uint64_t short_laying = 3'000;
    static constexpr std::uint64_t long_laying = 60'000;

    // Laying out many pieces where they would fill five sixths and more seldom works at the first try.
    bool too_tight_at_first(const Candidate& c) const
    {
        const Load& load = load_of(c);
        return load.pieces.size() > 60 && c.room != Room::tube && product(c.space.side) / 6 * 5 < load.volume;
    }
    void look_at_the_tight_ones()
    {
        for (Looked& looked : looked_) {
            if (looked.standing == Standing::open && too_tight_at_first(looked.candidate)) look_quickly(looked, 1);
            if (looked.standing == Standing::found || run_.stopped()) return;
        }
    }

    const Load& load_of(const Candidate& c) const
    {
        return c.room == Room::box ? boxed_ : c.room == Room::sleeve ? sleeved_ : tubed_;
    }
    Tube tube_of(const Candidate& c) const
    {
        const OuterForm& form = question_.outers[c.outer].form;
        return {form.inner.x.units, form.inner.z.units};
    }

    // The content of one item was not fitted into its own outer: no outer can help.
    Answer blocked() const
    {
        Answer a;
        a.verdict = resolved_.refusal->verdict;
        for (const std::size_t index : outers_) {
            Refusal r = *resolved_.refusal;
            r.outer = question_.outers[index].id;
            a.refused.push_back(r);
        }
        a.stopped_by = run_.stopped();
        a.work = run_.work_done() - work_before_;
        return a;
    }

    const Looked* best() const
    {
        const Looked* best = nullptr;
        for (const Looked& l : looked_) {
            if (l.standing == Standing::found && (best == nullptr || order(l) < order(*best))) best = &l;
        }
        return best;
    }
    std::pair<Volume, std::string> order(const Looked& l) const
    {
        const bool found = l.standing == Standing::found;
        return {found ? l.closed : l.candidate.closed, question_.outers[l.candidate.outer].id};
    }
    // Is there an answer at least as good as this candidate can become?
    bool better_found(const Looked& l) const
    {
        const Looked* b = best();
        return b != nullptr && order(*b) <= std::pair{l.candidate.closed, question_.outers[l.candidate.outer].id};
    }

    void refuse(Looked& looked)
    {
        run_.go_on();
        const Candidate& c = looked.candidate;
        const Outer& outer = question_.outers[c.outer];
        const Load& load = load_of(c);
        std::optional<Refusal> refusal;
        if (outer.max_load && load.tenths_g > outer.max_load->units) {
            refusal = Refusal{{}, Verdict::cannot_fit, Proof::rules, Reason::weight, std::nullopt, {}};
        }
        // A geometric proof says more than the weight; look for it all the same.
        std::optional<Refusal> geometric =
            c.room == Room::tube ? refuse_tube(load, tube_of(c)) : refuse_fast(load, c.widest);
        if (!geometric && !refusal && c.room != Room::tube) geometric = refuse_by_bounds(load, c.widest);
        if (geometric) {
            if (!geometric->item.empty()) {
                geometric->item = question_.items[static_cast<std::size_t>(std::stoul(geometric->item))].id;
            }
            refusal = geometric;
        }
        if (refusal) set_refused(looked, *refusal);
    }

    static void set_refused(Looked& looked, Refusal refusal)
    {
        refusal.outer = looked.refusal.outer;
        looked.refusal = std::move(refusal);
        looked.standing = Standing::refused;
    }

    bool sound(const Candidate& c, const std::vector<Placement>& placements) const
    {
        return check(question_, question_.outers[c.outer].id, c.cut, placements).empty();
    }

    std::vector<Placement> placements_of(const Candidate& c, const Arrangement& spots) const
    {
        const Load& load = load_of(c);
        std::vector<Placement> placements(spots.size());
        for (std::size_t p = 0; p < spots.size(); ++p) {
            const Piece& piece = load.pieces[p];
            const Kind& kind = load.kinds[piece.kind];
            Placement& out = placements[p];
            out.item = question_.items[kind.item].id;
            out.copy = piece.copy;
            out.at = {Length{spots[p].at[0]} + c.origin.x, Length{spots[p].at[1]} + c.origin.y,
                      Length{spots[p].at[2]} + c.origin.z};
            out.size = {Length{spots[p].side[0] - load.gap}, Length{spots[p].side[1] - load.gap},
                        Length{spots[p].side[2] - load.gap}};
            if (!kind.soft) out.axis = kind.poses[spots[p].pose].axis;
            out.content = resolved_.content[kind.item];
        }
        return placements;
    }

    Accept accept_for(const Candidate& c) const
    {
        return [this, &c](const Arrangement& spots) { return sound(c, placements_of(c, spots)); };
    }

    void take(Looked& looked, const Arrangement& spots)
    {
        looked.placements = placements_of(looked.candidate, spots);
        Length low, high;
        if (!looked.placements.empty()) low = high = looked.placements.front().at.z;
        for (const Placement& p : looked.placements) {
            low = std::min(low, p.at.z);
            high = std::max(high, p.at.z + p.size.z);
        }
        looked.thickness = high - low;
        looked.closed = closed_with(resolved_.question, looked.candidate, looked.thickness);
        looked.standing = Standing::found;
    }

    void look_quickly(Looked& looked, int tries)
    {
        const Candidate& c = looked.candidate;
        const Load& load = load_of(c);
        const Accept accept = accept_for(c);
        const std::optional<Arrangement> found = c.room == Room::tube
                                                     ? find_in_tube(load, tube_of(c), tries, run_, accept)
                                                     : find_quick(load, c.space, tries, run_, accept);
        if (found) take(looked, *found);
    }

    void look_for_rounds(Looked& looked, int tries)
    {
        const Candidate& c = looked.candidate;
        if (c.room != Room::box || !has_rounds(load_of(c))) return;
        const std::optional<Arrangement> found = find_rounds(load_of(c), c.space, tries, run_, accept_for(c));
        if (found) take(looked, *found);
    }

    // Laying pays where the quick search is at its end: many pieces, or few that leave little room.
    bool layable(const Candidate& c) const { return c.room != Room::tube && !load_of(c).soft; }
    bool large(const Candidate& c) const { return layable(c) && load_of(c).pieces.size() > most_exact_pieces; }
    void look_at_large(Looked& looked, std::uint64_t work)
    {
        const Candidate& c = looked.candidate;
        const std::optional<Arrangement> found = find_large(load_of(c), c.space, work, run_, accept_for(c));
        if (found) take(looked, *found);
    }

    bool exact(const Candidate& c) const
    {
        const Load& load = load_of(c);
        return c.room != Room::tube && !load.soft && load.pieces.size() <= most_exact_pieces;
    }

    // The open candidates that would be better than what was found.
    void decide()
    {
        // In rounds of growing budgets, so that one hard outer does not use up the work of the others.
        constexpr std::array<std::uint64_t, 3> budgets{2'000, 30'000, 0};
        for (const std::uint64_t budget : budgets) {
            for (Looked& looked : looked_) {
                if (run_.stopped()) return;
                if (better_found(looked)) break;
                if (!exact(looked.candidate) || looked.standing != Standing::open || looked.exhausted) continue;
                decide_one(looked, budget);
                if (looked.standing == Standing::open && budget == budgets.front())
                    look_for_rounds(looked, more_rounds);
                const bool hard = looked.standing == Standing::open && budget == budgets.front();
                if (hard && load_of(looked.candidate).pieces.size() >= few_for_laying)
                    look_at_large(looked, short_laying);
                if (looked.standing == Standing::open && budget != 0) look_by_repacking(looked, budget);
            }
        }
        // Where nothing can be proven, from the roomiest down: that is where more tries help most.
        for (const bool again : {false, true}) {
            for (std::size_t k = looked_.size(); k-- > 0 && !run_.stopped();) {
                Looked& looked = looked_[k];
                if (looked.standing != Standing::open || exact(looked.candidate) || better_found(looked)) continue;
                if (!again) look_for_rounds(looked, more_rounds);
                if (looked.standing != Standing::open) continue;
                if (layable(looked.candidate)) look_at_large(looked, again ? long_laying : short_laying);
                if (looked.standing == Standing::open) look_quickly(looked, again ? more_tries : few_tries);
            }
        }
    }

    // Tight sets of many pieces are found sooner by chance than by a complete search.
    void look_by_repacking(Looked& looked, std::uint64_t budget)
    {
        const Candidate& c = looked.candidate;
        if (c.space.support != Support::none || load_of(c).pieces.size() < few_for_laying) return;
        const auto found = find_repacked(load_of(c), c.space, budget / 3, run_, accept_for(c));
        if (found) take(looked, *found);
    }

    void decide_one(Looked& looked, std::uint64_t budget)
    {
        const Candidate& c = looked.candidate;
        const ExactResult result = search_exactly(load_of(c), c.space, false, budget, run_, accept_for(c));
        if (result.decision == Decision::found) take(looked, result.arrangement);
        looked.exhausted = result.refused_some;
        if (result.decision == Decision::none && !result.refused_some) prove(looked, budget);
    }

    // No arrangement of blocks: a proof at once, unless circles or a step of thicknesses need the wider question.
    void prove(Looked& looked, std::uint64_t budget)
    {
        const Candidate& c = looked.candidate;
        const Load& load = load_of(c);
        if (load.circles || c.space.side != c.widest.side) {
            const ExactResult wider = search_exactly(load, c.widest, load.circles, budget, run_, accept_for(c));
            if (wider.decision == Decision::found) take(looked, wider.arrangement);
            looked.exhausted = wider.refused_some;
            if (wider.decision != Decision::none || wider.refused_some) return;
        }
        set_refused(looked, {{}, Verdict::cannot_fit, Proof::geometry, Reason::exhausted, std::nullopt, {}});
    }

    Answer answer() const
    {
        Answer a;
        const Looked* b = best();
        if (b != nullptr) {
            const Candidate& c = b->candidate;
            if (!sound(c, b->placements)) throw std::logic_error("an arrangement that the checker refuses");
            a.verdict = Verdict::fits;
            a.outer = question_.outers[c.outer].id;
            a.cut_height = c.cut;
            const OuterKind kind = question_.outers[c.outer].form.kind;
            if (is_sleeve(kind)) a.contents_thickness = b->thickness;
            if (kind == OuterKind::board_mailer) {
                a.contents_thickness = b->thickness + question_.lining * 2 + question_.bed;
            }
            a.placements = b->placements;
        }
        bool all_proven = true;
        a.refused = refusals(b, all_proven);
        if (b == nullptr) a.verdict = all_proven ? Verdict::cannot_fit : Verdict::undecided;
        a.proven_smallest = b != nullptr && all_proven;
        a.stopped_by = run_.stopped();
        a.work = run_.work_done() - work_before_;
        return a;
    }

    // One refusal an outer that could close smaller than the answer, smallest first.
    std::vector<Refusal> refusals(const Looked* b, bool& all_proven) const
    {
        std::vector<std::size_t> order_of_outers;
        std::vector<std::optional<Refusal>> by_outer(question_.outers.size());
        for (const Looked& l : looked_) {
            // A step of thicknesses in which the answer lies may hold a thinner arrangement.
            const bool itself = &l == b && l.candidate.space.side == l.candidate.widest.side;
            if (itself || (b != nullptr && l.standing != Standing::found && !(order_of_open(l) < order(*b)))) continue;
            // So may one that was found to hold it too, but closes larger.
            const bool thinner = l.closed != l.candidate.closed && b != nullptr && order_of_open(l) < order(*b);
            if (l.standing == Standing::found && &l != b && !thinner) continue;
            if (&l == b) {
                all_proven = all_proven && l.closed == l.candidate.closed;
                continue;
            }
            all_proven = all_proven && l.standing == Standing::refused;
            if (b != nullptr && l.candidate.outer == b->candidate.outer) continue;
            std::optional<Refusal>& refusal = by_outer[l.candidate.outer];
            if (!refusal) order_of_outers.push_back(l.candidate.outer);
            if (!refusal || refusal->verdict != Verdict::undecided) refusal = l.refusal;
        }
        if (b == nullptr) {
            for (const std::size_t index : outers_) { // a sleeve that leaves no thickness to try
                if (by_outer[index]) continue;
                by_outer[index] = Refusal{
                    question_.outers[index].id, Verdict::cannot_fit, Proof::geometry, Reason::sleeve, std::nullopt, {}};
                order_of_outers.push_back(index);
            }
        }
        std::vector<Refusal> all;
        for (const std::size_t index : order_of_outers) {
            Refusal r = *by_outer[index];
            if (is_sleeve(question_.outers[index].form.kind) && r.proof == Proof::geometry) explain_sleeve(index, r);
            all.push_back(std::move(r));
        }
        return all;
    }
    std::pair<Volume, std::string> order_of_open(const Looked& l) const
    {
        return {l.candidate.closed, question_.outers[l.candidate.outer].id};
    }

    // In the sleeve's own terms: by how much its widest piece, laid as well as it may be, misses t + w and t + l.
    void explain_sleeve(std::size_t index, Refusal& r) const
    {
        const OuterForm& form = question_.outers[index].form;
        const Units length = (form.inner.x - form.ease[0]).units, width = (form.inner.y - form.ease[1]).units;
        r.reason = Reason::sleeve;
        r.short_by.reset();
        r.item.clear();
        Units worst = 0;
        for (const Kind& kind : sleeved_.kinds) {
            if (kind.soft) continue;
            Units least = INT64_MAX;
            for (const Pose& pose : kind.poses) {
                const Units x = pose.side[0] - sleeved_.gap, y = pose.side[1] - sleeved_.gap;
                const Units t = pose.side[2] - sleeved_.gap;
                least = std::min(least, std::max(t + x - length, t + y - width));
            }
            if (least > worst) {
                worst = least;
                r.short_by = Length{least};
                r.item = question_.items[kind.item].id;
            }
        }
    }

    const Question& question_;
    const std::vector<std::size_t>& outers_;
    Run& run_;
    std::uint64_t work_before_;
    Resolved resolved_;
    Load boxed_, sleeved_, tubed_;
    std::vector<Looked> looked_;
};

} // namespace

Answer fit(const Question& question, Run& run, Memory* memory)
{
    if (memory != nullptr) {
        std::optional<Answer> known = memory->recall(question);
        if (known && known->verdict == Verdict::fits &&
            check(question, known->outer, known->cut_height, known->placements).empty()) {
            return *std::move(known);
        }
        if (known && known->verdict == Verdict::cannot_fit) return *std::move(known);
    }
    std::vector<std::size_t> outers(question.outers.size());
    std::iota(outers.begin(), outers.end(), std::size_t{0});
    const std::uint64_t before = run.work_done();
    Answer answer = Fitter(question, outers, run, before, resolve_content(question, run)).fit(Effort::proven);
    // What a clock cut short may come out better another day.
    const bool cut_short = answer.stopped_by == Stop::time || answer.stopped_by == Stop::cancelled;
    if (memory != nullptr && !cut_short) memory->keep(question, answer);
    return answer;
}

Answer fit_one(const Question& question, std::size_t outer_index, Effort effort, Run& run)
{
    const std::uint64_t before = run.work_done();
    const std::vector<std::size_t> outers{outer_index};
    return Fitter(question, outers, run, before, resolve_content(question, run)).fit(effort);
}

Answer fit_one(const Question& question, std::size_t outer_index, Effort effort, Run& run, Resolved content)
{
    const std::vector<std::size_t> outers{outer_index};
    return Fitter(question, outers, run, run.work_done(), std::move(content)).fit(effort);
}

} // namespace stow::fitting
