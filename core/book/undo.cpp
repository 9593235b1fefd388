// Reading steps, and undoing them.
#include "core/book/schema.h"
#include "core/book/step_writer.h"
#include "core/book/steps.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <set>

namespace stow::book {

namespace {

// Which steps from `first` on still stand. An undoing that stands takes away what it undoes; since it comes later than
// that, one pass from the newest back settles all.
class Standings {
public:
    Standings(const Book& book, StepId first)
    {
        Query rows(book, "SELECT id, undoes FROM step WHERE id >= ? ORDER BY id DESC", first);
        while (rows.next()) {
            const StepId id{rows.integer(0)};
            const auto undoes = rows.maybe_integer(1);
            if (undoes) undoes_[id] = StepId{*undoes};
            if (undoes && !undone_by_.count(id)) undone_by_[StepId{*undoes}] = id;
        }
    }

    std::optional<StepId> undone_by(StepId id) const { return look_up(undone_by_, id); }
    std::optional<StepId> undoes(StepId id) const { return look_up(undoes_, id); }

    // Does the later step `id` count against undoing `first`? Not when it was undone, nor when it undid another later
    // one.
    bool counts_after(StepId first, StepId id) const
    {
        if (id <= first || undone_by(id)) return false;
        const auto undone = undoes(id);
        return !undone || *undone <= first;
    }

private:
    static std::optional<StepId> look_up(const std::map<StepId, StepId>& map, StepId id)
    {
        const auto found = map.find(id);
        return found == map.end() ? std::nullopt : std::optional(found->second);
    }
    std::map<StepId, StepId> undoes_, undone_by_;
};

Step read_step(const Query& row)
{
    Step step;
    step.id = {row.integer(0)};
    step.at = row.instant(1);
    step.kind = step_kind(row.text(2)).value_or(StepKind::undo);
    step.words = nlohmann::json::parse(row.text(3)).get<Words>();
    if (const auto undoes = row.maybe_integer(4)) step.undoes = StepId{*undoes};
    return step;
}

struct Image {
    std::string table;
    std::int64_t key = 0;
    std::optional<std::string> before;
};

// The first image of every row the step changed: how it was before.
std::vector<Image> images_of(const Book& book, StepId id)
{
    std::vector<Image> images;
    Query rows(
        book,
        "SELECT tab, key, before FROM image WHERE id IN (SELECT min(id) FROM image WHERE step = ? GROUP BY tab, key) "
        "ORDER BY id",
        id);
    while (rows.next()) images.push_back({rows.text(0), rows.integer(1), rows.maybe_text(2)});
    return images;
}

bool row_exists(const Book& book, const std::string& table, std::int64_t key)
{
    return Query(book, fmt::format("SELECT 1 FROM {} WHERE id = ?", table), key).next();
}

std::optional<StepId> latest(std::optional<StepId> a, std::optional<StepId> b)
{
    return !a || (b && *b > *a) ? b : a;
}

// The newest of the steps a query names that counts against undoing `first`.
template <class... Values>
std::optional<StepId> newest_counting(const Book& book, const Standings& standings, StepId first,
                                      const std::string& sql, const Values&... values)
{
    std::optional<StepId> newest;
    Query rows(book, sql, values...);
    while (rows.next()) {
        const StepId id{rows.integer(0)};
        if (standings.counts_after(first, id)) newest = latest(newest, id);
    }
    return newest;
}

// A later step that changed one of the same rows.
std::optional<StepId> same_rows(const Book& book, const Standings& standings, StepId id)
{
    return newest_counting(book, standings, id,
                           "SELECT DISTINCT later.step FROM image AS mine JOIN image AS later USING (tab, key) "
                           "WHERE mine.step = ?1 AND later.step > ?1",
                           id);
}

// A later step whose rows refer to a row that this step made and that undoing would take away.
std::optional<StepId> rows_built_on(const Book& book, const Standings& standings, StepId id,
                                    const std::vector<Image>& images)
{
    std::optional<StepId> newest;
    for (const Image& image : images) {
        if (image.before || !row_exists(book, image.table, image.key)) continue;
        for (const std::string& table : tracked_tables()) {
            Query links(book, R"(SELECT "from" FROM pragma_foreign_key_list(?) WHERE "table" = ?)", table, image.table);
            while (links.next()) {
                const auto later =
                    newest_counting(book, standings, id,
                                    fmt::format("SELECT step FROM image WHERE tab = '{0}' AND step > ?2 AND key IN "
                                                "(SELECT id FROM {0} WHERE {1} = ?1)",
                                                table, links.text(0)),
                                    image.key, id);
                newest = latest(newest, later);
            }
        }
    }
    return newest;
}

// A later step that counted what this one moved, or moved something that this one made known.
std::optional<StepId> movements_built_on(const Book& book, const Standings& standings, StepId id)
{
    const auto counted =
        newest_counting(book, standings, id,
                        "SELECT DISTINCT later.step FROM movement AS mine JOIN movement AS later USING (ledger, code) "
                        "WHERE mine.step = ?1 AND later.step > ?1 AND later.kind = 'counted'",
                        id);
    const auto moved = newest_counting(book, standings, id,
                                       "SELECT DISTINCT movement.step FROM image "
                                       "LEFT JOIN good ON image.tab = 'good' AND good.id = image.key "
                                       "LEFT JOIN supply ON image.tab = 'supply' AND supply.id = image.key "
                                       "JOIN movement ON (movement.ledger = 'goods' AND movement.code = good.code) "
                                       "OR (movement.ledger = 'supplies' AND movement.code = supply.code) "
                                       "WHERE image.step = ?1 AND image.before IS NULL AND movement.step > ?1",
                                       id);
    return latest(counted, moved);
}

// Writes back every row as it was. Rows go first, then those that stay, then those that come: no key is ever taken
// twice.
void restore(const Book& book, Writer& writer, const std::vector<Image>& images)
{
    writer.run("PRAGMA defer_foreign_keys = ON");
    std::vector<const Image*> changed, gone;
    for (const Image& image : images) {
        const bool there = row_exists(book, image.table, image.key);
        if (!image.before) {
            if (there) writer.run(fmt::format("DELETE FROM {} WHERE id = ?", image.table), image.key);
        } else {
            (there ? changed : gone).push_back(&image);
        }
    }
    const auto stored_columns = [&](const Image& image) {
        const auto row = nlohmann::json::parse(*image.before);
        std::vector<std::string> names = columns_of_table(book.db(), image.table);
        names.erase(std::remove_if(names.begin(), names.end(), [&](const auto& name) { return !row.contains(name); }),
                    names.end());
        return names;
    };
    for (const Image* image : changed) {
        std::string set;
        for (const std::string& name : stored_columns(*image)) {
            set += fmt::format("{0}\"{1}\" = json_extract(?1, '$.{1}')", set.empty() ? "" : ", ", name);
        }
        writer.run(fmt::format("UPDATE {} SET {} WHERE id = ?2", image->table, set), *image->before, image->key);
    }
    for (const Image* image : gone) {
        std::string names, values;
        for (const std::string& name : stored_columns(*image)) {
            names += fmt::format("{}\"{}\"", names.empty() ? "" : ", ", name);
            values += fmt::format("{}json_extract(?1, '$.{}')", values.empty() ? "" : ", ", name);
        }
        writer.run(fmt::format("INSERT INTO {} ({}) VALUES ({})", image->table, names, values), *image->before);
    }
}

// The undoing that took the step away and stands itself; asked of one step only.
std::optional<StepId> standing_undo(const Book& book, StepId id)
{
    Query rows(book, "SELECT id FROM step WHERE undoes = ? ORDER BY id DESC", id);
    while (rows.next()) {
        const StepId by{rows.integer(0)};
        if (!standing_undo(book, by)) return by;
    }
    return std::nullopt;
}

} // namespace

std::vector<Step> steps(const Book& book, std::size_t most)
{
    std::vector<Step> found;
    Query rows(book, "SELECT id, at, kind, words, undoes FROM step ORDER BY id DESC LIMIT ?", most);
    while (rows.next()) found.push_back(read_step(rows));
    if (!found.empty()) {
        const Standings standings(book, found.back().id);
        for (Step& step : found) step.undone_by = standings.undone_by(step.id);
    }
    return found;
}

std::optional<Step> step(const Book& book, StepId id)
{
    Query row(book, "SELECT id, at, kind, words, undoes FROM step WHERE id = ?", id);
    if (!row.next()) return std::nullopt;
    Step found = read_step(row);
    found.undone_by = standing_undo(book, id);
    return found;
}

namespace {

// Asks of the steps from the newest back, few at first, since a long row of undoings is rare: true, it is this one;
// false, there is none; nothing: the one before.
template <class Asked>
std::optional<Step> newest(const Book& book, const Asked& asked)
{
    for (std::size_t most = 64;; most *= 8) {
        const std::vector<Step> found = steps(book, most);
        for (const Step& step : found) {
            if (const std::optional<bool> answer = asked(step)) return *answer ? std::optional(step) : std::nullopt;
        }
        if (found.size() < most) return std::nullopt;
    }
}

} // namespace

std::optional<Step> last_undoable(const Book& book)
{
    return newest(book, [](const Step& step) -> std::optional<bool> {
        if (step.undoes || step.undone_by || step.kind == StepKind::erase_buyer) return std::nullopt;
        return true;
    });
}

std::optional<Step> last_redoable(const Book& book)
{
    return newest(book, [&](const Step& step) -> std::optional<bool> {
        if (!step.undoes && !step.undone_by) return false; // something else was done since
        if (!step.undoes || step.undone_by) return std::nullopt;
        const auto undone = book::step(book, *step.undoes);
        return undone && !undone->undoes ? std::optional(true) : std::nullopt;
    });
}

Done undo(Book& book, StepId id)
{
    const auto target = step(book, id);
    if (!target) return refuse(Why::unknown_step);
    if (target->kind == StepKind::erase_buyer) return refuse(Why::not_undoable);
    Words words = target->words;
    words["undone"] = std::string(name_of(target->kind));

    return in_step(
        book, StepKind::undo, words,
        [&](Writer& writer) -> Allowed {
            const Standings standings(book, id);
            if (const auto by = standings.undone_by(id)) return refuse(Why::already_undone, {}, by);
            const std::vector<Image> images = images_of(book, id);
            const auto later =
                latest(latest(same_rows(book, standings, id), rows_built_on(book, standings, id, images)),
                       movements_built_on(book, standings, id));
            if (later) return refuse(Why::later_step, {}, later);

            restore(book, writer, images);
            writer.run("INSERT INTO movement (step, ledger, code, kind, amount, parcel, reason, cost, cost_currency, "
                       "supplier) "
                       "SELECT ?1, ledger, code, kind, -amount, parcel, reason, -cost, cost_currency, supplier FROM "
                       "movement WHERE step = ?2 ORDER BY id",
                       writer.id(), id);
            return {};
        },
        id);
}

} // namespace stow::book
