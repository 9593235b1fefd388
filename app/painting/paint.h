// One painter for display lists: screen, image and PDF alike.
#pragma once

#include "app/painting/palette.h"
#include "core/papers/display_list.h"

#include <QImage>
#include <QString>

class QPainter;
class QIODevice;

namespace stow::painting {

struct Medium {
    qreal least_pen = 0; // in device pixels: thinner lines would vanish on a screen
};
constexpr Medium on_paper{0};
constexpr Medium on_screen{1};

// Paints into `target` (in the painter's coordinates) at the largest scale that fits, centred. The painter is left as
// it was.
void paint(QPainter& painter, const QRectF& target, const papers::DisplayList& list, const Palette& palette,
           const Medium& medium);

QImage to_image(const papers::DisplayList& list, QSize pixels, const Palette& palette);

// One PDF page a display list, in its own size. False when the device cannot be written.
bool write_pdf(QIODevice& device, const papers::Document& document, const Palette& palette);
bool write_pdf(const QString& file, const papers::Document& document, const Palette& palette);

} // namespace stow::painting
