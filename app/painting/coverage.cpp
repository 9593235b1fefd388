#include "app/painting/coverage.h"

#include "app/painting/fonts.h"

#include <QChar>
#include <QGlyphRun>
#include <QRawFont>
#include <QTextLayout>

#include <algorithm>

namespace stow::painting {

namespace {

// Glyph 0 is the one that stands for a missing letter. Of a font of small pictures (its table CBLC), as those of
// coloured emoji are, Qt's PDF shows nothing.
bool drawn(const QGlyphRun& run)
{
    return !run.glyphIndexes().contains(0) && run.rawFont().fontTable("CBLC").isEmpty();
}

// Set as papers are set, with every font Qt falls back on.
bool all_drawn(std::string_view utf8)
{
    const QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    QTextLayout layout(text, font_of({papers::from_pt(11), papers::Face::regular, papers::Role::ink}));
    layout.beginLayout();
    layout.createLine();
    layout.endLayout();
    const QList<QGlyphRun> runs = layout.glyphRuns();
    return std::all_of(runs.begin(), runs.end(), drawn);
}

} // namespace

std::string letters_without_font(std::string_view utf8)
{
    std::string missing;
    if (all_drawn(utf8)) return missing; // nearly always
    for (const std::string_view letter : papers::letters(utf8)) {
        if (missing.find(letter) == std::string::npos && !all_drawn(letter)) missing += letter;
    }
    return missing;
}

std::string package_with(std::string_view letter)
{
    const char32_t code = papers::code_point(letter);
    if (code >= 0x1F000 && code < 0x1F900) return "fonts-symbola"; // emoji with outlines
    if (code >= 0x1F900 && code < 0x20000) return {};              // newer ones: only some
    switch (QChar::script(code)) {
    case QChar::Script_Han:
    case QChar::Script_Hiragana:
    case QChar::Script_Katakana:
    case QChar::Script_Bopomofo:
    case QChar::Script_Hangul: return "fonts-noto-cjk";
    case QChar::Script_Unknown: return {}; // private or not yet given to any writing
    default: return "fonts-noto-core";
    }
}

} // namespace stow::painting
