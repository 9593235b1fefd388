// One supply as a card of fields: which fields depends on what it is; typed, checked as a row of a file is, and kept.
#pragma once

#include "app/view/row_model.h"
#include "core/shop/house.h"
#include "core/shop/supplies.h"

#include <map>

namespace stow {
class Day;
}

namespace stow::view {

struct SupplyField {
    Q_GADGET
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString unit MEMBER unit)
    Q_PROPERTY(QString typed MEMBER typed)
    Q_PROPERTY(QString fault MEMBER fault)
    Q_PROPERTY(QStringList options MEMBER options)
    Q_PROPERTY(int chosen MEMBER chosen)
    Q_PROPERTY(bool wide MEMBER wide)
    Q_PROPERTY(bool fixed MEMBER fixed)
public:
    QString key; // the column of a file of supplies, core/intake/supplies_csv.h
    QString label, unit, typed, fault;
    QStringList options; // empty: it is typed
    int chosen = 0;
    bool wide = false;
    bool fixed = false; // the code of a supply that is there already
};

class SupplyCard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList kinds READ kinds CONSTANT) // carton, mailer... wrap, filler...
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY changed)
    Q_PROPERTY(bool fresh READ fresh NOTIFY changed) // not in the book yet
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(stow::view::RowModel* fields READ fields CONSTANT)
public:
    explicit SupplyCard(Day& day, QObject* parent = nullptr);

    QStringList kinds() const;
    int kind() const { return kind_; }
    void setKind(int kind);
    bool fresh() const { return fresh_; }
    QString title() const { return title_; }
    RowModel* fields() { return &fields_; }

    Q_INVOKABLE void begin();                     // a new one
    Q_INVOKABLE void change(const QString& code); // one that is there
    Q_INVOKABLE void set(const QString& key, const QString& typed);
    Q_INVOKABLE void choose(const QString& key, int option);
    Q_INVOKABLE bool keep(); // false: the faults stand at their fields

signals:
    void changed();
    void said(const QString& words);

private:
    void show();

    Day& day_;
    int kind_ = 0;
    bool fresh_ = true;
    QString title_;
    std::map<std::string, QString> typed_, faults_; // by column; typed stays when the kind changes
    Rows<SupplyField> fields_;
};

} // namespace stow::view
