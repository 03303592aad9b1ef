// The supply of the kitchen on the rotation page: the plan follows each letter, the household is told once.
#include "core/store/setting_names.h"
#include "tests/ui/page_fixture.h"
#include "ui/common/amount_field.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/rotation/feeding_card.h"
#include "ui/rotation/rotation_page.h"

#include <QLabel>
#include <QPushButton>
#include <QUndoStack>

namespace tierloam::rotation {

namespace {

class Page final : public RotationPage {
public:
    Page(household::Household& household, const ui::Theme& theme, ui::Settings&) : RotationPage{household, theme} {}
};

class KitchenSupply : public tests::PageTest<Page> {
protected:
    void SetUp() override
    {
        showPage({1000, 900});
        card_ = page_->findChild<FeedingCard*>(QStringLiteral("feedingCard"));
        field_ = card_->findChild<ui::AmountField*>();
        other_ = page_->findChild<QPushButton*>(QStringLiteral("planSpread"));
        ASSERT_TRUE(field_ != nullptr && field_->isVisible() && other_ != nullptr);
        QApplication::setActiveWindow(page_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
        field_->setUnit(Unit::g);
        household_->finishWrites();
        steps_ = household_->undoStack()->count();
    }
    void type(const char* letters)
    {
        field_->setFocus();
        field_->edit()->selectAll();
        QTest::keyClicks(field_->edit(), QString::fromLatin1(letters));
    }
    QString kept()
    {
        household_->finishWrites();
        return household_->kept(store::settingSupply);
    }
    int newSteps() { return household_->undoStack()->count() - steps_; }

    FeedingCard* card_ = nullptr;
    ui::AmountField* field_ = nullptr;
    QPushButton* other_ = nullptr;
    int steps_ = 0;
};

TEST_F(KitchenSupply, IsOneStepWhenTheFieldIsLeft)
{
    type("1250");
    EXPECT_EQ(kept(), QString{});
    EXPECT_EQ(newSteps(), 0);
    EXPECT_NEAR(card_->supply(), 1.25, 1e-9) << "the plan follows";
    field_->unitList()->setFocus();
    EXPECT_EQ(kept(), QString{}) << "the unit belongs to the field";
    field_->unitList()->showPopup();
    field_->unitList()->hidePopup();
    EXPECT_EQ(kept(), QString{}) << "and so does its list";
    other_->setFocus();
    EXPECT_EQ(kept(), QStringLiteral("1.250"));
    EXPECT_EQ(newSteps(), 1);
    household_->undoStack()->undo();
    EXPECT_EQ(kept(), QString{});
    field_->setFocus();
    other_->setFocus();
    EXPECT_EQ(kept(), QString{}) << "looking at it writes nothing";
    EXPECT_EQ(newSteps(), 1);
}

TEST_F(KitchenSupply, IsWrittenOnEnter)
{
    type("1250");
    QTest::keyClick(field_->edit(), Qt::Key_Return);
    EXPECT_EQ(kept(), QStringLiteral("1.250"));
    other_->setFocus();
    EXPECT_EQ(kept(), QStringLiteral("1.250"));
    EXPECT_EQ(newSteps(), 1);
}

TEST_F(KitchenSupply, IsNotLostWithThePage)
{
    type("1250");
    page_->hide();
    EXPECT_EQ(kept(), QStringLiteral("1.250"));
    EXPECT_EQ(newSteps(), 1);
}

/// A share at its limit and the limit beside it are one figure, in any unit.
TEST_F(KitchenSupply, NoShareStandsAboveItsLimit)
{
    for (const auto measures : {ui::Measures::metric, ui::Measures::us}) {
        ui::setMeasures(measures);
        type("90000"); // more than all can bear
        card_->refresh();
        int limits = 0;
        QStringList strong;
        for (const auto* label : card_->findChildren<QLabel*>()) strong << label->text();
        for (const auto* label : card_->findChildren<QLabel*>()) {
            const QString most = label->text().section(QStringLiteral("At most "), 1);
            if (most.isEmpty()) continue;
            ++limits;
            EXPECT_TRUE(strong.contains(most)) << label->text().toStdString() << ": " << strong.join(u'|').toStdString();
        }
        EXPECT_GT(limits, 0);
    }
    ui::setMeasures(ui::Measures::metric);
    page_->hide(); // what is typed is written while the page is whole
}

TEST_F(KitchenSupply, WhatIsNoAmountStaysInSight)
{
    type("12 stones");
    other_->setFocus();
    EXPECT_EQ(kept(), QString{});
    card_->refresh();
    EXPECT_EQ(field_->edit()->text(), QStringLiteral("12 stones"));
    EXPECT_FALSE(field_->shownProblem().isEmpty());
}

}

}
