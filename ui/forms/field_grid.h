#pragma once

#include "ui/common/field.h"

#include <QList>
#include <QWidget>

namespace tierloam::forms {

class RowsLayout;

/// The rows of a form: each a label and its field; narrow or with large letters the labels go above. Fields report their own faults.
class FieldGrid : public QWidget {
    Q_OBJECT

public:
    explicit FieldGrid(QWidget* parent = nullptr);
    ~FieldGrid() override;

    /// Takes the field; its label names it for people who do not see it. Returns it.
    template <class F>
    F* add(const QString& label, F* field)
    {
        addField(label, field);
        return field;
    }
    /// A row of its own without a label: a check box, a sentence.
    void addWide(QWidget* widget);
    void setRowShown(QWidget* field, bool shown);
    bool isRowShown(const QWidget* field) const;

    /// Shows what is wrong beside each field; the first one at fault takes the focus. True when none is.
    bool check();
    void focusFirst();
    void focusOn(ui::Field* field);
    /// Scrolls to it and to the words beneath it, once the form is laid out with them.
    void bringIntoSight(ui::Field* field);
    QList<ui::Field*> fields() const { return fields_; }

Q_SIGNALS:
    void edited();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void addField(const QString& label, ui::Field* field);

    RowsLayout* rows_ = nullptr;
    QList<ui::Field*> fields_;
};

}
