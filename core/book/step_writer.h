// The one place through which the book is written. For the files of this folder.
#pragma once

#include "core/book/ledger.h"
#include "core/book/sql.h"
#include "core/book/steps.h"

namespace stow::book {

using Allowed = tl::expected<void, Refused>;

class Writer { // lives only while its step is under way
public:
    Writer(const Book& book, StepId id, Words first) : words(std::move(first)), book_(book), id_(id) {}

    StepId id() const { return id_; }
    Instant at() const { return book_.now(); }

    template <class... Values>
    void run(const std::string& sql, const Values&... values)
    {
        Query(book_, sql, values...).run();
    }
    // The same for one new row; gives its id.
    template <class... Values>
    std::int64_t add(const std::string& sql, const Values&... values)
    {
        run(sql, values...);
        return last_id();
    }
    void move(Ledger ledger, const std::string& code, MovementKind kind, shop::Amount amount,
              std::optional<shop::ParcelId> parcel = std::nullopt, const std::string& reason = {});
    // Into the rack, for a price.
    void receive(const std::string& code, shop::Amount amount, const std::optional<Money>& cost,
                 const std::string& supplier);

    Words words; // stored with the step when it ends

private:
    std::int64_t last_id() const;

    const Book& book_;
    StepId id_;
};

// Runs `work` as one step in one IMMEDIATE transaction. When it refuses, nothing is kept; when it changed no row and
// moved nothing, there is no step.
Done in_step(Book& book, StepKind kind, Words words, const std::function<Allowed(Writer&)>& work,
             std::optional<StepId> undoes = std::nullopt);

inline tl::unexpected<Refused> refuse(Why why, std::string what = {}, std::optional<StepId> step = std::nullopt)
{
    return tl::unexpected(Refused{why, std::move(what), step});
}

} // namespace stow::book
