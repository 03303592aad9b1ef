#include "ui/common/seams.h"

#include "ui/common/file_dialog.h"

#include <QFileInfo>
#include <QHash>
#include <QInputDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>

namespace tierloam::ui {

void SystemDialogs::tell(QWidget* parent, const QString& title, const QString& text)
{
    QMessageBox box{QMessageBox::Information, title, text, QMessageBox::Ok, parent};
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

bool SystemDialogs::ask(QWidget* parent, const QString& title, const QString& text, const QString& yes)
{
    QMessageBox box{QMessageBox::Question, title, text, QMessageBox::Cancel, parent};
    box.setTextFormat(Qt::PlainText);
    const QPushButton* act = box.addButton(yes, QMessageBox::AcceptRole);
    box.setDefaultButton(QMessageBox::Cancel);
    box.exec();
    return box.clickedButton() == act;
}

QString SystemDialogs::text(QWidget* parent, const QString& title, const QString& label, const QString& before)
{
    bool accepted = false;
    const QString text = QInputDialog::getText(parent, title, label, QLineEdit::Normal, before, &accepted).trimmed();
    return accepted ? text : QString{};
}

QString SystemDialogs::fileToOpen(QWidget* parent, const QString& title, const QString& folder, const QString& filter)
{
    FileDialog dialog{parent, title, folder, filter};
    dialog.setFileMode(QFileDialog::ExistingFile);
    fitFileDialog(dialog);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString{};
}

QString SystemDialogs::folder(QWidget* parent, const QString& title, const QString& before)
{
    FileDialog dialog{parent, title, before};
    dialog.setFileMode(QFileDialog::Directory);
    dialog.setOption(QFileDialog::ShowDirsOnly);
    fitFileDialog(dialog);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString{};
}

QString SystemDialogs::fileToSave(QWidget* parent, const QString& title, const QString& proposed, const QString& filter, const QString& suffix)
{
    FileDialog dialog{parent, title, proposed, filter};
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.setDefaultSuffix(suffix); // before the question about replacing, so that the question is about the right file
    if (!proposed.isEmpty()) dialog.selectFile(proposed);
    fitFileDialog(dialog);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString{};
}

bool SystemDialogs::choosePrinter(QWidget* parent, const QString& title, QPrinter& printer)
{
    QPrintDialog dialog{&printer, parent};
    dialog.setWindowTitle(title);
    return dialog.exec() == QDialog::Accepted;
}

namespace {

class SystemSettings final : public Settings {
public:
    QVariant value(const QString& key, const QVariant& otherwise) const override { return store_.value(key, otherwise); }
    void setValue(const QString& key, const QVariant& value) override { store_.setValue(key, value); }

private:
    QSettings store_{QSettings::IniFormat, QSettings::UserScope, QStringLiteral("tierloam"), QStringLiteral("tierloam")};
};

class PassingSettings final : public Settings {
public:
    QVariant value(const QString& key, const QVariant& otherwise) const override { return kept_.value(key, otherwise); }
    void setValue(const QString& key, const QVariant& value) override { kept_.insert(key, value); }

private:
    QHash<QString, QVariant> kept_;
};

}

std::unique_ptr<Settings> systemSettings()
{
    return std::make_unique<SystemSettings>();
}

std::unique_ptr<Settings> passingSettings()
{
    return std::make_unique<PassingSettings>();
}

}
