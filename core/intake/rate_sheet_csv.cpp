#include "core/intake/rate_sheet_csv.h"

#include "core/intake/csv.h"
#include "core/intake/dates.h"
#include "core/intake/rate_details.h"
#include "core/intake/table.h"
#include "core/intake/text_encoding.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace stow::intake {

namespace {

using namespace postage;

constexpr std::array<std::string_view, 11> headings{"record", "name",    "service", "zone",  "format", "grams",
                                                    "price",  "percent", "from",    "until", "details"};
constexpr std::array<std::string_view, 9> records{"sheet",  "service", "zone",      "format", "step",
                                                  "beyond", "volume",  "surcharge", "holiday"};
constexpr std::string_view record_words = "sheet, service, zone, format, step, beyond, volume, surcharge, holiday";
constexpr std::string_view service_words =
    "tracked, parcel post, cover, days, cut-off, collected, divisor, rounding, above, sides, rolls count, not sent";
constexpr std::string_view format_words =
    "length, width, height, sum, girth, ratio, roll length, roll sum, each with from or to; tolerance";
constexpr std::string_view surcharge_words =
    "per kg, of value, with, longer than, wider than, girth over, larger than, heavier than, value above, rolls, not "
    "boxed, in";

// Far above any postage, and small enough that no sum overflows.
constexpr std::int64_t most_minor = 1'000'000'000;
constexpr std::int64_t most_permille = 10'000;

template <class Named>
bool holds(const std::vector<Named>& list, std::string Named::*name, const std::string& wanted)
{
    return std::any_of(list.begin(), list.end(), [&](const Named& n) { return n.*name == wanted; });
}

class Reader {
public:
    explicit Reader(const Csv& csv)
        : mark_(csv.decimal_mark),
          table_(csv, {{headings.begin(), headings.begin() + 1}, {headings.begin() + 1, headings.end()}})
    {
    }

    TakenRates read()
    {
        // What later rows refer to is read first.
        each({"sheet"}, [&](Row& row, std::string_view) { sheet_row(row); });
        each({"service", "zone", "format"}, [&](Row& row, std::string_view record) {
            if (record == "service") service_row(row);
            if (record == "zone") zone_row(row);
            if (record == "format") format_row(row);
        });
        each({"step", "beyond", "volume", "surcharge", "holiday"}, [&](Row& row, std::string_view record) {
            if (record == "step") step_row(row);
            if (record == "beyond") beyond_row(row);
            if (record == "volume") volume_row(row);
            if (record == "surcharge") surcharge_row(row);
            if (record == "holiday") holiday_row(row);
        });
        unknown_records();

        TakenRates taken;
        taken.problems = table_.take_problems();
        std::stable_sort(taken.problems.begin(), taken.problems.end(),
                         [](const Problem& a, const Problem& b) { return a.row < b.row; });
        if (named_) taken.sheet = std::move(sheet_);
        return taken;
    }

    bool named() const { return named_; }

private:
    template <class Read>
    void each(const std::vector<std::string_view>& wanted, Read read_row)
    {
        if (kinds_.empty()) look_at_records();
        for (std::size_t i = 0; i < kinds_.size(); ++i) {
            if (std::find(wanted.begin(), wanted.end(), kinds_[i]) == wanted.end()) continue;
            Row row = table_.row(table_.rows()[i]);
            read_row(row, kinds_[i]);
        }
    }

    // What each row is, once: a table of postcodes has 100,000 of them. Empty: a word that is no record.
    void look_at_records()
    {
        kinds_.reserve(table_.rows().size());
        for (const CsvRow& cells : table_.rows()) {
            const std::string record = table_.row(cells).text("record");
            const auto known = std::find(records.begin(), records.end(), record);
            kinds_.push_back(known != records.end() ? *known : std::string_view{});
        }
    }

    void unknown_records()
    {
        each({std::string_view{}}, [&](Row& row, std::string_view) {
            row.note(ProblemKind::unknown_word, "record", std::string(record_words));
        });
    }

    std::optional<Date> date(Row& row, std::string_view column)
    {
        if (row.blank(column)) return std::nullopt;
        const auto read = read_date(row.text(column), DateOrder::day_month);
        if (!read) row.note(ProblemKind::not_a_date, column);
        return read;
    }

    std::optional<std::int64_t> permille(Row& row, bool discount = false)
    {
        if (row.blank("percent")) return std::nullopt;
        const std::string text = row.text("percent");
        const bool below = discount && text.front() == '-';
        auto read = number_of(below ? text.substr(1) : text, 1, mark_, true);
        if (read && below) *read = -*read;
        if (!read)
            row.note(ProblemKind::not_a_number, "percent");
        else if (*read > most_permille)
            row.note(ProblemKind::out_of_range, "percent", "≤ " + short_number(most_permille, 1));
        return read;
    }

    Money needed_price(Row& row)
    {
        if (row.blank("price")) row.note(ProblemKind::missing_value, "price");
        const auto price = row.money("price", sheet_.currency);
        if (price && price->currency != sheet_.currency) {
            row.note(ProblemKind::unknown_currency, "price", "the sheet is in " + sheet_.currency.code());
        }
        if (price && price->minor > most_minor)
            row.note(ProblemKind::out_of_range, "price", "≤ " + unscaled(most_minor, sheet_.currency.places()));
        return price.value_or(Money{0, sheet_.currency});
    }

    void sheet_row(Row& row)
    {
        if (named_) return row.note(ProblemKind::duplicate, "record");
        sheet_.carrier = row.needed_text("name");
        sheet_.valid_from = date(row, "from");
        sheet_.valid_until = date(row, "until");
        sheet_.tax_permille = permille(row).value_or(0);
        const std::string details = row.text("details");
        for (const std::string_view phrase : phrases(details)) {
            const auto code = after(phrase, "currency");
            if (!code) {
                row.note(ProblemKind::unknown_word, "details", "currency");
            } else if (const auto currency = Currency::from(*code)) {
                sheet_.currency = *currency;
            } else {
                row.note(ProblemKind::unknown_currency, "details");
            }
        }
        named_ = row.sound();
    }

    void service_row(Row& row)
    {
        Service s;
        s.code = row.needed_text("service");
        s.name = row.blank("name") ? s.code : row.text("name");
        s.tax_permille = permille(row);
        const std::string details = row.text("details");
        for (const std::string_view phrase : phrases(details)) {
            if (!service_detail(phrase, s))
                row.note_part(ProblemKind::unknown_word, "details", std::string(phrase), std::string(service_words));
        }
        if (holds(sheet_.services, &Service::code, s.code)) row.note(ProblemKind::duplicate, "service");
        if (row.sound()) sheet_.services.push_back(std::move(s));
    }

    bool service_detail(std::string_view phrase, Service& s) const
    {
        if (phrase == "tracked") return s.tracked = true;
        if (phrase == "parcel post") return s.parcel_post = true;
        if (const auto text = after(phrase, "cover")) {
            const auto minor = number_of(*text, sheet_.currency.places(), mark_);
            if (minor) s.cover = Money{*minor, sheet_.currency};
            return minor.has_value();
        }
        if (const auto text = after(phrase, "days")) {
            const Ends ends = ends_of(*text);
            const auto least = number_of(ends.from, 0, mark_, true), most = number_of(ends.to, 0, mark_, true);
            if (!least || !most || *least > *most || *most > 365) return false;
            s.days_least = static_cast<int>(*least);
            s.days_most = static_cast<int>(*most);
            return true;
        }
        if (const auto text = after(phrase, "cut-off")) return cut_off(*text, s);
        if (const auto text = after(phrase, "collected")) return weekdays(*text, s.weekdays);
        if (const auto text = after(phrase, "divisor")) {
            s.volumetric_divisor = number_of(*text, 0, mark_);
            return s.volumetric_divisor && *s.volumetric_divisor <= 1'000'000;
        }
        if (const auto text = after(phrase, "rounding")) {
            const auto tenths = number_of(*text, 1, mark_);
            if (tenths) s.volumetric_rounding = Weight{*tenths};
            return tenths && *tenths <= weight_range.most;
        }
        if (const auto text = after(phrase, "above")) {
            const auto units = number_of(*text, 9, mark_, true);
            if (units) s.volumetric_above = Volume{*units};
            return units.has_value();
        }
        if (const auto text = after(phrase, "sides")) {
            const auto up = after(*text, "up to"), nearest = after(*text, "nearest");
            const auto tenths = number_of(up ? *up : nearest.value_or(""), 1, mark_);
            if (tenths) s.sides_to = Length{*tenths};
            s.sides_up = up.has_value();
            return tenths.has_value();
        }
        if (const auto text = after(phrase, "rolls count")) {
            const auto part = number_of(*text, 1, mark_);
            if (part) s.roll_permille = *part;
            return part && *part <= 1000;
        }
        if (const auto text = after(phrase, "not sent")) return contents(*text, s.not_sent);
        return false;
    }

    // "16:30" every day, "Sat 12:00" on one.
    static bool cut_off(std::string_view text, Service& s)
    {
        const auto day = std::find(weekday_names.begin(), weekday_names.end(), text.substr(0, text.find(' ')));
        if (day == weekday_names.end()) return (s.cut_off = parse_time_of_day(text)).has_value();
        const auto at = parse_time_of_day(trimmed(text.substr(day->size())));
        if (at) s.cut_offs.push_back({static_cast<int>(day - weekday_names.begin()) + 1, *at});
        return at.has_value();
    }

    static bool weekdays(std::string_view text, std::vector<int>& days)
    {
        while (!text.empty()) {
            const auto space = std::min(text.find(' '), text.size());
            const auto day = std::find(weekday_names.begin(), weekday_names.end(), text.substr(0, space));
            if (day == weekday_names.end()) return false;
            days.push_back(static_cast<int>(day - weekday_names.begin()) + 1);
            text = trimmed(text.substr(space));
        }
        return !days.empty();
    }

    static bool contents(std::string_view text, std::vector<std::string>& words)
    {
        while (!text.empty()) {
            const auto comma = std::min(text.find(','), text.size());
            const auto word = trimmed(text.substr(0, comma));
            if (word.empty()) return false;
            words.emplace_back(word);
            text = comma < text.size() ? text.substr(comma + 1) : std::string_view{};
        }
        return !words.empty();
    }

    void zone_row(Row& row)
    {
        const std::string name = row.needed_text("zone");
        const std::string details = row.text("details");
        std::vector<Place> places;
        for (const std::string_view phrase : phrases(details)) {
            const auto place = place_of(phrase);
            if (place)
                places.push_back(*place);
            else
                row.note_part(ProblemKind::unknown_country, "details", std::string(phrase));
        }
        if (!row.sound()) return;
        auto zone =
            std::find_if(sheet_.zones.begin(), sheet_.zones.end(), [&](const Zone& z) { return z.name == name; });
        if (zone == sheet_.zones.end()) zone = sheet_.zones.insert(zone, Zone{name, {}});
        zone->places.insert(zone->places.end(), places.begin(), places.end());
    }

    // Two capitals, or a star; then perhaps postcodes.
    static std::optional<Place> place_of(std::string_view phrase)
    {
        if (phrase == "*") return Place{"*", {}, {}};
        const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
        if (phrase.size() < 2 || !capital(phrase[0]) || !capital(phrase[1])) return std::nullopt;
        const auto postcodes = after(phrase, phrase.substr(0, 2));
        if (!postcodes) return std::nullopt;
        const Ends ends = ends_of(*postcodes);
        return Place{std::string(phrase.substr(0, 2)), std::string(ends.from), std::string(ends.to)};
    }

    void format_row(Row& row)
    {
        Format f;
        f.name = row.needed_text("format");
        const std::string details = row.text("details");
        for (const std::string_view phrase : phrases(details)) {
            if (!format_detail(phrase, f))
                row.note_part(ProblemKind::unknown_word, "details", std::string(phrase), std::string(format_words));
        }
        if (holds(sheet_.formats, &Format::name, f.name)) row.note(ProblemKind::duplicate, "format");
        if (row.sound()) sheet_.formats.push_back(std::move(f));
    }

    bool format_detail(std::string_view phrase, Format& f) const
    {
        struct Limit {
            std::string_view word;
            std::optional<Length> Format::*least;
            std::optional<Length> Format::*most;
        };
        static constexpr std::array<Limit, 7> limits{
            {{"length", &Format::least_length, &Format::most_length},
             {"width", &Format::least_width, &Format::most_width},
             {"height", &Format::least_height, &Format::most_height},
             {"sum", nullptr, &Format::most_sum},
             {"girth", nullptr, &Format::most_girth},
             {"roll length", &Format::roll_least_length, &Format::roll_most_length},
             {"roll sum", &Format::roll_least_sum, &Format::roll_most_sum}}};
        if (const auto text = after(phrase, "tolerance")) {
            const auto tenths = number_of(*text, 1, mark_);
            if (tenths) f.tolerance = Length{*tenths};
            return tenths.has_value();
        }
        if (const auto text = after(phrase, "ratio")) return ratio(*text, f);
        for (const Limit& limit : limits) {
            const auto text = after(phrase, limit.word);
            if (!text) continue;
            const Span span = span_of(*text, mark_);
            if ((!span.from && !span.to) || (span.from && limit.least == nullptr)) return false;
            if (span.from) f.*limit.least = span.from;
            if (span.to) f.*limit.most = span.to;
            return true;
        }
        return false;
    }

    // "1.3 to 2.5", "from 1.4": length to width.
    bool ratio(std::string_view text, Format& f) const
    {
        const auto permille_of = [&](std::string_view number) { return number_of(number, 3, mark_); };
        if (const auto rest = after(text, "from")) return (f.least_ratio = permille_of(*rest)).has_value();
        if (const auto rest = after(text, "to")) return (f.most_ratio = permille_of(*rest)).has_value();
        const Ends ends = ends_of(text);
        f.least_ratio = permille_of(ends.from);
        f.most_ratio = permille_of(ends.to);
        return f.least_ratio && f.most_ratio && *f.least_ratio <= *f.most_ratio;
    }

    // Names that a price refers to must stand in the sheet.
    template <class Priced>
    Priced priced(Row& row)
    {
        Priced p;
        p.service = row.needed_text("service");
        p.zone = row.needed_text("zone");
        p.format = row.text("format");
        refer(row, "service", holds(sheet_.services, &Service::code, p.service));
        refer(row, "zone", holds(sheet_.zones, &Zone::name, p.zone));
        refer(row, "format", holds(sheet_.formats, &Format::name, p.format));
        return p;
    }

    static void refer(Row& row, std::string_view column, bool known)
    {
        if (!known && !row.blank(column)) row.note(ProblemKind::unknown_code, column);
    }

    void step_row(Row& row)
    {
        Step s = priced<Step>(row);
        s.up_to = row.needed_weight("grams");
        s.price = needed_price(row);
        if (row.sound() && !stepped_.insert({s.service, s.zone, s.format, s.up_to}).second) {
            row.note(ProblemKind::duplicate, "grams");
        }
        if (row.sound()) sheet_.steps.push_back(std::move(s));
    }

    void volume_row(Row& row)
    {
        VolumeStep v = priced<VolumeStep>(row);
        v.most = row.needed_weight("grams");
        v.price = needed_price(row);
        const std::string details = row.text("details");
        const auto all = phrases(details);
        const auto text = all.size() == 1 ? after(all.front(), "litres") : std::nullopt;
        const auto units = text ? number_of(*text, 9, mark_) : std::nullopt;
        if (units)
            v.up_to = Volume{*units};
        else
            row.note(ProblemKind::unknown_word, "details", "litres");
        if (row.sound()) sheet_.volume_steps.push_back(std::move(v));
    }

    void holiday_row(Row& row)
    {
        const auto from = date(row, "from"), until = date(row, "until");
        if (row.blank("from")) row.note(ProblemKind::missing_value, "from");
        constexpr std::chrono::days longest{366};
        if (from && until && (*until < *from || *until - *from > longest))
            row.note(ProblemKind::out_of_range, "until", "≥ " + to_text(*from) + ", ≤ " + to_text(*from + longest));
        if (!row.sound()) return;
        for (Date day = *from; day <= until.value_or(*from); day += std::chrono::days(1))
            sheet_.holidays.push_back(day);
    }

    void beyond_row(Row& row)
    {
        BeyondLast b = priced<BeyondLast>(row);
        b.most = row.needed_weight("grams");
        b.per_kg = needed_price(row);
        if (row.sound()) sheet_.beyond.push_back(std::move(b));
    }

    void surcharge_row(Row& row)
    {
        Surcharge s;
        s.name = row.needed_text("name");
        s.service = row.text("service");
        s.zone = row.text("zone");
        refer(row, "service", holds(sheet_.services, &Service::code, s.service));
        refer(row, "zone", holds(sheet_.zones, &Zone::name, s.zone));
        s.from = date(row, "from");
        s.until = date(row, "until");
        s.format = row.text("format");
        refer(row, "format", holds(sheet_.formats, &Format::name, s.format));
        s.amount.currency = sheet_.currency;
        if (!row.blank("percent")) {
            s.kind = Surcharge::Kind::percent;
            s.permille = permille(row, true).value_or(0);
            if (!row.blank("price")) row.note(ProblemKind::conflicting_rows, "price");
        } else if (row.text("price").substr(0, 1) == "-") {
            s.amount = discount(row);
        } else {
            s.amount = needed_price(row);
        }
        const std::string details = row.text("details");
        for (const std::string_view phrase : phrases(details)) {
            if (!surcharge_detail(phrase, s))
                row.note_part(ProblemKind::unknown_word, "details", std::string(phrase), std::string(surcharge_words));
        }
        if (row.sound()) sheet_.surcharges.push_back(std::move(s));
    }

    Money discount(Row& row) const
    {
        const MoneyRead read = read_money(row.text("price"), sheet_.currency, mark_);
        if (read.money && read.money->currency == sheet_.currency && read.money->minor >= -most_minor)
            return *read.money;
        row.note(ProblemKind::not_a_number, "price");
        return {0, sheet_.currency};
    }

    bool surcharge_detail(std::string_view phrase, Surcharge& s) const
    {
        if (phrase == "rolls") return s.only_rolls = true;
        if (phrase == "not boxed") return s.only_unboxed = true;
        if (phrase == "per kg") {
            if (s.kind == Surcharge::Kind::percent) return false;
            s.kind = Surcharge::Kind::per_kg;
            return true;
        }
        if (phrase == "of value") {
            if (s.kind != Surcharge::Kind::percent) return false;
            s.kind = Surcharge::Kind::percent_of_value;
            return true;
        }
        if (const auto text = after(phrase, "with")) return contents(*text, s.also_of);
        if (const auto text = after(phrase, "in")) {
            std::vector<std::string> words;
            if (!contents(*text, words)) return false;
            for (const std::string& word : words) {
                const auto place = place_of(word);
                if (!place) return false;
                s.places.push_back(*place);
            }
            return true;
        }
        if (const auto text = after(phrase, "value above")) {
            const auto minor = number_of(*text, sheet_.currency.places(), mark_, true);
            if (minor) s.value_above = Money{*minor, sheet_.currency};
            return minor.has_value();
        }
        if (const auto text = after(phrase, "larger than")) {
            const auto units = number_of(*text, 9, mark_);
            if (units) s.larger_than = Volume{*units};
            return units.has_value();
        }
        for (const auto& [word, limit] :
             {std::pair{"wider than", &Surcharge::wider_than}, std::pair{"girth over", &Surcharge::girth_over}}) {
            const auto text = after(phrase, word);
            if (!text) continue;
            const auto tenths = number_of(*text, 1, mark_);
            if (tenths) s.*limit = Length{*tenths};
            return tenths.has_value();
        }
        if (const auto text = after(phrase, "longer than")) {
            const auto tenths = number_of(*text, 1, mark_);
            if (tenths) s.longer_than = Length{*tenths};
            return tenths.has_value();
        }
        if (const auto text = after(phrase, "heavier than")) {
            const auto tenths = number_of(*text, 1, mark_);
            if (tenths) s.heavier_than = Weight{*tenths};
            return tenths.has_value();
        }
        return false;
    }

    char mark_;
    Table table_;
    RateSheet sheet_;
    std::vector<std::string_view> kinds_; // by row
    std::set<std::tuple<std::string, std::string, std::string, Weight>> stepped_;
    bool named_ = false;
};

TakenRates read(const Csv& csv)
{
    TakenRates taken = Reader(csv).read();
    const bool readable = !csv.headings.empty();
    const bool told =
        std::any_of(taken.problems.begin(), taken.problems.end(), [](const Problem& p) { return p.stops; });
    if (!taken.sheet && readable && !told) {
        taken.problems.push_back({csv.file, 0, "record", ProblemKind::missing_value, {}, "sheet", true});
    }
    return taken;
}

} // namespace

TakenRates read_rate_sheet(std::istream& in, std::string name)
{
    return read(read_csv(in, std::move(name)));
}

TakenRates read_rate_sheet_file(const std::string& path)
{
    return read(read_csv_file(path));
}

} // namespace stow::intake
