#include "core/book/parcel_rows.h"

#include "core/book/documents.h"
#include "core/book/orders.h"
#include "core/intake/plan_json.h"

#include <fmt/format.h>
#include <unordered_map>

namespace stow::book {

namespace {

// All at once: a question for each of thousands of parcels would be felt.
std::unordered_map<std::int64_t, std::vector<shop::Piece>> read_pieces(const Book& book, const std::string& parcels)
{
    std::unordered_map<std::int64_t, std::vector<shop::Piece>> pieces;
    Query rows(book, "SELECT order_id, line, good, count, parcel FROM parcel_piece WHERE parcel IN (SELECT id FROM "
                     "parcel WHERE " +
                         parcels + ") ORDER BY parcel, id");
    while (rows.next()) {
        pieces[rows.integer(4)].push_back({{rows.integer(0)}, rows.small(1), {rows.text(2)}, rows.small(3)});
    }
    return pieces;
}

std::unordered_map<std::int64_t, std::vector<shop::Weighing>> read_weighings(const Book& book,
                                                                             const std::string& parcels)
{
    std::unordered_map<std::int64_t, std::vector<shop::Weighing>> of_parcels;
    Query rows(book,
               "SELECT stage, weight, overridden, at, expected, spread, why, parcel FROM weighing WHERE parcel IN "
               "(SELECT id FROM parcel WHERE " +
                   parcels + ") ORDER BY parcel, id");
    while (rows.next()) {
        auto& weighings = of_parcels[rows.integer(7)];
        weighings.push_back({shop::weighing_stage(rows.text(0)).value_or(shop::WeighingStage::closed),
                             Weight{rows.integer(1)}, rows.truth(2), rows.instant(3), rows.text(6), std::nullopt});
        if (const auto expected = rows.maybe_integer(4)) {
            weighings.back().expected = {Weight{*expected}, Weight{rows.maybe_integer(5).value_or(0)}};
        }
    }
    return of_parcels;
}

void add_single_goods(const std::map<shop::GoodCode, std::vector<shop::SetPart>>& sets, const shop::GoodCode& good,
                      int count, int depth, std::map<shop::GoodCode, int>& sum)
{
    const auto set = sets.find(good);
    // A set that holds itself would never end; such a good stands for itself.
    if (set == sets.end() || depth > 8) {
        sum[good] += count;
        return;
    }
    for (const shop::SetPart& part : set->second) add_single_goods(sets, part.good, count * part.count, depth + 1, sum);
}

} // namespace

std::vector<shop::Parcel> read_parcels(const Book& book, const std::string& condition)
{
    std::vector<shop::Parcel> found;
    auto pieces = read_pieces(book, condition);
    auto weighings = read_weighings(book, condition);
    Query row(book, "SELECT id, number, state, locked, order_version, tray, steps_done, carrier, service, postage, "
                    "postage_currency, tracking, list, scanned, back_why, written_off, sent_again FROM parcel WHERE " +
                        condition + " ORDER BY substr(number, 1, 4), CAST(substr(number, 6) AS INTEGER), id");
    while (row.next()) {
        shop::Parcel parcel;
        parcel.id = {row.integer(0)};
        parcel.number = row.text(1);
        parcel.state = shop::parcel_state(row.text(2)).value_or(shop::ParcelState::planned);
        parcel.pieces = std::move(pieces[parcel.id.value]);
        parcel.locked = row.truth(3);
        parcel.order_version = row.small(4);
        parcel.tray = row.text(5);
        parcel.steps_done = row.small(6);
        parcel.weighings = std::move(weighings[parcel.id.value]);
        parcel.carrier = row.text(7);
        parcel.service = row.text(8);
        parcel.postage = row.maybe_money(9);
        parcel.tracking = row.text(11);
        if (const auto list = row.maybe_integer(12)) parcel.handed_over_on = shop::ListId{*list};
        parcel.scanned = row.integer(13);
        parcel.back_why = row.text(14);
        parcel.written_off = row.truth(15);
        parcel.sent_again = row.truth(16);
        found.push_back(std::move(parcel));
    }
    return found;
}

planning::ParcelPlan read_plan(const Book& book, shop::ParcelId id)
{
    Query row(book, "SELECT document FROM parcel_plan WHERE id = ?", id);
    if (!row.next()) throw BookFailure("a parcel without a plan", 0);
    auto plan = intake::plan_from_json(row.text(0));
    if (!plan) throw BookFailure("a plan of the book cannot be read: " + plan.error(), 0);
    return std::move(*plan);
}

std::optional<HeldParcel> read_held(const Book& book, const std::string& condition)
{
    auto found = read_parcels(book, condition);
    if (found.empty()) return std::nullopt;
    HeldParcel held;
    held.parcel = std::move(found.front());
    held.plan = read_plan(book, held.parcel.id);
    Query round(book, "SELECT round, coalesce(packed_at, 0) FROM parcel WHERE id = ?", held.parcel.id);
    round.next();
    held.round = round.small(0);
    held.packed_on = std::chrono::floor<std::chrono::days>(round.instant(1));
    return held;
}

tl::expected<shop::Parcel, Refused> parcel_in(const Book& book, shop::ParcelId id,
                                              std::initializer_list<shop::ParcelState> states)
{
    auto found = read_parcels(book, fmt::format("id = {}", id.value));
    if (found.empty()) return refuse(Why::unknown_parcel);
    if (std::find(states.begin(), states.end(), found.front().state) == states.end()) {
        return refuse(Why::wrong_state, std::string(name_of(found.front().state)));
    }
    return std::move(found.front());
}

Allowed may_go_on(const Book& book, const shop::Parcel& parcel)
{
    const Standing standing = parcel_standing(book, parcel);
    for (const auto* stopping : {&standing.called_off, &standing.changed, &standing.aside}) {
        if (stopping->empty()) continue;
        const auto held = order(book, stopping->front());
        return refuse(Why::parcel_stops, held ? held->order.key.number : std::string());
    }
    return {};
}

Words words_of(const Book& book, shop::ParcelId id)
{
    Query row(book, "SELECT number FROM parcel WHERE id = ?", id);
    return row.next() ? Words{{"parcel", row.text(0)}} : Words{};
}

void delete_parcel(Writer& writer, shop::ParcelId id)
{
    writer.run("DELETE FROM weighing WHERE parcel = ?", id);
    writer.run("DELETE FROM parcel_piece WHERE parcel = ?", id);
    writer.run("DELETE FROM parcel_plan WHERE id = ?", id);
    writer.run("DELETE FROM parcel WHERE id = ?", id);
}

std::map<shop::GoodCode, int> single_goods(const Book& book, const std::vector<shop::Piece>& pieces)
{
    std::map<shop::GoodCode, std::vector<shop::SetPart>> sets;
    for (shop::Good& good : read_documents<shop::Good>(book, "good", "code")) {
        if (!good.parts.empty()) sets[good.code] = std::move(good.parts);
    }
    std::map<shop::GoodCode, int> sum;
    for (const shop::Piece& piece : pieces) add_single_goods(sets, piece.good, piece.count, 0, sum);
    return sum;
}

} // namespace stow::book
