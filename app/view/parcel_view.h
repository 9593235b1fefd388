// The drawing of how a parcel goes together, up to a layer, with the good to put in now picked out.
#pragma once

#include "app/view/drawing_item.h"
#include "app/view/scenes.h"

namespace stow::view {

class ParcelView : public DrawingItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(stow::view::ParcelScene scene READ scene WRITE setScene NOTIFY sceneChanged)
    Q_PROPERTY(int upToLayer MEMBER layer_ NOTIFY sceneChanged)            // draws up to this one; 0: all
    Q_PROPERTY(QList<int> highlight MEMBER highlight_ NOTIFY sceneChanged) // numbers on the drawing
    Q_PROPERTY(qreal apart MEMBER apart_ NOTIFY sceneChanged)              // 0: as it lies; 1: the layers lifted
    Q_PROPERTY(QString sentence READ sentence NOTIFY sceneChanged)
public:
    explicit ParcelView(QQuickItem* parent = nullptr);

    ParcelScene scene() const { return scene_; }
    void setScene(const ParcelScene& scene);
    QString sentence() const { return scene_.sentence; }
    void paint(QPainter* painter) override;

signals:
    void sceneChanged();

private:
    ParcelScene scene_;
    int layer_ = 0;
    QList<int> highlight_;
    qreal apart_ = 0;
};

} // namespace stow::view
