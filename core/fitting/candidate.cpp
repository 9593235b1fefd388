#include "core/fitting/candidate.h"

#include <boost/dynamic_bitset.hpp>

namespace stow::fitting {

namespace {

// A sleeve with more thicknesses than this is looked at in steps; the smallest is then found, not always proven.
constexpr std::size_t most_thicknesses = 64;

Space space_of(Units x, Units y, Units z, const Question& question)
{
    const Units gap = question.gap.units;
    return {{x + gap, y + gap, z + gap}, question.support, gap};
}

void add_carton(const Question& question, std::size_t index, std::vector<Candidate>& all)
{
    const OuterForm& form = question.outers[index].form;
    std::vector<std::optional<Length>> heights{std::nullopt};
    for (const Length cut : form.cut_heights) {
        if (cut < form.inner.z) heights.emplace_back(cut);
    }
    for (const std::optional<Length>& cut : heights) {
        Candidate c;
        c.outer = index;
        c.cut = cut;
        const Units lining = question.lining.units;
        c.origin = {question.lining, question.lining, question.lining + question.bed};
        c.space = space_of(form.inner.x.units - 2 * lining, form.inner.y.units - 2 * lining,
                           cut.value_or(form.inner.z).units - 2 * lining - question.bed.units, question);
        c.widest = c.space;
        c.closed = closed_volume(form, {}, cut);
        all.push_back(c);
    }
}

void add_board_mailer(const Question& question, std::size_t index, const Load& load, std::vector<Candidate>& all)
{
    const OuterForm& form = question.outers[index].form;
    const Units lining = question.lining.units;
    const Units taken = 2 * lining + question.bed.units;
    const std::size_t first = all.size();
    std::vector<Units> heights = thicknesses(load, form.inner.z.units - taken);
    if (heights.empty()) heights.push_back(form.inner.z.units - taken); // too thin for anything: to be refused there
    for (const Units t : heights) {
        Candidate c;
        c.outer = index;
        c.origin = {question.lining, question.lining, question.lining + question.bed};
        c.space = space_of(form.inner.x.units - 2 * lining, form.inner.y.units - 2 * lining, t, question);
        c.widest = c.space;
        c.closed = closed_volume(form, Length{t + taken});
        // A thicker one that closes no larger holds all that a thinner one does.
        if (all.size() > first && all.back().closed == c.closed) all.pop_back();
        all.push_back(c);
    }
}

void add_sleeve(const Question& question, std::size_t index, const Load& load, std::vector<Candidate>& all)
{
    const OuterForm& form = question.outers[index].form;
    const Units length = (form.inner.x - form.ease[0]).units, width = (form.inner.y - form.ease[1]).units;
    const std::vector<Units> all_t = thicknesses(load, std::min(length, width) - 1);
    const std::size_t step = (all_t.size() + most_thicknesses - 1) / std::max<std::size_t>(most_thicknesses, 1);
    for (std::size_t k = 0; k < all_t.size(); k += std::max<std::size_t>(step, 1)) {
        const Units thin = all_t[k], thick = all_t[std::min(k + step, all_t.size()) - 1];
        Candidate c;
        c.outer = index;
        c.room = Room::sleeve;
        c.space = space_of(length - thick, width - thick, thick, question);
        c.widest = space_of(length - thin, width - thin, thick, question);
        c.closed = closed_volume(form, Length{thin});
        all.push_back(c);
    }
}

} // namespace

std::vector<Units> thicknesses(const Load& load, Units most)
{
    if (most <= 0) return {};
    Units least = 0; // no thinner than the piece that is thickest when lying as thin as it may
    boost::dynamic_bitset<> reached(static_cast<std::size_t>(most + load.gap) + 1);
    reached.set(0);
    const auto size = static_cast<Units>(reached.size());
    for (const Piece& piece : load.pieces) {
        const Kind& kind = load.kinds[piece.kind];
        Units thinnest = size;
        boost::dynamic_bitset<> next = reached;
        for (const Pose& pose : kind.poses) {
            const Units z = pose.side[2];
            thinnest = std::min(thinnest, z);
            if (z < size) next |= reached << static_cast<std::size_t>(z);
        }
        least = std::max(least, kind.soft ? kind.soft_least + load.gap : thinnest);
        reached.swap(next);
    }
    std::vector<Units> all; // soft goods take any thickness from their least on
    for (Units x = least; x < size; ++x) {
        if (x > load.gap && (load.soft || reached[static_cast<std::size_t>(x)])) all.push_back(x - load.gap);
    }
    return all;
}

std::vector<Candidate> candidates_of(const Question& question, const std::vector<std::size_t>& outers,
                                     const Load& boxed, const Load& sleeved)
{
    std::vector<Candidate> all;
    for (const std::size_t index : outers) {
        const OuterForm& form = question.outers[index].form;
        switch (form.kind) {
        case OuterKind::carton:
        case OuterKind::gift_box: add_carton(question, index, all); break;
        case OuterKind::board_mailer: add_board_mailer(question, index, boxed, all); break;
        case OuterKind::mailer:
        case OuterKind::padded_mailer: add_sleeve(question, index, sleeved, all); break;
        case OuterKind::tube: {
            Candidate c;
            c.outer = index;
            c.room = Room::tube;
            c.space = space_of(form.inner.x.units, form.inner.x.units, form.inner.z.units, question);
            c.widest = c.space;
            c.closed = closed_volume(form, {});
            all.push_back(c);
            break;
        }
        }
    }
    std::stable_sort(all.begin(), all.end(), [&](const Candidate& a, const Candidate& b) {
        return std::tie(a.closed, question.outers[a.outer].id) < std::tie(b.closed, question.outers[b.outer].id);
    });
    return all;
}

Volume closed_with(const Question& question, const Candidate& candidate, Length t)
{
    const OuterForm& form = question.outers[candidate.outer].form;
    if (form.kind == OuterKind::board_mailer) t += question.lining * 2 + question.bed;
    return closed_volume(form, t, candidate.cut);
}

} // namespace stow::fitting
