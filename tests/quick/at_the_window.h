// What a hand, a scanner and an eye can do at the window: keys, a pointer, a file dropped, words as a screen reader
// says them. Nothing here reaches past the window.
#pragma once

#include <QAccessible>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

namespace stow::quick {

class AtTheWindow {
public:
    explicit AtTheWindow(QQuickWindow& window) : window_(window) {}

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void letter(Qt::Key key);            // a key of the place, and what comes of it a moment later
    void type(const QString& words);     // by hand, into the field that has the focus
    void scan(const QString& code);      // as a scanner types: one burst, ended with Enter
    void settle();                       // until all that changed is laid out and drawn
    void click(const QQuickItem* item);  // in its middle; nothing: the test goes on and finds nothing done
    void drop_file(const QString& path); // in the middle of the window

    // The topmost item that is seen and is called so; nothing if there is none.
    QQuickItem* named(const QString& name, QAccessible::Role role = QAccessible::NoRole) const;
    // The topmost whose name begins so.
    QQuickItem* beginning(const QString& name, QAccessible::Role role) const;
    QStringList names(QAccessible::Role role) const; // of all that are seen, as they lie in the tree
    QString selected() const;                        // the topmost row that the keys speak about
    bool reads(const QString& words) const;          // somewhere in the window
    QString all_words() const;                       // for the message of a check that failed

    QQuickItem* focused() const { return window_.activeFocusItem(); }
    std::vector<QQuickItem*> seen() const; // visible items, from below to above
    static QString name_of(QQuickItem* item);
    static QAccessible::Role role_of(QQuickItem* item);

private:
    QQuickWindow& window_;
};

} // namespace stow::quick
