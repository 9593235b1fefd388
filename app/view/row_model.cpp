#include "app/view/row_model.h"

#include <QRegularExpression>

namespace stow::view {

int RowModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant RowModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount() || role < Qt::UserRole) return {};
    const QMetaProperty property = gadget().property(role - Qt::UserRole);
    return property.readOnGadget(row(source(index.row())));
}

QHash<int, QByteArray> RowModel::roleNames() const
{
    QHash<int, QByteArray> names;
    for (int i = 0; i < gadget().propertyCount(); ++i) names.insert(Qt::UserRole + i, gadget().property(i).name());
    return names;
}

QVariant RowModel::value(int row, const QString& role) const
{
    if (row < 0 || row >= rowCount()) return {};
    const int property = gadget().indexOfProperty(role.toUtf8().constData());
    return property < 0 ? QVariant() : gadget().property(property).readOnGadget(this->row(source(row)));
}

void RowModel::setFilter(const QString& filter)
{
    if (filter == filter_) return;
    filter_ = filter;
    beginResetModel();
    refilter();
    endResetModel();
    emit filterChanged();
    emit countChanged();
}

void RowModel::refilter()
{
    shown_.clear();
    for (std::size_t i = 0; i < rows(); ++i) {
        if (passes(i)) shown_.push_back(i);
    }
}

bool RowModel::passes(std::size_t index) const
{
    static const QRegularExpression spaces(QStringLiteral("\\s+"));
    const QStringList asked = filter_.split(spaces, Qt::SkipEmptyParts);
    if (asked.isEmpty()) return true;
    QStringList words;
    for (int i = 0; i < gadget().propertyCount(); ++i) {
        const QMetaProperty property = gadget().property(i);
        if (property.metaType().id() == QMetaType::QString) {
            words += property.readOnGadget(row(index)).toString().split(spaces, Qt::SkipEmptyParts);
        }
    }
    return std::all_of(asked.begin(), asked.end(), [&](const QString& ask) {
        return std::any_of(words.begin(), words.end(),
                           [&](const QString& word) { return word.startsWith(ask, Qt::CaseInsensitive); });
    });
}

void RowModel::changedRow(std::size_t changed)
{
    for (std::size_t i = 0; i < shown_.size(); ++i) {
        if (shown_[i] != changed) continue;
        const QModelIndex at = index(static_cast<int>(i));
        emit dataChanged(at, at);
    }
}

} // namespace stow::view
