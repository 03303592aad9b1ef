#include "ui/materials/materials_model.h"

#include "ui/common/formats.h"
#include "ui/common/material_names.h"
#include "ui/common/material_words.h"
#include "ui/common/source_words.h"

#include <algorithm>

namespace tierloam::materials_page {

namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

double sortValue(const materials::Material& row, int column)
{
    switch (column) {
    case MaterialsModel::welcome: return static_cast<double>(row.welcome);
    case MaterialsModel::ratio: return row.carbonToNitrogen.value_or(0.0);
    case MaterialsModel::moisture: return row.moisturePercent;
    case MaterialsModel::carbon: return row.carbonShare();
    case MaterialsModel::nitrogen: return row.nitrogenPercent;
    case MaterialsModel::bulk: return row.bulkKgPerM3;
    case MaterialsModel::softens: return static_cast<double>(row.softening);
    case MaterialsModel::held: return row.waterHeldKgPerKg;
    default: return 0.0;
    }
}

}

void MaterialsModel::setTable(const materials::Table& table)
{
    beginResetModel();
    rows_ = table.rows();
    names_.clear();
    for (const materials::Material& row : rows_) names_ << ui::materialText(row.name);
    endResetModel();
}

void MaterialsModel::setFavourites(const QSet<QString>& favourites)
{
    favourites_ = favourites;
    if (!rows_.empty()) Q_EMIT dataChanged(index(0, favourite), index(rowCount() - 1, favourite));
}

const materials::Material* MaterialsModel::materialAt(int row) const
{
    return row >= 0 && row < rowCount() ? &rows_[static_cast<std::size_t>(row)] : nullptr;
}

int MaterialsModel::rowOf(const QString& called) const
{
    const auto found = std::ranges::find_if(rows_, [&](const materials::Material& row) { return plain(row.name).compare(called, Qt::CaseInsensitive) == 0; });
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

bool MaterialsModel::isFavourite(int row) const
{
    const materials::Material* material = materialAt(row);
    return material && favourites_.contains(plain(material->name).toCaseFolded());
}

int MaterialsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }
int MaterialsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QString MaterialsModel::text(int row, int column) const
{
    const materials::Material& material = rows_[static_cast<std::size_t>(row)];
    switch (column) {
    case favourite: return isFavourite(row) ? QStringLiteral("★") : QString{};
    case name: return material.own ? tr("%1 (own)").arg(names_[row]) : names_[row];
    case welcome: return QString{ui::welcomeMark(material.welcome) % u' ' % ui::welcomeText(material.welcome)};
    case ratio: return material.carbonToNitrogen ? ui::numberText(*material.carbonToNitrogen, 0) : QStringLiteral("–");
    case moisture: return tr("%1 %").arg(ui::numberText(material.moisturePercent, 0));
    case carbon: return material.carbonToNitrogen ? tr("%1 %").arg(ui::numberText(100 * material.carbonShare(), 0)) : QStringLiteral("–");
    case nitrogen: return tr("%1 %").arg(ui::numberText(material.nitrogenPercent, 2));
    case bulk: return ui::bulkNumber(material.bulkKgPerM3);
    case softens: return ui::softeningText(material.softening);
    case held: return ui::numberText(material.waterHeldKgPerKg, 1);
    default: return {};
    }
}

QVariant MaterialsModel::data(const QModelIndex& index, int role) const
{
    const materials::Material* material = index.isValid() ? materialAt(index.row()) : nullptr;
    if (!material) return {};
    const int column = index.column();
    switch (role) {
    case Qt::DisplayRole: return text(index.row(), column);
    case Qt::AccessibleTextRole: return column == favourite ? (isFavourite(index.row()) ? tr("favourite") : tr("no favourite")) : text(index.row(), column);
    case Qt::ToolTipRole:
        if (column == welcome && material->doubt != materials::Doubt::none) return ui::doubtText(material->doubt);
        return text(index.row(), column);
    case Qt::TextAlignmentRole:
        return QVariant{(column == ratio || (column >= moisture && column <= bulk) || column == held ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter};
    case sortRole:
        if (column == name) return names_[index.row()];
        if (column == favourite) return isFavourite(index.row()) ? 0.0 : 1.0;
        return sortValue(*material, column);
    case searchRole:
        return QString{ui::materialText(material->name) % u'\n' % plain(material->name) % u'\n' % ui::kindText(material->kind) % u'\n' % ui::welcomeText(material->welcome) % u'\n' % ui::doubtText(material->doubt)
                       % u'\n' % ui::softeningText(material->softening) % u'\n' % plain(material->source) % u'\n' % ui::sourceWords(std::string_view{material->source})};
    default: return {};
    }
}

QVariant MaterialsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Vertical) return role == Qt::DisplayRole ? QVariant{section + 1} : QVariant{};
    if (role == Qt::TextAlignmentRole) return QVariant{Qt::AlignLeading | Qt::AlignVCenter};
    const bool wide = role == Qt::ToolTipRole || role == Qt::AccessibleTextRole;
    if (role != Qt::DisplayRole && !wide) return {};
    switch (section) {
    case favourite: return wide ? tr("Favourite") : QStringLiteral("★");
    case name: return tr("Material");
    case welcome: return wide ? tr("Welcome in a worm bin, and how much of it") : tr("Welcome");
    case ratio: return wide ? tr("Carbon to nitrogen, by mass") : tr("C:N");
    case moisture: return wide ? tr("Water in the fresh mass") : tr("Moisture");
    case carbon: return wide ? tr("Carbon in the dry matter") : tr("Carbon");
    case nitrogen: return wide ? tr("Nitrogen in the dry matter") : tr("Nitrogen");
    case bulk: return wide ? tr("Fresh and loose, in %1").arg(ui::bulkUnit()) : ui::bulkUnit();
    case softens: return tr("Softens like");
    case held: return wide ? tr("Water held by one part of dry matter") : tr("Holds");
    default: return {};
    }
}

MaterialsFilter::MaterialsFilter(MaterialsModel* model, QObject* parent) : QSortFilterProxyModel{parent}, model_{model}
{
    setSourceModel(model);
    setSortRole(MaterialsModel::sortRole);
    setDynamicSortFilter(true);
}

void MaterialsFilter::setWords(const QString& words)
{
    words_ = words.simplified().split(u' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

void MaterialsFilter::setShow(Show show)
{
    show_ = show;
    invalidateFilter();
}

bool MaterialsFilter::filterAcceptsRow(int row, const QModelIndex& parent) const
{
    const materials::Material* material = parent.isValid() ? nullptr : model_->materialAt(row);
    if (!material) return false;
    switch (show_) {
    case Show::all: break;
    case Show::food: if (material->kind != materials::Kind::food) return false; break;
    case Show::bedding: if (material->kind != materials::Kind::bedding) return false; break;
    case Show::mineral: if (material->kind != materials::Kind::mineral) return false; break;
    case Show::favourites: if (!model_->isFavourite(row)) return false; break;
    case Show::own: if (!material->own) return false; break;
    case Show::doubtful: if (material->welcome == materials::Welcome::yes) return false; break;
    }
    if (words_.isEmpty()) return true;
    const QString text = model_->data(model_->index(row, 0), MaterialsModel::searchRole).toString();
    return std::ranges::all_of(words_, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

bool MaterialsFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const
{
    const auto byName = [&] {
        const auto rank = [&](const QModelIndex& index) { return model_->isFavourite(index.row()) ? 0 : model_->materialAt(index.row())->own ? 1 : 2; };
        if (left.column() == MaterialsModel::name && rank(left) != rank(right)) return sortOrder() == Qt::AscendingOrder ? rank(left) < rank(right) : rank(left) > rank(right);
        return QString::localeAwareCompare(model_->nameAt(left.row()), model_->nameAt(right.row())) < 0;
    };
    if (left.column() == MaterialsModel::name) return byName();
    const double a = left.data(MaterialsModel::sortRole).toDouble(), b = right.data(MaterialsModel::sortRole).toDouble();
    return a < b || (!(b < a) && byName());
}

}
