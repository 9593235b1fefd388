// Keeps Tab within what lies over a screen: the nearest item around the focus that says `keepsFocus`.
#pragma once

#include <QObject>
#include <QPointer>
#include <QQuickWindow>
#include <QtQml/qqmlregistration.h>

namespace stow::view {

class TabKeeper : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QQuickWindow* window READ window WRITE setWindow NOTIFY windowChanged)
public:
    using QObject::QObject;

    QQuickWindow* window() const { return window_; }
    void setWindow(QQuickWindow* window);

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void windowChanged();

private:
    QPointer<QQuickWindow> window_;
};

} // namespace stow::view
