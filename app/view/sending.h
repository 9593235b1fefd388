// How parcels leave, as she sets it: files for carriers and shops, texts to buyers, stamps, customs. Each setting is a
// few lines of plain words.
#pragma once

#include "app/view/row_model.h"

namespace stow {
class Day;
}

namespace stow::view {

struct SendingRow {
    Q_GADGET
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString help MEMBER help)
    Q_PROPERTY(QString words MEMBER words)
public:
    QString key, title, help, words;
};

class SendingController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
public:
    explicit SendingController(Day& day, QObject* parent = nullptr);
    RowModel* rows() { return &rows_; }

    // Empty: kept; else what is not understood, and in which line.
    Q_INVOKABLE QString set(const QString& key, const QString& words);
    void refresh();

signals:
    void said(const QString& words);

private:
    Day& day_;
    Rows<SendingRow> rows_;
};

} // namespace stow::view
