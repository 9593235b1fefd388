#include "core/book/verify.h"

#include "core/book/parcel_rows.h"
#include "core/intake/plan_json.h"

#include <fmt/format.h>

namespace stow::book {

namespace {

using Findings = std::vector<Finding>;

void check_structure(const Book& book, Findings& findings)
{
    Query rows(book, "PRAGMA integrity_check");
    while (rows.next()) {
        if (rows.text(0) != "ok") findings.push_back({Unsound::structure, {}, rows.text(0), {}});
    }
    Query links(book, "PRAGMA foreign_key_check");
    while (links.next()) {
        findings.push_back({Unsound::reference, fmt::format("{} {}", links.text(0), links.text(1)), links.text(2), {}});
    }
}

void check_ledger(const Book& book, Findings& findings)
{
    Query unknown(book, "SELECT code, sum(amount) FROM movement WHERE "
                        "(ledger = 'goods' AND code NOT IN (SELECT code FROM good)) OR "
                        "(ledger = 'supplies' AND code NOT IN (SELECT code FROM supply)) "
                        "GROUP BY ledger, code HAVING sum(amount) <> 0 ORDER BY ledger, code");
    while (unknown.next()) {
        findings.push_back({Unsound::ledger, unknown.text(0), fmt::format("{} thousandths", unknown.integer(1)), {}});
    }
    Query sums(book,
               "SELECT movement.code, sum(movement.amount), coalesce(max(shelf.amount), 0) FROM movement "
               "LEFT JOIN shelf ON shelf.ledger = movement.ledger AND shelf.code = movement.code "
               "GROUP BY movement.ledger, movement.code HAVING sum(movement.amount) <> coalesce(max(shelf.amount), 0)");
    while (sums.next()) {
        findings.push_back({Unsound::ledger,
                            sums.text(0),
                            fmt::format("{} thousandths moved, {} kept", sums.integer(1), sums.integer(2)),
                            {}});
    }
    // What triggers keep beside the ledger and the plans, added up again.
    Query used(book, "SELECT code, day, sum(amount) FROM ("
                     "SELECT code, step.at / 86400 AS day, -amount AS amount FROM movement JOIN step ON step.id = step "
                     "WHERE ledger = 'supplies' AND movement.kind = 'used' UNION ALL "
                     "SELECT code, day, -amount FROM used_on_day) GROUP BY code, day HAVING sum(amount) <> 0");
    while (used.next()) {
        findings.push_back({Unsound::ledger,
                            used.text(0),
                            fmt::format("{} thousandths used on day {} and not kept", used.integer(2), used.integer(1)),
                            {}});
    }
    Query parts(book, "SELECT id FROM part_of_plan WHERE document IS NOT "
                      "(SELECT document FROM planned_part WHERE planned_part.id = part_of_plan.id)");
    while (parts.next()) {
        findings.push_back(
            {Unsound::plan_unreadable, fmt::format("plan {}", parts.integer(0)), "its part differs", {}});
    }
    Query uneven(book,
                 "SELECT undoing.id, movement.code, sum(movement.amount) FROM step AS undoing "
                 "JOIN movement ON movement.step IN (undoing.id, undoing.undoes) WHERE undoing.undoes IS NOT NULL "
                 "GROUP BY undoing.id, movement.ledger, movement.code HAVING sum(movement.amount) <> 0");
    while (uneven.next()) {
        findings.push_back({Unsound::step,
                            fmt::format("step {}", uneven.integer(0)),
                            fmt::format("{}: {} thousandths", uneven.text(1), uneven.integer(2)),
                            {}});
    }
}

void check_plan(const Book& book, const shop::Parcel& parcel, Findings& findings)
{
    const std::string where = "parcel " + parcel.number;
    Query row(book, "SELECT document FROM parcel_plan WHERE id = ?", parcel.id);
    if (!row.next()) {
        findings.push_back({Unsound::plan_unreadable, where, "missing", {}});
        return;
    }
    const auto plan = intake::plan_from_json(row.text(0));
    if (!plan) {
        findings.push_back({Unsound::plan_unreadable, where, plan.error(), {}});
        return;
    }
    if (plan->pieces != parcel.pieces) findings.push_back({Unsound::plan_pieces, where, {}, {}});
    for (fitting::Violation& violation :
         fitting::check(plan->question, plan->outer.text, plan->cut_height, plan->placements)) {
        findings.push_back({Unsound::plan_geometry, where, {}, std::move(violation)});
    }
}

void check_parcels(const Book& book, Findings& findings)
{
    for (const shop::Parcel& parcel : parcels(book)) check_plan(book, parcel, findings);
    Query over(book,
               "SELECT orders.number, line, sum(piece_sent.count), coalesce(max(order_line.count), 0) FROM piece_sent "
               "JOIN orders ON orders.id = piece_sent.order_id "
               "LEFT JOIN order_line ON order_line.order_id = orders.id AND place = line "
               // An order that changed after planning stops its parcels; that is no fault of the book.
               "WHERE orders.version = 1 GROUP BY orders.id, line "
               "HAVING sum(piece_sent.count) > coalesce(max(order_line.count), 0)");
    while (over.next()) {
        findings.push_back({Unsound::too_many_pieces,
                            fmt::format("order {}, line {}", over.text(0), over.integer(1) + 1),
                            fmt::format("{} in parcels, {} ordered", over.integer(2), over.integer(3)),
                            {}});
    }
}

} // namespace

std::vector<Finding> verify(const Book& book)
{
    Findings findings;
    check_structure(book, findings);
    check_ledger(book, findings);
    check_parcels(book, findings);
    return findings;
}

} // namespace stow::book
