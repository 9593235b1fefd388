// Short ways to write questions in tests.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/check.h"
#include "core/fitting/fit.h"
#include "core/fitting/question.h"

#include <ostream>

namespace stow::fitting {

inline Size size_mm(std::int64_t x, std::int64_t y, std::int64_t z)
{
    return {mm(x), mm(y), mm(z)};
}

inline Item item(std::string id, int count, Shape shape, Turns::Rule rule = Turns::Rule::any, Weight weight = grams(10))
{
    Item i;
    i.id = std::move(id);
    i.count = count;
    i.shape = std::move(shape);
    i.weight = weight;
    i.turns.rule = rule;
    return i;
}
inline Item block(std::string id, int count, std::int64_t x, std::int64_t y, std::int64_t z,
                  Turns::Rule rule = Turns::Rule::any)
{
    return item(std::move(id), count, Block{size_mm(x, y, z)}, rule);
}

// The outer size is 6 mm more all round unless set afterwards.
inline Outer outer(std::string id, OuterKind kind, std::int64_t x, std::int64_t y, std::int64_t z)
{
    Outer o;
    o.id = std::move(id);
    o.form.kind = kind;
    o.form.inner = size_mm(x, y, z);
    o.form.outer = size_mm(x + 6, y + 6, z + 6);
    return o;
}
inline Outer carton(std::string id, std::int64_t x, std::int64_t y, std::int64_t z)
{
    return outer(std::move(id), OuterKind::carton, x, y, z);
}

inline Question question(std::vector<Item> items, std::vector<Outer> outers)
{
    Question q;
    q.items = std::move(items);
    q.outers = std::move(outers);
    return q;
}

inline Answer solve(const Question& q, std::uint64_t work = 200'000)
{
    Run run({std::nullopt, work});
    return fit(q, run);
}

inline std::vector<Violation> violations(const Question& q, const Answer& a)
{
    return check(q, a.outer, a.cut_height, a.placements);
}

inline void PrintTo(const Violation& v, std::ostream* out)
{
    *out << name_of(v.rule) << ": " << v.item << ' ' << v.other << " by " << in_mm(v.by) << " mm";
}

} // namespace stow::fitting
