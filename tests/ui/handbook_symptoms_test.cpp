#include "tests/support/pictures.h"
#include "tests/support/sample_reckoning.h"
#include "tests/ui/page_fixture.h"
#include "ui/common/formats.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/forms/caution_card.h"
#include "ui/handbook/handbook_page.h"
#include "ui/handbook/symptom_view.h"
#include "ui/handbook/symptom_words.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace tierloam::handbook {

namespace {

class SymptomsTest : public tests::PageTest<HandbookPage> {
protected:
    void SetUp() override
    {
        showPage({1000, 800});
        page_->openSymptoms(QStringLiteral("Lean-to"));
    }
    QPushButton* chip(guide::Symptom symptom) { return page_->findChild<QPushButton*>(QStringLiteral("symptom%1").arg(static_cast<int>(symptom))); }
};

}

TEST_F(SymptomsTest, OneClickPutsTheCausesInOrderAndTheSecondOpensTheRemedy)
{
    EXPECT_EQ(page_->symptoms()->stack(), QStringLiteral("Lean-to"));
    QSignalSpy wanted{page_.get(), &HandbookPage::entryWanted};
    QTest::mouseClick(chip(guide::Symptom::smell), Qt::LeftButton); // first
    ASSERT_GE(page_->symptoms()->ranking().causes.size(), 3u);
    QCoreApplication::processEvents();
    const guide::Ranked& first = page_->symptoms()->ranking().causes.front();
    ASSERT_TRUE(first.isWorthARemedy()) << first.probability;
    auto* card = page_->findChild<QWidget*>(QStringLiteral("cause%1").arg(static_cast<int>(first.cause)));
    ASSERT_NE(card, nullptr);
    auto* remedy = card->findChild<QPushButton*>(QStringLiteral("remedy"));
    ASSERT_TRUE(remedy && remedy->isVisible());
    QTest::mouseClick(remedy, Qt::LeftButton); // second
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.front()[0].toString(), QStringLiteral("Lean-to"));
    for (int round = 0; round < 6; ++round) QCoreApplication::processEvents();
    // The card has the height of its words: nothing is squeezed.
    int seen = 0;
    for (const QLabel* label : card->findChildren<QLabel*>()) {
        if (!label->isVisible()) continue; // the cautions in few words, where there is room for all of them
        ++seen;
        EXPECT_GE(label->height(), label->heightForWidth(label->width())) << label->text().toStdString();
    }
    EXPECT_GE(seen, 4);
    tests::keepPicture(page_->grab().toImage(), QStringLiteral("handbook-symptoms"));
}

TEST_F(SymptomsTest, EachCauseShownHasItsNumbersItsLookItsRemedyAndACaution)
{
    for (int s = 0; s < static_cast<int>(guide::Symptom::count); ++s) {
        page_->symptoms()->choose(static_cast<guide::Symptom>(s));
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        const guide::Ranking& ranking = page_->symptoms()->ranking();
        const auto* unlikely = page_->findChild<QLabel*>(QStringLiteral("unlikelyCauses"));
        for (const guide::Ranked& each : ranking.causes) {
            const auto* card = page_->findChild<QWidget*>(QStringLiteral("cause%1").arg(static_cast<int>(each.cause)));
            if (!card) { // its numbers all the same, and no remedy
                EXPECT_FALSE(each.isWorthARemedy()) << s;
                ASSERT_NE(unlikely, nullptr) << s;
                EXPECT_TRUE(unlikely->text().contains(causeText(each.cause))) << s;
                for (const guide::Evidence& evidence : each.evidence) EXPECT_TRUE(unlikely->text().contains(ui::unbroken(evidenceText(evidence)))) << s;
                continue;
            }
            EXPECT_TRUE(each.isWorthARemedy()) << s;
            QString all;
            for (const QLabel* label : card->findChildren<QLabel*>()) all += label->text() + u'\n';
            EXPECT_TRUE(all.contains(u'%')) << s << " the chance";
            EXPECT_TRUE(all.contains(lookText(each.cause))) << s;
            EXPECT_FALSE(all.contains(u'{')) << s;
            EXPECT_TRUE(card->findChild<forms::CautionCard*>()->isVisibleTo(card)) << s;
            for (const guide::Evidence& evidence : each.evidence) EXPECT_TRUE(all.contains(ui::unbroken(evidenceText(evidence)))) << s;
        }
        const auto* elsewhere = page_->findChild<QWidget*>(QStringLiteral("elsewhere"));
        ASSERT_NE(elsewhere, nullptr) << s;
        QString all;
        for (const QLabel* label : elsewhere->findChildren<QLabel*>()) all += label->text() + u'\n';
        EXPECT_TRUE(all.contains(ui::percentText(ranking.elsewhere))) << s;
        EXPECT_TRUE(all.contains(byHandText(static_cast<guide::Symptom>(s)))) << s;
    }
}

// No stack of the sample is short of worms by what its record shows: it says so first, with what to look at, and offers no remedy.
TEST_F(SymptomsTest, WhereTheRecordShowsNoCauseItSaysSoAndOffersNoRemedy)
{
    bool met = false;
    for (const auto* name : {"Lean-to", "Scullery"}) {
        page_->symptoms()->chooseStack(QString::fromLatin1(name));
        for (int s = 0; s < static_cast<int>(guide::Symptom::count); ++s) {
            page_->symptoms()->choose(static_cast<guide::Symptom>(s));
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            const guide::Ranking& ranking = page_->symptoms()->ranking();
            if (ranking.causes.front().isWorthARemedy()) continue;
            met = true;
            EXPECT_GT(ranking.elsewhere, 0.5);
            EXPECT_EQ(page_->symptoms()->findChild<QPushButton*>(QStringLiteral("remedy")), nullptr);
            const auto* elsewhere = page_->findChild<QWidget*>(QStringLiteral("elsewhere"));
            ASSERT_NE(elsewhere, nullptr);
            EXPECT_TRUE(elsewhere->accessibleName().contains(QStringLiteral("none of the usual causes")));
        }
    }
    EXPECT_TRUE(met) << "the sample has no symptom that its record does not explain";
}

TEST(SymptomWords, AreThereForEverySymptomAndCause)
{
    const reckoning::StackReckoning stack;
    for (int c = 0; c < static_cast<int>(guide::Cause::count); ++c) {
        const auto cause = static_cast<guide::Cause>(c);
        EXPECT_FALSE(causeText(cause).isEmpty());
        EXPECT_FALSE(lookText(cause).isEmpty());
        EXPECT_FALSE(remedyText(cause).isEmpty());
        EXPECT_FALSE(remedyCautions(cause).isEmpty());
        // Nothing is filled in that would be a reading made up.
        const Proposed look = lookEntry(cause);
        if (const auto* reading = std::get_if<journal::Reading>(&look.action)) { EXPECT_EQ(*reading, journal::Reading{}); }
        if (const auto* check = std::get_if<journal::Check>(&look.action)) { EXPECT_EQ(*check, journal::Check{}); }
        const Proposed remedy = remedyEntry(cause, guide::Symptom::smell, stack, household::Usual{});
        if (const auto* cover = std::get_if<journal::Cover>(&remedy.action)) { EXPECT_TRUE(cover->paper.has_value()); }
        if (const auto* water = std::get_if<journal::Water>(&remedy.action)) { EXPECT_GT(water->poured.value, 0); }
    }
    for (int s = 0; s < static_cast<int>(guide::Symptom::count); ++s) {
        EXPECT_FALSE(symptomText(static_cast<guide::Symptom>(s)).isEmpty());
        EXPECT_FALSE(byHandText(static_cast<guide::Symptom>(s)).isEmpty());
    }
}

}
