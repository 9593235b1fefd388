// One list model for every table on screen: a row is a gadget, its properties are the roles.
#pragma once

#include <QAbstractListModel>
#include <QMetaProperty>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <functional>
#include <set>
#include <utility>
#include <vector>

namespace stow::view {

class RowModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    Q_PROPERTY(int total READ total NOTIFY countChanged)
    // Typed by the user; a row stays if each word of it begins some word of the row.
    Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY filterChanged)
    Q_PROPERTY(QString order READ order NOTIFY orderChanged) // how the rows are sorted; empty: in one way only
    Q_PROPERTY(bool sorted READ sorted NOTIFY orderChanged)  // in another way than the place itself lays them
    Q_PROPERTY(int marked READ marked NOTIFY markedChanged)  // rows she chose to treat together
public:
    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

    int count() const { return rowCount(); }
    int total() const { return static_cast<int>(rows()); }
    QString filter() const { return filter_; }
    void setFilter(const QString& filter);
    // The value of a role in a shown row; an invalid value past the end.
    Q_INVOKABLE QVariant value(int row, const QString& role) const;

    Q_INVOKABLE qlonglong idAt(int row) const;
    Q_INVOKABLE int rowOf(qlonglong id) const; // among those shown; -1: it is not

    QString order() const { return orders() > 0 ? order_words(order_) : QString(); }
    bool sorted() const { return order_ != 0; }
    Q_INVOKABLE void nextOrder();

    int marked() const { return static_cast<int>(marked_.size()); }
    Q_INVOKABLE void mark(int row);             // a shown one; a second time takes the mark away
    Q_INVOKABLE void markFrom(int row, int to); // both and what lies between, shown ones
    Q_INVOKABLE void markAll();                 // that are shown; when they are, none
    Q_INVOKABLE void unmark();
    // The marked rows that are there, whatever is shown; without any, the one given.
    std::vector<qlonglong> marked_or(qlonglong one) const;

signals:
    void countChanged();
    void filterChanged();
    void orderChanged();
    void markedChanged();

protected:
    virtual qlonglong identity(std::size_t index) const = 0; // 0: rows of this kind are not marked
    virtual std::size_t orders() const = 0;
    virtual QString order_words(std::size_t order) const = 0;
    virtual bool before(std::size_t order, std::size_t a, std::size_t b) const = 0;
    virtual const QMetaObject& gadget() const = 0;
    virtual std::size_t rows() const = 0;
    virtual const void* row(std::size_t index) const = 0;
    std::size_t source(int shown_row) const { return shown_[static_cast<std::size_t>(shown_row)]; }
    void refilter(); // between beginResetModel and endResetModel
    void forget_marks_of_gone_rows();
    void changedRow(std::size_t index);

private:
    void reshow();
    void marks_changed();
    int marked_role() const;

    QString filter_;
    std::size_t order_ = 0;
    std::set<qlonglong> marked_;
    std::vector<std::size_t> shown_; // rows that pass the filter
};

// Rows that have `qlonglong id() const` can be marked.
template <class Row>
class Rows final : public RowModel {
public:
    struct Order {
        QString words;                                      // "postage, dearest first"
        std::function<bool(const Row&, const Row&)> before; // none: as they were shown
    };

    using RowModel::RowModel;
    explicit Rows(std::vector<Order> orders) : orders_(std::move(orders)) {}

    void show(std::vector<Row> rows)
    {
        beginResetModel();
        rows_ = std::move(rows);
        refilter();
        endResetModel();
        forget_marks_of_gone_rows();
        emit countChanged();
    }
    // Changes one row in place, so that a list keeps its position and focus.
    void change(std::size_t index, Row row)
    {
        rows_[index] = std::move(row);
        changedRow(index);
    }
    // Puts one row in between, so that the others keep their focus. The filter is let go of.
    void insert(std::size_t index, Row row)
    {
        setFilter({});
        const int at = static_cast<int>(index);
        beginInsertRows({}, at, at);
        rows_.insert(rows_.begin() + at, std::move(row));
        refilter();
        endInsertRows();
        emit countChanged();
    }
    const std::vector<Row>& all() const { return rows_; }
    const Row* shown(int row) const { return row >= 0 && row < count() ? &rows_[source(row)] : nullptr; }

private:
    const QMetaObject& gadget() const override { return Row::staticMetaObject; }
    std::size_t rows() const override { return rows_.size(); }
    const void* row(std::size_t index) const override { return &rows_[index]; }
    qlonglong identity(std::size_t index) const override
    {
        if constexpr (requires(const Row& r) { r.id(); })
            return rows_[index].id();
        else
            return 0;
    }
    std::size_t orders() const override { return orders_.size(); }
    QString order_words(std::size_t order) const override { return orders_[order].words; }
    bool before(std::size_t order, std::size_t a, std::size_t b) const override
    {
        const auto& sorted = orders_[order].before;
        return sorted && sorted(rows_[a], rows_[b]);
    }

    std::vector<Row> rows_;
    std::vector<Order> orders_;
};

} // namespace stow::view
