#include "core/planning/split_bound.h"

#include "core/planning/consumables.h"
#include "core/planning/integer_program.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace stow::planning {

namespace {

constexpr int most_steps = 400;       // of postage looked at for one outer
constexpr int nodes_of_cover = 2'000; // of the integer program
constexpr double small = 1e-6;        // sums of doubles are told apart from here

double cost_of(const shop::Supply& supply, shop::Amount amount)
{
    return static_cast<double>(supply.cost.minor) * static_cast<double>(amount.thousandths) / 1000;
}

// The most a sleeve holds: some block l × w × t with t + w and t + l within its ease. Rounded up.
Volume sleeve_room(const OuterForm& form)
{
    const Length length = form.inner.x - form.ease[0];
    const Length width = form.inner.y - form.ease[1];
    Volume most;
    for (Length t = tenth_mm(1); t < std::min(length, width); t += tenth_mm(1)) {
        most = std::max(most, (length - t) * (width - t) * t);
    }
    return most;
}

Volume room_of(const OuterForm& form)
{
    if (is_sleeve(form.kind)) return sleeve_room(form);
    if (form.kind == OuterKind::tube) return solid_volume(Cylinder{form.inner.x, form.inner.z}) + Volume{1'000};
    return volume(form.inner);
}

// Every closed size that may be the cheapest to post: a larger one is dearer, unless it reaches a format's least size.
std::vector<Size> closed_sizes(const OuterForm& form, Length bulge, const std::vector<postage::RateSheet>& sheets)
{
    std::vector<Size> sizes{bulged(closed_size(form, {}), form.kind, bulge)};
    for (const Length height : form.cut_heights) {
        sizes.push_back(bulged(closed_size(form, {}, height), form.kind, bulge));
    }
    if (!is_sleeve(form.kind) && form.kind != OuterKind::board_mailer) return sizes;
    const Size thinnest = sizes.front();
    for (const postage::RateSheet& sheet : sheets) {
        for (const postage::Format& format : sheet.formats) {
            for (const auto& least : {format.least_length, format.least_width, format.least_height}) {
                if (least && *least > thinnest.z) sizes.push_back({thinnest.x, thinnest.y, *least});
            }
        }
    }
    return sizes;
}

} // namespace

SplitBound::SplitBound(const Bench& bench, const Task& task, const Stock& stock) : all_(counts_of(task))
{
    std::set<shop::SupplyCode> wraps;
    for (const shop::Piece& piece : task.pieces) {
        Piece one;
        shop::Piece single = piece;
        single.count = 1;
        for (const Several& s : off_the_shelf(contents_of(bench.cupboard, {single}).value())) {
            // A soft good may be pressed to less than its volume.
            const bool soft = std::holds_alternative<Soft>(s.good->shape);
            if (!soft) one.volume += static_cast<double>((solid_volume(s.good->shape) * s.count).units);
            one.weight += static_cast<double>((s.good->weight.mean * s.count).units);
            const shop::Wrapping* wrapping = bench.cupboard.wrapping(s.good->wrapping);
            if (wrapping == nullptr) continue;
            for (const shop::Wrapping::Use& use : wrapping->uses) {
                const shop::Supply* supply = bench.cupboard.supply(use.supply);
                if (supply == nullptr) continue;
                one.wraps += cost_of(*supply, {use.amount.thousandths * s.count});
                wraps.insert(use.supply);
            }
        }
        all_weight_ += Weight{static_cast<std::int64_t>(one.weight)} * piece.count;
        pieces_.push_back(one);
    }
    rounded_ = static_cast<double>(wraps.size()) / 2;
    for (const auto& [code, supply] : bench.cupboard.supplies) {
        if (is_offered(supply) && stock.has(taken_for(supply))) add_outer(bench, task, supply);
    }
    keep_undominated();
    find_corners();
}

void SplitBound::add_outer(const Bench& bench, const Task& task, const shop::Supply& outer)
{
    const shop::Cupboard& cupboard = bench.cupboard;
    const OuterForm& form = *outer.form;
    const auto room = static_cast<double>(room_of(form).units);
    double packaging = -1.5; // each of three amounts is rounded to the nearest minor unit
    const Used own = taken_for(outer);
    if (const shop::Supply* taken = cupboard.supply(own.supply)) packaging += cost_of(*taken, own.amount);
    if (const shop::Supply* label = cupboard.supply(cupboard.house.label))
        packaging += cost_of(*label, shop::pieces(1));
    if (const shop::Supply* tape = cupboard.supply(cupboard.house.tape)) {
        packaging += cost_of(*tape, {(tape_for(form).units + 9) / 10});
    }
    packaging -= rounded_;
    // No parcel is loaded with more than all there is.
    const Weight most = std::min(outer.max_load.value_or(grams(1'000'000)), all_weight_ + tenth_g(1));
    if (bench.services.sheets().empty()) {
        kinds_.push_back({room, static_cast<double>(most.units), std::max(packaging, 0.0)});
        return;
    }
    const Currency currency = cupboard.house.currency;
    const Destination to = destination_of(task, currency);
    for (const Size& closed : closed_sizes(form, cupboard.house.bulge, bench.services.sheets())) {
        postage::ParcelFacts facts{.closed = closed,
                                   .roll = form.kind == OuterKind::tube,
                                   .weight = outer.weight.mean + tenth_g(1),
                                   .country = to.country,
                                   .postcode = to.postcode,
                                   .value = {},
                                   .holds = {},
                                   .hand_over = bench.wish.day,
                                   .soft = is_sleeve(form.kind)};
        for (int step = 0; step < most_steps; ++step) {
            std::optional<std::int64_t> cheapest;
            std::optional<Weight> edge;
            // Each service on the day of its next collection, with or without the promised day.
            const ServiceChoice choice = choose_service(bench.services, facts, {}, currency);
            for (const postage::Quote& quote : choice.quotes) {
                const postage::Price* price = quote.price();
                if (price == nullptr || price->total.currency != currency) continue;
                cheapest = std::min(cheapest.value_or(price->total.minor), price->total.minor);
                const Weight ends = price->step_edge.value_or(grams(1'000'000));
                edge = std::min(edge.value_or(ends), ends);
            }
            if (!cheapest) break;
            const bool last = step + 1 == most_steps || *edge - outer.weight.mean >= most || *edge < facts.weight;
            const Weight load = last ? most : *edge - outer.weight.mean;
            const double cost = std::max(packaging, 0.0) + static_cast<double>(*cheapest);
            kinds_.push_back({room, static_cast<double>(load.units), cost});
            if (last) break;
            facts.weight = *edge + tenth_g(1);
        }
    }
}

// What holds no more and costs no less than another is never needed.
void SplitBound::keep_undominated()
{
    std::stable_sort(kinds_.begin(), kinds_.end(), [](const Kind& a, const Kind& b) { return a.cost < b.cost; });
    std::vector<Kind> kept;
    for (const Kind& kind : kinds_) {
        const auto as_good = [&](const Kind& k) { return k.room >= kind.room && k.load >= kind.load; };
        if (std::none_of(kept.begin(), kept.end(), as_good)) kept.push_back(kind);
    }
    kinds_ = std::move(kept);
}

// The corners of { a, b >= 0, a V + b W <= c }: where two of its edges meet and no other is crossed.
void SplitBound::find_corners()
{
    std::vector<Kind> edges = kinds_;
    edges.push_back({1, 0, 0}); // a = 0
    edges.push_back({0, 1, 0}); // b = 0
    for (std::size_t i = 0; i < edges.size(); ++i) {
        for (std::size_t j = i + 1; j < edges.size(); ++j) {
            const Kind &p = edges[i], &q = edges[j];
            const double det = p.room * q.load - q.room * p.load;
            if (det == 0) continue;
            const double a = (p.cost * q.load - q.cost * p.load) / det;
            const double b = (p.room * q.cost - q.room * p.cost) / det;
            const auto allows = [&](const Kind& k) { return a * k.room + b * k.load <= k.cost * (1 + 1e-9) + 1e-9; };
            if (a >= 0 && b >= 0 && std::all_of(kinds_.begin(), kinds_.end(), allows)) corners_.push_back({a, b});
        }
    }
}

std::int64_t SplitBound::least(const Counts& share) const
{
    double volume = 0, weight = 0, wraps = 0;
    for (std::size_t i = 0; i < share.size(); ++i) {
        volume += pieces_[i].volume * share[i];
        weight += pieces_[i].weight * share[i];
        wraps += pieces_[i].wraps * share[i];
    }
    double least = kinds_.empty() || total(share) == 0 ? 0 : kinds_.front().cost;
    for (const auto& [a, b] : corners_) least = std::max(least, a * volume + b * weight);
    return static_cast<std::int64_t>(std::ceil((least + wraps) * (1 - 1e-9) - small));
}

std::int64_t SplitBound::least_of_all() const
{
    if (!least_of_all_) least_of_all_ = cover_all();
    return *least_of_all_;
}

std::int64_t SplitBound::cover_all() const
{
    if (kinds_.empty()) return 0;
    double volume = 0, weight = 0, wraps = 0;
    IntegerProgram cover;
    IntegerProgram::Row room, load;
    for (std::size_t i = 0; i < all_.size(); ++i) {
        volume += pieces_[i].volume * all_[i];
        weight += pieces_[i].weight * all_[i];
        wraps += pieces_[i].wraps * all_[i];
    }
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
        cover.columns.push_back({kinds_[k].cost, 0, static_cast<double>(total(all_)), true});
        // Shares of the whole: what one parcel can hold beyond it counts for nothing.
        if (volume > 0) room.terms.emplace_back(static_cast<int>(k), std::min(kinds_[k].room / volume, 1.0));
        if (weight > 0) load.terms.emplace_back(static_cast<int>(k), std::min(kinds_[k].load / weight, 1.0));
    }
    for (IntegerProgram::Row* row : {&room, &load}) {
        row->low = 1 - small;
        row->high = std::numeric_limits<double>::infinity();
        if (!row->terms.empty()) cover.rows.push_back(*row);
    }
    if (cover.rows.empty()) return least(all_);
    const ProgramAnswer answer = solve(cover, {.nodes = nodes_of_cover, .gap = 0, .time = {}});
    if (answer.end == ProgramAnswer::End::infeasible) return least(all_);
    const double whole = (answer.bound + wraps) * (1 - 1e-6) - small;
    return std::max(least(all_), static_cast<std::int64_t>(std::ceil(whole)));
}

} // namespace stow::planning
