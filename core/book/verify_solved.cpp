// The refusals that the book remembers, worked out again.
#include "core/book/sql.h"
#include "core/book/verify.h"
#include "core/fitting/fit.h"
#include "core/intake/document.h"

#include <algorithm>
#include <fmt/format.h>

namespace stow::book {

namespace {

constexpr std::uint64_t work_per_outer = 200'000; // four times what planning spends on a whole question

std::size_t place_of(const fitting::Question& question, const std::string& outer)
{
    const auto at = std::find_if(question.outers.begin(), question.outers.end(),
                                 [&](const fitting::Outer& o) { return o.id == outer; });
    return static_cast<std::size_t>(at - question.outers.begin());
}

void check_answer(const std::string& where, const fitting::Question& question, const fitting::Answer& answer, Run& run,
                  SolvedAgain& again)
{
    if (answer.verdict == fitting::Verdict::fits) {
        for (fitting::Violation& v : fitting::check(question, answer.outer, answer.cut_height, answer.placements)) {
            again.findings.push_back({Unsound::plan_geometry, where, {}, std::move(v)});
        }
    }
    for (const fitting::Refusal& refusal : answer.refused) {
        if (refusal.verdict != fitting::Verdict::cannot_fit) continue;
        ++again.refusals;
        const std::size_t outer = place_of(question, refusal.outer);
        if (outer == question.outers.size()) {
            again.findings.push_back({Unsound::refusal, where, refusal.outer, {}});
            continue;
        }
        Run part = run.part({std::nullopt, work_per_outer});
        const auto verdict = fitting::fit_one(question, outer, fitting::Effort::proven, part).verdict;
        if (verdict == fitting::Verdict::undecided) ++again.undecided;
        if (verdict == fitting::Verdict::fits) again.findings.push_back({Unsound::refusal, where, refusal.outer, {}});
        if (!run.go_on(part.work_done())) return;
    }
}

} // namespace

SolvedAgain verify_solved(const Book& book, Run& run)
{
    SolvedAgain again;
    Query rows(book, "SELECT question, answer FROM solved WHERE engine = ? ORDER BY question", fitting::engine_version);
    while (!run.stopped() && rows.next()) {
        const std::string where = fmt::format("solved question {}", ++again.questions);
        const auto question = intake::from_document<fitting::Question>(rows.text(0));
        const auto answer = intake::from_document<fitting::Answer>(rows.text(1));
        if (!question || !answer) {
            again.findings.push_back(
                {Unsound::plan_unreadable, where, question ? answer.error() : question.error(), {}});
            continue;
        }
        check_answer(where, *question, *answer, run, again);
    }
    return again;
}

} // namespace stow::book
