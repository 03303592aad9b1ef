// From the shelf to the handbook and back: symptoms, the guided harvest and bedding open their forms filled in.
#include "tests/ui/sight.h"
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

#include <QFileInfo>
#include <QStringBuilder>
#include <QTranslator>

#include <set>

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
    ASSERT_FALSE(symptoms->ranking().causes.empty());
    ASSERT_TRUE(symptoms->ranking().causes.front().isWorthARemedy());
    const auto cause = symptoms->ranking().causes.front().cause;
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

// Trays that an import has just brought, or estimates kept from before they were laid.
TEST_F(WindowTest, TheGuidedHarvestWaitsForEstimatesOfTheTraysThatStand)
{
    const auto before = std::make_shared<reckoning::Reckoning>(*estimates_);
    for (auto& stack : before->stacks) stack.now.slots.clear();
    estimates_ = before;
    openSample();
    desk().shelf()->chooseStack(QStringLiteral("Scullery"));
    desk().showHarvest();
    settle();
    handbook::HarvestView* harvest = desk().handbook()->harvest();
    ASSERT_TRUE(harvest->isVisible());
    EXPECT_EQ(harvest->stage(), handbook::HarvestView::Stage::nothing);
    bool told = false;
    for (const QLabel* label : harvest->findChildren<QLabel*>()) told = told || (label->isVisible() && label->text() == QStringLiteral("The estimates of this stack are being made."));
    EXPECT_TRUE(told);
}

// For each of the twelve, by clicks in the real window: the second one brings the first remedy wholly into sight, at the least size too; each remedy and each
// look opens the form of its entry.
TEST_F(WindowTest, TwoClicksLeadToTheRemedyOfEverySymptomAtEverySize)
{
    struct Look {
        QSize size;
        int scale;
        const char* language;
    };
    QTranslator texts;
    bool scrolledAway = false;
    for (const auto& [size, scale, language] : {Look{{1440, 900}, 100, "en"}, {{1000, 640}, 100, "de"}, {{1000, 640}, 150, "en"}, {{1000, 640}, 200, "de"}}) {
        QCoreApplication::removeTranslator(&texts);
        ASSERT_TRUE(texts.load(QStringLiteral("tierloam_") % QString::fromLatin1(language), QFileInfo{QStringLiteral(TIERLOAM_PROGRAM)}.absolutePath())) << language;
        QCoreApplication::installTranslator(&texts);
        make();
        openSample();
        theme_->setFontScale(scale);
        theme_->apply();
        window_->resize(size);
        settled();
        for (int s = 0; s < static_cast<int>(guide::Symptom::count); ++s) {
            desk().showPage(Desk::Page::shelf);
            desk().shelf()->chooseStack(QStringLiteral("Lean-to"));
            settled();
            ASSERT_TRUE(tests::wholeInSight(button("whatIsWrongButton")));
            click(button("whatIsWrongButton")); // one
            settled();
            handbook::SymptomView* symptoms = desk().handbook()->symptoms();
            QPushButton* chip = button(QStringLiteral("symptom%1").arg(s).toLatin1().constData(), symptoms);
            EXPECT_TRUE(tests::wholeInSight(chip)) << language << size.width() << " " << scale << " " << s << ": no scrolling between the clicks";
            click(chip); // two
            settled();
            ASSERT_FALSE(symptoms->ranking().causes.empty());
            const guide::Ranked& first = symptoms->ranking().causes.front();
            const QString answer = symptoms->ranking().elsewhere >= first.probability ? QStringLiteral("elsewhere") : QStringLiteral("cause%1").arg(static_cast<int>(first.cause));
            const auto* card = symptoms->findChild<QWidget*>(answer);
            ASSERT_NE(card, nullptr);
            const auto* remedy = card->findChild<QLabel*>(QStringLiteral("remedyText"));
            ASSERT_NE(remedy, nullptr);
            EXPECT_TRUE(tests::canBeRead(remedy)) << language << size.width() << " " << scale << " symptom " << s;
        }
        const auto* last = desk().handbook()->symptoms()->findChild<QLabel*>(QStringLiteral("remedyText"));
        desk().handbook()->symptoms()->ensureVisible(0, 100000);
        settled();
        scrolledAway = scrolledAway || !tests::wholeInSight(last);
    }
    EXPECT_TRUE(scrolledAway) << "a remedy that is scrolled away is not in sight";
    QCoreApplication::removeTranslator(&texts);
    theme_->setFontScale(100);
    theme_->apply();
}

TEST_F(WindowTest, EachRemedyAndEachLookOpensTheFormOfItsEntry)
{
    openSample();
    std::set<std::pair<int, int>> opened;
    for (int s = 0; s < static_cast<int>(guide::Symptom::count); ++s) {
        for (int n = 0;; ++n) {
            desk().shelf()->closePanel(true);
            desk().shelf()->chooseStack(QStringLiteral("Lean-to"));
            desk().showSymptoms();
            desk().handbook()->symptoms()->choose(static_cast<guide::Symptom>(s));
            settled();
            QList<QPushButton*> leads;
            for (const char* name : {"remedy", "look"})
                for (auto* each : desk().handbook()->symptoms()->findChildren<QPushButton*>(QString::fromLatin1(name)))
                    if (each->isVisible()) leads << each;
            ASSERT_GE(leads.size(), 1) << s;
            if (n >= leads.size()) break;
            leads[n]->click();
            settled();
            const auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
            ASSERT_NE(form, nullptr) << s << ": " << leads[n]->accessibleName().toStdString() << " leads nowhere";
            EXPECT_EQ(form->stack(), QStringLiteral("Lean-to"));
            opened.insert({s, static_cast<int>(form->kind())});
        }
    }
    EXPECT_GE(opened.size(), 20u); // a look for each symptom, and the remedies of what the record shows
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
