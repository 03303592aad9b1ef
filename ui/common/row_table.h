#pragma once

class QTableView;

namespace tierloam::ui {

/// Sets a table up in which a row is one thing: rows are chosen whole, sorted by a click on the heading, never typed into; lines
/// alternate, long texts are cut, and Tab leaves the table.
void setUpRowTable(QTableView& table);

}
