// A rate sheet as the text that rate_sheet_csv.h describes.
#include "core/intake/csv.h"
#include "core/intake/rate_details.h"
#include "core/intake/rate_sheet_csv.h"

namespace stow::intake {

namespace {

using namespace postage;

struct Cells { // of one row, in the order of the columns
    std::string record, name, service, zone, format, grams, price, percent, from, until, details;

    std::string line() const
    {
        return csv_line({record, name, service, zone, format, grams, price, percent, from, until, details});
    }
    void detail(const std::string& phrase) { details += (details.empty() ? "" : " / ") + phrase; }
};

Cells cells(std::string record)
{
    Cells c;
    c.record = std::move(record);
    return c;
}

std::string text(Weight w)
{
    return short_number(w.units, 1);
}
std::string text(Length l)
{
    return short_number(l.units, 1);
}
std::string text(std::optional<Date> date)
{
    return date ? to_text(*date) : std::string{};
}
std::string price_text(Money m)
{
    return unscaled(m.minor, m.currency.places());
}
std::string percent_text(std::int64_t permille)
{
    return short_number(permille, 1);
}

std::string sheet_row(const RateSheet& sheet)
{
    Cells c = cells("sheet");
    c.name = sheet.carrier;
    c.percent = percent_text(sheet.tax_permille);
    c.from = text(sheet.valid_from);
    c.until = text(sheet.valid_until);
    c.detail("currency " + sheet.currency.code());
    return c.line();
}

std::string service_row(const Service& s)
{
    Cells c = cells("service");
    c.service = s.code;
    c.name = s.name;
    if (s.tax_permille) c.percent = percent_text(*s.tax_permille);
    if (s.tracked) c.detail("tracked");
    if (s.parcel_post) c.detail("parcel post");
    if (s.cover) c.detail("cover " + price_text(*s.cover));
    c.detail("days " + std::to_string(s.days_least) + " to " + std::to_string(s.days_most));
    if (s.cut_off) c.detail("cut-off " + to_text(*s.cut_off));
    for (const CutOff& own : s.cut_offs) {
        c.detail("cut-off " + std::string(weekday_names.at(static_cast<std::size_t>(own.weekday - 1))) + " " +
                 to_text(own.at));
    }
    if (!s.weekdays.empty()) {
        std::string days = "collected";
        for (const int day : s.weekdays) days += " " + std::string(weekday_names.at(static_cast<std::size_t>(day - 1)));
        c.detail(days);
    }
    if (s.volumetric_divisor) c.detail("divisor " + std::to_string(*s.volumetric_divisor));
    if (s.volumetric_divisor || s.volumetric_rounding != Service{}.volumetric_rounding) {
        c.detail("rounding " + text(s.volumetric_rounding));
    }
    if (s.volumetric_above) c.detail("above " + short_number(s.volumetric_above->units, 9));
    if (s.sides_to.units != 0) c.detail((s.sides_up ? "sides up to " : "sides nearest ") + text(s.sides_to));
    if (s.roll_permille != 1000) c.detail("rolls count " + percent_text(s.roll_permille));
    std::string words;
    for (const std::string& word : s.not_sent) words += (words.empty() ? "" : ", ") + word;
    if (!words.empty()) c.detail("not sent " + words);
    return c.line();
}

std::string place_text(const Place& p)
{
    std::string place = p.country;
    if (!p.postcode_from.empty()) place += " " + p.postcode_from;
    if (p.postcode_to != p.postcode_from) place += " to " + p.postcode_to;
    return place;
}

std::string zone_row(const Zone& zone)
{
    Cells c = cells("zone");
    c.zone = zone.name;
    for (const Place& p : zone.places) c.detail(place_text(p));
    return c.line();
}

std::string format_row(const Format& f)
{
    Cells c = cells("format");
    c.format = f.name;
    const auto limit = [&](const std::string& word, const std::optional<Length>& least,
                           const std::optional<Length>& most) {
        if (least && most)
            c.detail(word + " " + text(*least) + " to " + text(*most));
        else if (most)
            c.detail(word + " to " + text(*most));
        else if (least)
            c.detail(word + " from " + text(*least));
    };
    limit("length", f.least_length, f.most_length);
    limit("width", f.least_width, f.most_width);
    limit("height", f.least_height, f.most_height);
    limit("sum", std::nullopt, f.most_sum);
    limit("girth", std::nullopt, f.most_girth);
    if (f.least_ratio && f.most_ratio)
        c.detail("ratio " + short_number(*f.least_ratio, 3) + " to " + short_number(*f.most_ratio, 3));
    else if (f.least_ratio)
        c.detail("ratio from " + short_number(*f.least_ratio, 3));
    else if (f.most_ratio)
        c.detail("ratio to " + short_number(*f.most_ratio, 3));
    limit("roll length", f.roll_least_length, f.roll_most_length);
    limit("roll sum", f.roll_least_sum, f.roll_most_sum);
    if (f.tolerance.units != 0) c.detail("tolerance " + text(f.tolerance));
    return c.line();
}

template <class Priced>
Cells priced_row(std::string record, const Priced& row)
{
    Cells c = cells(std::move(record));
    c.service = row.service;
    c.zone = row.zone;
    c.format = row.format;
    return c;
}

std::string step_row(const Step& s)
{
    Cells c = priced_row("step", s);
    c.grams = text(s.up_to);
    c.price = price_text(s.price);
    return c.line();
}

std::string beyond_row(const BeyondLast& b)
{
    Cells c = priced_row("beyond", b);
    c.grams = text(b.most);
    c.price = price_text(b.per_kg);
    return c.line();
}

std::string volume_row(const VolumeStep& s)
{
    Cells c = priced_row("volume", s);
    c.grams = text(s.most);
    c.price = price_text(s.price);
    c.detail("litres " + short_number(s.up_to.units, 9));
    return c.line();
}

std::string holiday_row(Date day)
{
    Cells c = cells("holiday");
    c.from = to_text(day);
    return c.line();
}

std::string listed(const std::vector<std::string>& words)
{
    std::string list;
    for (const std::string& word : words) list += (list.empty() ? "" : ", ") + word;
    return list;
}

std::string surcharge_row(const Surcharge& s)
{
    Cells c = cells("surcharge");
    c.name = s.name;
    c.service = s.service;
    c.zone = s.zone;
    c.from = text(s.from);
    c.until = text(s.until);
    c.format = s.format;
    if (s.kind == Surcharge::Kind::percent || s.kind == Surcharge::Kind::percent_of_value)
        c.percent = percent_text(s.permille);
    else
        c.price = price_text(s.amount);
    if (s.kind == Surcharge::Kind::per_kg) c.detail("per kg");
    if (s.kind == Surcharge::Kind::percent_of_value) c.detail("of value");
    if (!s.also_of.empty()) c.detail("with " + listed(s.also_of));
    if (s.longer_than) c.detail("longer than " + text(*s.longer_than));
    if (s.wider_than) c.detail("wider than " + text(*s.wider_than));
    if (s.girth_over) c.detail("girth over " + text(*s.girth_over));
    if (s.larger_than) c.detail("larger than " + short_number(s.larger_than->units, 9));
    if (s.heavier_than) c.detail("heavier than " + text(*s.heavier_than));
    if (s.value_above) c.detail("value above " + price_text(*s.value_above));
    if (s.only_rolls) c.detail("rolls");
    if (s.only_unboxed) c.detail("not boxed");
    std::vector<std::string> places;
    for (const Place& p : s.places) places.push_back(place_text(p));
    if (!places.empty()) c.detail("in " + listed(places));
    return c.line();
}

} // namespace

std::string write_rate_sheet(const RateSheet& sheet)
{
    std::string out = csv_line(
        {"record", "name", "service", "zone", "format", "grams", "price", "percent", "from", "until", "details"});
    out += sheet_row(sheet);
    for (const Service& s : sheet.services) out += service_row(s);
    for (const Zone& z : sheet.zones) out += zone_row(z);
    for (const Format& f : sheet.formats) out += format_row(f);
    for (const Step& s : sheet.steps) out += step_row(s);
    for (const BeyondLast& b : sheet.beyond) out += beyond_row(b);
    for (const VolumeStep& s : sheet.volume_steps) out += volume_row(s);
    for (const Surcharge& s : sheet.surcharges) out += surcharge_row(s);
    for (const Date day : sheet.holidays) out += holiday_row(day);
    return out;
}

} // namespace stow::intake
