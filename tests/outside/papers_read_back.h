// Reads a rendered paper with programs that know nothing of ours: poppler for pages and text, zbar for codes.
#pragma once

#include "core/papers/display_list.h"

#include <QImage>
#include <QString>
#include <QTemporaryDir>

#include <optional>
#include <string>
#include <vector>

namespace stow::outside {

// A run of text on a page, in points from its upper left corner.
struct PrintedText {
    int page = 0; // from 1
    std::string text;
    double size = 0; // of its font
    double left = 0, top = 0, width = 0, height = 0;
};

// A scanner is held before the code: so much of the page around it is seen.
papers::Document before_the_scanner(const papers::DisplayList& page, const papers::Modules& code);

class Rendered {
public:
    // Writes the paper as PDF into a folder of its own.
    Rendered(const papers::Document& document, bool black_only);

    bool written() const { return written_; }
    std::string text() const;                                  // all pages, as pdftotext lays it out
    QImage page(int number, int dpi) const;                    // from 1
    QImage sharp_page(int number, int dpi) const;              // in colour, its edges not smoothed
    std::vector<std::string> codes(int number, int dpi) const; // what zbarimg reads on the page, sorted
    // The same of a worse picture: the sheet laid askew, each pixel turned over with this chance, seen by a lens that
    // takes each pixel with its neighbours.
    std::vector<std::string> codes_of_worse(int number, int dpi, double noise, double degrees, unsigned seed) const;
    std::vector<PrintedText> texts() const; // as pdftohtml finds them, with their sizes
    QByteArray fonts() const;               // as pdffonts lists them
    std::vector<QImage> pictures() const;   // that the file holds
    std::string raw() const;                // the bytes of the file

private:
    QString picture(int number, int dpi) const; // its file
    static std::vector<std::string> read(const QString& picture);

    QTemporaryDir folder_;
    QString file_;
    bool written_ = false;
};

} // namespace stow::outside
