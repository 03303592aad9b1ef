#pragma once

#include <QHash>
#include <QObject>

class QTableView;
class QTimer;

namespace tierloam::materials_page {

class MaterialsFilter;

/// The column of names in the table of materials. A name is read whole: the column is as wide as the longest where there is room for it; in less room
/// names go on over further lines, and their rows are as high as that. A word of more than 18 letters may be cut; its tool tip has all of it.
class NameColumn : public QObject {
    Q_OBJECT

public:
    NameColumn(QTableView& table, const MaterialsFilter& rows);

    /// To be called when names, letters or theme are others.
    void measure();
    /// px of the longest name, and of the longest word.
    int whole() const { return whole_; }
    int least() const { return least_; }
    /// Held to what is between the longest word, of 18 letters at most, and the whole. `rowHeight`: of a row of one line, px.
    void setRoom(int width, int rowHeight);

private:
    void layRows();
    int linesOf(const QString& name);

    QTableView& table_;
    const MaterialsFilter& rows_;
    QTimer* laying_;                 ///< sorting and finding tell of many rows at once
    QHash<QString, int> lines_;      ///< of the names at the present width
    int around_ = 0;                 ///< px of a cell beside its words
    int whole_ = 0, least_ = 0;
    int width_ = 0, rowHeight_ = 0;
};

}
