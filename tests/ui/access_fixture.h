#pragma once

#include "tests/ui/tab_walk.h"

#include "ui/forms/new_stack.h"
#include "ui/shelf/form_host.h"
#include "ui/trends/trend_chart.h"

#include <QFile>
#include <QImage>
#include <QScrollArea>

/// Every state that people meet: first run, pages, forms, what opens in place, and the windows beside the main one.
namespace tierloam::window {

class AccessTest : public WindowTest {
protected:
    using Look = std::function<void(const QString&, QWidget*)>;

    void TearDown() override
    {
        WindowTest::TearDown();
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    }

    /// No household yet, then an empty one with its guided first stack.
    void firstRun(const Look& look)
    {
        show();
        settle();
        look(QStringLiteral("first run"), window_.get());
        ASSERT_TRUE(window_->createFile(path(QStringLiteral("new%1.tierloam").arg(++households_))));
        settle();
        look(QStringLiteral("empty shelf"), window_.get());
        press("Ctrl+N");
        settle();
        ASSERT_NE(qobject_cast<forms::NewStack*>(desk().shelf()->host()->content()), nullptr);
        look(QStringLiteral("first stack"), window_.get());
    }

    /// What opens in place on the pages of the sample household, which is open.
    void inPlace(const Look& look)
    {
        const auto at = [&](const char* where) {
            ASSERT_TRUE(comesToRest(window_.get())) << where;
            look(QString::fromLatin1(where), window_.get());
        };
        press("Ctrl+1");
        desk().shelf()->chooseStack(QStringLiteral("Scullery"));
        for (const auto& [part, name] : {std::pair{std::optional{1}, "tray open"}, {std::optional{0}, "sump open"}, {std::optional<int>{}, "stack open"}}) {
            ASSERT_TRUE(desk().shelf()->openPanel(QStringLiteral("Scullery"), part));
            at(name);
        }
        desk().shelf()->closePanel(true);
        window_->notices()->show(Notices::Kind::failure, QStringLiteral("Not written down: the disk is full."));
        at("a failure told");
        window_->notices()->clear();
        press("Ctrl+4");
        settle();
        desk().journal()->choose(household().journal()->entries.back().id);
        desk().journal()->table()->setFocus();
        press("Return");
        at("journal editor");
        desk().journal()->table()->setFocus();
        press("Esc");
        press("Ctrl+J");
        at("journal duplicate");
        desk().journal()->table()->setFocus();
        press("Esc");
        press("Ins");
        at("journal series");
        desk().journal()->table()->setFocus();
        press("Esc");
        press("Ctrl+2");
        settle();
        desk().trends()->setTable(true);
        at("trends as tables");
        desk().trends()->setTable(false);
        ASSERT_TRUE(QTest::qWaitFor([this] { return seen<trends::TrendChart>(); }, patience));
        at("trends as charts");
        press("F7");
        at("what may be wrong");
        press("F8");
        at("guided harvest");
    }

    /// The windows beside the main one, each closed again.
    void beside(const Look& look)
    {
        const auto put = [this](const char* name, const char* text) {
            QFile file{path(QString::fromLatin1(name))};
            ASSERT_TRUE(file.open(QIODevice::WriteOnly));
            file.write(text);
        };
        put("feeds.csv", "Day;Bin;Scraps;Weight;Comments\n3/4/2031;Scullery;kitchen mix;1,250;peel\n6/4/2031;Cellar;kitchen mix;lots;\n");
        put("logger.csv", "time;probe 1;room air C\n2031-04-01 00:00;20,5;18,2\n2031-04-01 12:00;21,5;18,9\n2031-04-02 00:00;broken;19,5\n");
        press("Ctrl+4");
        settle();
        for (const auto& [keys, file] : {std::pair{"Ctrl+K", ""}, {"Shift+F1", ""}, {"Ctrl+B", ""}, {"Ctrl+Shift+X", ""}, {"Ctrl+P", ""}, {"Ctrl+Shift+P", ""}, {"Ctrl+I", "feeds.csv"}, {"Ctrl+L", "logger.csv"}}) {
            if (*file) answers_.files = {path(QString::fromLatin1(file))};
            openedBy(keys, look);
        }
        desk().journal()->table()->setFocus();
        desk().journal()->table()->selectAll();
        openedBy("Shift+F2", look);
        desk().journal()->choose(household().journal()->entries.back().id);
        openedBy("F3", look);
    }

    void openedBy(const char* keys, const Look& look)
    {
        QApplication::setActiveWindow(window_.get());
        press(keys);
        settle();
        QWidget* opened = nullptr;
        for (QWidget* each : QApplication::topLevelWidgets())
            if (each != window_.get() && each->isVisible() && each->inherits("tierloam::ui::View")) opened = each;
        ASSERT_NE(opened, nullptr) << keys;
        QApplication::setActiveWindow(opened);
        ASSERT_TRUE(QTest::qWaitForWindowActive(opened));
        ASSERT_TRUE(QTest::qWaitFor([&] { return !workedIn(opened).isEmpty(); }, patience));
        ASSERT_TRUE(comesToRest(opened)) << keys;
        look(QString::fromLatin1(keys) + u' ' + opened->objectName(), opened);
        opened->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QApplication::setActiveWindow(window_.get());
        settle();
    }

    template<class Drawn>
    bool seen() const
    {
        const auto all = window_->findChildren<Drawn*>();
        return std::ranges::any_of(all, [](const Drawn* each) { return each->isVisible(); });
    }

    /// Into sight, as Tab brings it.
    void bringIntoSight(QWidget* widget)
    {
        for (QWidget* up = widget->parentWidget(); up; up = up->isWindow() ? nullptr : up->parentWidget())
            if (auto* area = qobject_cast<QScrollArea*>(up)) area->ensureWidgetVisible(widget);
        settle();
    }

    /// All of it.
    void everywhere(const Look& look)
    {
        firstRun(look);
        make();
        openSample();
        walkAll(*window_, look);
        inPlace(look);
        beside(look);
        window_->resize(1000, 640);
        settle();
        press("F6");
        settle();
        look(QStringLiteral("due list as a page"), window_.get());
    }

private:
    int households_ = 0;
};

}
