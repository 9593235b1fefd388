// Buyers' data erased: from the book, from its history, and from the copies that lie beside it. Counts and costs stay.
#pragma once

#include "core/book/steps.h"
#include "core/shop/orders.h"

#include <filesystem>

namespace stow::book {

// Takes name, address, contact, messages and personal texts out of the order and out of every image of it, and out of
// its parcels their tracking and postage numbers and the reasons she typed; cannot be undone. Only for orders that are
// called off or wholly with a carrier. Taking the same order in again changes nothing.
Done erase_buyer(Book& book, shop::OrderId id);
// It has gone out, all of it, or was called off.
bool may_be_erased(const Book& book, const shop::HeldOrder& held);
// Of all orders older than this that have gone out or were called off; how many. Orders that old whose taking in was
// undone go out of the history too.
int erase_buyers(Book& book, Date before);

bool is_erased(const Book& book, const shop::OrderKey& key);
struct Erased {
    std::vector<shop::OrderKey> orders; // taking them in again changes nothing
    std::vector<shop::OrderKey> undone; // were in the history alone, since their taking in was undone
};
// Of a database that is a book; for one that may be too damaged to be opened as one.
Erased erased_buyers(SQLite::Database& db);
// These too, wherever the order stands: the book is a copy from before they were erased.
void erase_again(Book& book, const Erased& erased);

// The copies that the program keeps by itself beside a book: of days, of older versions, from before a restore.
std::vector<std::filesystem::path> copies_beside(const std::filesystem::path& book);
struct ErasedInCopies {
    int rewritten = 0;                            // copies that held something, and hold it no more
    std::vector<std::filesystem::path> unreached; // damaged, in use, not to be written: may hold it still
};
// Whatever the book has erased is erased in each of them: in a new file, which is checked and then takes the place of
// the old one.
ErasedInCopies erase_in_copies(Book& book);
// Somebody was erased since erase_in_copies last reached every copy.
bool copies_are_behind(const Book& book);

} // namespace stow::book
