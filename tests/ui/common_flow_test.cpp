// Things in a row that flows on: each as high as its lines are at its width.
#include "ui/common/amount_field.h"
#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>

#include <algorithm>

namespace tierloam::ui {
namespace {

TEST(FlowLayout, AFieldWhoseFaultTakesMoreLinesIsHigher)
{
    QWidget row;
    auto* flow = new FlowLayout{&row, 8};
    auto* field = new AmountField{massUnits()};
    field->setMaximumWidth(row.fontMetrics().averageCharWidth() * 22);
    flow->addWidget(field);
    flow->addWidget(makeButton(QStringLiteral("Compare"), Tone::moss, &row));
    row.resize(600, 10);
    row.show();
    field->showProblem(QStringLiteral("This fault takes a good many words, more than fit into one line beneath the field."));
    for (int turn = 0; turn < 4; ++turn) QCoreApplication::processEvents();
    row.resize(600, flow->heightForWidth(600));
    for (int turn = 0; turn < 4; ++turn) QCoreApplication::processEvents();
    int wrapped = 0;
    for (const QLabel* label : field->findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        ++wrapped;
        EXPECT_GT(label->heightForWidth(label->width()), row.fontMetrics().height() * 2) << "the case that is meant";
        EXPECT_GE(label->height(), label->heightForWidth(label->width())) << label->text().toStdString();
    }
    EXPECT_EQ(wrapped, 1);
}

}
}
