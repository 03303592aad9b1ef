#pragma once

#include "ui/paper/paper_view.h"
#include "ui/paper/sheet.h"

class QComboBox;

namespace tierloam::paper {

/// The sheet of a stack of the household as it stands now: print it, save it as PDF or HTML.
class SheetView : public PaperView {
    Q_OBJECT

public:
    /// `stack`: the one shown first; another may be chosen.
    SheetView(const household::Household& household, const QString& stack, const QString& version, ui::Dialogs& dialogs, const QString& folder, QWidget* parent = nullptr);

protected:
    void paintPages(QPrinter& printer) override;
    QPageSize pageSize() const override;
    QString proposedName() const override;
    std::optional<QString> savePdf(const QString& path) override;

private:
    void choose(const QString& stack);

    SheetInputs inputs_;
    std::shared_ptr<const store::LoggedDays> logged_;
    std::optional<Sheet> sheet_;
    QComboBox* stacks_;
};

}
