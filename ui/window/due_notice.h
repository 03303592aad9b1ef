#pragma once

#include "core/household/household.h"
#include "ui/common/seams.h"
#include "ui/window/desktop_notes.h"

#include <QObject>

namespace tierloam::window {

class DueList;

/// Tells on the desktop what is due today while the program runs: only when it was asked for, at most once a day and household, also over restarts, and from
/// estimates of today. Hints, what lies ahead and what was put off are not told.
class DueNotice : public QObject {
    Q_OBJECT

public:
    DueNotice(const DueList& due, const household::Household& household, ui::Settings& settings, DesktopNotes& notes, QObject* parent);

    static bool wanted(const ui::Settings& settings);
    static void setWanted(ui::Settings& settings, bool on);
    /// Tells what is due if it is wanted and nothing has been told today.
    void look();

private:
    const DueList& due_;
    const household::Household& household_;
    ui::Settings& settings_;
    DesktopNotes& notes_;
};

}
