#pragma once

#include "core/household/household.h"
#include "ui/common/view.h"

#include <vector>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace tierloam::window {

/// The entries that were taken out, latest first, also those of earlier days; what is chosen can be put back. Not modal; Esc closes it.
class BinView : public ui::View {
    Q_OBJECT

public:
    explicit BinView(household::Household& household, QWidget* parent = nullptr);

    void putBackChosen();

private:
    void list();
    void fill(const std::vector<store::DeletedEntry>& deleted);
    void syncButton();

    household::Household& household_;
    std::vector<store::DeletedEntry> deleted_;
    QLabel* line_;
    QTreeWidget* table_;
    QPushButton* putBack_;
    household::Ticket ticket_{};
};

}
