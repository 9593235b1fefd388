// What is wrong with a file taken in, by place. Words are made in app, keyed by the kind.
#pragma once

#include <cstddef>
#include <string>

namespace stow::intake {

enum class ProblemKind {
    unreadable_file, // cannot be opened
    empty_file,
    binary_file,    // holds zero bytes
    file_too_large, // past the limit, like the next three; detail: the limit
    line_too_long,
    too_many_rows,
    too_many_columns,
    text_too_long,   // one cell; detail: the limit in bytes
    unreadable_text, // no encoding fits
    uneven_row,      // more or fewer cells than headings
    missing_column,  // column: what is needed
    missing_value,
    not_a_number,
    not_positive, // a size, weight or count must be above zero
    out_of_range, // detail: what is in range, in figures and signs that need no language
    not_a_date,
    unknown_word, // detail: the words that are allowed
    unknown_code, // refers to a good, supply or wrapping that is not there
    unknown_currency,
    unknown_country,
    bad_postcode,
    bad_check_digit,
    duplicate,        // the same key twice in one file; the first is kept
    conflicting_rows, // rows of one order disagree
    order_incomplete, // another row of the same order is bad, so this one waits too; value: the order number
    unknown_member,   // of a JSON document; or a column that we do not know
    bad_json,
};

struct Problem {
    std::string file;
    std::size_t row = 0; // line in the file, the heading being 1; 0: the whole file
    std::string column;
    ProblemKind kind = ProblemKind::unreadable_file;
    std::string value; // what stood there
    std::string detail;
    bool stops = true;   // the row was left out; otherwise it was taken all the same
    bool member = false; // `column` is the place of a member in a JSON document
};

} // namespace stow::intake
