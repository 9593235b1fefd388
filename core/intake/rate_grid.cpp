#include "core/intake/rate_grid.h"

#include "core/intake/csv.h"
#include "core/intake/rate_details.h"
#include "core/intake/rate_parts.h"
#include "core/intake/rate_sheet_csv.h"
#include "core/intake/text_encoding.h"
#include "core/measure/decimal.h"

#include <algorithm>
#include <array>
#include <map>
#include <sstream>

namespace stow::intake {

namespace {

using postage::RateSheet;

// "1 234,50" to "1234.50"; what is no number stays as it is, for the reader to object to.
std::string number(std::string_view text)
{
    std::string kept;
    for (const char c : trimmed(text)) {
        if (c != ' ') kept += c;
    }
    if (std::count(kept.begin(), kept.end(), ',') == 1 && kept.find('.') == std::string::npos) {
        std::replace(kept.begin(), kept.end(), ',', '.');
    }
    return kept;
}

std::string grams_text(Weight w)
{
    return short_number(w.units, 1);
}

using Cells =
    std::array<std::string, 11>; // record, name, service, zone, format, grams, price, percent, from, until, ...

class Composer {
public:
    explicit Composer(const TypedSheet& sheet)
        : sheet_(sheet), text_(line({"record", "name", "service", "zone", "format", "grams", "price", "percent", "from",
                                     "until", "details"}))
    {
    }

    std::string text()
    {
        std::string currency = "currency " + std::string(trimmed(sheet_.currency));
        add({"sheet", sheet_.carrier, "", "", "", "", "", number(sheet_.tax), sheet_.from, sheet_.until, currency},
            {TypedFault::At::sheet});
        for (std::size_t i = 0; i < sheet_.parts.size(); ++i) part(i);
        for (std::size_t t = 0; t < sheet_.tables.size(); ++t) table(t);
        return std::move(text_);
    }

    // Where the row of the text came from.
    TypedFault origin(std::size_t row) const
    {
        return row >= 2 && row - 2 < origins_.size() ? origins_[row - 2] : TypedFault{};
    }

private:
    static std::string line(const Cells& cells) { return csv_line({cells.begin(), cells.end()}); }

    void add(const Cells& cells, TypedFault origin)
    {
        text_ += line(cells);
        origins_.push_back(std::move(origin));
    }

    void part(std::size_t i)
    {
        const TypedPart& p = sheet_.parts[i];
        if (trimmed(p.name).empty() && trimmed(p.amount).empty() && trimmed(p.details).empty()) return;
        Cells c{p.record};
        const std::string name(trimmed(p.name));
        if (p.record == "service") {
            c[1] = trimmed(p.amount);
            c[2] = name;
            for (const std::string_view phrase : phrases(p.details)) {
                if (const auto tax = after(phrase, "tax"))
                    c[7] = number(*tax);
                else
                    c[10] += (c[10].empty() ? "" : " / ") + std::string(phrase);
            }
        } else if (p.record == "zone") {
            c[3] = name;
            c[10] = p.details;
        } else if (p.record == "format") {
            c[4] = name;
            c[10] = p.details;
        } else {
            c[1] = name;
            priced(p, c);
        }
        TypedFault origin{TypedFault::At::part};
        origin.part = i;
        add(c, std::move(origin));
    }

    // Phrases that have columns of their own in the file.
    static void priced(const TypedPart& p, Cells& c)
    {
        static constexpr std::array<std::pair<std::string_view, std::size_t>, 6> columns{
            {{"service", 2}, {"zone", 3}, {"format", 4}, {"grams", 5}, {"from", 8}, {"until", 9}}};
        std::string amount = number(p.amount);
        if (!amount.empty() && amount.back() == '%') {
            amount.pop_back();
            c[7] = number(amount);
        } else {
            c[6] = amount;
        }
        for (const std::string_view phrase : phrases(p.details)) {
            const auto column = std::find_if(columns.begin(), columns.end(),
                                             [&](const auto& k) { return after(phrase, k.first).has_value(); });
            if (column != columns.end())
                c[column->second] = *after(phrase, column->first);
            else
                c[10] += (c[10].empty() ? "" : " / ") + std::string(phrase);
        }
    }

    void table(std::size_t t)
    {
        const TypedTable& table = sheet_.tables[t];
        const std::vector<std::string> zones = sheet_.names("zone");
        for (std::size_t r = 0; r < table.rows.size(); ++r) {
            for (std::size_t z = 0; z < std::min(zones.size(), table.rows[r].prices.size()); ++z) {
                const std::string price = number(table.rows[r].prices[z]);
                if (price.empty()) continue;
                TypedFault origin{TypedFault::At::price};
                origin.part = t;
                origin.row = r;
                origin.zone = z;
                add({"step", "", table.service, zones[z], table.format, number(table.rows[r].grams), price, "", "", "",
                     ""},
                    std::move(origin));
            }
        }
    }

    const TypedSheet& sheet_;
    std::string text_;
    std::vector<TypedFault> origins_; // by row of the text, its heading left out
};

// With its details as part_details would have them, so that what is typed again as it was is the same.
TypedPart in_order(TypedPart part)
{
    part.details = part_details(part.record, part_values(part.record, part.details));
    return part;
}

TypedPart typed_part(const std::string& record, const std::string& csv_text)
{
    // One line of the writer, taken apart again: record, name, service, zone, format, grams, price, percent, from...
    std::istringstream in("record,name,service,zone,format,grams,price,percent,from,until,details\r\n" + csv_text);
    const Csv csv = read_csv(in, {});
    TypedPart part{record, {}, {}, {}};
    if (csv.rows.empty()) return part;
    const auto& c = csv.rows.front().cells;
    part.details = c.at(10);
    if (record == "service") {
        part.name = c.at(2);
        part.amount = c.at(1) == c.at(2) ? std::string() : c.at(1);
        if (!c.at(7).empty()) part.details += " / tax " + c.at(7);
        return in_order(std::move(part));
    }
    if (record == "zone" || record == "format") {
        part.name = c.at(record == "zone" ? 3 : 4);
        return in_order(std::move(part));
    }
    part.name = c.at(1);
    part.amount = c.at(7).empty() ? c.at(6) : c.at(7) + " %";
    std::string first;
    for (const auto& [word, column] : {std::pair{"service ", 2}, std::pair{"zone ", 3}, std::pair{"format ", 4},
                                       std::pair{"grams ", 5}, std::pair{"from ", 8}, std::pair{"until ", 9}}) {
        const std::string& cell = c.at(static_cast<std::size_t>(column));
        if (!cell.empty()) first += (first.empty() ? "" : " / ") + std::string(word) + cell;
    }
    part.details = first + (first.empty() || part.details.empty() ? "" : " / ") + part.details;
    return in_order(std::move(part));
}

} // namespace

std::vector<std::string> TypedSheet::names(std::string_view record) const
{
    std::vector<std::string> all;
    for (const TypedPart& p : parts) {
        if (p.record == record && !trimmed(p.name).empty()) all.emplace_back(trimmed(p.name));
    }
    return all;
}

TypedTable& TypedSheet::table(const std::string& service, const std::string& format)
{
    for (TypedTable& t : tables) {
        if (t.service == service && t.format == format) return t;
    }
    return tables.emplace_back(TypedTable{service, format, {}});
}

TypedSheet typed(const RateSheet& sheet, char decimal_mark)
{
    TypedSheet out;
    out.carrier = sheet.carrier;
    out.currency = sheet.currency.code();
    out.tax = sheet.tax_permille == 0 ? std::string() : short_number(sheet.tax_permille, 1);
    out.from = sheet.valid_from ? to_text(*sheet.valid_from) : std::string();
    out.until = sheet.valid_until ? to_text(*sheet.valid_until) : std::string();
    // All but the steps through the file's own writer, line by line.
    RateSheet bare = sheet;
    bare.steps.clear();
    std::istringstream lines(write_rate_sheet(bare));
    std::string line;
    std::getline(lines, line); // headings
    std::getline(lines, line); // the sheet itself
    while (std::getline(lines, line)) {
        out.parts.push_back(typed_part(line.substr(0, line.find(',')), line + "\n"));
    }
    const auto column = [&](const std::string& zone) {
        const auto found = std::find_if(sheet.zones.begin(), sheet.zones.end(),
                                        [&](const postage::Zone& z) { return z.name == zone; });
        return static_cast<std::size_t>(found - sheet.zones.begin());
    };
    std::vector<const postage::Step*> steps;
    for (const postage::Step& step : sheet.steps) steps.push_back(&step);
    std::stable_sort(steps.begin(), steps.end(), [](const auto* a, const auto* b) { return a->up_to < b->up_to; });
    for (const postage::Step& step : sheet.steps) (void)out.table(step.service, step.format); // in the sheet's order
    for (const postage::Step* step : steps) {
        TypedTable& table = out.table(step->service, step->format);
        const std::string grams = grams_text(step->up_to);
        auto row =
            std::find_if(table.rows.begin(), table.rows.end(), [&](const TypedRow& r) { return r.grams == grams; });
        if (row == table.rows.end()) {
            row = table.rows.insert(row, TypedRow{grams, std::vector<std::string>(sheet.zones.size())});
        }
        if (const std::size_t z = column(step->zone); z < row->prices.size()) {
            row->prices[z] = unscaled(step->price.minor, step->price.currency.places());
        }
    }
    const auto mark = [decimal_mark](std::string& number) {
        std::replace(number.begin(), number.end(), '.', decimal_mark);
    };
    mark(out.tax);
    for (TypedPart& part : out.parts) {
        if (part.record != "service") mark(part.amount); // of a service it is the title
    }
    for (TypedTable& table : out.tables) {
        for (TypedRow& row : table.rows) {
            mark(row.grams);
            for (std::string& price : row.prices) mark(price);
        }
    }
    return out;
}

ReadSheet read(const TypedSheet& sheet)
{
    Composer composer(sheet);
    std::istringstream in(composer.text());
    TakenRates taken = read_rate_sheet(in, sheet.carrier);
    ReadSheet out;
    out.sheet = std::move(taken.sheet);
    const auto fault_at = [&](const Problem& p) {
        TypedFault fault = composer.origin(p.row);
        if (fault.at == TypedFault::At::price && p.column == "grams") fault.at = TypedFault::At::row;
        fault.kind = p.kind;
        fault.value = p.value;
        fault.detail = p.detail;
        return fault;
    };
    for (const Problem& p : taken.problems) out.faults.push_back(fault_at(p));
    return out;
}

int paste(TypedTable& table, std::size_t zones, std::size_t row, std::size_t column, std::string_view text)
{
    int put = 0;
    const auto cleaned = [](std::string_view cell) {
        std::string kept;
        for (const char c : cell) {
            const bool part_of_number = (c >= '0' && c <= '9') || c == '.' || c == ',' || c == '-';
            if (part_of_number) kept += c;
        }
        return kept.empty() ? std::string(trimmed(cell)) : kept;
    };
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        while (table.rows.size() <= row) table.rows.push_back({{}, std::vector<std::string>(zones)});
        TypedRow& into = table.rows[row];
        into.prices.resize(std::max(into.prices.size(), zones));
        for (std::size_t at = column; at <= zones; ++at) {
            const auto tab = std::min(line.find('\t'), line.size());
            (at == 0 ? into.grams : into.prices[at - 1]) = cleaned(line.substr(0, tab));
            ++put;
            if (tab == line.size()) break;
            line.remove_prefix(tab + 1);
        }
        ++row;
    }
    return put;
}

RateSheet next_year(const RateSheet& sheet)
{
    using namespace std::chrono;
    RateSheet next = sheet;
    const auto a_year_on = [](Date day) {
        const year_month_day ymd(day);
        const year_month_day moved = ymd + years(1);
        return Date(moved.ok() ? moved : year_month_day_last(moved.year() / moved.month() / last));
    };
    if (sheet.valid_until) {
        next.valid_from = *sheet.valid_until + days(1);
        next.valid_until = a_year_on(*sheet.valid_until);
    } else if (sheet.valid_from) {
        next.valid_from = a_year_on(*sheet.valid_from);
    }
    next.holidays.clear();
    for (postage::Surcharge& s : next.surcharges) {
        if (s.from) s.from = a_year_on(*s.from);
        if (s.until) s.until = a_year_on(*s.until);
    }
    return next;
}

} // namespace stow::intake
