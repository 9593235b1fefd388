// Postage measured: a quote over 30 services, the price and the savings of it, and a table of 100,000 postcodes read,
// made ready and checked. Times are reported, never asserted.
#include "core/intake/rate_sheet_csv.h"
#include "core/postage/saving.h"

#include <algorithm>
#include <chrono>
#include <fmt/format.h>
#include <sstream>
#include <vector>

namespace {

using namespace stow;
using Clock = std::chrono::steady_clock;

// The median of so many runs, in microseconds.
template <class Work>
double median_us(int runs, Work work)
{
    std::vector<double> times;
    for (int i = 0; i < runs; ++i) {
        const auto begun = Clock::now();
        work();
        times.push_back(std::chrono::duration<double, std::micro>(Clock::now() - begun).count());
    }
    std::nth_element(times.begin(), times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2), times.end());
    return times[times.size() / 2];
}

// Three carriers of ten services: six zones, four formats, eight steps, volumetric weight and two surcharges each.
std::vector<postage::RateSheet> thirty_services()
{
    std::vector<postage::RateSheet> sheets;
    for (int carrier = 0; carrier < 3; ++carrier) {
        postage::RateSheet sheet;
        sheet.carrier = "carrier " + std::to_string(carrier);
        sheet.tax_permille = 250;
        sheet.zones = {{"home", {{"DK", "", ""}, {"DK", "37", "37"}}},
                       {"near", {{"DE", "", ""}, {"SE", "", ""}}},
                       {"mid", {{"FR", "", ""}, {"IT", "", ""}}},
                       {"far", {{"GB", "", ""}, {"NO", "", ""}}},
                       {"islands", {{"DE", "25", "25"}}},
                       {"world", {{"*", "", ""}}}};
        for (int f = 0; f < 4; ++f) {
            postage::Format format;
            format.name = "format " + std::to_string(f);
            format.most_length = mm(300 + 300 * f);
            format.most_girth = mm(700 + 800 * f);
            sheet.formats.push_back(format);
        }
        for (int s = 0; s < 10; ++s) {
            postage::Service service;
            service.code = "service " + std::to_string(s);
            service.volumetric_divisor = 5000;
            sheet.services.push_back(service);
            for (const postage::Zone& zone : sheet.zones) {
                for (int f = 0; f < 4; ++f) {
                    for (int step = 1; step <= 8; ++step) {
                        sheet.steps.push_back({service.code, zone.name, sheet.formats[static_cast<std::size_t>(f)].name,
                                               grams(500 * step * step), Money{300 + 100 * step + 50 * f + s, {}}});
                    }
                }
            }
        }
        postage::Surcharge fuel;
        fuel.name = "fuel";
        fuel.kind = postage::Surcharge::Kind::percent;
        fuel.permille = 75;
        postage::Surcharge lengthy;
        lengthy.name = "long";
        lengthy.amount = Money{400, {}};
        lengthy.longer_than = mm(600);
        sheet.surcharges = {fuel, lengthy};
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

// A sheet whose second zone names every other five-figure postcode of a country, one row each.
std::string postcode_table()
{
    std::string csv = "record,name,service,zone,format,grams,price,percent,from,until,details\r\n"
                      "sheet,Petrel Parcels,,,,,,,,,currency EUR\r\n"
                      "service,Petrel,petrel,,,,,,,,\r\n"
                      "zone,,,home,,,,,,,DE\r\n"
                      "step,,petrel,home,,1000,4.90,,,,\r\n"
                      "step,,petrel,apart,,1000,9.90,,,,\r\n";
    for (int row = 0; row < 100'000; ++row) {
        csv += "zone,,,apart,,,,,,,DE " + std::to_string(200'000 + row).substr(1) + "\r\n";
    }
    return csv;
}

} // namespace

int main()
{
    const auto sheets = thirty_services();
    postage::ParcelFacts parcel;
    parcel.closed = {mm(250), mm(180), mm(90)};
    parcel.weight = grams(812);
    parcel.country = "DE";
    parcel.postcode = "20095";
    parcel.hand_over = *parse_date("2026-11-25");
    const postage::Tariffs tariffs(sheets);
    std::size_t taken = 0;
    const double quote = median_us(2000, [&] { taken += tariffs.quotes(parcel).size(); });
    const double unprepared = median_us(200, [&] { taken += postage::quotes(sheets, parcel).size(); });
    const auto now = tariffs.quotes(parcel).front();
    const double saving = median_us(50, [&] { taken += postage::savings(tariffs, parcel, now).size(); });
    fmt::print("a quote over 30 services: {:.1f} us (sheets made ready once), {:.1f} us (anew each time)\n", quote,
               unprepared);
    fmt::print("what 20 mm of each edge and 50 g less would save: {:.0f} us\n", saving);

    const std::string csv = postcode_table();
    intake::TakenRates read;
    const double load = median_us(5, [&] {
        std::istringstream in(csv);
        read = intake::read_rate_sheet(in, "postcodes.csv");
    });
    const double ready = median_us(5, [&] { taken += postage::Tariffs({*read.sheet}).quotes(parcel).size(); });
    const double check = median_us(5, [&] { taken += postage::check(*read.sheet, parcel.hand_over).size(); });
    const postage::Tariffs many({*read.sheet});
    const double one = median_us(2000, [&] { taken += many.quotes(parcel).size(); });
    fmt::print("100,000 postcodes: read {:.0f} ms, made ready {:.0f} ms, checked {:.0f} ms, then a quote {:.2f} us "
               "(places {}, problems {})\n",
               load / 1000, ready / 1000, check / 1000, one, read.sheet->zones.back().places.size(),
               read.problems.size());
    return taken == 0 ? 1 : 0;
}
