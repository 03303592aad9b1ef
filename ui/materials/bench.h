#pragma once

#include "core/household/household.h"
#include "ui/common/theme.h"
#include "ui/forms/cautions.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace tierloam::ui {
class ChoiceField;
}

namespace tierloam::materials_page {

/// One of the sums beside the table: it takes what is typed at each change and writes nothing. Its cautions are
/// shown by the page, above everything that scrolls.
class Bench : public QWidget {
    Q_OBJECT

public:
    Bench(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);

    /// The journal or the estimates changed.
    virtual void follow() = 0;
    const QList<forms::Caution>& cautions() const { return told_; }

Q_SIGNALS:
    void cautionsChanged();

protected:
    void setCautions(const QList<forms::Caution>& cautions);
    /// Names of the stacks that stand today, in journal order.
    QStringList standingStacks() const;
    /// The newest estimate; nullptr when there is none.
    const reckoning::StackReckoning* estimateOf(const QString& stack) const;
    const journal::Standing* standingOf(const QString& stack) const;
    /// Fills a list of stacks and keeps what was chosen.
    void fillStacks(ui::ChoiceField* field, const QString& none) const;
    QLabel* addNote(const QString& text);

    household::Household& household_;
    const ui::Theme& theme_;
    QVBoxLayout* column_;

private:
    QList<forms::Caution> told_;
    mutable std::shared_ptr<const reckoning::Reckoning> reckoning_; ///< keeps what estimateOf() handed out
    mutable std::shared_ptr<const household::JournalView> journal_;
};

}
