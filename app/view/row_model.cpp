#include "app/view/row_model.h"

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
    refilter(Words::same);
    endResetModel();
    emit filterChanged();
    emit countChanged();
}

void RowModel::refilter(Words words)
{
    if (words == Words::changed) words_.clear();
    shown_.clear();
    const QStringList asked = filter_.toCaseFolded().simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (std::size_t i = 0; i < rows(); ++i) {
        if (passes(i, asked)) shown_.push_back(i);
    }
}

// Kept from the first letter of a filter on: a list of thousands is asked again at each.
const QString& RowModel::words_of(std::size_t index)
{
    if (words_.size() != rows()) words_.assign(rows(), QString());
    QString& words = words_[index];
    if (!words.isEmpty()) return words;
    for (int i = 0; i < gadget().propertyCount(); ++i) {
        const QMetaProperty property = gadget().property(i);
        if (property.metaType().id() == QMetaType::QString)
            words += QLatin1Char(' ') + property.readOnGadget(row(index)).toString();
    }
    words = QLatin1Char(' ') + words.toCaseFolded().simplified();
    return words;
}

bool RowModel::passes(std::size_t index, const QStringList& asked)
{
    return std::all_of(asked.begin(), asked.end(),
                       [&](const QString& ask) { return words_of(index).contains(QLatin1Char(' ') + ask); });
}

void RowModel::changedRow(std::size_t changed)
{
    if (changed < words_.size()) words_[changed].clear();
    for (std::size_t i = 0; i < shown_.size(); ++i) {
        if (shown_[i] != changed) continue;
        const QModelIndex at = index(static_cast<int>(i));
        emit dataChanged(at, at);
    }
}

} // namespace stow::view
