#include "ui/exchange/questions_box.h"

#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/panels.h"

#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace tierloam::exchange_view {

namespace {

using exchange::DateOrder;
using exchange::DecimalMark;

/// Fills a list anew and keeps its choice where that is still there; the first line means: not answered.
void refill(QComboBox* list, const std::vector<std::pair<QString, int>>& choices)
{
    const QVariant before = list->currentData();
    const QSignalBlocker quiet{list};
    list->clear();
    list->addItem(QuestionsBox::tr("Please choose"));
    for (const auto& [text, value] : choices) list->addItem(text, value);
    const int kept = before.isValid() ? list->findData(before) : -1;
    list->setCurrentIndex(std::max(0, kept));
}

std::optional<int> chosen(const QComboBox* list) { return list->isVisibleTo(list->parentWidget()) && list->currentData().isValid() ? std::optional{list->currentData().toInt()} : std::nullopt; }

QString readAs(const std::string& cell, DecimalMark mark)
{
    const auto number = exchange::plainNumber(cell, mark, true);
    return number ? QString::fromStdString(*number) : QuestionsBox::tr("not read");
}

QString dayAs(const std::string& cell, DateOrder order)
{
    exchange::WaysOfWriting ways;
    ways.order = order;
    ways.century = 2000;
    const auto moment = exchange::momentOf(cell, {}, ways);
    return moment ? ui::fullDay(moment->day) : QuestionsBox::tr("not read");
}

}

QuestionsBox::QuestionsBox(QWidget* parent) : QWidget{parent}, rows_{new QVBoxLayout{this}}
{
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->setSpacing(6);
    settled_ = ui::makeLabel({}, ui::TextRole::muted, this, true);
    settled_->setObjectName(QStringLiteral("settledLine"));
    rows_->addWidget(settled_);
    decimal_ = addQuestion("askDecimal", decimalWords_);
    order_ = addQuestion("askOrder", orderWords_);
    century_ = addQuestion("askCentury", centuryWords_);
    for (QWidget* each : {static_cast<QWidget*>(settled_), static_cast<QWidget*>(decimalWords_), static_cast<QWidget*>(decimal_), static_cast<QWidget*>(orderWords_),
                          static_cast<QWidget*>(order_), static_cast<QWidget*>(centuryWords_), static_cast<QWidget*>(century_)})
        each->hide();
}

QComboBox* QuestionsBox::addQuestion(const char* name, QLabel*& words)
{
    words = ui::makeLabel({}, ui::TextRole::strong, this, true);
    auto* list = new ui::FieldCombo{this};
    list->setObjectName(QString::fromLatin1(name));
    words->setBuddy(list);
    rows_->addWidget(words);
    rows_->addWidget(list, 0, Qt::AlignLeading);
    connect(list, &QComboBox::currentIndexChanged, this, &QuestionsBox::answered);
    return list;
}

void QuestionsBox::ask(const exchange::Evidence<DecimalMark>& decimal, const exchange::Evidence<DateOrder>& order, bool century)
{
    QStringList settled;
    const auto cell = [](const std::string& text) { return QString::fromStdString(text); };
    if (decimal.settled && decimal.line > 0)
        settled << (*decimal.settled == DecimalMark::comma ? tr("The comma is the decimal mark: «%1» in line %2 can mean nothing else.") : tr("The point is the decimal mark: «%1» in line %2 can mean nothing else."))
                       .arg(cell(decimal.cell), QString::number(decimal.line));
    if (order.settled)
        settled << (*order.settled == DateOrder::dayFirst ? tr("The day comes before the month: «%1» in line %2 can mean nothing else.") : tr("The month comes before the day: «%1» in line %2 can mean nothing else."))
                       .arg(cell(order.cell), QString::number(order.line));
    settled_->setText(settled.join(QLatin1Char{' '}));
    settled_->setVisible(!settled.isEmpty());

    if (decimal.mustBeAsked()) {
        decimalWords_->setText(decimal.divided ? tr("Some numbers can only have a point as decimal mark, others only a comma («%1» in line %2). Which is meant? Rows of the other kind will be at fault.")
                                                     .arg(cell(decimal.cell), QString::number(decimal.line))
                                               : tr("What does «%1» in line %2 mean?").arg(cell(decimal.cell), QString::number(decimal.line)));
        const auto words = [&](DecimalMark mark) {
            const QString name = mark == DecimalMark::comma ? tr("The comma is the decimal mark") : tr("The point is the decimal mark");
            return decimal.open ? tr("%1: this is %2").arg(name, readAs(decimal.cell, mark)) : name;
        };
        refill(decimal_, {{words(DecimalMark::point), static_cast<int>(DecimalMark::point)}, {words(DecimalMark::comma), static_cast<int>(DecimalMark::comma)}});
        ui::setAccess(decimal_, decimalWords_->text());
    }
    if (order.mustBeAsked()) {
        orderWords_->setText(order.divided ? tr("Some dates can only have the day first, others only the month («%1» in line %2). Which is meant? Rows of the other kind will be at fault.")
                                                 .arg(cell(order.cell), QString::number(order.line))
                                           : tr("Which day is «%1» in line %2?").arg(cell(order.cell), QString::number(order.line)));
        const auto words = [&](DateOrder first) {
            const QString name = first == DateOrder::dayFirst ? tr("The day comes first") : tr("The month comes first");
            return order.open ? tr("%1: this is %2").arg(name, dayAs(order.cell, first)) : name;
        };
        refill(order_, {{words(DateOrder::dayFirst), static_cast<int>(DateOrder::dayFirst)}, {words(DateOrder::monthFirst), static_cast<int>(DateOrder::monthFirst)}});
        ui::setAccess(order_, orderWords_->text());
    }
    if (century) {
        centuryWords_->setText(tr("Years have two digits. Which are meant?"));
        refill(century_, {{tr("2000 to 2099"), 2000}, {tr("1900 to 1999"), 1900}});
        ui::setAccess(century_, centuryWords_->text());
    }
    for (const auto& [shown, words, list] : {std::tuple{decimal.mustBeAsked(), decimalWords_, decimal_}, std::tuple{order.mustBeAsked(), orderWords_, order_}, std::tuple{century, centuryWords_, century_}}) {
        words->setVisible(shown);
        list->setVisible(shown);
    }
}

void QuestionsBox::answer(std::optional<DecimalMark> decimal, std::optional<DateOrder> order, std::optional<int> century)
{
    const auto choose = [](QComboBox* list, std::optional<int> value) {
        const QSignalBlocker quiet{list};
        if (const int at = value ? list->findData(*value) : -1; at >= 0) list->setCurrentIndex(at);
    };
    choose(decimal_, decimal ? std::optional{static_cast<int>(*decimal)} : std::nullopt);
    choose(order_, order ? std::optional{static_cast<int>(*order)} : std::nullopt);
    choose(century_, century);
}

std::optional<DecimalMark> QuestionsBox::decimal() const
{
    const auto value = chosen(decimal_);
    return value ? std::optional{static_cast<DecimalMark>(*value)} : std::nullopt;
}

std::optional<DateOrder> QuestionsBox::order() const
{
    const auto value = chosen(order_);
    return value ? std::optional{static_cast<DateOrder>(*value)} : std::nullopt;
}

std::optional<int> QuestionsBox::century() const { return chosen(century_); }

bool QuestionsBox::anything() const
{
    return std::ranges::any_of(std::initializer_list<const QWidget*>{settled_, decimal_, order_, century_}, [this](const QWidget* each) { return each->isVisibleTo(this); });
}

bool QuestionsBox::open() const
{
    const std::array lists{decimal_, order_, century_};
    return std::ranges::any_of(lists, [this](const QComboBox* list) { return list->isVisibleTo(this) && !list->currentData().isValid(); });
}

}
