// Tells a scanner from a hand on the keyboard, so that a scan is taken wherever the focus is.
#pragma once

#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <QWindow>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace stow::view {

// A scanner types its code in one burst and ends it with Enter. Characters are held back for the length of the longest
// gap in a burst; what turns out to be typed by hand is then passed on as it came.
class ScanCatcher : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QWindow* window READ window WRITE setWindow NOTIFY windowChanged)
    // A code that is none of ours goes into the field that is typed in, if there is one: a number into its place.
    Q_PROPERTY(bool intoFields MEMBER into_fields_ NOTIFY intoFieldsChanged)
public:
    static constexpr int longest_gap_ms = 40;
    static constexpr int shortest_code = 6;

    explicit ScanCatcher(QObject* parent = nullptr);

    QWindow* window() const { return window_; }
    void setWindow(QWindow* window);

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void scanned(const QString& code);
    void windowChanged();
    void intoFieldsChanged();

private:
    struct Held {
        QEvent::Type type;
        int key;
        Qt::KeyboardModifiers modifiers;
        QString text;
    };
    bool holds(const QKeyEvent& event) const;
    QString code() const;
    void pass_on();

    QPointer<QWindow> window_;
    QTimer gap_;
    std::vector<Held> held_;
    bool passing_on_ = false;
    bool into_fields_ = false;
};

} // namespace stow::view
