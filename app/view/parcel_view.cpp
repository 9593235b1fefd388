#include "app/view/parcel_view.h"

#include "app/painting/paint.h"

#include <QPainter>

#include <algorithm>

namespace stow::view {

ParcelView::ParcelView(QQuickItem* parent) : DrawingItem(parent)
{
    setImplicitSize(480, 360);
    connect(this, &ParcelView::sceneChanged, this, [this] { update(); });
}

void ParcelView::setScene(const ParcelScene& scene)
{
    scene_ = scene;
    emit sceneChanged();
}

void ParcelView::paint(QPainter* painter)
{
    if (!scene_.arrangement) return;
    const papers::Arrangement& arrangement = *scene_.arrangement;
    papers::View view;
    view.extent = {static_cast<int>(width() * hundredths_a_pixel), static_cast<int>(height() * hundredths_a_pixel)};
    view.apart = apart_;
    if (layer_ > 0) view.up_to_layer = layer_;
    const std::vector<int> numbers = papers::numbers(arrangement.placements);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        if (highlight_.contains(numbers[i])) view.highlight.push_back(i);
    }
    view.number_size = papers::from_pt(11);
    view.pen = 35;
    painting::paint(*painter, QRectF(0, 0, width(), height()), papers::draw(arrangement, view),
                    dark_ ? painting::dark() : painting::light(), painting::on_screen);
}

} // namespace stow::view
