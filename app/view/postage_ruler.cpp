#include "app/view/postage_ruler.h"

#include "app/words/format.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace stow::view {

namespace {

constexpr double margin = 8, price_height = 24, band_height = 30, figure_height = 26;

// The end of the axis: the last step that is near enough to matter, so that the band is never lost in a corner.
double axis_end(const RulerScene& scene)
{
    const double heaviest = std::max(scene.expected + 2 * scene.sigma, scene.reading.value_or(0));
    double end = heaviest * 1.25;
    for (const auto& step : scene.steps) {
        end = step.up_to;
        if (end > heaviest * 2 || (end > heaviest && &step == &scene.steps.back())) break;
    }
    return std::max({end, heaviest * 1.05, 1.0});
}

double fine_tick(double end)
{
    for (const double tick : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0}) {
        if (end / tick <= 40) return tick;
    }
    return 5000;
}

} // namespace

PostageRuler::PostageRuler(QQuickItem* parent) : DrawingItem(parent)
{
    setImplicitHeight(price_height + band_height + figure_height);
    setImplicitWidth(400);
}

void PostageRuler::setScene(const RulerScene& scene)
{
    scene_ = scene;
    emit sceneChanged();
    update();
}

void PostageRuler::paint(QPainter* painter)
{
    const double line = price_height + band_height;
    const double end = axis_end(scene_);
    const auto at = [&](double grams) { return margin + std::clamp(grams / end, 0.0, 1.0) * (width() - 2 * margin); };

    // The band lies under the ticks.
    if (scene_.expected > 0) {
        QColor band = scene_.stop ? brick_ : scene_.at_risk ? ochre_ : accent_;
        const double from = at(scene_.expected - 2 * scene_.sigma), to = at(scene_.expected + 2 * scene_.sigma);
        band.setAlphaF(0.28F);
        painter->fillRect(QRectF(from, line - band_height + 4, std::max(to - from, 3.0), band_height - 4), band);
        band.setAlphaF(1.0F);
        painter->setPen(QPen(band, 1)); // its edges: the tint alone is faint
        painter->drawLine(QPointF(from, line - band_height + 4), QPointF(from, line));
        painter->drawLine(QPointF(to, line - band_height + 4), QPointF(to, line));
        painter->setPen(QPen(band, 2));
        painter->drawLine(QPointF(at(scene_.expected), line - band_height + 4), QPointF(at(scene_.expected), line));
    }

    painter->setPen(QPen(second_ink_, 1));
    const double tick = fine_tick(end);
    for (double grams = 0; grams <= end; grams += tick) {
        const bool tenth = std::fmod(grams / tick, 10.0) < 0.5;
        painter->drawLine(QPointF(at(grams), line), QPointF(at(grams), line - (tenth ? 14 : 9)));
    }
    painter->setPen(QPen(ink_, 1.5));
    painter->drawLine(QPointF(margin, line), QPointF(width() - margin, line));

    const QFontMetricsF figures(font(13)), prices(font(18, true));
    double written_to = 0; // figures and prices never run into each other
    double from = 0, priced_to = 0;
    painter->setFont(font(13));
    painter->setPen(second_ink_);
    painter->drawText(QPointF(margin, line + 20), words::weight(Weight{}));
    written_to = margin + figures.horizontalAdvance(words::weight(Weight{})) + 12;
    for (std::size_t i = 0; i < scene_.steps.size(); ++i) {
        const auto& step = scene_.steps[i];
        const bool risk = scene_.at_risk == i;
        if (const double x = at(from) + 8; x >= priced_to && from < end) {
            painter->setFont(font(18, true));
            painter->setPen(ink_);
            painter->drawText(QPointF(x, 18), step.price);
            priced_to = x + prices.horizontalAdvance(step.price) + 10;
        }
        from = step.up_to;
        if (step.up_to > end) break;
        const double x = at(step.up_to);
        painter->setPen(QPen(risk ? ochre_ : ink_, risk ? 3 : 1.5));
        painter->drawLine(QPointF(x, 4), QPointF(x, line + 6));
        painter->setFont(font(13, risk));
        const QString figure =
            (risk ? QStringLiteral("! ") : QString()) + words::weight(tenth_g(std::llround(step.up_to * 10)));
        const double wide = figures.horizontalAdvance(figure) + (risk ? 8 : 0);
        const double left = std::clamp(x - wide / 2, margin, width() - wide);
        if (left >= written_to || risk) {
            painter->setPen(risk ? ochre_ : ink_);
            painter->drawText(QPointF(left, line + 20), figure);
            written_to = left + wide + 12;
        }
    }

    if (scene_.reading) { // a marker that points at the line from above
        const double x = at(*scene_.reading);
        const std::array<QPointF, 3> marker{QPointF(x - 9, line - band_height - 14),
                                            QPointF(x + 9, line - band_height - 14),
                                            QPointF(x, line - band_height + 2)};
        painter->setPen(Qt::NoPen);
        painter->setBrush(scene_.stop ? brick_ : ink_);
        painter->drawPolygon(marker.data(), 3);
        painter->setPen(QPen(scene_.stop ? brick_ : ink_, 1));
        painter->drawLine(QPointF(x, line - band_height), QPointF(x, line));
    }
}

} // namespace stow::view
