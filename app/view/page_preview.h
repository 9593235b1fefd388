// One page of a paper on its ground, as the printer will set it down: painted from the display list that goes to the
// PDF, with the paper's own colours, by day and in the evening alike.
#pragma once

#include "app/view/drawing_item.h"
#include "app/view/preview.h"

namespace stow::view {

class PagePreview : public DrawingItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(stow::view::PageScene scene READ scene WRITE setScene NOTIFY sceneChanged)
    Q_PROPERTY(QString sentence READ sentence NOTIFY sceneChanged)
public:
    explicit PagePreview(QQuickItem* parent = nullptr);

    PageScene scene() const { return scene_; }
    void setScene(const PageScene& scene);
    QString sentence() const { return scene_.sentence; }
    void paint(QPainter* painter) override;

signals:
    void sceneChanged();

private:
    PageScene scene_;
};

} // namespace stow::view
