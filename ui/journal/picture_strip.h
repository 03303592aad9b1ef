#pragma once

#include "core/household/household.h"

#include <QListWidget>

namespace tierloam::journal_page {

/// The pictures of the chosen entry as thumbnails in a row; hidden while it has none. Return or a click asks for them in full.
class PictureStrip : public QListWidget {
    Q_OBJECT

public:
    explicit PictureStrip(household::Household& household, QWidget* parent = nullptr);

    /// `none`: no entry, or several.
    void follow(journal::EntryId entry);

Q_SIGNALS:
    void wanted(qint64 entryId);

private:
    void look();

    household::Household& household_;
    journal::EntryId entry_ = journal::EntryId::none;
};

}
