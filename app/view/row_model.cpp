#include "app/view/row_model.h"

namespace stow::view {

namespace {

std::vector<QMetaProperty> texts_of(const QMetaObject& gadget)
{
    std::vector<QMetaProperty> texts;
    for (int i = 0; i < gadget.propertyCount(); ++i) {
        if (gadget.property(i).metaType() == QMetaType::fromType<QString>()) texts.push_back(gadget.property(i));
    }
    return texts;
}

bool begins_a_word(const QString& asked, const QString& text)
{
    for (qsizetype at = 0; at < text.size(); ++at) {
        const bool word = at == 0 || text[at - 1].isSpace();
        if (word && QStringView(text).sliced(at).startsWith(asked, Qt::CaseInsensitive)) return true;
    }
    return false;
}

} // namespace

int RowModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant RowModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount() || role < Qt::UserRole) return {};
    if (role == marked_role()) return marked_.contains(identity(source(index.row())));
    const QMetaProperty property = gadget().property(role - Qt::UserRole);
    return property.readOnGadget(row(source(index.row())));
}

QHash<int, QByteArray> RowModel::roleNames() const
{
    QHash<int, QByteArray> names;
    for (int i = 0; i < gadget().propertyCount(); ++i) names.insert(Qt::UserRole + i, gadget().property(i).name());
    names.insert(marked_role(), "isMarked");
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
    reshow();
    emit filterChanged();
    emit countChanged();
}

qlonglong RowModel::idAt(int row) const
{
    return row < 0 || row >= rowCount() ? 0 : identity(source(row));
}

int RowModel::rowOf(qlonglong id) const
{
    for (int row = 0; id != 0 && row < rowCount(); ++row) {
        if (idAt(row) == id) return row;
    }
    return -1;
}

void RowModel::nextOrder()
{
    if (orders() < 2) return;
    order_ = (order_ + 1) % orders();
    reshow();
    emit orderChanged();
}

void RowModel::reshow()
{
    beginResetModel();
    refilter();
    endResetModel();
}

void RowModel::refilter()
{
    const QStringList asked = filter_.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const std::vector<QMetaProperty> texts = texts_of(gadget());
    const auto passes = [&](const void* row) {
        return std::all_of(asked.begin(), asked.end(), [&](const QString& ask) {
            return std::any_of(texts.begin(), texts.end(), [&](const QMetaProperty& text) {
                return begins_a_word(ask, text.readOnGadget(row).toString());
            });
        });
    };
    shown_.clear();
    for (std::size_t i = 0; i < rows(); ++i) {
        if (passes(row(i))) shown_.push_back(i);
    }
    if (order_ > 0 && order_ < orders()) {
        std::stable_sort(shown_.begin(), shown_.end(),
                         [this](std::size_t a, std::size_t b) { return before(order_, a, b); });
    }
}

int RowModel::marked_role() const
{
    return Qt::UserRole + gadget().propertyCount();
}

void RowModel::mark(int row)
{
    const qlonglong id = idAt(row);
    if (id == 0) return;
    if (!marked_.erase(id)) marked_.insert(id);
    marks_changed();
}

void RowModel::markFrom(int row, int to)
{
    const int last = std::min(std::max(row, to), rowCount() - 1);
    for (int i = std::max(std::min(row, to), 0); i <= last; ++i) marked_.insert(identity(source(i)));
    marked_.erase(0);
    marks_changed();
}

void RowModel::markAll()
{
    std::set<qlonglong> all;
    for (const std::size_t i : shown_) all.insert(identity(i));
    all.erase(0);
    marked_ = all == marked_ ? std::set<qlonglong>{} : std::move(all);
    marks_changed();
}

void RowModel::unmark()
{
    if (marked_.empty()) return;
    marked_.clear();
    marks_changed();
}

std::vector<qlonglong> RowModel::marked_or(qlonglong one) const
{
    if (!marked_.empty()) return {marked_.begin(), marked_.end()};
    return one != 0 ? std::vector{one} : std::vector<qlonglong>{};
}

void RowModel::forget_marks_of_gone_rows()
{
    if (marked_.empty()) return;
    std::set<qlonglong> there;
    for (std::size_t i = 0; i < rows(); ++i) there.insert(identity(i));
    if (std::erase_if(marked_, [&](qlonglong id) { return !there.contains(id); }) > 0) emit markedChanged();
}

void RowModel::marks_changed()
{
    emit dataChanged(index(0), index(rowCount() - 1), {marked_role()});
    emit markedChanged();
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
