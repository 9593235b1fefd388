// From an empty book to a first planned order: what is still to do, and ways to begin that need no typing.
#pragma once

#include "app/view/row_model.h"

namespace stow {
class Day;
}

namespace stow::view {

struct FirstStep {
    Q_GADGET
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString more MEMBER more)
    Q_PROPERTY(QString first MEMBER first)
    Q_PROPERTY(QString second MEMBER second)
    Q_PROPERTY(bool done MEMBER done)
    Q_PROPERTY(bool now MEMBER now)
public:
    QString title, more;
    QString first, second; // words of what can be done; the second may be empty
    bool done = false, now = false;
};

class FirstSteps : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(FirstSteps)
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool needed READ needed NOTIFY changed) // until the first order is planned, or she wants no more of it
    Q_PROPERTY(stow::view::RowModel* steps READ steps CONSTANT)
    Q_PROPERTY(QString headline READ headline NOTIFY changed)
public:
    enum class Step { Workshop, Goods, Supplies, Rates, Order, Plan };
    Q_ENUM(Step)

    explicit FirstSteps(Day& day, QObject* parent = nullptr);

    bool needed() const { return needed_; }
    RowModel* steps() { return &steps_; }
    QString headline() const { return headline_; }

    Q_INVOKABLE void takeStarterRack(); // common outers and materials, invented, to be changed
    Q_INVOKABLE void openDemo();        // in a window and a book of its own
    Q_INVOKABLE void putAway();

    void refresh();

signals:
    void changed();
    void said(const QString& words);

private:
    Day& day_;
    bool needed_ = false;
    QString headline_;
    Rows<FirstStep> steps_;
};

} // namespace stow::view
