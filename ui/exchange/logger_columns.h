#pragma once

#include "core/exchange/logger_csv.h"

#include <QScrollArea>

class QGridLayout;

namespace tierloam::exchange_view {

/// The columns of a logger's table, each with its first cells and a list in which people say what it holds.
class LoggerColumns : public QScrollArea {
    Q_OBJECT

public:
    explicit LoggerColumns(QWidget* parent = nullptr);

    /// Once, when the table has been read.
    void place(const exchange::Sheet& sheet, const exchange::LoggerMapping& mapping);

Q_SIGNALS:
    void chosen(std::size_t at, const tierloam::exchange::LoggerColumn& column);

private:
    QGridLayout* grid_;
};

}
