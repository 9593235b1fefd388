#include "app/view/scan_catcher.h"

#include "core/papers/payload.h"

#include <QGuiApplication>
#include <QInputMethodQueryEvent>

namespace stow::view {

namespace {

bool is_typed_in()
{
    QObject* const focus = QGuiApplication::focusObject();
    if (focus == nullptr) return false;
    QInputMethodQueryEvent asks(Qt::ImEnabled);
    QCoreApplication::sendEvent(focus, &asks);
    return asks.value(Qt::ImEnabled).toBool();
}

// Or meant to be: a damaged one is to be scanned again.
bool is_ours(const QString& code)
{
    const auto payload = papers::parse_payload(code.toStdString());
    return payload || payload.error() == papers::NotOurs::damaged;
}

} // namespace

ScanCatcher::ScanCatcher(QObject* parent) : QObject(parent)
{
    gap_.setSingleShot(true);
    gap_.setTimerType(Qt::PreciseTimer);
    gap_.setInterval(longest_gap_ms);
    connect(&gap_, &QTimer::timeout, this, &ScanCatcher::pass_on);
}

void ScanCatcher::setWindow(QWindow* window)
{
    if (window == window_) return;
    if (window_) window_->removeEventFilter(this);
    window_ = window;
    if (window_) window_->installEventFilter(this);
    emit windowChanged();
}

// What may stand in a code: our own payloads, the digits of a GTIN, a code as she writes it.
bool ScanCatcher::holds(const QKeyEvent& event) const
{
    if (event.isAutoRepeat() || (event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier))) return false;
    const QString text = event.text();
    if (text.size() != 1) return false;
    const QChar c = text.front();
    return c.unicode() < 128 && (c.isLetterOrNumber() || QStringLiteral(":-*./").contains(c));
}

QString ScanCatcher::code() const
{
    QString all;
    for (const Held& held : held_) {
        if (held.type == QEvent::KeyPress) all += held.text;
    }
    return all;
}

bool ScanCatcher::eventFilter(QObject*, QEvent* event)
{
    if (passing_on_) return false;
    if (event->type() == QEvent::ShortcutOverride) {
        // A held character may be part of a code: it must not set off a shortcut.
        const bool ours = holds(*static_cast<QKeyEvent*>(event));
        if (ours) event->accept();
        return ours;
    }
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::KeyRelease) return false;

    const auto& key = *static_cast<QKeyEvent*>(event);
    if (holds(key)) {
        if (key.type() == QEvent::KeyRelease && held_.empty()) return false;
        held_.push_back({key.type(), key.key(), key.modifiers(), key.text()});
        gap_.start();
        return true;
    }
    if (held_.empty() || key.type() == QEvent::KeyRelease || key.key() == Qt::Key_Shift) return false;
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    if (const QString scan = code(); enter && scan.size() >= shortest_code) {
        if (into_fields_ && is_typed_in() && !is_ours(scan)) {
            pass_on(); // without the scanner's Enter: she says herself when it is complete
            return true;
        }
        gap_.stop();
        held_.clear();
        emit scanned(scan);
        return true;
    }
    pass_on();
    return false;
}

void ScanCatcher::pass_on()
{
    gap_.stop();
    const std::vector<Held> held = std::exchange(held_, {});
    passing_on_ = true;
    for (const Held& h : held) {
        QKeyEvent event(h.type, h.key, h.modifiers, h.text);
        if (window_) QCoreApplication::sendEvent(window_, &event);
    }
    passing_on_ = false;
}

} // namespace stow::view
