// A drawing that is made anew for the room it has: a chart, the net of a paper box.
#pragma once

#include "app/view/drawing_item.h"
#include "app/view/scenes.h"

namespace stow::view {

class Sketch : public DrawingItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(stow::view::SketchScene scene READ scene WRITE setScene NOTIFY sceneChanged)
    Q_PROPERTY(QString sentence READ sentence NOTIFY sceneChanged)
public:
    explicit Sketch(QQuickItem* parent = nullptr);

    SketchScene scene() const { return scene_; }
    void setScene(const SketchScene& scene);
    QString sentence() const { return scene_.sentence; }
    void paint(QPainter* painter) override;

signals:
    void sceneChanged();

private:
    SketchScene scene_;
};

} // namespace stow::view
