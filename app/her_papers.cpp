#include "app/her_papers.h"

#include "app/painting/paint.h"
#include "core/book/prints.h"
#include "core/intake/csv.h"

#include <QLocale>
#include <QString>

namespace stow {

papers::Words her_words()
{
    const bool german = QLocale().language() == QLocale::German;
    return papers::Words(german ? papers::Language::german : papers::Language::english);
}

papers::Format format_of(const Day& day)
{
    return day.cupboard().house.paper == shop::PaperSize::letter ? papers::Format::letter : papers::Format::a4;
}

papers::Blank blank_of(const Day& day)
{
    const auto margin = static_cast<int>(day.cupboard().house.margin.units) * 10; // 0.1 mm to 0.01 mm
    return {papers::extent_of(format_of(day)), margin};
}

const painting::Palette& palette_of(const Day& day)
{
    return day.cupboard().house.black_only ? painting::black_only() : painting::light();
}

std::optional<papers::Reprint> reprint_of(const Day& day, const std::string& paper, const std::vector<std::string>& of)
{
    const int print = book::next_print(day.book(), paper, of);
    if (print < 2) return std::nullopt;
    return papers::Reprint{print, day.today(), day.time()};
}

std::optional<std::filesystem::path> write_document(const std::filesystem::path& folder, const std::string& name,
                                                    const papers::Document& document, const painting::Palette& palette)
{
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    const std::filesystem::path file = folder / (name + ".pdf");
    if (error || document.pages.empty() ||
        !painting::write_pdf(QString::fromStdString(file.string()), document, palette)) {
        return std::nullopt;
    }
    return file;
}

std::string no_formula(const std::string& text)
{
    const bool formula = !text.empty() && std::string("=+-@\t\r").find(text.front()) != std::string::npos;
    return formula ? "'" + text : text;
}

std::string csv_cell(const std::string& text)
{
    return intake::csv_cell(no_formula(text));
}

} // namespace stow
