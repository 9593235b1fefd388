// The postage ruler: grams along a line, the table's steps as ticks with their prices, the expected weight as a band of
// two standard deviations to either side, the scale's reading as a marker, the step edge at risk marked.
#pragma once

#include "app/view/drawing_item.h"
#include "app/view/scenes.h"

namespace stow::view {

class PostageRuler : public DrawingItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(stow::view::RulerScene scene READ scene WRITE setScene NOTIFY sceneChanged)
    Q_PROPERTY(QString sentence READ sentence NOTIFY sceneChanged)
public:
    explicit PostageRuler(QQuickItem* parent = nullptr);

    RulerScene scene() const { return scene_; }
    void setScene(const RulerScene& scene);
    QString sentence() const { return scene_.sentence; }
    void paint(QPainter* painter) override;

signals:
    void sceneChanged();

private:
    RulerScene scene_;
};

} // namespace stow::view
