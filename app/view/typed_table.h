// A short table typed at the window, each row a card of fields: house rules, wrappings. Judged as a file of the same
// columns is, and kept whole in one step.
#pragma once

#include "app/view/row_model.h"
#include "core/book/steps.h"
#include "core/intake/csv.h"
#include "core/intake/problem.h"

#include <QVariant>

#include <map>
#include <variant>

namespace stow {
class Day;
}

namespace stow::view {

struct TypedRow {
    Q_GADGET
    Q_PROPERTY(QVariantList cells MEMBER cells)
    Q_PROPERTY(bool blank MEMBER blank)
public:
    // Of each: column, label, unit, typed, fault, options (words; empty: it is typed), chosen, share (of the width).
    QVariantList cells;
    bool blank = false; // nothing is typed in it yet
};

class TypedTable : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString title READ title CONSTANT)
    Q_PROPERTY(QString words READ words CONSTANT) // what it is for
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
    Q_PROPERTY(QString fault READ fault NOTIFY changed) // of the whole; empty: none
public:
    explicit TypedTable(Day& day, QObject* parent = nullptr) : QObject(parent), day_(day) {}

    virtual QString title() const = 0;
    virtual QString words() const = 0;
    RowModel* rows() { return &rows_; }
    QString fault() const { return fault_; }

    Q_INVOKABLE void begin(); // as the book has it, and a blank row
    Q_INVOKABLE void set(int row, const QString& column, const QString& typed);
    Q_INVOKABLE void choose(int row, const QString& column, int option);
    Q_INVOKABLE void add();
    Q_INVOKABLE void remove(int row);
    Q_INVOKABLE bool keep(); // false: the faults stand at their fields

signals:
    void changed();
    void said(const QString& words);

protected:
    using Typed = std::map<std::string, QString>; // by column
    struct Column {
        const char* name; // core/intake/packing_csv.h
        QString label, unit;
        int share = 1;
        std::vector<std::pair<std::string, QString>> options{}; // as a file says it, and for people
    };
    struct Kept {
        QString words;
    };
    using Outcome = std::variant<Kept, std::vector<intake::Problem>, QString>; // or what is wrong with the whole

    virtual std::vector<Column> columns() const = 0;
    virtual std::vector<Typed> as_in_the_book() const = 0;
    virtual Outcome take(const intake::Csv& table) = 0;

    Day& day_;

private:
    void show(const std::map<std::pair<std::size_t, std::string>, QString>& faults = {});

    std::vector<Typed> typed_;
    Rows<TypedRow> rows_;
    QString fault_;
};

// Which insert goes into which order.
class RulesTable : public TypedTable {
    Q_OBJECT
public:
    using TypedTable::TypedTable;
    QString title() const override;
    QString words() const override;

protected:
    std::vector<Column> columns() const override;
    std::vector<Typed> as_in_the_book() const override;
    Outcome take(const intake::Csv& table) override;
};

// How a good is wrapped: how much it grows, what is used up, how heavy it is.
class WrappingsTable : public TypedTable {
    Q_OBJECT
public:
    using TypedTable::TypedTable;
    QString title() const override;
    QString words() const override;

protected:
    std::vector<Column> columns() const override;
    std::vector<Typed> as_in_the_book() const override;
    Outcome take(const intake::Csv& table) override;
};

} // namespace stow::view
