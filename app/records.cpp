#include "app/records.h"

#include "app/her_papers.h"
#include "app/painting/fonts.h"
#include "app/paper_keys.h"
#include "core/book/ledger.h"
#include "core/book/parcels.h"
#include "core/book/prints.h"
#include "core/papers/material_report.h"

#include <fmt/format.h>
#include <fstream>

namespace stow {

namespace {

std::string counted_as(Date from, Date until)
{
    return to_text(from) + ".." + to_text(until);
}

} // namespace

RecordsRead read_records(const book::Book& book, const shop::Cupboard& cupboard, Date from, Date until)
{
    RecordsRead read{book::packed_facts(book, from, until), {}};
    const auto average = book::average_costs(book, cupboard.house.currency);
    read.accounts.reserve(read.facts.size());
    for (const records::ParcelFacts& one : read.facts) read.accounts.push_back(account_of(one, cupboard, average));
    return read;
}

std::string materials_csv(const Day& day, const std::vector<records::ParcelFacts>& facts, Date from, Date until)
{
    std::string csv = "from,until,country,material,grams,of_goods_grams,used_again_grams\n";
    for (const records::MaterialLine& line : records::materials(facts, day.cupboard())) {
        csv += fmt::format("{},{},{},{},{:.1f},{:.1f},{:.1f}\n", to_text(from), to_text(until), csv_cell(line.country),
                           shop::name_of(line.material), in_grams(line.weight), in_grams(line.of_goods),
                           in_grams(line.again));
    }
    return csv;
}

papers::Document material_paper(const Day& day, const std::vector<records::ParcelFacts>& facts, Date from, Date until)
{
    const papers::MaterialReport report{from, until, static_cast<int>(facts.size()),
                                        records::materials(facts, day.cupboard()),
                                        reprint_of(day, paper_key::packaging, {counted_as(from, until)})};
    const painting::FontMeasure measure;
    return papers::lay_out(report, blank_of(day), her_words(), measure);
}

std::optional<std::filesystem::path> print_material_report(Day& day, const std::vector<records::ParcelFacts>& facts,
                                                           Date from, Date until, const std::filesystem::path& folder)
{
    auto file = write_document(folder, paper_key::packaging, material_paper(day, facts, from, until), palette_of(day));
    if (!file) return std::nullopt;
    std::ofstream out(folder / (std::string(paper_key::packaging) + ".csv"), std::ios::binary);
    out << materials_csv(day, facts, from, until);
    if (!out.flush()) return std::nullopt;
    book::count_print(day.book(), paper_key::packaging, {counted_as(from, until)});
    return file;
}

} // namespace stow
