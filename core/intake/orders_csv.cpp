#include "core/intake/orders_csv.h"

#include "core/intake/country_names.h"
#include "core/intake/numbers.h"
#include "core/intake/text_encoding.h"

#include <algorithm>
#include <array>
#include <set>

namespace stow::intake {

namespace {

using F = OrderField;

constexpr std::int64_t most_pieces = 500; // of one line

template <std::size_t N>
bool one_of(const std::array<std::string_view, N>& words, const std::string& word)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

// Rows with one order number, and whether any of them is bad.
struct Group {
    std::string number;
    std::vector<const CsvRow*> rows;
    std::set<std::size_t> bad_lines; // of the file
};

class Reader {
public:
    Reader(const Csv& csv, const ColumnMatch& match) : csv_(csv), match_(match)
    {
        for (const auto& [field, heading] : match.headings) {
            const auto at = std::find(csv.headings.begin(), csv.headings.end(), heading);
            if (at != csv.headings.end()) place_[field] = static_cast<std::size_t>(at - csv.headings.begin());
        }
        std::vector<std::string_view> dates;
        for (const CsvRow& row : csv.rows) {
            for (const F field : {F::date, F::promised}) {
                if (!cell(row, field).empty()) dates.push_back(cell(row, field));
            }
        }
        dates_ = tell_date_order(dates, match.dates);
    }

    Taken<shop::Order> read()
    {
        Taken<shop::Order> taken;
        problems_ = csv_.problems;
        for (Group& group : groups()) {
            shop::Order order = read_order(group);
            if (group.bad_lines.empty()) {
                taken.rows.push_back(std::move(order));
                continue;
            }
            for (const CsvRow* row : group.rows) {
                if (group.bad_lines.count(row->line) == 0)
                    problems_.push_back({csv_.file,
                                         row->line,
                                         heading(F::number),
                                         ProblemKind::order_incomplete,
                                         group.number,
                                         {},
                                         true});
            }
        }
        taken.problems = std::move(problems_);
        std::stable_sort(taken.problems.begin(), taken.problems.end(),
                         [](const Problem& a, const Problem& b) { return a.row < b.row; });
        return taken;
    }

private:
    bool has(F field) const { return place_.count(field) != 0; }

    std::string heading(F field) const
    {
        const auto found = match_.headings.find(field);
        return found == match_.headings.end() ? std::string(name_of(field)) : found->second;
    }

    std::string_view cell(const CsvRow& row, F field) const
    {
        const auto place = place_.find(field);
        return place == place_.end() ? std::string_view{} : trimmed(row.cells[place->second]);
    }

    void note(Group& group, const CsvRow& row, F field, ProblemKind kind, bool stops, std::string detail = {})
    {
        if (stops) group.bad_lines.insert(row.line);
        const bool known = std::any_of(problems_.begin(), problems_.end(), [&](const Problem& p) {
            return p.row == row.line && p.kind == kind && p.column == heading(field);
        });
        if (known) return; // a field may be looked at more than once
        problems_.push_back(
            {csv_.file, row.line, heading(field), kind, std::string(cell(row, field)), std::move(detail), stops});
    }

    std::vector<Group> groups()
    {
        std::vector<Group> result;
        std::map<std::string, std::size_t> place;
        for (const CsvRow& row : csv_.rows) {
            const std::string number(cell(row, F::number));
            if (number.empty()) {
                problems_.push_back(
                    {csv_.file, row.line, heading(F::number), ProblemKind::missing_value, {}, {}, true});
                continue;
            }
            const auto [found, fresh] = place.emplace(number, result.size());
            if (fresh) result.push_back({number, {}, {}});
            std::vector<const CsvRow*>& rows = result[found->second].rows;
            const bool again =
                std::any_of(rows.begin(), rows.end(), [&](const CsvRow* r) { return r->cells == row.cells; });
            if (again)
                problems_.push_back(
                    {csv_.file, row.line, heading(F::number), ProblemKind::duplicate, number, {}, true});
            else
                rows.push_back(&row);
        }
        return result;
    }

    // The one row that tells a field of the whole order: the first where it is not blank. Others may repeat it only.
    const CsvRow& teller(Group& group, F field)
    {
        const CsvRow* teller = nullptr;
        for (const CsvRow* row : group.rows) {
            if (cell(*row, field).empty()) continue;
            if (teller == nullptr)
                teller = row;
            else if (cell(*row, field) != cell(*teller, field))
                note(group, *row, field, ProblemKind::conflicting_rows, true, std::string(cell(*teller, field)));
        }
        return teller == nullptr ? *group.rows.front() : *teller;
    }

    std::string text(Group& group, F field) { return std::string(cell(teller(group, field), field)); }

    std::optional<Date> date(Group& group, F field)
    {
        const CsvRow& row = teller(group, field);
        if (cell(row, field).empty()) return std::nullopt;
        const auto value = read_date(cell(row, field), dates_);
        if (!value) note(group, row, field, ProblemKind::not_a_date, true);
        return value;
    }

    std::optional<Money> money(Group& group, const CsvRow& row, F field, const Currency& currency)
    {
        if (cell(row, field).empty()) return std::nullopt;
        const MoneyRead read = read_money(cell(row, field), currency, csv_.decimal_mark);
        if (read.money && read.money->minor >= 0) return read.money;
        const ProblemKind kind = read.money                                   ? ProblemKind::not_positive
                                 : read.fault == MoneyFault::unknown_currency ? ProblemKind::unknown_currency
                                                                              : ProblemKind::not_a_number;
        note(group, row, field, kind, true);
        return std::nullopt;
    }

    Currency currency(Group& group)
    {
        const CsvRow& row = teller(group, F::currency);
        if (cell(row, F::currency).empty()) return match_.currency;
        const auto known = Currency::from(cell(row, F::currency));
        if (!known) note(group, row, F::currency, ProblemKind::unknown_currency, true);
        return known.value_or(match_.currency);
    }

    // Yes, no, a state in words, or the date since when it is so.
    template <std::size_t N, std::size_t M>
    bool state(Group& group, F field, const std::array<std::string_view, N>& yes,
               const std::array<std::string_view, M>& no)
    {
        const CsvRow& row = teller(group, field);
        const std::string word = folded(cell(row, field));
        const YesNo answer = yes_or_no(cell(row, field));
        if (answer == YesNo::yes || one_of(yes, word) || read_date(cell(row, field), dates_)) return true;
        if (answer == YesNo::unclear && !one_of(no, word))
            note(group, row, field, ProblemKind::unknown_word, true, "yes, no");
        return false;
    }

    bool paid(Group& group)
    {
        if (!has(F::paid)) return true;
        constexpr std::array<std::string_view, 8> yes{"paid",    "complete",    "completed", "received",
                                                      "bezahlt", "eingegangen", "erhalten",  "vollstandigbezahlt"};
        constexpr std::array<std::string_view, 11> no{"unpaid",  "notpaid",    "open",        "pending",
                                                      "awaited", "partlypaid", "failed",      "unbezahlt",
                                                      "offen",   "ausstehend", "nichtbezahlt"};
        return state(group, F::paid, yes, no);
    }

    bool called_off(Group& group)
    {
        constexpr std::array<std::string_view, 7> yes{"calledoff", "cancelled", "canceled",  "withdrawn",
                                                      "storniert", "abgesagt",  "widerrufen"};
        constexpr std::array<std::string_view, 14> no{"open",      "new",     "active", "confirmed", "paid",
                                                      "complete",  "ok",      "offen",  "neu",       "aktiv",
                                                      "bestatigt", "bezahlt", "gultig", "inarbeit"};
        return state(group, F::called_off, yes, no);
    }

    shop::Address address(Group& group)
    {
        shop::Address to;
        const std::string first = text(group, F::first_name), last = text(group, F::name);
        to.name = first.empty() || last.empty() ? first + last : first + " " + last;
        to.company = text(group, F::company);
        std::string street = text(group, F::street);
        const std::string house = text(group, F::house_number);
        if (!house.empty()) street += (street.empty() ? "" : " ") + house;
        if (!street.empty()) to.street.push_back(street);
        if (const std::string further = text(group, F::street_2); !further.empty()) to.street.push_back(further);
        to.postcode = text(group, F::postcode);
        to.town = text(group, F::town);
        to.region = text(group, F::region);

        // What is wrong with an address keeps the order waiting, not out.
        const CsvRow& first_row = *group.rows.front();
        if (to.name.empty() && to.company.empty()) note(group, first_row, F::name, ProblemKind::missing_value, false);
        if (street.empty()) note(group, first_row, F::street, ProblemKind::missing_value, false);
        if (to.town.empty()) note(group, first_row, F::town, ProblemKind::missing_value, false);
        const std::string country = text(group, F::country);
        const auto code = country.empty() ? std::optional(match_.home) : countries_.code(country);
        to.country = code.value_or(country);
        if (!code)
            note(group, teller(group, F::country), F::country, ProblemKind::unknown_country, false);
        else if (!shop::postcode_ok(to.country, to.postcode))
            note(group, teller(group, F::postcode), F::postcode, ProblemKind::bad_postcode, false, to.country);
        return to;
    }

    std::optional<shop::Gift> gift(Group& group)
    {
        const CsvRow& row = teller(group, F::is_gift);
        const YesNo answer = yes_or_no(cell(row, F::is_gift));
        if (answer == YesNo::unclear) note(group, row, F::is_gift, ProblemKind::unknown_word, true, "yes, no");
        shop::Gift gift{text(group, F::giver), text(group, F::gift_message)};
        if (answer != YesNo::yes && gift.message.empty()) return std::nullopt;
        return gift;
    }

    // Notes of all rows, each once: none of them may go unread.
    std::string notes(const Group& group) const
    {
        std::vector<std::string_view> seen;
        std::string all;
        for (const CsvRow* row : group.rows) {
            const std::string_view words = cell(*row, F::note);
            if (words.empty() || std::find(seen.begin(), seen.end(), words) != seen.end()) continue;
            seen.push_back(words);
            all += (all.empty() ? "" : "\n") + std::string(words);
        }
        return all;
    }

    int count(Group& group, const CsvRow& row)
    {
        if (!has(F::count)) return 1;
        const auto value = whole_number(cell(row, F::count), csv_.decimal_mark);
        if (cell(row, F::count).empty())
            note(group, row, F::count, ProblemKind::missing_value, true);
        else if (!value)
            note(group, row, F::count, ProblemKind::not_a_number, true);
        else if (*value < 1)
            note(group, row, F::count, ProblemKind::not_positive, true);
        else if (*value > most_pieces)
            note(group, row, F::count, ProblemKind::out_of_range, true, "1 to " + std::to_string(most_pieces));
        else
            return static_cast<int>(*value);
        return 1;
    }

    shop::OrderLine line(Group& group, const CsvRow& row, const Currency& currency)
    {
        shop::OrderLine line;
        line.title = std::string(cell(row, F::title));
        line.variant = std::string(cell(row, F::variant));
        line.shop_code = std::string(cell(row, F::shop_code));
        line.personal_text = std::string(cell(row, F::personal_text));
        if (line.title.empty() && line.shop_code.empty())
            note(group, row, has(F::title) ? F::title : F::shop_code, ProblemKind::missing_value, true);
        line.count = count(group, row);
        line.price = money(group, row, F::price, currency);
        return line;
    }

    shop::Order read_order(Group& group)
    {
        shop::Order order;
        order.key = {match_.shop, group.number};
        if (const auto day = date(group, F::date))
            order.date = *day;
        else if (cell(teller(group, F::date), F::date).empty())
            note(group, *group.rows.front(), F::date, ProblemKind::missing_value, true);
        order.promised = date(group, F::promised);
        order.paid = paid(group);
        order.called_off = called_off(group);
        order.buyer_contact = text(group, F::contact);
        order.to = address(group);
        const Currency used = currency(group);
        for (const CsvRow* row : group.rows) order.lines.push_back(line(group, *row, used));
        order.note = notes(group);
        order.gift = gift(group);
        order.service_wanted = text(group, F::service);
        order.postage_paid = money(group, teller(group, F::postage), F::postage, used);
        return order;
    }

    const Csv& csv_;
    const ColumnMatch& match_;
    std::map<F, std::size_t> place_;
    DateOrder dates_ = DateOrder::day_month;
    CountryNames countries_;
    std::vector<Problem> problems_;
};

} // namespace

Taken<shop::Order> read_orders(const Csv& csv, const ColumnMatch& match)
{
    if (csv.headings.empty()) return {{}, csv.problems};
    const std::vector<F> missing = missing_fields(match, csv);
    if (missing.empty()) return Reader(csv, match).read();
    Taken<shop::Order> taken{{}, csv.problems};
    for (const F field : missing) {
        const auto named = match.headings.find(field);
        const std::string value = named == match.headings.end() ? std::string{} : named->second;
        taken.problems.push_back(
            {csv.file, 0, std::string(name_of(field)), ProblemKind::missing_column, value, {}, true});
    }
    return taken;
}

std::size_t match_goods(shop::Order& order, const Matches& matches, const std::map<shop::GoodCode, shop::Good>& goods)
{
    std::size_t unmatched = 0;
    for (shop::OrderLine& line : order.lines) {
        if (!line.good.empty()) continue;
        const auto remembered = matches.find({order.key.shop, line.title, line.variant});
        if (remembered != matches.end())
            line.good = remembered->second;
        else if (goods.count({line.shop_code}) != 0)
            line.good = {line.shop_code};
        else
            ++unmatched;
    }
    return unmatched;
}

} // namespace stow::intake
