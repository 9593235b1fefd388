// Checks a whole book and says what is not sound; changes nothing.
#pragma once

#include "core/book/book.h"
#include "core/fitting/check.h"
#include "core/run/run.h"

#include <optional>
#include <vector>

namespace stow::book {

enum class Unsound {
    structure, // SQLite integrity_check
    reference, // a row refers to one that is not there
    ledger,    // movements for something unknown do not add up to nothing
    step,      // movements of an undoing are not the opposite of what it undoes
    plan_unreadable,
    plan_geometry,   // the checker found a broken rule
    plan_pieces,     // the snapshot and the parcel disagree on what is inside
    too_many_pieces, // more of an order line in parcels than ordered
    refusal,         // an outer remembered as proven too small is not known, or holds the set
};

struct Finding {
    Unsound what = Unsound::structure;
    std::string where;                           // "parcel 2611-017", "INK-SEA", "order_line 12"
    std::string detail;                          // the words of SQLite, or amounts
    std::optional<fitting::Violation> violation; // of plan_geometry
};

std::vector<Finding> verify(const Book& book);

struct SolvedAgain {
    int questions = 0;
    int refusals = 0;  // remembered as proven
    int undecided = 0; // of them: neither proven again nor disproven with the work of one search
    std::vector<Finding> findings;
};
// Works out again what the book remembers of solved questions: arrangements against the checker, every proven refusal
// by a new search. Long: a second or more for each hundred questions.
SolvedAgain verify_solved(const Book& book, Run& run);

} // namespace stow::book
