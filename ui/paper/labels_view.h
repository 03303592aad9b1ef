#pragma once

#include "core/household/household.h"
#include "ui/paper/labels.h"
#include "ui/paper/paper_view.h"

class QComboBox;
class QListWidget;
class QSpinBox;

namespace tierloam::paper {

/// Labels for the trays that stand: which of them, on which sheet, from which free place on.
class LabelsView : public PaperView {
    Q_OBJECT

public:
    LabelsView(const household::Household& household, const QString& version, ui::Dialogs& dialogs, const QString& folder, QWidget* parent = nullptr);

protected:
    void paintPages(QPrinter& printer) override;
    QPageSize pageSize() const override;
    bool wholePage() const override { return true; }
    QString proposedName() const override;
    std::optional<QString> savePdf(const QString& path) override;

private:
    std::vector<Label> chosen() const;
    LabelSheet sheet() const;
    int skip() const;
    void chosenAnew();

    std::vector<Label> labels_;
    QString program_;
    QListWidget* trays_;
    QComboBox* sheets_;
    QSpinBox* first_;
};

}
