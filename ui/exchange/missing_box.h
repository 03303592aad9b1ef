#pragma once

#include "core/exchange/sheet_import.h"

#include <QStringList>
#include <QWidget>

#include <array>

class QComboBox;
class QLabel;

namespace tierloam::exchange_view {

/// What rows of a file leave unsaid and people say once for all of them: what was done, which stack, in which unit.
class MissingBox : public QWidget {
    Q_OBJECT

public:
    explicit MissingBox(QWidget* parent = nullptr);

    /// `stacks`: those that stand, in their order; `fresh`: the name that a new stack would have, empty where none can be begun. An answer stays while it can be given.
    void ask(const exchange::SheetQuestions& questions, const QStringList& stacks, const QString& fresh);
    /// Fills in what is remembered, where nothing has been answered yet.
    void answer(std::optional<Unit> unit, const std::string& action);

    std::string action() const;        ///< the journal's name; empty: not answered
    std::string stack() const;
    bool stackIsNew() const;
    std::optional<Unit> unit() const;
    /// Some question has no answer yet.
    bool open() const;
    bool anything() const;

Q_SIGNALS:
    void answered();

private:
    struct Question {
        QLabel* words = nullptr;
        QComboBox* list = nullptr;
        bool asked = false;
    };
    enum What { action_, stack_, unit_ };
    std::array<Question, 3> questions_;
};

}
