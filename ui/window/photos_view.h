#pragma once

#include "core/household/household.h"
#include "ui/common/seams.h"
#include "ui/common/view.h"

#include <vector>

class QLabel;
class QListWidget;
class QPushButton;

namespace tierloam::window {

/// The pictures of one entry: added from files, looked at, taken out; each can be undone. Not modal; Esc closes it.
class PhotosView : public ui::View {
    Q_OBJECT

public:
    PhotosView(household::Household& household, journal::EntryId entry, ui::Dialogs& dialogs, QWidget* parent = nullptr);

private:
    void list();
    void fill(const std::vector<store::Photo>& photos);
    void add();
    void remove();
    void showChosen();

    household::Household& household_;
    journal::EntryId entry_;
    ui::Dialogs& dialogs_;
    std::vector<store::Photo> photos_;
    household::Ticket ticket_{};
    QLabel* line_;
    QListWidget* thumbs_;
    QLabel* picture_;
    QPushButton* add_;
    QPushButton* remove_;
};

}
