#include "tests/ui/window_fixture.h"

#include "tests/support/pictures.h"

namespace tierloam::window {

/// Nothing that is written may be cut: every label and button on the page has the width and height that its words need.
class WindowPictures : public WindowTest {
protected:
    void look(const QString& name)
    {
        settle();
        settle();
        const QImage image = window_->grab().toImage();
        tests::keepPicture(image, QStringLiteral("window-") + name);
        for (const QLabel* label : window_->findChildren<QLabel*>()) {
            if (!label->isVisible() || label->text().isEmpty() || label->sizePolicy().horizontalPolicy() == QSizePolicy::Ignored) continue;
            if (label->wordWrap()) {
                EXPECT_GE(label->height() + 1, label->heightForWidth(label->width())) << name.toStdString() << ": " << label->text().toStdString();
            } else {
                EXPECT_GE(label->width() + 1, label->sizeHint().width()) << name.toStdString() << ": " << label->text().toStdString();
            }
        }
        for (const QWidget* widget : window_->findChildren<QWidget*>()) {
            if (!widget->isVisible() || (!qobject_cast<const QLabel*>(widget) && !qobject_cast<const QPushButton*>(widget))) continue;
            // What scrolls only down must not be wider than what can be seen of it.
            for (const QWidget* above = widget->parentWidget(); above; above = above->parentWidget()) {
                const auto* area = qobject_cast<const QAbstractScrollArea*>(above->parentWidget());
                if (!area || area->viewport() != above || area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff) continue;
                const int right = widget->mapTo(above, QPoint{widget->width(), 0}).x();
                EXPECT_LE(right, above->width()) << name.toStdString() << ": cut at the side: " << widget->accessibleName().toStdString()
                                                 << (qobject_cast<const QLabel*>(widget) ? static_cast<const QLabel*>(widget)->text().toStdString() : "");
            }
        }
        for (const QPushButton* button : window_->findChildren<QPushButton*>()) {
            if (!button->isVisible() || button->text().isEmpty()) continue;
            const int text = button->fontMetrics().horizontalAdvance(QString{button->text()}.remove(u'&'));
            EXPECT_GE(button->width(), text) << name.toStdString() << ": " << button->text().toStdString();
        }
    }
};

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
