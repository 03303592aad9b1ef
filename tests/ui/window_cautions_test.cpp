// Wherever leachate, the lifting of a tray or manure is handled, the caution is in sight without scrolling: in the real window at its least size, with
// letters of 100 to 200 %, in English and German, with the largest in Spanish and French too. A label counts as seen only when all of it can be painted (sight.h).
#include "tests/ui/language_fixture.h"
#include "tests/ui/sight.h"
#include "ui/forms/action_form.h"
#include "ui/forms/caution_card.h"
#include "ui/forms/cautions.h"
#include "ui/forms/entry_editor.h"
#include "ui/handbook/handbook_page.h"
#include "ui/handbook/harvest_view.h"
#include "ui/journal/journal_page.h"
#include "ui/materials/bedding_bench.h"
#include "ui/materials/materials_page.h"
#include "ui/materials/mix_bench.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/shelf_page.h"

#include <QScrollArea>
#include <QVBoxLayout>

namespace tierloam::window {

namespace {

using forms::FormKind;
using Sum = materials_page::MaterialsPage::Sum;

using Topic = forms::CautionTopic;

/// What must be read of each, in few words as well; in English, from which the others are translated.
QString essence(Topic topic)
{
    switch (topic) {
    case Topic::leachate: return QStringLiteral("never to drink");
    case Topic::lifting: return QStringLiteral("knees bent");
    case Topic::manure: return QStringLiteral("Manure: only aged");
    case Topic::dustAndMould: return QStringLiteral("moulds and Legionella");
    case Topic::doubtfulMaterial: return QStringLiteral("only a little");
    default: return QStringLiteral("no essence");
    }
}

struct Sight {
    int told = 0;  ///< labels that are shown, in sight or scrolled away
    int seen = 0;  ///< of these, wholly in sight, with room for all of their words
    QStringList texts;
};

Sight sightOf(Topic topic, const QWidget* within)
{
    Sight sight;
    for (const auto* card : within->findChildren<forms::CautionCard*>()) {
        for (const QLabel* label : card->findChildren<QLabel*>()) {
            if (!label->isVisible() || label->property("topic") != static_cast<int>(topic)) continue;
            ++sight.told;
            sight.texts << label->text();
            if (tests::canBeRead(label)) ++sight.seen;
        }
    }
    return sight;
}

struct Letters {
    int scale;
    const char* language;
};

std::ostream& operator<<(std::ostream& out, const Letters& letters) { return out << letters.scale << " % " << letters.language; }

class CautionsTest : public LanguageTest {
protected:
    static constexpr QSize least{1000, 640};

    void open(int scale, const char* language = "en")
    {
        english_ = QLatin1StringView{language} == QLatin1StringView{"en"};
        ASSERT_NO_FATAL_FAILURE(speak(language, scale));
        openSample(least);
        ASSERT_EQ(window_->size(), least);
        settled();
    }
    /// Once and wholly seen in all that the window shows.
    void expectOnce(Topic topic, const std::string& where)
    {
        settled();
        const Sight sight = sightOf(topic, window_.get());
        EXPECT_EQ(sight.told, 1) << where << ": " << static_cast<int>(topic);
        EXPECT_EQ(sight.seen, 1) << where << ": " << sight.texts.join(u'|').toStdString();
        for (const QString& text : sight.texts) {
            EXPECT_EQ(text.contains(essence(topic)), english_) << text.toStdString();
            EXPECT_GT(text.size(), 20) << "more than a mark";
        }
    }
    void expectNone(Topic topic, const std::string& where)
    {
        settled();
        EXPECT_EQ(sightOf(topic, window_.get()).told, 0) << where << ": " << static_cast<int>(topic);
    }
    void openForm(const char* stack, FormKind kind, std::optional<int> slot = {})
    {
        desk().showPage(Desk::Page::shelf);
        desk().shelf()->closePanel(true);
        ASSERT_TRUE(desk().shelf()->openForm(QString::fromLatin1(stack), kind, slot));
        settled();
    }
    void fill(const journal::Action& action)
    {
        auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
        ASSERT_NE(form, nullptr);
        form->propose(action);
        settled();
    }
    template <class Action>
    journal::EntryId latest(const char* stack)
    {
        const auto journal = household().journal();
        journal::EntryId id = journal::EntryId::none;
        for (const journal::Entry& entry : journal->entries)
            if (entry.stack == stack && std::holds_alternative<Action>(entry.action)) id = entry.id;
        return id;
    }

private:
    bool english_ = true;
};

class AtEachSize : public CautionsTest, public testing::WithParamInterface<Letters> {
protected:
    void openHere() { open(GetParam().scale, GetParam().language); }
};

}

TEST_P(AtEachSize, FormsOfTheSumpAndOfLifting)
{
    openHere();
    for (const FormKind kind : {FormKind::drain, FormKind::flush}) {
        openForm("Lean-to", kind);
        expectOnce(Topic::leachate, "sump form");
        expectNone(Topic::lifting, "sump form");
    }
    openForm("Scullery", FormKind::rotate);
    expectOnce(Topic::lifting, "lifting the bottom tray");
    expectNone(Topic::leachate, "lifting the bottom tray");
    for (const FormKind kind : {FormKind::harvest, FormKind::trayWeight}) {
        openForm("Cellar", kind);
        expectOnce(Topic::lifting, "taking or weighing a tray");
        expectOnce(Topic::dustAndMould, "taking or weighing a tray");
    }
    openForm("Cellar", FormKind::loosen);
    expectOnce(Topic::dustAndMould, "loosening");
}

TEST_P(AtEachSize, FormsThatTakeManure)
{
    openHere();
    openForm("Scullery", FormKind::feed);
    expectNone(Topic::manure, "the usual food");
    for (const char* material : {"horse manure aged", "rabbit manure", "chicken manure", "manure of animals wormed lately", "cat or dog droppings"}) {
        fill(journal::Feed{{200, Unit::g}, material, {}});
        expectOnce(Topic::manure, material);
    }
    openForm("Scullery", FormKind::bedding, 1);
    fill(journal::Bed{{500, Unit::g}, "horse manure aged", {}});
    expectOnce(Topic::manure, "as bedding");
    openForm("Scullery", FormKind::cover);
    fill(journal::Cover{Amount{50, Unit::g}, "horse manure aged"});
    expectOnce(Topic::manure, "as cover");
}

TEST_P(AtEachSize, OwnMaterialThatIsManureByItsReason)
{
    openHere();
    const std::size_t before = entries();
    journal::Entry own;
    own.date.day = household().today();
    own.action = journal::OwnMaterial{"Ziegenmist", {}, {}, {}, {}, {}, {}, journal::Welcome::aLittle, journal::Doubt::dewormer};
    household().record(own, QStringLiteral("own"));
    ASSERT_TRUE(written(before + 1));
    openForm("Scullery", FormKind::feed);
    fill(journal::Feed{{200, Unit::g}, "Ziegenmist", {}});
    expectOnce(Topic::manure, "an own material");
    expectOnce(Topic::doubtfulMaterial, "an own material, its doubt");
}

TEST_P(AtEachSize, MaterialsPageWithItsSums)
{
    openHere();
    desk().showPage(Desk::Page::materials);
    materials_page::MaterialsPage* page = desk().materials();
    page->choose(QStringLiteral("kitchen mix"));
    for (const Sum sum : {Sum::mix, Sum::bedding, Sum::castings}) {
        page->showSum(sum);
        expectNone(Topic::manure, "kitchen mix");
        expectNone(Topic::leachate, "no leachate");
    }
    expectOnce(Topic::dustAndMould, "use of castings");
    page->showSum(Sum::leachate);
    expectOnce(Topic::leachate, "use of leachate");
    page->choose(QStringLiteral("horse manure aged"));
    for (const Sum sum : {Sum::leachate, Sum::castings, Sum::bedding, Sum::mix}) {
        page->showSum(sum);
        expectOnce(Topic::manure, "manure chosen in the table");
    }
    page->mix()->add(QStringLiteral("rabbit manure"));
    expectOnce(Topic::manure, "manure chosen, and in the mix");
    page->choose(QStringLiteral("kitchen mix"));
    expectOnce(Topic::manure, "manure in the mix alone");
    page->showSum(Sum::bedding);
    expectNone(Topic::manure, "another sum");
    page->bedding()->setMaterial(QStringLiteral("horse manure aged"));
    expectOnce(Topic::manure, "manure as bedding");
}

TEST_P(AtEachSize, GuidedHarvestPanelsAndJournal)
{
    openHere();
    for (const char* stack : {"Scullery", "Cellar"}) {
        desk().showPage(Desk::Page::shelf);
        desk().shelf()->chooseStack(QString::fromLatin1(stack));
        desk().showHarvest();
        expectOnce(Topic::lifting, stack);
    }
    desk().showPage(Desk::Page::shelf);
    ASSERT_TRUE(desk().shelf()->openPanel(QStringLiteral("Lean-to"), 0));
    expectOnce(Topic::leachate, "the sump's panel");
    desk().shelf()->closePanel(true);
    desk().showPage(Desk::Page::journal);
    const journal::EntryId drain = latest<journal::Drain>("Scullery");
    ASSERT_NE(drain, journal::EntryId::none);
    desk().journal()->choose(drain);
    desk().journal()->editChosen();
    expectOnce(Topic::leachate, "an entry of the sump, edited");
    const journal::EntryId lift = latest<journal::Rotate>("Cellar");
    ASSERT_NE(lift, journal::EntryId::none);
    desk().journal()->showAll();
    desk().journal()->choose(lift);
    desk().journal()->editChosen();
    expectOnce(Topic::lifting, "a lifting, edited");
    desk().journal()->showAll();
    desk().journal()->choose(drain);
    desk().journal()->duplicateChosen();
    expectOnce(Topic::leachate, "an entry of the sump, once more");
}

INSTANTIATE_TEST_SUITE_P(OfLetters, AtEachSize, testing::Values(Letters{100, "en"}, Letters{150, "en"}, Letters{200, "en"}, Letters{100, "de"}, Letters{150, "de"}, Letters{200, "de"}, Letters{200, "es"}, Letters{200, "fr"}));

TEST_P(AtEachSize, AfterDrainingAtOneClick)
{
    openHere();
    const auto told = [this] {
        int seen = 0;
        for (const QLabel* label : window_->notices()->findChildren<QLabel*>())
            if (label->text().contains(forms::leachateCaution().text) && tests::canBeRead(label)) ++seen;
        return seen;
    };
    EXPECT_EQ(told(), 0);
    desk().shelf()->chooseStack(QStringLiteral("Lean-to"));
    const std::size_t before = entries();
    desk().shelf()->action(ui::ActionId::drain)->trigger();
    ASSERT_TRUE(written(before + 1));
    settled();
    EXPECT_TRUE(std::holds_alternative<journal::Drain>(household().journal()->entries.back().action));
    EXPECT_EQ(desk().shelf()->host()->content(), nullptr) << "no form, at one click";
    EXPECT_EQ(told(), 1);
    desk().shelf()->action(ui::ActionId::water)->trigger();
    ASSERT_TRUE(written(before + 2));
    settled();
    EXPECT_EQ(told(), 0) << "it is about the drain";
}

// What would break the claims above is found: a card that is scrolled away, cut, or told twice.
TEST_F(CautionsTest, ACautionScrolledAwayIsNotSeen)
{
    open(100);
    QWidget host{window_.get()};
    host.setGeometry(100, 100, 400, 200);
    auto* area = new QScrollArea{&host};
    area->setGeometry(0, 0, 400, 200);
    auto* body = new QWidget;
    auto* rows = new QVBoxLayout{body};
    auto* card = new forms::CautionCard{body};
    card->setCautions({forms::leachateCaution()});
    auto* filler = new QWidget{body};
    filler->setFixedHeight(600);
    rows->addWidget(card);
    rows->addWidget(filler);
    area->setWidget(body);
    area->setWidgetResizable(true);
    host.show();
    host.raise();
    settled();
    EXPECT_EQ(sightOf(Topic::leachate, &host).seen, 1);
    area->ensureVisible(0, 600);
    settled();
    EXPECT_EQ(sightOf(Topic::leachate, &host).told, 1);
    EXPECT_EQ(sightOf(Topic::leachate, &host).seen, 0) << "scrolled away";
    area->ensureVisible(0, 0);
    settled();
    host.resize(400, card->y() + card->height() / 2);
    settled();
    EXPECT_EQ(sightOf(Topic::leachate, &host).seen, 0) << "cut by an edge";
    host.resize(400, 200);
    card->setCautions({forms::manureCaution()});
    settled();
    EXPECT_EQ(sightOf(Topic::leachate, &host).told, 0);
    EXPECT_EQ(sightOf(Topic::manure, &host).told, 1);
}

}
