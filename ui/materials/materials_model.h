#pragma once

#include "core/materials/table.h"

#include <QAbstractTableModel>
#include <QSet>
#include <QSortFilterProxyModel>

#include <optional>
#include <vector>

namespace tierloam::materials_page {

/// The materials of the household as a table, own ones included. Holds copies of the rows.
class MaterialsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { favourite, name, welcome, ratio, moisture, carbon, nitrogen, bulk, softens, held, columns };
    enum Role { sortRole = Qt::UserRole + 1, searchRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setTable(const materials::Table& table);
    /// Names as the table writes them, folded.
    void setFavourites(const QSet<QString>& favourites);
    const materials::Material* materialAt(int row) const;
    const std::vector<materials::Material>& rows() const { return rows_; }
    const QString& nameAt(int row) const { return names_[row]; }
    int rowOf(const QString& called) const;    ///< without regard to case; −1 when it is not there
    bool isFavourite(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(int row, int column) const;

    std::vector<materials::Material> rows_;
    QStringList names_;              ///< [row] in the language of the program: sorting asks for them often
    QSet<QString> favourites_;
};

/// Which of them are shown: words anywhere in name, reason or source, one kind, favourites or own ones alone. Favourites and own materials lead.
class MaterialsFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    enum class Show { all, food, bedding, mineral, favourites, own, doubtful };

    explicit MaterialsFilter(MaterialsModel* model, QObject* parent = nullptr);
    void setWords(const QString& words);
    void setShow(Show show);
    void refresh() { invalidate(); }

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    const MaterialsModel* model_;
    QStringList words_;
    Show show_ = Show::all;
};

}
