#pragma once

#include "core/household/household.h"
#include "ui/forms/typed_form.h"

#include <memory>

namespace tierloam::forms {

/// The guided form for a new stack, in place: what stands where, its first bedding, the worms bought. It says how much dry bedding
/// and water to put in, and records setup, bedding and worms (and water and a first feeding when wished) as one undo step.
class NewStack : public TypedForm {
    Q_OBJECT

public:
    explicit NewStack(household::Household& household, QWidget* parent = nullptr);
    ~NewStack() override;

    bool touched() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

public Q_SLOTS:
    void record();
    void cancel() override;

Q_SIGNALS:
    /// The stack is in the household file; comes just before finished().
    void started(const QString& stack);

protected:
    void showEvent(QShowEvent* event) override;

private:
    class Private;
    std::unique_ptr<Private> d_;
};

}
