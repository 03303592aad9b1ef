#pragma once

#include "core/exchange/sheet_values.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace tierloam::exchange_view {

/// How numbers and dates of a file are meant: what its cells settle is said, what they leave open is asked.
class QuestionsBox : public QWidget {
    Q_OBJECT

public:
    explicit QuestionsBox(QWidget* parent = nullptr);

    /// Answers that were given stay as long as their question does.
    void ask(const exchange::Evidence<exchange::DecimalMark>& decimal, const exchange::Evidence<exchange::DateOrder>& order, bool century);
    /// Fills in what is remembered.
    void answer(std::optional<exchange::DecimalMark> decimal, std::optional<exchange::DateOrder> order, std::optional<int> century);

    std::optional<exchange::DecimalMark> decimal() const;
    std::optional<exchange::DateOrder> order() const;
    std::optional<int> century() const;
    /// Some question has no answer yet.
    bool open() const;
    /// Something is said or asked.
    bool anything() const;

Q_SIGNALS:
    void answered();

private:
    QComboBox* addQuestion(const char* name, QLabel*& words);

    QVBoxLayout* rows_;
    QLabel* settled_;
    QLabel* decimalWords_ = nullptr;
    QLabel* orderWords_ = nullptr;
    QLabel* centuryWords_ = nullptr;
    QComboBox* decimal_;
    QComboBox* order_;
    QComboBox* century_;
};

}
