#include "core/book/rate_sheets.h"

#include "core/book/documents.h"
#include "core/book/step_writer.h"

namespace stow::book {

namespace {

std::string stored(const std::optional<Date>& day)
{
    return day ? to_text(*day) : std::string();
}

// True when there was none of this carrier and first day.
bool put(const Book& book, Writer& writer, const postage::RateSheet& sheet)
{
    const std::string document = intake::to_document(sheet);
    if (Query(book, "SELECT 1 FROM rate_sheet WHERE carrier = ? AND valid_from = ?", sheet.carrier,
              stored(sheet.valid_from))
            .next()) {
        writer.run("UPDATE rate_sheet SET document = ?, valid_until = ? WHERE carrier = ? AND valid_from = ?", document,
                   stored(sheet.valid_until), sheet.carrier, stored(sheet.valid_from));
        return false;
    }
    writer.add("INSERT INTO rate_sheet (carrier, valid_from, valid_until, document) VALUES (?, ?, ?, ?)", sheet.carrier,
               stored(sheet.valid_from), stored(sheet.valid_until), document);
    return true;
}

} // namespace

Taken take_in_rate_sheets(Book& book, const std::vector<postage::RateSheet>& sheets, const std::string& file)
{
    Taken taken;
    const std::vector<postage::RateSheet> before = rate_sheets(book);
    const Done done = in_step(book, StepKind::take_in_rates, {{"file", file}}, [&](Writer& writer) -> Allowed {
        for (const postage::RateSheet& sheet : sheets) {
            if (std::find(before.begin(), before.end(), sheet) != before.end())
                ++taken.unchanged;
            else
                ++(put(book, writer, sheet) ? taken.fresh : taken.changed);
        }
        return {};
    });
    taken.step = done.value();
    return taken;
}

Done put_rate_sheet(Book& book, const postage::RateSheet& sheet)
{
    return in_step(book, StepKind::edit_rates, {{"carrier", sheet.carrier}}, [&](Writer& writer) -> Allowed {
        put(book, writer, sheet);
        return {};
    });
}

Done remove_rate_sheet(Book& book, const std::string& carrier, std::optional<Date> valid_from)
{
    return in_step(
        book, StepKind::remove, {{"carrier", carrier}, {"what", "rate sheet"}}, [&](Writer& writer) -> Allowed {
            writer.run("DELETE FROM rate_sheet WHERE carrier = ? AND valid_from = ?", carrier, stored(valid_from));
            return {};
        });
}

std::vector<postage::RateSheet> rate_sheets(const Book& book)
{
    return read_documents<postage::RateSheet>(book, "rate_sheet", "carrier, valid_from");
}

} // namespace stow::book
