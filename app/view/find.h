// Find: from a name, postcode, order or tracking number to what went in and where it is.
#pragma once

#include "app/view/row_model.h"

namespace stow {
class Day;
}

namespace stow::view {

struct FoundRow {
    Q_GADGET
    Q_PROPERTY(qlonglong order MEMBER order)
    Q_PROPERTY(qlonglong parcel MEMBER parcel)
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString buyer MEMBER buyer)
    Q_PROPERTY(QString place MEMBER place)
    Q_PROPERTY(QString contents MEMBER contents)
    Q_PROPERTY(QString state MEMBER state)
    Q_PROPERTY(bool gone MEMBER gone)
public:
    qlonglong order = 0, parcel = 0;
    QString number, buyer, place, contents;
    QString state;     // "handed over, list 12"
    bool gone = false; // it went out, or was called off: the buyer may be forgotten
};

class FindController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed) // "3 found", "nothing found for …"
    Q_PROPERTY(stow::view::RowModel* found READ found CONSTANT)
public:
    explicit FindController(Day& day, QObject* parent = nullptr);
    QString text() const { return text_; }
    void setText(const QString& text);
    QString words() const { return words_; }
    RowModel* found() { return &found_; }
    Q_INVOKABLE QString history(int row) const; // a line a step, with time and weight; read for the one she looks at
    Q_INVOKABLE void forget(int row);           // the buyer's name and address

signals:
    void changed();
    void said(const QString& words);

private:
    void search();

    Day& day_;
    QString text_, words_;
    Rows<FoundRow> found_;
};

} // namespace stow::view
