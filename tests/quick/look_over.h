// Looks a drawn window over for what an eye would stumble on: words cut short, words over words, words too pale to
// read, and things to press or type in that a screen reader cannot name.
#pragma once

#include <QImage>
#include <QQuickWindow>
#include <QStringList>

namespace stow::quick {

// One line a fault, empty where there is none. `picture` is what the window drew just now. Contrast: WCAG 2.2, success
// criterion 1.4.3 (4.5 to 1; 3 to 1 for words of 24 px, or bold of 18.66 px, and above; what is disabled is exempt).
// A label with `shortens` set holds what others typed (names, titles) and may end in "…".
QStringList look_over(QQuickWindow& window, const QImage& picture);

// Relative luminance contrast, 1 to 21 (WCAG 2.2, definitions of "contrast ratio" and "relative luminance").
double contrast(const QColor& one, const QColor& other);

} // namespace stow::quick
