#include "app/view/outer_row.h"

#include "app/painting/paint.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace stow::view {

namespace {

constexpr double words_height = 40, between = 24;

} // namespace

OuterRow::OuterRow(QQuickItem* parent) : DrawingItem(parent)
{
    setImplicitSize(400, 112);
}

void OuterRow::setScene(const OuterRowScene& scene)
{
    scene_ = scene;
    emit sceneChanged();
    update();
}

void OuterRow::paint(QPainter* painter)
{
    if (scene_.outers.empty()) return;
    const double floor = height() - words_height;
    // Where the reasons would not be read whole, the smallest outers are left out: the nearest misses tell most.
    const QFontMetricsF metrics(font(13));
    std::size_t first = 0;
    const auto column_from = [&](std::size_t from) {
        return width() / static_cast<double>(scene_.outers.size() - from);
    };
    const auto too_wide = [&](const auto& outer) {
        return metrics.horizontalAdvance(outer.words) > column_from(first) - 8;
    };
    while (scene_.outers.size() - first > 2 &&
           std::any_of(scene_.outers.begin() + static_cast<std::ptrdiff_t>(first), scene_.outers.end(), too_wide)) {
        ++first;
    }
    const std::vector<OuterRowScene::Outer> shown(scene_.outers.begin() + static_cast<std::ptrdiff_t>(first),
                                                  scene_.outers.end());
    const double column = column_from(first);
    const papers::Extent room{static_cast<int>((column - between) * hundredths_a_pixel),
                              static_cast<int>(floor * hundredths_a_pixel)};

    // One scale for the row: what suits the largest outer alone in its column suits all.
    papers::Scale scale{static_cast<std::int64_t>(most_pixels_a_mm_ * hundredths_a_pixel * 10), 100};
    for (const auto& outer : shown) {
        const auto& a = outer.arrangement;
        const auto own = papers::common_scale({closed_size(a.form, a.contents_thickness, a.cut_height)}, room, 0);
        if (own.numerator * scale.denominator < scale.numerator * own.denominator) scale = own;
    }

    // What stayed out is drawn beside its outer: nothing may reach into the next column.
    const auto drawn = [&](const auto& outer) {
        return papers::side_view(outer.arrangement, scale, outer.standing, outer.stayed_out);
    };
    double widest = 0;
    for (const auto& outer : shown) {
        widest = std::max(widest, static_cast<double>(drawn(outer).extent.width) / hundredths_a_pixel);
    }
    if (widest > column - 8) {
        scale.numerator *= 100;
        scale.denominator =
            static_cast<std::int64_t>(std::ceil(static_cast<double>(scale.denominator) * 100 * widest / (column - 8)));
    }

    painter->setPen(QPen(second_ink_, 1));
    painter->drawLine(QPointF(0, floor + 0.5), QPointF(width(), floor + 0.5));
    const auto& palette = dark_ ? painting::dark() : painting::light();
    double left = 4;
    for (const auto& outer : shown) {
        const auto list = drawn(outer);
        const double wide = static_cast<double>(list.extent.width) / hundredths_a_pixel;
        const double tall = static_cast<double>(list.extent.height) / hundredths_a_pixel;
        painting::paint(*painter, QRectF(left, floor - tall, wide, tall), list, palette, painting::on_screen);

        const bool chosen = outer.standing == papers::Standing::chosen;
        const double room_for_words = column - 8;
        painter->setFont(font(13, chosen));
        painter->setPen(chosen ? accent_ : ink_);
        painter->drawText(QPointF(left, floor + 16),
                          QFontMetricsF(font(13, chosen)).elidedText(outer.name, Qt::ElideRight, room_for_words));
        painter->setFont(font(13));
        painter->setPen(outer.good ? accent_ : chosen ? second_ink_ : brick_);
        painter->drawText(QPointF(left, floor + 34),
                          QFontMetricsF(font(13)).elidedText(outer.words, Qt::ElideRight, room_for_words));
        left += column;
    }
}

} // namespace stow::view
