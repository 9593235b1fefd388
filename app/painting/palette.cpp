#include "app/painting/palette.h"

namespace stow::painting {

namespace {

QColor mixed(const QColor& base, const QColor& with, int percent)
{
    const auto part = [percent](int a, int b) { return (a * (100 - percent) + b * percent) / 100; };
    return {part(base.red(), with.red()), part(base.green(), with.green()), part(base.blue(), with.blue())};
}

} // namespace

QColor Palette::of(const papers::Fill& fill) const
{
    switch (fill.shade) {
    case papers::Shade::lit: return of(fill.role);
    case papers::Shade::half: return mixed(of(fill.role), shadow, half);
    case papers::Shade::shaded: return mixed(of(fill.role), shadow, shaded);
    }
    return of(fill.role);
}

// In the order of papers::Role: paper, sheet, ink, second ink, hairline, accent, ochre, brick, board, goods a to f,
// highlight.
const Palette& light()
{
    static const Palette palette{{QColor(0xFAF8F4), QColor(0xFFFFFF), QColor(0x1D2733), QColor(0x5B6672),
                                  QColor(0xD9D4CA), QColor(0x0E6B5C), QColor(0xB7791F), QColor(0xA63A2B),
                                  QColor(0xF1E9DB), QColor(0xF7EFDD), QColor(0xE3ECF1), QColor(0xF4E3DA),
                                  QColor(0xE6EEE0), QColor(0xEDE6F2), QColor(0xF8EBC8), QColor(0xD6EAE5)},
                                 QColor(0x8A7A5C),
                                 16,
                                 30,
                                 false};
    return palette;
}

const Palette& dark()
{
    static const Palette palette{{QColor(0x15191E), QColor(0x1C2228), QColor(0xECE7DD), QColor(0xA3ABB3),
                                  QColor(0x3A424A), QColor(0x5CC2AE), QColor(0xE0A94A), QColor(0xE58372),
                                  QColor(0x332E26), QColor(0x4A4336), QColor(0x36444E), QColor(0x4E3E38),
                                  QColor(0x3B4736), QColor(0x443C4E), QColor(0x50462C), QColor(0x244A43)},
                                 QColor(0x0B0D10),
                                 22,
                                 40,
                                 false};
    return palette;
}

const Palette& black_only()
{
    static const Palette palette = [] {
        Palette p;
        p.colour.fill(QColor(Qt::black));
        for (const papers::Role white :
             {papers::Role::paper, papers::Role::sheet, papers::Role::board, papers::Role::goods_a,
              papers::Role::goods_b, papers::Role::goods_c, papers::Role::goods_d, papers::Role::goods_e,
              papers::Role::goods_f, papers::Role::highlight}) {
            p.colour[static_cast<std::size_t>(white)] = QColor(Qt::white);
        }
        p.shadow = QColor(Qt::white);
        p.two_tones = true;
        return p;
    }();
    return palette;
}

} // namespace stow::painting
