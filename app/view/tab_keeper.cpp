#include "app/view/tab_keeper.h"

#include <QKeyEvent>
#include <QQuickItem>

namespace stow::view {

namespace {

QQuickItem* keeper_of(QQuickItem* item)
{
    while (item != nullptr && !item->property("keepsFocus").toBool()) item = item->parentItem();
    return item;
}

} // namespace

void TabKeeper::setWindow(QQuickWindow* window)
{
    if (window == window_) return;
    if (window_) window_->removeEventFilter(this);
    window_ = window;
    if (window_) window_->installEventFilter(this);
    emit windowChanged();
}

bool TabKeeper::eventFilter(QObject*, QEvent* event)
{
    if (event->type() != QEvent::KeyPress || !window_) return false;
    const auto& key = *static_cast<QKeyEvent*>(event);
    const bool back = key.key() == Qt::Key_Backtab || (key.key() == Qt::Key_Tab && key.modifiers() & Qt::ShiftModifier);
    if (!back && key.key() != Qt::Key_Tab) return false;
    QQuickItem* const from = window_->activeFocusItem();
    QQuickItem* const keeper = keeper_of(from);
    if (keeper == nullptr) return false;
    // The chain goes round the whole window: what lies outside is passed by.
    for (QQuickItem* next = from->nextItemInFocusChain(!back); next != nullptr && next != from;
         next = next->nextItemInFocusChain(!back)) {
        if (!keeper->isAncestorOf(next)) continue;
        next->forceActiveFocus(back ? Qt::BacktabFocusReason : Qt::TabFocusReason);
        break;
    }
    return true;
}

} // namespace stow::view
