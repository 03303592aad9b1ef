#pragma once

#include "ui/common/view.h"

namespace tierloam::window {

/// The list of all keys, made from the table of actions. Not modal; Esc closes it.
class ShortcutsView : public ui::View {
    Q_OBJECT

public:
    explicit ShortcutsView(QWidget* parent = nullptr);
};

/// What the program is, its licences and the sources of its data. Not modal; Esc closes it.
class AboutView : public ui::View {
    Q_OBJECT

public:
    explicit AboutView(const QString& version, QWidget* parent = nullptr);
};

/// The whole text of the licence. Not modal; Esc closes it.
class LicenceView : public ui::View {
    Q_OBJECT

public:
    explicit LicenceView(QWidget* parent = nullptr);
};

}
