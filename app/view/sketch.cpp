#include "app/view/sketch.h"

#include "app/painting/fonts.h"
#include "app/painting/paint.h"

#include <QPainter>

namespace stow::view {

Sketch::Sketch(QQuickItem* parent) : DrawingItem(parent)
{
    setImplicitSize(480, 160);
    connect(this, &Sketch::sceneChanged, this, [this] { update(); });
}

void Sketch::setScene(const SketchScene& scene)
{
    scene_ = scene;
    emit sceneChanged();
}

void Sketch::paint(QPainter* painter)
{
    if (!scene_.draw) return;
    const papers::Extent extent{static_cast<int>(width() * hundredths_a_pixel),
                                static_cast<int>(height() * hundredths_a_pixel)};
    const painting::FontMeasure measure;
    painting::paint(*painter, QRectF(0, 0, width(), height()), scene_.draw(extent, measure),
                    dark_ ? painting::dark() : painting::light(), painting::on_screen);
}

SketchScene sketch_of(papers::Chart chart, QString sentence)
{
    return {[chart = std::move(chart)](papers::Extent extent, const papers::TextMeasure& measure) {
                return papers::draw(chart, extent, measure);
            },
            std::move(sentence)};
}

} // namespace stow::view
