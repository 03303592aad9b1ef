#include "tests/ui/cut_words.h"
#include "tests/ui/window_fixture.h"

#include "tests/support/pictures.h"

#include <QFile>

namespace tierloam::window {

class WindowPictures : public WindowTest {
protected:
    void look(const QString& name)
    {
        // Layouts settle in posted events, of which a slow machine may have some left.
        QStringList cut;
        (void)QTest::qWaitFor([&] { return (cut = tests::cutWords(*window_)).isEmpty(); }, 3000);
        tests::keepPicture(window_->grab().toImage(), QStringLiteral("window-") + name);
        EXPECT_TRUE(cut.isEmpty()) << name.toStdString() << ": " << cut.join(u'\n').toStdString();
    }
};

TEST_F(WindowPictures, PlantedCutIsFound)
{
    openSample();
    ASSERT_TRUE(tests::cutWords(*window_).isEmpty());
    auto* button = window_->findChild<QPushButton*>(QStringLiteral("newStackButton"));
    ASSERT_NE(button, nullptr);
    button->setFixedWidth(30);
    settle();
    EXPECT_EQ(tests::cutWords(*window_), QStringList{QStringLiteral("New stack…")});
    button->setFixedWidth(150);
    desk().showPage(Desk::Page::trends);
    settle();
    auto* section = window_->findChild<QWidget*>(QStringLiteral("section0"));
    ASSERT_NE(section, nullptr);
    section->setMinimumWidth(4000);
    settle();
    EXPECT_FALSE(tests::cutWords(*window_).isEmpty());
}

TEST_F(WindowPictures, PagesInBothThemesSizesAndFontsCutNothing)
{
    openSample();
    for (const auto& [name, mode, scale, size] :
         {std::tuple{"light", ui::ThemeMode::light, 100, QSize{1440, 900}}, std::tuple{"dark", ui::ThemeMode::dark, 100, QSize{1440, 900}},
          std::tuple{"150", ui::ThemeMode::light, 150, QSize{1440, 900}}, std::tuple{"200", ui::ThemeMode::dark, 200, QSize{1440, 900}},
          std::tuple{"small", ui::ThemeMode::light, 100, QSize{1000, 640}}, std::tuple{"small-200", ui::ThemeMode::light, 200, QSize{1000, 640}},
          std::tuple{"large", ui::ThemeMode::light, 100, QSize{2560, 1440}}}) {
        theme_->setMode(mode);
        theme_->setFontScale(scale);
        window_->resize(size);
        settle();
        EXPECT_EQ(window_->size(), size) << name << ": something in the window needs more room";
        const QString tail = QString::fromLatin1(name);
        desk().showPage(Desk::Page::trends);
        look(QStringLiteral("trends-") + tail);
        desk().showPage(Desk::Page::journal);
        look(QStringLiteral("journal-") + tail);
        if (!desk().dueBeside()) {
            desk().showPage(Desk::Page::due);
            look(QStringLiteral("due-") + tail);
        }
        desk().showPage(Desk::Page::shelf);
        look(QStringLiteral("shelf-") + tail);
    }
}

TEST_F(WindowPictures, TrendsTogetherAndAsTable)
{
    openSample();
    desk().showPage(Desk::Page::trends);
    for (const auto range : {trends::Range::days30, trends::Range::days90, trends::Range::year, trends::Range::all}) {
        desk().trends()->setRange(range);
        look(QStringLiteral("range-%1").arg(static_cast<int>(range)));
    }
    desk().trends()->setTogether(true);
    look(QStringLiteral("together"));
    desk().trends()->setTable(true);
    look(QStringLiteral("table"));
}

TEST_F(WindowPictures, EmptyHouseholdWelcomeAndNotices)
{
    show();
    look(QStringLiteral("welcome"));
    ASSERT_TRUE(window_->createFile(path(QStringLiteral("new.tierloam"))));
    ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr; }, patience));
    for (const auto page : {Desk::Page::shelf, Desk::Page::trends, Desk::Page::journal}) {
        desk().showPage(page);
        look(QStringLiteral("empty-%1").arg(static_cast<int>(page)));
    }
    window_->notices()->show(Notices::Kind::failure, QStringLiteral("Not written down: the disk is full. Nothing else was changed; free some room and try again."));
    window_->notices()->show(Notices::Kind::notice, QStringLiteral("Another program wrote to this household; two steps can no longer be undone."));
    look(QStringLiteral("notices"));
}

TEST_F(WindowPictures, KeysAndAbout)
{
    openSample();
    for (const int scale : {100, 200}) {
        theme_->setFontScale(scale);
        for (const auto& [keys, name] : {std::pair{"Ctrl+K", "shortcutsView"}, std::pair{"Shift+F1", "aboutView"}}) {
            press(keys);
            auto* view = window_->findChild<QWidget*>(QString::fromLatin1(name));
            ASSERT_NE(view, nullptr);
            settle();
            tests::keepPicture(view->grab().toImage(), QStringLiteral("window-%1-%2").arg(QString::fromLatin1(name)).arg(scale));
            const QStringList cut = tests::cutWords(*view);
            EXPECT_TRUE(cut.isEmpty()) << name << ' ' << scale << ": " << cut.join(u'\n').toStdString();
            view->close();
            settle();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            QApplication::setActiveWindow(window_.get());
        }
    }
}

TEST_F(WindowPictures, TablesThatComeIn)
{
    openSample();
    const auto put = [this](const char* name, const char* text) {
        QFile file{path(QString::fromLatin1(name))};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    };
    put("feeds.csv", "Day;Bin;Scraps;Weight;Weather;Comments\n3/4/2031;Scullery;kitchen mix;1,250;rain;peel and coffee\n4/4/2031;Scullery;coffee grounds;120;sun;\n5/4/2031;Barn;kitchen mix;300;sun;no such stack\n"
                     "6/4/2031;Cellar;kitchen mix;lots;sun;\n");
    put("logger.csv", "time;probe 1;room air C;soil moisture %\n2031-04-01 00:00;20,5;18,2;71\n2031-04-01 12:00;21,5;18,9;72\n2031-04-02 00:00;broken;19,5;73\n");
    for (const auto mode : {ui::ThemeMode::light, ui::ThemeMode::dark}) {
        theme_->setMode(mode);
        for (const int scale : {100, 200}) {
            theme_->setFontScale(scale);
            const QString tail = QStringLiteral("%1-%2").arg(mode == ui::ThemeMode::dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(scale);
            for (const auto& [id, file, name, line, words] : {std::tuple{ui::ActionId::importJournal, "feeds.csv", "journalSheetView", "sheetSummary", "answer what is asked"},
                                                              std::tuple{ui::ActionId::importReadings, "logger.csv", "readingsView", "readingsSummary", "Choose the stack"}}) {
                answers_.files = {path(QString::fromLatin1(file))};
                window_->action(id)->trigger();
                auto* view = window_->findChild<QWidget*>(QString::fromLatin1(name));
                ASSERT_NE(view, nullptr);
                // Rows and readings are looked at beside the window: until it is done the words and the height they take still change.
                ASSERT_TRUE(QTest::qWaitFor([&, label = line, wanted = words] { return view->findChild<QLabel*>(QString::fromLatin1(label))->text().contains(QString::fromLatin1(wanted)); }, patience));
                settle();
                settle();
                tests::keepPicture(view->grab().toImage(), QStringLiteral("window-%1-%2").arg(QString::fromLatin1(name), tail));
                const QStringList cut = tests::cutWords(*view);
                EXPECT_TRUE(cut.isEmpty()) << name << ' ' << tail.toStdString() << ": " << cut.join(u'\n').toStdString();
                view->close();
                settle();
                QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            }
        }
    }
}

TEST_F(WindowPictures, EditorUnderTheJournal)
{
    openSample({1000, 640});
    desk().showPage(Desk::Page::journal);
    desk().journal()->choose(household().journal()->entries.back().id);
    desk().journal()->editChosen();
    ASSERT_NE(window_->findChild<QWidget*>(QStringLiteral("entryEditor")), nullptr);
    look(QStringLiteral("editor-small"));
    window_->resize(1440, 900);
    look(QStringLiteral("editor"));
}

}
