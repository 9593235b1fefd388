#include "tests/quick/at_the_window.h"

#include <QDropEvent>
#include <QMimeData>
#include <QTest>
#include <QUrl>

namespace stow::quick {

namespace {

void gather(QQuickItem* item, std::vector<QQuickItem*>& all)
{
    if (!item->isVisible()) return;
    all.push_back(item);
    for (QQuickItem* child : item->childItems()) gather(child, all);
}

} // namespace

void AtTheWindow::press(Qt::Key key, Qt::KeyboardModifiers with)
{
    QTest::keyClick(&window_, key, with);
}

// End lets go of what is held back in case it were a scan, and changes nothing in a field.
void AtTheWindow::letter(Qt::Key key)
{
    press(key);
    QTest::qWait(120);
    settle();
}

void AtTheWindow::type(const QString& words)
{
    for (const QChar c : words) QTest::keyClick(&window_, c.toLatin1());
    press(Qt::Key_End);
}

// All at once into the queue: however busy the machine is, no pause comes between two characters.
void AtTheWindow::scan(const QString& code)
{
    for (const QChar c : code + QLatin1Char('\r')) {
        const Qt::Key key = c == QLatin1Char('\r') ? Qt::Key_Return : QTest::asciiToKey(c.toLatin1());
        for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease})
            qt_handleKeyEvent(&window_, type, key, Qt::NoModifier, QString(c));
    }
    QCoreApplication::processEvents();
}

void AtTheWindow::settle()
{
    QCoreApplication::processEvents();
    (void)window_.grabWindow();
}

void AtTheWindow::click(const QQuickItem* item)
{
    if (item == nullptr) return;
    const QPointF middle = item->mapToScene({item->width() / 2, item->height() / 2});
    QTest::mouseClick(&window_, Qt::LeftButton, Qt::NoModifier, middle.toPoint());
}

void AtTheWindow::drop_file(const QString& path)
{
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    const QPoint middle(window_.width() / 2, window_.height() / 2);
    QDragEnterEvent enters(middle, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window_, &enters);
    QDragMoveEvent moves(middle, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window_, &moves);
    QDropEvent drops(middle, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window_, &drops);
}

std::vector<QQuickItem*> AtTheWindow::seen() const
{
    std::vector<QQuickItem*> all;
    gather(window_.contentItem(), all);
    return all;
}

QString AtTheWindow::name_of(QQuickItem* item)
{
    QAccessibleInterface* said = QAccessible::queryAccessibleInterface(item);
    return said != nullptr ? said->text(QAccessible::Name) : QString();
}

QAccessible::Role AtTheWindow::role_of(QQuickItem* item)
{
    QAccessibleInterface* said = QAccessible::queryAccessibleInterface(item);
    return said != nullptr ? said->role() : QAccessible::NoRole;
}

QQuickItem* AtTheWindow::named(const QString& name, QAccessible::Role role) const
{
    const auto all = seen();
    const auto found = std::find_if(all.rbegin(), all.rend(), [&](QQuickItem* item) {
        return name_of(item) == name && (role == QAccessible::NoRole || role_of(item) == role);
    });
    return found != all.rend() ? *found : nullptr;
}

QQuickItem* AtTheWindow::beginning(const QString& name, QAccessible::Role role) const
{
    const auto all = seen();
    const auto found = std::find_if(all.rbegin(), all.rend(), [&](QQuickItem* item) {
        return name_of(item).startsWith(name) && role_of(item) == role;
    });
    return found != all.rend() ? *found : nullptr;
}

QStringList AtTheWindow::names(QAccessible::Role role) const
{
    QStringList found;
    for (QQuickItem* item : seen()) {
        if (role_of(item) == role) found += name_of(item);
    }
    return found;
}

QString AtTheWindow::selected() const
{
    const auto all = seen();
    const auto found = std::find_if(all.rbegin(), all.rend(), [](QQuickItem* item) {
        return role_of(item) == QAccessible::ListItem && QAccessible::queryAccessibleInterface(item)->state().selected;
    });
    return found != all.rend() ? name_of(*found) : QString();
}

bool AtTheWindow::reads(const QString& words) const
{
    const auto all = seen();
    return std::any_of(all.begin(), all.end(), [&](QQuickItem* item) { return name_of(item).contains(words); });
}

QString AtTheWindow::all_words() const
{
    QStringList words;
    for (QQuickItem* item : seen()) {
        if (const QString name = name_of(item); !name.isEmpty()) words += name;
    }
    words.removeDuplicates();
    return words.join(QStringLiteral(" | "));
}

} // namespace stow::quick
