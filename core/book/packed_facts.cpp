// What packed parcels tell the records: read by the stretch of days, a question a table, and no plan is opened.
#include "core/book/documents.h"
#include "core/book/parcels.h"
#include "core/book/sql.h"

#include <set>

namespace stow::book {

namespace {

constexpr auto those_packed = "parcel.packed_at >= ?1 AND parcel.packed_at < ?2 ";

using Index = std::map<std::int64_t, std::size_t>; // of a parcel's row

// CROSS JOIN keeps SQLite to the order written: from the few parcels of the days to what belongs to them.
class Reader {
public:
    Reader(const Book& book, Date from, Date until)
        : book_(book), from_(Instant(from)), until_(Instant(until + std::chrono::days(1)))
    {
    }

    std::vector<records::ParcelFacts> read()
    {
        parcels();
        pieces();
        weighings();
        restocked();
        again();
        return std::move(all_);
    }

private:
    Query ask(const std::string& select, const std::string& rest = {}) const
    {
        return {book_, select + " WHERE " + those_packed + rest, from_, until_};
    }

    records::ParcelFacts* at(std::int64_t parcel)
    {
        const auto found = index_.find(parcel);
        return found == index_.end() ? nullptr : &all_[found->second];
    }

    void parcels()
    {
        Query rows =
            ask("SELECT parcel.id, number, packed_at, postage, postage_currency, state = 'came back', back_why, "
                "written_off, document FROM parcel CROSS JOIN planned_part ON planned_part.id = parcel.id",
                "ORDER BY packed_at, parcel.id");
        while (rows.next()) {
            records::ParcelFacts facts;
            facts.number = rows.text(1);
            facts.packed_on = std::chrono::floor<std::chrono::days>(rows.instant(2));
            facts.postage = rows.maybe_money(3);
            facts.came_back = rows.truth(5);
            facts.back_why = rows.text(6);
            facts.written_off = rows.truth(7);
            facts.plan = read_document<records::PlannedPart>(rows.text(8));
            index_[rows.integer(0)] = all_.size();
            all_.push_back(std::move(facts));
        }
    }

    void pieces()
    {
        std::set<std::int64_t> told; // orders whose postage has been
        Query rows =
            ask("SELECT parcel.id, order_id, line, good, parcel_piece.count, shop, orders.number, country, "
                "postage_paid, postage_paid_currency, "
                // An order's postage goes with the first of its parcels that was ever packed.
                "postage_paid IS NOT NULL AND NOT EXISTS (SELECT 1 FROM parcel_piece AS p JOIN parcel AS older "
                "ON older.id = p.parcel WHERE p.order_id = orders.id AND older.packed_at IS NOT NULL AND "
                "(older.packed_at, older.id) < (parcel.packed_at, parcel.id)) "
                "FROM parcel CROSS JOIN parcel_piece ON parcel_piece.parcel = parcel.id "
                "CROSS JOIN orders ON orders.id = order_id",
                "ORDER BY parcel_piece.id");
        while (rows.next()) {
            records::ParcelFacts* facts = at(rows.integer(0));
            if (facts == nullptr) continue;
            const std::int64_t order = rows.integer(1);
            if (facts->pieces.empty()) {
                facts->shop = rows.text(5);
                facts->order = rows.text(6);
                facts->country = rows.text(7);
            }
            facts->pieces.push_back({{order}, rows.small(2), {rows.text(3)}, rows.small(4)});
            if (!rows.truth(10) || !told.insert(order).second) continue;
            const Money paid = *rows.maybe_money(8);
            if (!facts->postage_paid) facts->postage_paid = Money{0, paid.currency};
            if (facts->postage_paid->currency == paid.currency) *facts->postage_paid += paid;
        }
    }

    void weighings()
    {
        Query rows = ask("SELECT parcel.id, stage, weight, overridden, why FROM parcel "
                         "CROSS JOIN weighing ON weighing.parcel = parcel.id",
                         "ORDER BY weighing.id");
        while (rows.next()) {
            records::ParcelFacts* facts = at(rows.integer(0));
            if (facts == nullptr) continue;
            if (rows.truth(3)) {
                facts->overridden = true;
                facts->overridden_why = rows.text(4);
            }
            if (shop::weighing_stage(rows.text(1)) != shop::WeighingStage::contents) {
                facts->weighed = Weight{rows.integer(2)};
            }
        }
    }

    void restocked()
    {
        Query rows = ask("SELECT parcel.id FROM parcel",
                         "AND state = 'came back' AND (SELECT sum(amount) FROM movement WHERE ledger = 'goods' "
                         "AND movement.parcel = parcel.id AND kind = 'returned') > 0");
        while (rows.next()) {
            if (records::ParcelFacts* facts = at(rows.integer(0))) facts->restocked = true;
        }
    }

    // It holds something for an order line that an older parcel brought back to be sent again.
    void again()
    {
        Query rows(book_,
                   "SELECT DISTINCT mine.parcel FROM parcel AS back "
                   "CROSS JOIN parcel_piece AS theirs ON theirs.parcel = back.id "
                   "CROSS JOIN parcel_piece AS mine ON mine.order_id = theirs.order_id AND mine.line = theirs.line "
                   "WHERE back.sent_again = 1 AND mine.parcel > back.id");
        while (rows.next()) {
            if (records::ParcelFacts* facts = at(rows.integer(0))) facts->again = true;
        }
    }

    const Book& book_;
    Instant from_, until_;
    std::vector<records::ParcelFacts> all_;
    Index index_;
};

} // namespace

int packed_count(const Book& book, Date from, Date until)
{
    Query row(book, std::string("SELECT count(*) FROM parcel WHERE ") + those_packed, Instant(from),
              Instant(until + std::chrono::days(1)));
    return row.next() ? row.small(0) : 0;
}

std::vector<records::ParcelFacts> packed_facts(const Book& book, Date from, Date until)
{
    return Reader(book, from, until).read();
}

} // namespace stow::book
