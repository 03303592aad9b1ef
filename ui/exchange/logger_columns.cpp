#include "ui/exchange/logger_columns.h"

#include "ui/common/field_edit.h"
#include "ui/common/panels.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <iterator>

namespace tierloam::exchange_view {

namespace {

using exchange::Degree;
using exchange::LoggerColumn;
using exchange::LoggerRole;

struct Choice {
    const char* words;
    LoggerColumn column;
};

/// What a column can hold; a temperature in degrees that nobody has named yet is a choice of its own, so that it is asked.
constexpr Choice choices[] = {
    {QT_TRANSLATE_NOOP("ReadingsView", "nothing, left out"), {LoggerRole::none, std::nullopt}},
    {QT_TRANSLATE_NOOP("ReadingsView", "date and time"), {LoggerRole::moment, std::nullopt}},
    {QT_TRANSLATE_NOOP("ReadingsView", "time of day, beside the date"), {LoggerRole::timeOfDay, std::nullopt}},
    {QT_TRANSLATE_NOOP("ReadingsView", "temperature of the bed, °C"), {LoggerRole::bin, Degree::celsius}},
    {QT_TRANSLATE_NOOP("ReadingsView", "temperature of the bed, °F"), {LoggerRole::bin, Degree::fahrenheit}},
    {QT_TRANSLATE_NOOP("ReadingsView", "temperature of the bed: °C or °F?"), {LoggerRole::bin, std::nullopt}},
    {QT_TRANSLATE_NOOP("ReadingsView", "temperature of the air, °C"), {LoggerRole::air, Degree::celsius}},
    {QT_TRANSLATE_NOOP("ReadingsView", "temperature of the air, °F"), {LoggerRole::air, Degree::fahrenheit}},
    {QT_TRANSLATE_NOOP("ReadingsView", "temperature of the air: °C or °F?"), {LoggerRole::air, std::nullopt}},
    {QT_TRANSLATE_NOOP("ReadingsView", "moisture of the bed, %"), {LoggerRole::moisture, std::nullopt}},
    {QT_TRANSLATE_NOOP("ReadingsView", "humidity of the air, %"), {LoggerRole::humidity, std::nullopt}},
};

/// The first cells of a column that hold something.
QString examples(const exchange::Sheet& sheet, std::size_t at)
{
    QStringList cells;
    for (const auto& record : sheet.rows) {
        if (cells.size() == 3) break;
        if (at >= record.cells.size()) continue;
        const QString cell = QString::fromStdString(record.cells[at]).trimmed();
        if (!cell.isEmpty()) cells << cell.left(24);
    }
    return cells.join(QStringLiteral("  ·  "));
}

}

LoggerColumns::LoggerColumns(QWidget* parent) : QScrollArea{parent}
{
    auto* body = new QWidget;
    grid_ = new QGridLayout{body};
    grid_->setContentsMargins(0, 0, 8, 0);
    grid_->setColumnStretch(0, 1);
    setWidget(body);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
}

void LoggerColumns::place(const exchange::Sheet& sheet, const exchange::LoggerMapping& mapping)
{
    for (std::size_t at = 0; at < mapping.columns.size(); ++at) {
        auto* list = new ui::FieldCombo{widget()};
        list->setObjectName(QStringLiteral("loggerColumn%1").arg(at));
        for (int i = 0; i < static_cast<int>(std::size(choices)); ++i) {
            const LoggerColumn& column = choices[i].column;
            // The open question is offered only where it is open.
            const bool open = !column.degree && (column.role == LoggerRole::bin || column.role == LoggerRole::air);
            if (!open || mapping.columns[at] == column) list->addItem(QCoreApplication::translate("ReadingsView", choices[i].words), i);
            if (mapping.columns[at] == column) list->setCurrentIndex(list->count() - 1);
        }
        const QString name = QString::fromStdString(sheet.header[at]);
        auto* label = ui::makeLabel(name.isEmpty() ? tr("column %1").arg(at + 1) : name, ui::TextRole::strong, widget(), true);
        label->setBuddy(list);
        ui::setAccess(list, tr("Column «%1» holds").arg(name));
        auto* words = new QVBoxLayout;
        words->setSpacing(0);
        words->addWidget(label);
        words->addWidget(ui::makeLabel(examples(sheet, at), ui::TextRole::smallMuted, widget(), true));
        grid_->addLayout(words, static_cast<int>(at), 0);
        grid_->addWidget(list, static_cast<int>(at), 1);
        connect(list, &QComboBox::activated, this, [this, at, list] { Q_EMIT chosen(at, choices[list->currentData().toInt()].column); });
    }
    grid_->setRowStretch(static_cast<int>(mapping.columns.size()), 1);
}

}
