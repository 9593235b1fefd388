#include "core/intake/stock_csv.h"

#include "core/intake/table.h"

#include <set>

namespace stow::intake {

namespace {

enum class Kind { good, supply };

std::optional<Kind> kind(std::string_view word)
{
    if (word == "good") return Kind::good;
    if (word == "supply") return Kind::supply;
    return std::nullopt;
}

} // namespace

Taken<Counted> read_stock(const Csv& csv, const shop::Cupboard& known)
{
    Table table(csv, {{"code", "counted"}, {"kind"}});
    Taken<Counted> taken;
    std::set<std::variant<shop::GoodCode, shop::SupplyCode>> read;
    for (const CsvRow& cells : table.rows()) {
        Row row = table.row(cells);
        const std::string code = row.needed_text("code");
        row.needed_text("counted");
        const auto said = row.word("kind", kind, "good, supply");
        const bool good = said != Kind::supply && known.good({code}) != nullptr;
        const bool supply = said != Kind::good && known.supply({code}) != nullptr;
        if (good && supply)
            row.note(ProblemKind::missing_value, "kind");
        else if (!good && !supply && !code.empty())
            row.note(ProblemKind::unknown_code, "code");
        Counted counted;
        if (good) {
            counted.what = shop::GoodCode{code};
            counted.found = shop::pieces(row.whole("counted", 0, 1'000'000).value_or(0));
        } else {
            counted.what = shop::SupplyCode{code};
            counted.found = {row.thousandths("counted").value_or(0)};
        }
        if (row.sound() && !read.insert(counted.what).second) row.note(ProblemKind::duplicate, "code");
        if (row.sound()) taken.rows.push_back(std::move(counted));
    }
    taken.problems = table.take_problems();
    return taken;
}

} // namespace stow::intake
