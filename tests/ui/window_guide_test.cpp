// From the shelf to the handbook and back: symptoms, the guided harvest and bedding open their forms filled in.
#include "tests/ui/window_fixture.h"
#include "ui/common/choice_field.h"
#include "ui/forms/action_form.h"
#include "ui/handbook/handbook_page.h"
#include "ui/handbook/harvest_view.h"
#include "ui/handbook/symptom_view.h"
#include "ui/handbook/symptom_words.h"
#include "ui/materials/bedding_bench.h"
#include "ui/materials/materials_page.h"
#include "ui/shelf/form_host.h"

namespace tierloam::window {

TEST_F(WindowTest, TwoClicksLeadFromAStackToTheRemedyOfItsSymptomAndAThirdToItsEntry)
{
    openSample();
    desk().shelf()->chooseStack(QStringLiteral("Lean-to"));
    click(button("whatIsWrongButton")); // one
    EXPECT_EQ(desk().page(), Desk::Page::handbook);
    handbook::SymptomView* symptoms = desk().handbook()->symptoms();
    EXPECT_EQ(symptoms->stack(), QStringLiteral("Lean-to")) << "the stack that was chosen on the shelf";
    click(button("symptom9", symptoms)); // two: standing water
    settle();
    ASSERT_FALSE(symptoms->ranked().empty());
    const auto cause = symptoms->ranked().front().cause;
    bool told = false;
    for (const QLabel* label : symptoms->findChildren<QLabel*>()) told = told || (label->isVisible() && label->text() == handbook::remedyText(cause));
    EXPECT_TRUE(told) << "the remedy is in sight";
    auto* card = symptoms->findChild<QWidget*>(QStringLiteral("cause%1").arg(static_cast<int>(cause)));
    ASSERT_NE(card, nullptr);
    click(button("remedy", card)); // its entry
    EXPECT_EQ(desk().page(), Desk::Page::shelf);
    auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    EXPECT_EQ(form->stack(), QStringLiteral("Lean-to"));
    journal::Entry expected;
    expected.action = handbook::remedyEntry(cause, guide::Symptom::standingWater, *household().reckoning()->stack("Lean-to"), household().usual("Lean-to")).action;
    EXPECT_EQ(form->kind(), forms::kindOf(expected));
    const std::size_t before = entries();
    form->record();
    ASSERT_TRUE(written(before + 1)) << "filled in as it is, it can be recorded";
    EXPECT_EQ(household().journal()->entries.back().action, expected.action);
}

TEST_F(WindowTest, GuidedHarvestOpensTheFormOfItsStep)
{
    openSample();
    desk().shelf()->chooseStack(QStringLiteral("Scullery"));
    press("F8");
    EXPECT_EQ(desk().page(), Desk::Page::handbook);
    EXPECT_EQ(desk().handbook()->harvest()->stack(), QStringLiteral("Scullery"));
    settle();
    click(button("recordLifting", desk().handbook()->harvest()));
    auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    EXPECT_EQ(form->kind(), forms::FormKind::rotate);
    bool weight = false;
    for (const QLabel* label : form->findChildren<QLabel*>()) weight = weight || (label->text().contains(QStringLiteral("weighs about")) && label->text().contains(QStringLiteral("is advised")));
    EXPECT_TRUE(weight) << "the tray's weight and what is advised stand in the form too";
}

TEST_F(WindowTest, BeddingThatWasReckonedOpensTheFormOfTheTray)
{
    openSample();
    press("Ctrl+5");
    EXPECT_EQ(desk().page(), Desk::Page::materials);
    press("Alt+2");
    settle();
    auto* bench = desk().materials()->bedding();
    auto* stack = bench->findChild<ui::ChoiceField*>(QStringLiteral("beddingFor"));
    ASSERT_NE(stack, nullptr);
    stack->setValue(QStringLiteral("Lean-to")); // it has a spare tray
    bench->follow();
    click(button("addThisTray", bench));
    auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    EXPECT_EQ(form->kind(), forms::FormKind::addTray);
    EXPECT_EQ(form->stack(), QStringLiteral("Lean-to"));
}

}
