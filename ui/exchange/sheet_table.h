#pragma once

#include "ui/exchange/sheet_preview.h"

#include <QTableView>

#include <optional>
#include <utility>
#include <vector>

namespace tierloam::exchange_view {

/// The rows of a file with what becomes of each. Above each column stands a list in which people say what it holds. With new rows or another plan people stay where
/// they are in it.
class SheetTable : public QTableView {
    Q_OBJECT

public:
    explicit SheetTable(QWidget* parent = nullptr);

    /// Another table; none: nothing is shown.
    void setSheet(std::shared_ptr<const exchange::Sheet> sheet, const std::vector<exchange::SheetColumn>& columns);
    /// The same table with more rows: its columns and their lists stay.
    void goOn(std::shared_ptr<const exchange::Sheet> sheet) { model_->goOn(std::move(sheet)); }
    void setPlan(std::shared_ptr<const exchange::SheetPlan> plan, bool waiting);
    void showColumns(const std::vector<exchange::SheetColumn>& columns);
    void showRows(SheetPreview::Shown shown);

Q_SIGNALS:
    /// People say that a column holds this; none: nothing, it is left out.
    void columnChosen(std::size_t at, std::optional<tierloam::exchange::SheetField> field);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Place {
        std::optional<std::pair<std::optional<std::size_t>, int>> current; ///< row of the sheet, column of the table
        std::vector<std::size_t> selected; ///< rows of the sheet
        std::optional<std::size_t> top;    ///< the first row of the sheet in sight
        int down = 0, across = 0;          ///< where the bars are
    };
    Place place() const;
    void goBackTo(const Place& place);
    void fitRows();

    SheetPreview* model_;
};

}
