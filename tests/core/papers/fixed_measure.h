// Text metrics for tests: every letter 0.55 em wide, lines 1.25 em apart.
#pragma once

#include "core/papers/text.h"

namespace stow::papers {

class FixedMeasure : public TextMeasure {
public:
    int width(std::string_view utf8, const Style& style) const override
    {
        int letters = 0;
        for (const char c : utf8) letters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
        return letters * style.size * 55 / 100;
    }
    int line_height(const Style& style) const override { return style.size * 5 / 4; }
};

} // namespace stow::papers
