#include "core/intake/out_files.h"

#include "core/intake/text_encoding.h"
#include "core/measure/decimal.h"
#include "core/shop/check_digits.h"

#include <algorithm>
#include <set>

namespace stow::intake {

namespace {

std::string number(std::int64_t units, int places, char decimal_mark)
{
    std::string text = unscaled(units, places);
    if (places > 0) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    std::replace(text.begin(), text.end(), '.', decimal_mark);
    return text;
}

Weight weight_of(const OutRow& row)
{
    return row.parcel.weighings.empty() ? row.plan.weight.mean : row.parcel.weighings.back().weight;
}

std::string cell_text(const std::string& text, char delimiter)
{
    if (text.find_first_of(std::string("\"\r\n") + delimiter) == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

std::string plain(std::string_view text)
{
    std::string kept;
    for (const char c : text) {
        if (c == ' ') continue;
        kept += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return kept;
}

bool looks_like_tracking(const std::string& text)
{
    if (text.size() < 8 || text.size() > 40) return false;
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    const auto fine = [&](char c) { return digit(c) || (c >= 'A' && c <= 'Z'); };
    return std::all_of(text.begin(), text.end(), fine) && std::count_if(text.begin(), text.end(), digit) >= 6;
}

// Two letters, nine digits, two letters: meant as an S10 number, right or wrong.
bool has_s10_form(const std::string& text)
{
    const auto letter = [](char c) { return c >= 'A' && c <= 'Z'; };
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    return text.size() == 13 && letter(text[0]) && letter(text[1]) && letter(text[11]) && letter(text[12]) &&
           std::all_of(text.begin() + 2, text.begin() + 11, digit);
}

class Pairs {
public:
    Pairs(const std::vector<std::string>& known, std::string file)
        : known_(known.begin(), known.end()), file_(std::move(file))
    {
    }

    void row(const std::vector<std::string>& cells, std::size_t line, const std::string& in_turn)
    {
        std::string parcel, tracking;
        for (const std::string& cell : cells) {
            const std::string text(trimmed(cell));
            if (known_.count(text) > 0) {
                parcel = text;
                continue;
            }
            const std::string code = plain(text);
            const bool better = tracking.empty() || (has_s10_form(code) && !has_s10_form(tracking));
            if (looks_like_tracking(code) && better) tracking = code;
        }
        if (parcel.empty()) parcel = in_turn;
        if (tracking.empty()) return note(line, "tracking", ProblemKind::missing_value, {}, true);
        if (parcel.empty()) return note(line, "parcel", ProblemKind::unknown_code, tracking, true);
        if (has_s10_form(tracking) && !shop::s10_ok(tracking)) {
            return note(line, "tracking", ProblemKind::bad_check_digit, tracking, true);
        }
        if (!taken_.by_parcel.emplace(parcel, tracking).second) {
            note(line, "parcel", ProblemKind::duplicate, parcel, true);
        }
    }

    TakenTracking take() { return std::move(taken_); }

private:
    void note(std::size_t line, const char* column, ProblemKind kind, const std::string& value, bool stops)
    {
        taken_.problems.push_back({file_, line, column, kind, value, {}, stops});
    }

    std::set<std::string> known_;
    std::string file_;
    TakenTracking taken_;
};

} // namespace

std::string out_field(const shop::FileColumn& column, const OutRow& row, const shop::TaxNumbers& numbers,
                      char decimal_mark)
{
    const std::string& field = column.field;
    const shop::Address& to = row.order.order.to;
    const auto street = [&](std::size_t line) { return line < to.street.size() ? to.street[line] : std::string(); };
    const Size edges = sorted(row.plan.closed);
    const auto length = [&](Length l, int places) { return number(l.units, places, decimal_mark); };
    if (field == "text") return column.words;
    if (field == "parcel") return row.parcel.number;
    if (field == "order") return row.order.order.key.number;
    if (field == "shop") return row.order.order.key.shop;
    if (field == "name") return to.name;
    if (field == "company") return to.company;
    if (field == "street") return street(0);
    if (field == "street 2") return street(1);
    if (field == "postcode") return to.postcode;
    if (field == "town") return to.town;
    if (field == "region") return to.region;
    if (field == "country") return to.country;
    if (field == "contact") return row.order.order.buyer_contact;
    if (field == "service") return row.service_name;
    if (field == "carrier") return row.parcel.carrier;
    if (field == "weight g") return number(weight_of(row).units, 1, decimal_mark);
    if (field == "weight kg") return number(weight_of(row).units, 4, decimal_mark);
    if (field == "length mm") return length(edges.x, 1);
    if (field == "width mm") return length(edges.y, 1);
    if (field == "height mm") return length(edges.z, 1);
    if (field == "length cm") return length(edges.x, 2);
    if (field == "width cm") return length(edges.y, 2);
    if (field == "height cm") return length(edges.z, 2);
    const auto amount = [&](const std::optional<Money>& m) {
        if (!m) return std::string();
        std::string text = unscaled(m->minor, m->currency.places());
        std::replace(text.begin(), text.end(), '.', decimal_mark);
        return text;
    };
    if (field == "value") return amount(row.value);
    if (field == "currency") return row.value ? row.value->currency.code() : std::string();
    if (field == "postage") return amount(row.parcel.postage);
    if (field == "contents") return row.contents;
    if (field == "tracking") return row.parcel.tracking;
    if (field == "handed over") return row.handed_over ? to_text(*row.handed_over) : std::string();
    if (field == "vat number") return numbers.vat;
    if (field == "eori number") return numbers.eori;
    if (field == "import scheme number") return numbers.import_scheme;
    return {};
}

std::string write_out_file(const shop::OutFile& file, const std::vector<OutRow>& rows, const shop::TaxNumbers& numbers)
{
    std::string out;
    const auto line = [&](auto text_of) {
        for (std::size_t i = 0; i < file.columns.size(); ++i) {
            if (i > 0) out += file.delimiter;
            out += cell_text(text_of(file.columns[i]), file.delimiter);
        }
        out += "\r\n";
    };
    line([](const shop::FileColumn& c) { return c.heading; });
    for (const OutRow& row : rows) {
        line([&](const shop::FileColumn& c) { return out_field(c, row, numbers, file.decimal_mark); });
    }
    return out;
}

TakenTracking read_tracking(const Csv& csv, const std::vector<std::string>& known)
{
    Pairs pairs(known, csv.file);
    for (const CsvRow& row : csv.rows) pairs.row(row.cells, row.line, {});
    TakenTracking taken = pairs.take();
    taken.problems.insert(taken.problems.begin(), csv.problems.begin(), csv.problems.end());
    return taken;
}

TakenTracking read_pasted_tracking(std::string_view text, const std::vector<std::string>& known,
                                   const std::vector<std::string>& in_turn)
{
    Pairs pairs(known, {});
    std::size_t line = 0, turn = 0;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string_view words = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        ++line;
        if (words.empty()) continue;
        std::vector<std::string> cells;
        std::string cell;
        for (const char c : words) {
            const bool apart = c == '\t' || c == ';' || c == ',' || c == ' ' || c == '\r';
            if (!apart)
                cell += c;
            else if (!cell.empty())
                cells.push_back(std::exchange(cell, {}));
        }
        if (!cell.empty()) cells.push_back(cell);
        cells.emplace_back(words); // a number printed with spaces in it
        pairs.row(cells, line, turn < in_turn.size() ? in_turn[turn] : std::string());
        ++turn;
    }
    return pairs.take();
}

} // namespace stow::intake
