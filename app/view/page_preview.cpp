#include "app/view/page_preview.h"

#include "app/painting/paint.h"

#include <QPainter>

namespace stow::view {

PagePreview::PagePreview(QQuickItem* parent) : DrawingItem(parent)
{
    setImplicitSize(420, 594);
    connect(this, &PagePreview::sceneChanged, this, [this] { update(); });
}

void PagePreview::setScene(const PageScene& scene)
{
    scene_ = scene;
    emit sceneChanged();
}

void PagePreview::paint(QPainter* painter)
{
    if (!scene_.document || scene_.page >= scene_.document->pages.size() || scene_.palette == nullptr) return;
    const papers::DisplayList& page = scene_.document->pages[scene_.page];
    using Part = PageScene::Part;
    const qreal height_shown = scene_.part == Part::whole ? page.extent.height : page.extent.height / 2.0;
    const QRectF room(1, 1, width() - 2, height() - 2);
    QRectF target(QPointF(), QSizeF(page.extent.width, height_shown).scaled(room.size(), Qt::KeepAspectRatio));
    target.moveCenter(room.center());
    painter->setPen(QPen(hairline_, 1));
    painter->setBrush(scene_.palette->of(papers::Role::sheet));
    painter->drawRect(target);
    painter->setClipRect(target);
    QRectF whole = target; // the page of which the target shows a part
    whole.setHeight(target.width() * page.extent.height / page.extent.width);
    if (scene_.part == Part::lower) whole.moveBottom(target.bottom());
    painting::paint(*painter, whole, page, *scene_.palette, painting::on_screen);
}

} // namespace stow::view
