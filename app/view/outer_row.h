// The outers of an order side by side, to one scale and on one floor line: the refused ones dashed with what stayed
// out, the chosen one with its contents as they are seen from the side.
#pragma once

#include "app/view/drawing_item.h"
#include "app/view/scenes.h"

namespace stow::view {

class OuterRow : public DrawingItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(stow::view::OuterRowScene scene READ scene WRITE setScene NOTIFY sceneChanged)
    // Small outers are never blown up past this, so that rows of a list stay comparable.
    Q_PROPERTY(qreal mostPixelsPerMm MEMBER most_pixels_a_mm_ NOTIFY sceneChanged)
    Q_PROPERTY(QString sentence READ sentence NOTIFY sceneChanged)
public:
    explicit OuterRow(QQuickItem* parent = nullptr);

    OuterRowScene scene() const { return scene_; }
    void setScene(const OuterRowScene& scene);
    QString sentence() const { return scene_.sentence; }
    void paint(QPainter* painter) override;

signals:
    void sceneChanged();

private:
    OuterRowScene scene_;
    qreal most_pixels_a_mm_ = 0.55;
};

} // namespace stow::view
