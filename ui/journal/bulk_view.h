#pragma once

#include "core/household/bulk_edit.h"
#include "core/household/household.h"
#include "ui/common/view.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace tierloam::journal_page {

/// Changes chosen entries together: one column, from one old value to a new one. It says how many change, how many hold something else
/// and stay, and lists each change before anything is written. What is typed stays when the write fails.
class BulkView : public ui::View {
    Q_OBJECT

public:
    BulkView(household::Household& household, std::vector<journal::EntryId> chosen, QWidget* parent = nullptr);

private:
    household::BulkField field() const;
    void fillValues();
    void say();
    void change();

    household::Household& household_;
    std::vector<journal::EntryId> chosen_;
    household::BulkEdit made_;
    household::Ticket ticket_{};
    QComboBox* field_;
    QComboBox* before_;
    QLineEdit* after_;
    QLabel* line_;
    QPlainTextEdit* list_;
    QPushButton* change_;
};

}
