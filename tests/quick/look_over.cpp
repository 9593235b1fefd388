#include "tests/quick/look_over.h"

#include "tests/quick/at_the_window.h"

#include <QQuickItem>

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

namespace stow::quick {

namespace {

struct Words {
    QQuickItem* item = nullptr;
    QString text;
    QRectF painted; // where its letters stand in the window
    QRectF seen;    // what of that is not clipped away
    double opacity = 1;
};

// A sheet, a list that was opened, or a word over everything: what lies beneath rests.
QQuickItem* on_top(QQuickItem* item, const QQuickWindow& window)
{
    QQuickItem* found = nullptr;
    for (QQuickItem* child : item->childItems()) {
        if (!child->isVisible()) continue;
        const QAccessible::Role role = AtTheWindow::role_of(child);
        const bool fills = child->width() >= window.width() && child->height() >= window.height();
        const bool opened = child->inherits("QQuickOverlay") && !child->childItems().isEmpty();
        if (opened || role == QAccessible::Dialog || (role == QAccessible::AlertMessage && fills)) found = child;
        if (QQuickItem* inner = on_top(child, window)) found = inner;
    }
    return found;
}

bool is_within(const QQuickItem* item, const QQuickItem* of)
{
    for (; item != nullptr; item = item->parentItem()) {
        if (item == of) return true;
    }
    return false;
}

bool scrolls(const QQuickItem* item)
{
    for (; item != nullptr; item = item->parentItem()) {
        if (item->inherits("QQuickFlickable")) return true;
    }
    return false;
}

QRectF painted_rect(const QQuickItem* text)
{
    const double width = text->property("contentWidth").toDouble();
    const double height = text->property("contentHeight").toDouble();
    const int across = text->property("effectiveHorizontalAlignment").toInt();
    const int down = text->property("verticalAlignment").toInt();
    const double x = across & Qt::AlignRight     ? text->width() - width
                     : across & Qt::AlignHCenter ? (text->width() - width) / 2
                                                 : 0;
    const double y = down & Qt::AlignBottom    ? text->height() - height
                     : down & Qt::AlignVCenter ? (text->height() - height) / 2
                                               : 0;
    return text->mapRectToScene({x, y, width, height});
}

void gather(QQuickItem* item, QRectF clip, double opacity, std::vector<Words>& all)
{
    if (!item->isVisible() || item->opacity() <= 0) return;
    opacity *= item->opacity();
    if (item->clip()) clip = clip.intersected(item->mapRectToScene(item->boundingRect()));
    if (item->inherits("QQuickText") && !item->property("text").toString().trimmed().isEmpty()) {
        const QRectF painted = painted_rect(item);
        const QRectF seen = painted.intersected(clip);
        if (seen.width() > 1 && seen.height() > 1)
            all.push_back({item, item->property("text").toString(), painted, seen, opacity});
    }
    for (QQuickItem* child : item->childItems()) gather(child, clip, opacity, all);
}

double channel(double value)
{
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour)
{
    return 0.2126 * channel(colour.redF()) + 0.7152 * channel(colour.greenF()) + 0.0722 * channel(colour.blueF());
}

// What most of the pixels there are.
QColor ground(const QImage& picture, const QRectF& rect, double scale)
{
    const QRect pixels = QRectF(rect.topLeft() * scale, rect.size() * scale).toAlignedRect() & picture.rect();
    std::map<QRgb, int> counted;
    for (int y = pixels.top(); y <= pixels.bottom(); ++y) {
        for (int x = pixels.left(); x <= pixels.right(); ++x) ++counted[picture.pixel(x, y)];
    }
    const auto most = std::max_element(counted.begin(), counted.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most != counted.end() ? QColor(most->first) : QColor();
}

QColor blended(const QColor& over, double opacity, const QColor& under)
{
    const double share = over.alphaF() * opacity;
    const auto mix = [&](double a, double b) { return a * share + b * (1 - share); };
    return QColor::fromRgbF(static_cast<float>(mix(over.redF(), under.redF())),
                            static_cast<float>(mix(over.greenF(), under.greenF())),
                            static_cast<float>(mix(over.blueF(), under.blueF())));
}

QString quoted(const QString& words)
{
    return QStringLiteral("“%1”").arg(words.simplified().left(60));
}

bool can_be_used(QQuickItem* item)
{
    return item->activeFocusOnTab() || item->inherits("QQuickAbstractButton") || item->inherits("QQuickTextInput");
}

void nameless(QQuickItem* item, const QQuickItem* top, QStringList& faults)
{
    if (!item->isVisible() || !item->isEnabled()) return;
    if (can_be_used(item) && is_within(item, top)) {
        const QString name = AtTheWindow::name_of(item);
        const QAccessible::Role role = AtTheWindow::role_of(item);
        if (name.trimmed().isEmpty())
            faults += QStringLiteral("no name: a %1").arg(QString::fromLatin1(item->metaObject()->className()));
        else if (role == QAccessible::NoRole || role == QAccessible::Client)
            faults += QStringLiteral("no role: %1").arg(quoted(name));
    }
    for (QQuickItem* child : item->childItems()) nameless(child, top, faults);
}

} // namespace

double contrast(const QColor& one, const QColor& other)
{
    const double a = luminance(one), b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QStringList look_over(QQuickWindow& window, const QImage& picture)
{
    QStringList faults;
    QQuickItem* root = window.contentItem();
    QQuickItem* over = on_top(root, window);
    const QQuickItem* top = over != nullptr ? over : root;
    const QRectF whole(0, 0, window.width(), window.height());
    std::vector<Words> all;
    gather(root, whole, 1, all);
    std::erase_if(all, [&](const Words& words) { return !is_within(words.item, top); });

    const double scale = static_cast<double>(picture.width()) / std::max(1, window.width());
    for (const Words& words : all) {
        if (words.item->property("truncated").toBool() && !words.item->property("shortens").toBool())
            faults += QStringLiteral("cut short: %1").arg(quoted(words.text));
        const bool at_the_side = words.seen.width() < words.painted.width() - 1;
        const bool below = words.seen.height() < words.painted.height() - 1 && !scrolls(words.item);
        if (at_the_side || below) faults += QStringLiteral("cut off: %1").arg(quoted(words.text));

        if (!words.item->isEnabled()) continue;
        const QColor behind = ground(picture, words.seen, scale);
        const QColor drawn = blended(words.item->property("color").value<QColor>(), words.opacity, behind);
        const QFont font = words.item->property("font").value<QFont>();
        const bool large = font.pixelSize() >= 24 || (font.bold() && font.pixelSize() >= 19);
        const double reached = contrast(drawn, behind);
        if (behind.isValid() && reached < (large ? 3.0 : 4.5))
            faults += QStringLiteral("pale: %1 with %2 to 1").arg(quoted(words.text)).arg(reached, 0, 'f', 1);
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const QRectF both = all[i].seen.intersected(all[j].seen);
            // Letters do not fill their line: a touch of the line boxes is no overlap yet.
            if (both.width() > 2 && both.height() > 5)
                faults += QStringLiteral("one over the other: %1, %2").arg(quoted(all[i].text), quoted(all[j].text));
        }
    }
    nameless(root, top, faults);
    faults.removeDuplicates();
    return faults;
}

} // namespace stow::quick
