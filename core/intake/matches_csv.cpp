#include "core/intake/matches_csv.h"

#include "core/intake/table.h"

#include <set>

namespace stow::intake {

Taken<Matched> read_matches(const Csv& csv, const std::map<shop::GoodCode, shop::Good>& goods)
{
    Table table(csv, {{"shop", "title", "good"}, {"variant"}});
    Taken<Matched> taken;
    std::set<TitleKey> read;
    for (const CsvRow& cells : table.rows()) {
        Row row = table.row(cells);
        Matched matched{{row.needed_text("shop"), row.needed_text("title"), row.text("variant")},
                        {row.needed_text("good")}};
        if (!matched.good.empty() && goods.count(matched.good) == 0) row.note(ProblemKind::unknown_code, "good");
        if (row.sound() && !read.insert(matched.called).second) row.note(ProblemKind::duplicate, "title");
        if (row.sound()) taken.rows.push_back(std::move(matched));
    }
    taken.problems = table.take_problems();
    return taken;
}

} // namespace stow::intake
