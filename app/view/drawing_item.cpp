#include "app/view/drawing_item.h"

namespace stow::view {

DrawingItem::DrawingItem(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &DrawingItem::coloursChanged, this, [this] { update(); });
}

QFont DrawingItem::font(int pixels, bool bold) const
{
    QFont font(family_);
    font.setPixelSize(pixels);
    font.setBold(bold);
    return font;
}

} // namespace stow::view
