#pragma once

#include "core/household/household.h"

#include <QWidget>

#include <functional>
#include <memory>

namespace tierloam::forms {

/// The guided form for a new stack, in place: what stands where, its first bedding, the worms bought. It says how much dry bedding
/// and water to put in, and records setup, bedding and worms (and water and a first feeding when wished) as one undo step.
class NewStack : public QWidget {
    Q_OBJECT

public:
    explicit NewStack(household::Household& household, QWidget* parent = nullptr);
    ~NewStack() override;

    bool touched() const;
    /// Asked before what was typed is thrown away; unset: it goes unasked.
    void setMayThrowAway(std::function<bool()> ask);
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

public Q_SLOTS:
    void record();
    void cancel();

Q_SIGNALS:
    /// The stack is in the household file; comes just before finished().
    void started(const QString& stack);
    void finished();

protected:
    void showEvent(QShowEvent* event) override;

private:
    class Private;
    std::unique_ptr<Private> d_;
};

}
