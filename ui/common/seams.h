#pragma once

#include <QString>
#include <QVariant>

#include <memory>

class QPrinter;
class QWidget;

/// What the window needs from outside: message boxes, file dialogs and the settings store, as interfaces, so that tests answer
/// them and never meet a modal dialog.
namespace tierloam::ui {

/// A question that stops the work until it is answered. Daily things never ask; undo is there instead.
class Dialogs {
public:
    virtual ~Dialogs() = default;

    /// Something people must read before they go on.
    virtual void tell(QWidget* parent, const QString& title, const QString& text) = 0;
    /// true when the act named by `yes` was chosen; closing the box means no.
    virtual bool ask(QWidget* parent, const QString& title, const QString& text, const QString& yes) = 0;
    /// A line of text; empty when called off.
    virtual QString text(QWidget* parent, const QString& title, const QString& label, const QString& before) = 0;
    /// An existing file; empty when called off. `filter` as in QFileDialog: "Journals (*.csv)".
    virtual QString fileToOpen(QWidget* parent, const QString& title, const QString& folder, const QString& filter) = 0;
    /// A file to write, `suffix` ("csv") added when none was typed; replacing an existing one has been confirmed. Empty when called off.
    virtual QString fileToSave(QWidget* parent, const QString& title, const QString& proposed, const QString& filter, const QString& suffix) = 0;
    /// An existing folder; empty when called off.
    virtual QString folder(QWidget* parent, const QString& title, const QString& before) = 0;
    /// Which printer, which pages, how many copies: set in `printer`; false when called off.
    virtual bool choosePrinter(QWidget* parent, const QString& title, QPrinter& printer) = 0;
};

/// The real boxes and dialogs of the desktop.
class SystemDialogs final : public Dialogs {
public:
    void tell(QWidget* parent, const QString& title, const QString& text) override;
    bool ask(QWidget* parent, const QString& title, const QString& text, const QString& yes) override;
    QString text(QWidget* parent, const QString& title, const QString& label, const QString& before) override;
    QString fileToOpen(QWidget* parent, const QString& title, const QString& folder, const QString& filter) override;
    QString fileToSave(QWidget* parent, const QString& title, const QString& proposed, const QString& filter, const QString& suffix) override;
    QString folder(QWidget* parent, const QString& title, const QString& before) override;
    bool choosePrinter(QWidget* parent, const QString& title, QPrinter& printer) override;
};

/// What the program remembers between runs on this machine. Never journal content.
class Settings {
public:
    virtual ~Settings() = default;
    virtual QVariant value(const QString& key, const QVariant& otherwise = {}) const = 0;
    virtual void setValue(const QString& key, const QVariant& value) = 0;
};

/// QSettings in the user's configuration folder.
std::unique_ptr<Settings> systemSettings();
/// Forgotten when it is destroyed; for portraits and tests.
std::unique_ptr<Settings> passingSettings();

}
