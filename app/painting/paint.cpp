#include "app/painting/paint.h"

#include "app/painting/fonts.h"

#include <QFile>
#include <QPageSize>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>

namespace stow::painting {

namespace {

// Black where it is dark, on white: also where the picture lets the paper through. Finely enough (600 dots an inch of
// its place) that its edges stay smooth to the eye.
QImage in_two_tones(const QImage& picture, const QSizeF& place)
{
    const QSize fine = (place * 600 / 2540).toSize().expandedTo({1, 1});
    QImage on_white(fine, QImage::Format_RGB32);
    on_white.fill(Qt::white);
    QPainter(&on_white).drawImage(0, 0, picture.scaled(fine, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
    return on_white.convertToFormat(QImage::Format_Mono, Qt::MonoOnly | Qt::ThresholdDither);
}

class Brushwork {
public:
    Brushwork(QPainter& painter, const Palette& palette, qreal least_pen)
        : painter_(painter), palette_(palette), least_pen_(least_pen)
    {
    }

    void operator()(const papers::Path& path)
    {
        prepare(path.pen, path.fill);
        QPolygonF polygon;
        for (const papers::Point& p : path.points) polygon << QPointF(p.x, p.y);
        if (path.closed && path.fill && hatched(*path.fill)) {
            QPainterPath outline;
            outline.addPolygon(polygon);
            outline.closeSubpath();
            hatch(outline, *path.fill);
        }
        if (path.closed)
            painter_.drawPolygon(polygon);
        else
            painter_.drawPolyline(polygon);
    }

    void operator()(const papers::Arc& arc)
    {
        prepare(arc.pen, arc.fill);
        painter_.save();
        painter_.translate(arc.centre.x, arc.centre.y);
        painter_.rotate(-arc.turn / 16.0); // Qt turns clockwise
        const QRectF box(-arc.first, -arc.second, 2.0 * arc.first, 2.0 * arc.second);
        if (arc.span == papers::full_circle) {
            if (arc.fill && hatched(*arc.fill)) {
                QPainterPath outline;
                outline.addEllipse(box);
                hatch(outline, *arc.fill);
            }
            painter_.drawEllipse(box);
        } else {
            QPainterPath curve;
            curve.arcMoveTo(box, arc.start / 16.0);
            curve.arcTo(box, arc.start / 16.0, arc.span / 16.0);
            painter_.strokePath(curve, painter_.pen());
        }
        painter_.restore();
    }

    void operator()(const papers::TextLine& line)
    {
        const QFont font = font_of(line.style);
        const QString text = QString::fromStdString(line.text);
        qreal x = line.at.x;
        const qreal width = QFontMetricsF(font).horizontalAdvance(text);
        if (line.align == papers::Align::centre) x -= width / 2;
        if (line.align == papers::Align::end) x -= width;
        painter_.setLayoutDirection(line.direction == papers::Direction::right_to_left ? Qt::RightToLeft
                                                                                       : Qt::LeftToRight);
        painter_.setFont(font);
        painter_.setPen(palette_.of(line.style.role));
        painter_.drawText(QPointF(x, line.at.y), text);
    }

    // As rectangles a row's run long, so that no seam shows between modules.
    void operator()(const papers::Modules& code)
    {
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(Qt::black); // also on a dark ground: readers want dark on light
        const auto dark = [&](int row, int column) {
            return code.dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(code.side) +
                             static_cast<std::size_t>(column)];
        };
        for (int row = 0; row < code.side; ++row) {
            for (int from = 0; from < code.side; ++from) {
                if (!dark(row, from)) continue;
                int to = from;
                while (to < code.side && dark(row, to)) ++to;
                painter_.drawRect(QRectF(code.at.x + from * code.module, code.at.y + row * code.module,
                                         (to - from) * code.module, code.module));
                from = to;
            }
        }
    }

    // What cannot be read leaves its place empty: a slip goes without a logo rather than not at all.
    void operator()(const papers::Picture& picture)
    {
        QImage image(QString::fromStdString(picture.file));
        if (image.isNull()) return;
        const QSizeF frame(picture.frame.width, picture.frame.height);
        const QRectF target(QPointF(picture.at.x, picture.at.y),
                            QSizeF(image.size()).scaled(frame, Qt::KeepAspectRatio));
        if (palette_.two_tones) image = in_two_tones(image, target.size());
        painter_.setRenderHint(QPainter::SmoothPixmapTransform, !palette_.two_tones);
        painter_.setRenderHint(QPainter::LosslessImageRendering, palette_.two_tones); // a photo's packing would grey it
        painter_.drawImage(target, image);
    }

private:
    // Where tints cannot tell, hatching does: shaded faces, and densest the thing to look at.
    bool hatched(const papers::Fill& fill) const
    {
        const bool white = palette_.of(fill) == Qt::white;
        return palette_.two_tones && white &&
               (fill.role == papers::Role::highlight || fill.shade == papers::Shade::shaded);
    }
    // Fills white, then draws the lines; the outline is left to the caller, whose brush is taken away.
    void hatch(const QPainterPath& outline, const papers::Fill& fill)
    {
        painter_.fillPath(outline, palette_.of(fill));
        const qreal apart = fill.role == papers::Role::highlight ? 90 : 150;
        painter_.save();
        painter_.setClipPath(outline, Qt::IntersectClip);
        painter_.setPen(QPen(palette_.of(papers::Role::ink), std::max<qreal>(8, least_pen_)));
        const QRectF around = outline.boundingRect();
        for (qreal x = around.left() - around.height(); x < around.right(); x += apart) {
            painter_.drawLine(QPointF(x, around.bottom()), QPointF(x + around.height(), around.top()));
        }
        painter_.restore();
        painter_.setBrush(Qt::NoBrush);
    }

    void prepare(const std::optional<papers::Pen>& pen, const std::optional<papers::Fill>& fill)
    {
        painter_.setBrush(fill ? QBrush(palette_.of(*fill)) : QBrush(Qt::NoBrush));
        if (!pen) {
            painter_.setPen(Qt::NoPen);
            return;
        }
        const qreal width = std::max<qreal>(pen->width, least_pen_);
        QPen drawn(palette_.of(pen->role), width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        // Dashes are 1.4 mm, dots 0.2 mm long, whatever the width of the pen.
        if (pen->dash == papers::Pen::Dash::dashed) {
            drawn.setCapStyle(Qt::FlatCap);
            drawn.setDashPattern({std::max(3.0, 140 / width), std::max(2.0, 100 / width)});
        }
        if (pen->dash == papers::Pen::Dash::dotted) drawn.setDashPattern({0.1, std::max(2.5, 80 / width)});
        painter_.setPen(drawn);
    }

    QPainter& painter_;
    const Palette& palette_;
    qreal least_pen_;
};

} // namespace

void paint(QPainter& painter, const QRectF& target, const papers::DisplayList& list, const Palette& palette,
           const Medium& medium)
{
    if (list.extent.width <= 0 || list.extent.height <= 0) return;
    const qreal scale = std::min(target.width() / list.extent.width, target.height() / list.extent.height);
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.translate(target.x() + (target.width() - list.extent.width * scale) / 2,
                      target.y() + (target.height() - list.extent.height * scale) / 2);
    painter.scale(scale, scale);
    const qreal device_scale = std::abs(painter.deviceTransform().m11());
    Brushwork brush(painter, palette, device_scale > 0 ? medium.least_pen / device_scale : 0);
    for (const papers::Mark& mark : list.marks) std::visit(brush, mark);
    painter.restore();
}

QImage to_image(const papers::DisplayList& list, QSize pixels, const Palette& palette)
{
    QImage image(pixels, QImage::Format_ARGB32_Premultiplied);
    image.fill(palette.of(papers::Role::sheet));
    QPainter painter(&image);
    paint(painter, QRectF(image.rect()), list, palette, on_screen);
    return image;
}

bool write_pdf(QIODevice& device, const papers::Document& document, const Palette& palette)
{
    if (document.pages.empty()) return false;
    QPdfWriter writer(&device);
    writer.setTitle(QString::fromStdString(document.title));
    writer.setCreator(QStringLiteral("Stowbench"));
    writer.setResolution(2540); // one device unit is 0.01 mm
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    const auto set_size = [&](const papers::Extent& e) {
        return writer.setPageSize(QPageSize(QSizeF(e.width / 100.0, e.height / 100.0), QPageSize::Millimeter, QString(),
                                            QPageSize::ExactMatch));
    };
    if (!set_size(document.pages.front().extent)) return false;
    QPainter painter;
    if (!painter.begin(&writer)) return false;
    bool first = true;
    for (const papers::DisplayList& page : document.pages) {
        if (!first && !(set_size(page.extent) && writer.newPage())) return false;
        first = false;
        paint(painter, QRectF(0, 0, page.extent.width, page.extent.height), page, palette, on_paper);
    }
    return painter.end();
}

bool write_pdf(const QString& file, const papers::Document& document, const Palette& palette)
{
    QFile out(file);
    return out.open(QIODevice::WriteOnly) && write_pdf(out, document, palette) && out.flush();
}

} // namespace stow::painting
