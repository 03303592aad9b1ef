#pragma once

#include "ui/common/seams.h"
#include "ui/common/view.h"

#include <QPageSize>

#include <memory>
#include <optional>

class QFormLayout;
class QHBoxLayout;
class QLabel;
class QPrintPreviewWidget;
class QPrinter;
class QPushButton;

namespace tierloam::paper {

/// What goes onto paper, looked at before it does: what can be chosen, the pages, and buttons that print and save. Not modal; Esc closes it.
class PaperView : public ui::View {
    Q_OBJECT

public:
    /// `folder`: where files are proposed.
    PaperView(const QString& title, ui::Dialogs& dialogs, QString folder, QWidget* parent = nullptr);
    ~PaperView() override;

    /// What the last button did, in a sentence.
    QString resultText() const;

protected:
    void showEvent(QShowEvent* event) override;
    /// Paints all pages; the printer's resolution is dotsPerInch().
    virtual void paintPages(QPrinter& printer) = 0;
    virtual QPageSize pageSize() const = 0;
    virtual bool wholePage() const { return false; } ///< without margins
    /// "Scullery sheet", without a folder and an ending.
    virtual QString proposedName() const = 0;
    virtual std::optional<QString> savePdf(const QString& path) = 0;

    QFormLayout* choices() const { return choices_; }
    QString askWhere(const QString& title, const QString& kinds, const QString& suffix);
    void tell(const QString& path, const std::optional<QString>& why);
    QPushButton* addButton(const QString& text, const char* name);
    /// The pages anew, after something was chosen.
    void paintAgain();
    void setReady(bool ready);       ///< false: there is nothing to print

private:
    void fit(QPrinter& printer) const;
    void print();

    ui::Dialogs& dialogs_;
    QString folder_;
    QFormLayout* choices_;
    std::unique_ptr<QPrinter> printer_;
    QPrintPreviewWidget* preview_;
    QLabel* result_;
    QList<QPushButton*> buttons_;
    QHBoxLayout* row_;
};

}
