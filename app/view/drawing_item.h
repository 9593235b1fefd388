// What the painted items share: the theme's colours, as QML hands them in, and the font.
#pragma once

#include <QColor>
#include <QFont>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace stow::view {

inline constexpr int hundredths_a_pixel = 26; // of a millimetre: a pixel at 96 dots an inch is 0.26 mm

class DrawingItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QColor paper MEMBER paper_ NOTIFY coloursChanged)
    Q_PROPERTY(QColor sheet MEMBER sheet_ NOTIFY coloursChanged)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY coloursChanged)
    Q_PROPERTY(QColor secondInk MEMBER second_ink_ NOTIFY coloursChanged)
    Q_PROPERTY(QColor hairline MEMBER hairline_ NOTIFY coloursChanged)
    Q_PROPERTY(QColor accent MEMBER accent_ NOTIFY coloursChanged)
    Q_PROPERTY(QColor ochre MEMBER ochre_ NOTIFY coloursChanged)
    Q_PROPERTY(QColor brick MEMBER brick_ NOTIFY coloursChanged)
    Q_PROPERTY(bool dark MEMBER dark_ NOTIFY coloursChanged)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY coloursChanged)
public:
    explicit DrawingItem(QQuickItem* parent = nullptr);

signals:
    void coloursChanged();

protected:
    QFont font(int pixels, bool bold = false) const;

    QColor paper_{0xfa, 0xf8, 0xf4}, sheet_{Qt::white}, ink_{0x1d, 0x27, 0x33}, second_ink_{0x5b, 0x66, 0x72};
    QColor hairline_{0xd9, 0xd4, 0xca}, accent_{0x0e, 0x6b, 0x5c}, ochre_{0xb7, 0x79, 0x1f}, brick_{0xa6, 0x3a, 0x2b};
    bool dark_ = false;
    QString family_ = QStringLiteral("Stow");
};

} // namespace stow::view
