#include "tests/bench/integer_program.h"

#include <Cbc_C_Interface.h>

#include <algorithm>
#include <array>
#include <memory>
#include <stdexcept>

namespace stow::bench {

namespace {

using Edges = std::array<std::int64_t, 3>;

struct Part {
    std::string item;
    int copy = 1;
    std::vector<Edges> turned;
    std::int64_t volume = 0;
    int first_turn = 0, first_at = 0; // columns
    std::int64_t least(std::size_t axis) const
    {
        std::int64_t least = turned[0][axis];
        for (const Edges& e : turned) least = std::min(least, e[axis]);
        return least;
    }
};

struct Before { // column of: piece i ends before piece j begins, along the axis
    std::size_t i, j, axis;
    int column;
};

class Program {
public:
    explicit Program(const fitting::Question& question)
    {
        const Size inner = question.outers[0].form.inner;
        box_ = {inner.x.units, inner.y.units, inner.z.units};
        for (const fitting::Item& item : question.items) {
            for (int copy = 1; copy <= item.count; ++copy) add_part(item, copy);
        }
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            for (std::size_t j = i + 1; j < parts_.size(); ++j) keep_apart(i, j);
        }
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            for (std::size_t axis = 0; axis < 3; ++axis) leave_room(i, axis);
        }
    }

    ProgramAnswer solve(int most_nodes)
    {
        Cbc_setLogLevel(model_.get(), 0);
        Cbc_setMaximumNodes(model_.get(), most_nodes);
        Cbc_setMaximumSolutions(model_.get(), 1);
        Cbc_solve(model_.get());
        ProgramAnswer answer;
        if (Cbc_numberSavedSolutions(model_.get()) > 0 && Cbc_bestSolution(model_.get()) != nullptr) {
            answer.finding = Finding::fits;
            answer.placements = placements(Cbc_bestSolution(model_.get()));
        } else if (Cbc_isProvenInfeasible(model_.get()) != 0) {
            answer.finding = Finding::none;
        }
        return answer;
    }

private:
    struct Delete {
        void operator()(void* model) const { Cbc_deleteModel(model); }
    };
    struct Term {
        int column;
        double factor;
    };

    int column(double least, double most, bool whole)
    {
        Cbc_addCol(model_.get(), "", least, most, 0, whole ? 1 : 0, 0, nullptr, nullptr);
        return columns_++;
    }
    void row(const std::vector<Term>& terms, char sense, double right)
    {
        std::vector<int> columns;
        std::vector<double> factors;
        for (const Term& t : terms) {
            columns.push_back(t.column);
            factors.push_back(t.factor);
        }
        Cbc_addRow(model_.get(), "", static_cast<int>(terms.size()), columns.data(), factors.data(), sense, right);
    }
    // The extent of a part along an axis, `factor` times, as terms.
    static void add_extent(std::vector<Term>& terms, const Part& part, std::size_t axis, double factor)
    {
        for (std::size_t t = 0; t < part.turned.size(); ++t) {
            terms.push_back(
                {part.first_turn + static_cast<int>(t), factor * static_cast<double>(part.turned[t][axis])});
        }
    }
    double side(std::size_t axis) const { return static_cast<double>(box_[axis]); }

    void add_part(const fitting::Item& item, int copy)
    {
        const auto* block = std::get_if<Block>(&item.shape);
        if (block == nullptr) throw std::invalid_argument("blocks only");
        Part part;
        part.item = item.id;
        part.copy = copy;
        part.volume = volume(block->size).units;
        for (const Size& s : turned_sizes(block->size, item.turns))
            part.turned.push_back({s.x.units, s.y.units, s.z.units});
        part.first_turn = columns_;
        std::vector<Term> one;
        for (std::size_t t = 0; t < part.turned.size(); ++t) one.push_back({column(0, 1, true), 1});
        row(one, 'E', 1);
        part.first_at = columns_;
        for (std::size_t axis = 0; axis < 3; ++axis) {
            std::vector<Term> end{{column(0, side(axis), false), 1}};
            add_extent(end, part, axis, 1);
            row(end, 'L', side(axis));
        }
        parts_.push_back(std::move(part));
    }

    void keep_apart(std::size_t i, std::size_t j)
    {
        std::vector<Term> one;
        for (std::size_t axis = 0; axis < 3; ++axis) {
            const Part& a = parts_[i];
            const Part& b = parts_[j];
            if (a.least(axis) + b.least(axis) > box_[axis]) continue;
            for (const auto& [first, second] : {std::pair{i, j}, std::pair{j, i}}) {
                // A box may be mirrored along each axis: of one pair, one order is enough.
                if (i == 0 && j == 1 && first == 1) continue;
                const int chosen = column(0, 1, true);
                before_.push_back({first, second, axis, chosen});
                one.push_back({chosen, 1});
                std::vector<Term> terms{{parts_[first].first_at + static_cast<int>(axis), 1}, {chosen, side(axis)}};
                add_extent(terms, parts_[first], axis, 1);
                terms.push_back({parts_[second].first_at + static_cast<int>(axis), -1});
                row(terms, 'L', side(axis));
            }
        }
        if (one.empty()) one.push_back({column(0, 0, false), 1}); // never apart: the row cannot hold
        row(one, 'G', 1);
    }

    void leave_room(std::size_t i, std::size_t axis)
    {
        const double across = side((axis + 1) % 3) * side((axis + 2) % 3);
        const int at = parts_[i].first_at + static_cast<int>(axis);
        std::vector<Term> in_front{{at, -across}}, behind{{at, across}};
        add_extent(behind, parts_[i], axis, across);
        for (const Before& b : before_) {
            if (b.axis != axis) continue;
            if (b.j == i) in_front.push_back({b.column, static_cast<double>(parts_[b.i].volume)});
            if (b.i == i) behind.push_back({b.column, static_cast<double>(parts_[b.j].volume)});
        }
        row(in_front, 'L', 0);
        row(behind, 'L', side(axis) * across);
    }

    // Pushed towards the corner as far as the chosen relations allow, in whole numbers.
    std::vector<fitting::Placement> placements(const double* values) const
    {
        const std::size_t n = parts_.size();
        std::vector<Edges> size(n), at(n, Edges{});
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t t = 0; t < parts_[i].turned.size(); ++t) {
                if (values[parts_[i].first_turn + static_cast<int>(t)] > 0.5) size[i] = parts_[i].turned[t];
            }
        }
        for (std::size_t round = 0; round < n; ++round) {
            for (const Before& b : before_) {
                if (values[b.column] <= 0.5) continue;
                at[b.j][b.axis] = std::max(at[b.j][b.axis], at[b.i][b.axis] + size[b.i][b.axis]);
            }
        }
        std::vector<fitting::Placement> placed(n);
        for (std::size_t i = 0; i < n; ++i) {
            placed[i].item = parts_[i].item;
            placed[i].copy = parts_[i].copy;
            placed[i].at = {Length{at[i][0]}, Length{at[i][1]}, Length{at[i][2]}};
            placed[i].size = {Length{size[i][0]}, Length{size[i][1]}, Length{size[i][2]}};
        }
        return placed;
    }

    std::unique_ptr<void, Delete> model_{Cbc_newModel()};
    int columns_ = 0;
    Edges box_{};
    std::vector<Part> parts_;
    std::vector<Before> before_;
};

} // namespace

ProgramAnswer solve_by_program(const fitting::Question& question, int most_nodes)
{
    return Program(question).solve(most_nodes);
}

} // namespace stow::bench
