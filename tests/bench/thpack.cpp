#include "tests/bench/thpack.h"

#include "tests/bench/random.h"

#include <algorithm>
#include <istream>
#include <ostream>
#include <sstream>
#include <stdexcept>

namespace stow::bench {

namespace {

constexpr std::array<int, 15> types_by_class{3, 5, 8, 10, 12, 15, 20, 30, 40, 50, 60, 70, 80, 90, 100};

std::vector<std::int64_t> numbers_of_next_line(std::istream& in, int& line_number)
{
    std::string line;
    while (std::getline(in, line)) {
        ++line_number;
        std::istringstream words(line);
        std::vector<std::int64_t> numbers;
        for (std::int64_t n = 0; words >> n;) numbers.push_back(n);
        if (!numbers.empty()) return numbers;
    }
    return {};
}

} // namespace

int types_of_class(int br_class)
{
    return types_by_class.at(static_cast<std::size_t>(br_class - 1));
}

ContainerProblem bischoff_ratcliff(int types, int problem)
{
    constexpr std::array<std::int64_t, 3> least{30, 25, 20}, most{120, 100, 80};
    constexpr std::int64_t stability = 2, wanted = 30'089'620;
    ContainerProblem p;
    p.number = problem;
    p.seed = 2'502'505 + 100 * (problem - 1);
    p.container = {587, 233, 220};
    MinimalStandard random(*p.seed);
    for (int k = 0; k < 10; ++k) random.next();
    for (int t = 0; t < types; ++t) {
        BoxType type;
        type.count = 1;
        for (std::size_t j = 0; j < 3; ++j) type.edge[j] = least[j] + random.below(most[j] - least[j] + 1);
        std::sort(type.edge.rbegin(), type.edge.rend());
        for (std::size_t j = 0; j < 3; ++j) type.vertical[j] = j == 2 || type.edge[j] < stability * type.edge[2];
        p.types.push_back(type);
    }
    // The first box that would be too much ends the filling.
    for (std::int64_t cargo = cargo_volume(p);;) {
        BoxType& type = p.types[static_cast<std::size_t>(random.below(types))];
        cargo += type.edge[0] * type.edge[1] * type.edge[2];
        if (cargo > wanted) return p;
        ++type.count;
    }
}

std::vector<ContainerProblem> read_thpack(std::istream& in)
{
    int line = 0;
    const auto next = [&](std::size_t at_least, std::size_t at_most) {
        std::vector<std::int64_t> numbers = numbers_of_next_line(in, line);
        if (numbers.size() < at_least || numbers.size() > at_most) {
            throw std::runtime_error("thpack: line " + std::to_string(line) + " has " + std::to_string(numbers.size()) +
                                     " numbers");
        }
        return numbers;
    };
    std::vector<ContainerProblem> problems(static_cast<std::size_t>(next(1, 1)[0]));
    for (ContainerProblem& p : problems) {
        const auto head = next(1, 2);
        p.number = static_cast<int>(head[0]);
        if (head.size() == 2) p.seed = head[1];
        const auto sides = next(3, 3);
        std::copy(sides.begin(), sides.end(), p.container.begin());
        p.types.resize(static_cast<std::size_t>(next(1, 1)[0]));
        for (BoxType& type : p.types) {
            const auto row = next(8, 8);
            for (std::size_t j = 0; j < 3; ++j) {
                type.edge[j] = row[1 + 2 * j];
                type.vertical[j] = row[2 + 2 * j] != 0;
            }
            type.count = static_cast<int>(row[7]);
        }
    }
    return problems;
}

void write_thpack(std::ostream& out, const std::vector<ContainerProblem>& problems)
{
    out << ' ' << problems.size() << '\n';
    for (const ContainerProblem& p : problems) {
        out << ' ' << p.number;
        if (p.seed) out << ' ' << *p.seed;
        out << "\n " << p.container[0] << ' ' << p.container[1] << ' ' << p.container[2] << '\n';
        out << ' ' << p.types.size() << '\n';
        for (std::size_t t = 0; t < p.types.size(); ++t) {
            const BoxType& type = p.types[t];
            out << ' ' << t + 1;
            for (std::size_t j = 0; j < 3; ++j) out << ' ' << type.edge[j] << ' ' << (type.vertical[j] ? 1 : 0);
            out << ' ' << type.count << '\n';
        }
    }
}

fitting::Question question_of(const ContainerProblem& problem, fitting::Support support)
{
    fitting::Question q;
    for (const BoxType& type : problem.types) {
        fitting::Item item;
        item.id = std::to_string(q.items.size() + 1);
        item.count = type.count;
        item.shape = Block{{Length{type.edge[0]}, Length{type.edge[1]}, Length{type.edge[2]}}};
        item.turns = {Turns::Rule::listed, type.vertical};
        q.items.push_back(item);
    }
    fitting::Outer outer;
    outer.id = "container";
    outer.form.inner = {Length{problem.container[0]}, Length{problem.container[1]}, Length{problem.container[2]}};
    outer.form.outer = outer.form.inner;
    q.outers = {outer};
    q.support = support;
    return q;
}

std::int64_t container_volume(const ContainerProblem& problem)
{
    return problem.container[0] * problem.container[1] * problem.container[2];
}

std::int64_t cargo_volume(const ContainerProblem& problem)
{
    std::int64_t sum = 0;
    for (const BoxType& type : problem.types) sum += type.count * type.edge[0] * type.edge[1] * type.edge[2];
    return sum;
}

} // namespace stow::bench
