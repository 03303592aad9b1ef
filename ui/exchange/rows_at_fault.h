#pragma once

#include <QString>

#include <string_view>

class QWidget;

namespace tierloam::ui {
class Dialogs;
}

namespace tierloam::exchange_view {

/// Asks where the rows at fault of the table `source` are to go, beside it unless another place is chosen, and writes them there, whole or
/// not at all. Returns what to tell, that they were written or why not; empty: it was called off.
QString saveRowsAtFault(QWidget* asker, ui::Dialogs& dialogs, const QString& source, std::string_view rows);

}
