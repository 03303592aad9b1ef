#pragma once

#include <QWidget>

#include <functional>

namespace tierloam::forms {

/// Asks whether what was typed into a form, and is written nowhere, may be lost; told the title of the form.
using MayThrowAway = std::function<bool(const QString& form)>;

/// What all forms in place have in common: what was typed into them is not thrown away unasked, by whatever key, button or other form.
class TypedForm : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

    /// True once anything was typed or chosen that is not written yet.
    virtual bool touched() const = 0;
    /// Unset: what was typed goes unasked.
    void setMayThrowAway(MayThrowAway ask) { ask_ = std::move(ask); }
    /// Nothing was typed, or whoever typed it lets it go. Asks at most once a call.
    bool mayGo() const { return !touched() || !ask_ || ask_(accessibleName()); }

public Q_SLOTS:
    /// As the Cancel button and Esc: finished() follows unless what was typed is to stay, or a write is under way.
    virtual void cancel() = 0;

Q_SIGNALS:
    /// Done or given up: the form may go. Its owner lets it go by deleteLater().
    void finished();

private:
    MayThrowAway ask_;
};

}
