// One list model for every table on screen: a row is a gadget, its properties are the roles.
#pragma once

#include <QAbstractListModel>
#include <QMetaProperty>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <utility>
#include <vector>

namespace stow::view {

class RowModel : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    Q_PROPERTY(int total READ total NOTIFY countChanged)
    // Typed by the user; a row stays if each word of it begins some word of the row.
    Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY filterChanged)
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

signals:
    void countChanged();
    void filterChanged();

protected:
    virtual const QMetaObject& gadget() const = 0;
    virtual std::size_t rows() const = 0;
    virtual const void* row(std::size_t index) const = 0;
    std::size_t source(int shown_row) const { return shown_[static_cast<std::size_t>(shown_row)]; }
    enum class Words { same, changed };
    void refilter(Words words = Words::changed); // between beginResetModel and endResetModel
    void changedRow(std::size_t index);

private:
    bool passes(std::size_t index, const QStringList& asked);
    const QString& words_of(std::size_t index);

    QString filter_;
    std::vector<QString> words_;     // of each row, folded, a space before each; empty: not asked for yet
    std::vector<std::size_t> shown_; // rows that pass the filter
};

template <class Row>
class Rows final : public RowModel {
public:
    using RowModel::RowModel;

    void show(std::vector<Row> rows)
    {
        beginResetModel();
        rows_ = std::move(rows);
        refilter();
        endResetModel();
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

    std::vector<Row> rows_;
};

} // namespace stow::view
