#include "core/book/cupboard.h"

#include "core/book/documents.h"
#include "core/book/ledger.h"
#include "core/book/parcels.h"
#include "core/book/step_writer.h"

#include <algorithm>

namespace stow::book {

namespace {

// What the three kinds of definition have in common, and where they differ.
template <class T>
struct Definition;

template <>
struct Definition<shop::Good> {
    static constexpr auto table = "good";
    static constexpr auto edit = StepKind::edit_good;
    static constexpr std::optional<Ledger> ledger = Ledger::goods;
    static shop::Amount on_hand(const shop::Good& good) { return shop::pieces(good.pieces); }
    // What is on hand belongs to the ledger; the document does not hold it a second time.
    static shop::Good stored(shop::Good good)
    {
        good.pieces = 0;
        return good;
    }
};

template <>
struct Definition<shop::Supply> {
    static constexpr auto table = "supply";
    static constexpr auto edit = StepKind::edit_supply;
    static constexpr std::optional<Ledger> ledger = Ledger::supplies;
    static shop::Amount on_hand(const shop::Supply& supply) { return supply.on_hand; }
    static shop::Supply stored(shop::Supply supply)
    {
        supply.on_hand = {};
        return supply;
    }
};

template <>
struct Definition<shop::Wrapping> {
    static constexpr auto table = "wrapping";
    static constexpr auto edit = StepKind::edit_wrapping;
    static constexpr std::optional<Ledger> ledger = std::nullopt;
    static shop::Amount on_hand(const shop::Wrapping&) { return {}; }
    static shop::Wrapping stored(shop::Wrapping wrapping) { return wrapping; }
};

enum class Put { fresh, unchanged, changed };

template <class T>
Put put_definition(const Book& book, Writer& writer, const T& value)
{
    using Kind = Definition<T>;
    const std::string document = intake::to_document(Kind::stored(value));
    Query old(book, fmt::format("SELECT document FROM {} WHERE code = ?", Kind::table), value.code);
    if (old.next()) {
        if (old.text(0) == document) return Put::unchanged;
        writer.run(fmt::format("UPDATE {} SET document = ? WHERE code = ?", Kind::table), document, value.code);
        return Put::changed;
    }
    writer.add(fmt::format("INSERT INTO {} (code, document) VALUES (?, ?)", Kind::table), value.code, document);
    const shop::Amount start = Kind::on_hand(value);
    if (Kind::ledger && start != shop::Amount{}) {
        writer.move(*Kind::ledger, value.code.text, MovementKind::start, start);
    }
    return Put::fresh;
}

template <class T>
Taken take_in(Book& book, StepKind step, const std::vector<T>& values, const std::string& file)
{
    Taken taken;
    const Done done = in_step(book, step, {{"file", file}}, [&](Writer& writer) -> Allowed {
        for (const T& value : values) {
            switch (put_definition(book, writer, value)) {
            case Put::fresh: ++taken.fresh; break;
            case Put::unchanged: ++taken.unchanged; break;
            case Put::changed: ++taken.changed; break;
            }
        }
        writer.words["new"] = std::to_string(taken.fresh);
        writer.words["changed"] = std::to_string(taken.changed);
        return {};
    });
    taken.step = done.value();
    return taken;
}

template <class T>
Done put_one(Book& book, const T& value)
{
    return in_step(book, Definition<T>::edit, {{"code", value.code.text}}, [&](Writer& writer) -> Allowed {
        put_definition(book, writer, value);
        return {};
    });
}

// What is still on hand leaves the ledger with it, so that the sums stay those of known things.
template <class T, class Code>
Done remove_one(Book& book, const Code& code, Why unknown)
{
    using Kind = Definition<T>;
    return in_step(
        book, StepKind::remove, {{"code", code.text}, {"what", Kind::table}}, [&](Writer& writer) -> Allowed {
            if (!Query(book, fmt::format("SELECT 1 FROM {} WHERE code = ?", Kind::table), code).next()) {
                return refuse(unknown, code.text);
            }
            if (Kind::ledger) {
                Query sum(book, "SELECT coalesce(sum(amount), 0) FROM movement WHERE ledger = ? AND code = ?",
                          *Kind::ledger == Ledger::goods ? "goods" : "supplies", code);
                sum.next();
                if (const shop::Amount left{sum.integer(0)}; left != shop::Amount{}) {
                    writer.move(*Kind::ledger, code.text, MovementKind::counted, -left);
                }
            }
            writer.run(fmt::format("DELETE FROM {} WHERE code = ?", Kind::table), code);
            return {};
        });
}

void put_part(const Book& book, Writer& writer, const char* part, const std::string& document)
{
    if (Query(book, "SELECT 1 FROM house WHERE part = ?", part).next()) {
        writer.run("UPDATE house SET document = ? WHERE part = ?", document, part);
    } else {
        writer.add("INSERT INTO house (part, document) VALUES (?, ?)", part, document);
    }
}

std::vector<shop::HouseRule> rules(const Book& book)
{
    Query row(book, "SELECT document FROM house WHERE part = 'rules'");
    if (!row.next()) return {};
    return read_document<std::vector<shop::HouseRule>>(row.text(0));
}

} // namespace

Taken take_in_goods(Book& book, const std::vector<shop::Good>& goods, const std::string& file)
{
    return take_in(book, StepKind::take_in_goods, goods, file);
}

Taken take_in_supplies(Book& book, const std::vector<shop::Supply>& supplies, const std::string& file)
{
    return take_in(book, StepKind::take_in_supplies, supplies, file);
}

Taken take_in_wrappings(Book& book, const std::vector<shop::Wrapping>& wrappings, const std::string& file)
{
    return take_in(book, StepKind::take_in_wrappings, wrappings, file);
}

Taken take_in_rules(Book& book, const std::vector<shop::HouseRule>& taken_rules, const std::string& file)
{
    Taken taken;
    const Done done = in_step(book, StepKind::take_in_rules, {{"file", file}}, [&](Writer& writer) -> Allowed {
        put_part(book, writer, "rules", intake::to_document(taken_rules));
        return {};
    });
    taken.step = done.value();
    (taken.step ? taken.changed : taken.unchanged) = static_cast<int>(taken_rules.size());
    return taken;
}

Done put_good(Book& book, const shop::Good& good)
{
    return put_one(book, good);
}

Done put_supply(Book& book, const shop::Supply& supply)
{
    return put_one(book, supply);
}

Done put_wrapping(Book& book, const shop::Wrapping& wrapping)
{
    return put_one(book, wrapping);
}

Done put_wrappings(Book& book, const std::vector<shop::Wrapping>& wrappings)
{
    return in_step(book, StepKind::edit_wrapping, {}, [&](Writer& writer) -> Allowed {
        for (const shop::Wrapping& wrapping : wrappings) put_definition(book, writer, wrapping);
        Query known(book, "SELECT code FROM wrapping");
        std::vector<std::string> gone;
        while (known.next()) {
            const std::string code = known.text(0);
            if (std::none_of(wrappings.begin(), wrappings.end(), [&](const auto& w) { return w.code.text == code; }))
                gone.push_back(code);
        }
        for (const std::string& code : gone) writer.run("DELETE FROM wrapping WHERE code = ?", code);
        return {};
    });
}

Done put_rules(Book& book, const std::vector<shop::HouseRule>& new_rules)
{
    return in_step(book, StepKind::edit_rules, {}, [&](Writer& writer) -> Allowed {
        put_part(book, writer, "rules", intake::to_document(new_rules));
        return {};
    });
}

Done put_house(Book& book, const shop::House& new_house)
{
    return in_step(book, StepKind::edit_house, {}, [&](Writer& writer) -> Allowed {
        put_part(book, writer, "house", intake::to_document(new_house));
        return {};
    });
}

Done use_where_none_is(Book& book, const std::vector<shop::Supply>& supplies)
{
    const shop::House known = house(book);
    shop::House now = known;
    for (const shop::Supply& supply : supplies) shop::use_where_none_is(now, supply);
    return now == known ? Done{} : put_house(book, now);
}

Done remove_good(Book& book, const shop::GoodCode& code)
{
    return remove_one<shop::Good>(book, code, Why::unknown_good);
}

Done remove_supply(Book& book, const shop::SupplyCode& code)
{
    return remove_one<shop::Supply>(book, code, Why::unknown_supply);
}

Done remove_wrapping(Book& book, const shop::WrappingCode& code)
{
    return remove_one<shop::Wrapping>(book, code, Why::unknown_supply);
}

shop::House house(const Book& book)
{
    Query row(book, "SELECT document FROM house WHERE part = 'house'");
    if (!row.next()) return {};
    return read_document<shop::House>(row.text(0));
}

shop::Cupboard cupboard(const Book& book)
{
    shop::Cupboard all;
    all.house = house(book);
    const auto pieces = pieces_on_hand(book);
    for (shop::Good& good : read_documents<shop::Good>(book, "good", "code")) {
        const auto counted = pieces.find(good.code);
        good.pieces = counted == pieces.end() ? 0 : counted->second;
        all.pieces[good.code] = good.pieces;
        all.goods.emplace(good.code, std::move(good));
    }
    const auto amounts = supplies_on_hand(book);
    for (shop::Supply& supply : read_documents<shop::Supply>(book, "supply", "code")) {
        const auto counted = amounts.find(supply.code);
        supply.on_hand = counted == amounts.end() ? shop::Amount{} : counted->second;
        all.on_hand[supply.code] = supply.on_hand;
        all.supplies.emplace(supply.code, std::move(supply));
    }
    for (shop::Wrapping& wrapping : read_documents<shop::Wrapping>(book, "wrapping", "code")) {
        all.wrappings.emplace(wrapping.code, std::move(wrapping));
    }
    all.rules = rules(book);
    weighing::teach(all, lessons(book));
    return all;
}

shop::Dispatch dispatch(const Book& book)
{
    Query row(book, "SELECT document FROM house WHERE part = 'dispatch'");
    if (!row.next()) return shop::first_dispatch();
    return read_document<shop::Dispatch>(row.text(0));
}

Done put_dispatch(Book& book, const shop::Dispatch& settings)
{
    return in_step(book, StepKind::edit_house, {}, [&](Writer& writer) -> Allowed {
        put_part(book, writer, "dispatch", intake::to_document(settings));
        return {};
    });
}

} // namespace stow::book
