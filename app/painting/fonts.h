// The program's own fonts and their metrics.
#pragma once

#include "core/papers/text.h"

#include <QFont>
#include <QFontMetricsF>
#include <QString>

#include <map>
#include <string>
#include <utility>

namespace stow::painting {

// Makes B612 and Noto Sans known to Qt; call once after the QGuiApplication is made. False if one could not be read.
bool load_fonts();

// The family to ask Qt for: B612 under a name of our own. On a machine that has Debian's B612 installed, Qt would take
// its monospaced cut instead, which carries the family name B612 as well.
QString text_family();

QFont font_of(const papers::Style& style); // pixel size: the em in 0.01 mm

// Remembers what it measured, for one thread at a time: papers set the same words again and again.
class FontMeasure : public papers::TextMeasure {
public:
    int width(std::string_view utf8, const papers::Style& style) const override;
    int line_height(const papers::Style& style) const override;

private:
    struct OneFont {
        QFontMetricsF metrics;
        std::map<std::string, int, std::less<>> widths;
    };
    mutable std::map<std::pair<int, papers::Face>, OneFont> fonts_; // by size and face
};

} // namespace stow::painting
