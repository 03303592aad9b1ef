#pragma once

#include <QStringList>
#include <QWidget>

#include <set>

namespace tierloam::trends {

/// A row of buttons, one for each stack, that take its charts out and bring them back; away where there is but one. Of many stacks the first few are
/// shown at first; a stack that comes later is shown.
class StackChips : public QWidget {
    Q_OBJECT

public:
    explicit StackChips(QWidget* parent = nullptr);

    void setStacks(const QStringList& names);
    const QStringList& stacks() const { return stacks_; }
    void setShown(const QString& stack, bool shown);
    QStringList shown() const;

Q_SIGNALS:
    /// Other stacks are shown. Comes when the click is over, since whoever hears it may make the buttons anew.
    void chosen();

private:
    void makeChips();

    QStringList stacks_;
    std::set<QString> hidden_;       ///< those taken out
};

}
