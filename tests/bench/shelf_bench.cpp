// How smooth the shelf is: 200 stacks scrolled in the real window, step by step, each step laid out and painted; and how long the page takes to
// come up in a household of ten years. Offscreen platform; prints median and 95th percentile.
//     shelf_bench [STACKS [YEARS]]
#include "core/household/household.h"
#include "core/reckoning/reckon.h"
#include "tests/bench/years_of_stacks.h"
#include "tests/support/sample_shelf.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/shelf/shelf_board.h"
#include "ui/shelf/shelf_page.h"
#include "ui/window/desk.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QScrollArea>
#include <QScrollBar>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <vector>

using namespace tierloam;

namespace {

double msOf(const QElapsedTimer& since) { return static_cast<double>(since.nsecsElapsed()) / 1e6; }

struct Spread {
    std::vector<double> all;
    double at(double share)
    {
        std::sort(all.begin(), all.end());
        return all.empty() ? 0 : all[std::min(all.size() - 1, static_cast<std::size_t>(share * static_cast<double>(all.size())))];
    }
};

void settle()
{
    QCoreApplication::sendPostedEvents();
    QCoreApplication::processEvents();
}

/// A window on that journal with ready-made estimates.
class Window {
public:
    Window(journal::Entries entries, std::shared_ptr<const reckoning::Reckoning> estimates)
    {
        const QString path = folder_.filePath(QStringLiteral("bench.tierloam"));
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.reckon = [estimates](const journal::Entries&, const reckoning::Options&, std::stop_token) { return estimates; };
        {
            auto opened = household::Household::open(path, std::make_shared<household::FixedClock>(estimates->asOf), settings);
            auto& household = std::get<std::unique_ptr<household::Household>>(opened);
            for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
            household->recordAll(entries, QStringLiteral("bench"));
            household->finishWrites();
        }
        theme_.apply();
        window_ = std::make_unique<window::MainWindow>(
            window::MainWindow::Needs{std::make_shared<household::FixedClock>(estimates->asOf), theme_, dialogs_, *settings_, settings, QStringLiteral("bench"), false});
        window_->resize(1440, 900);
        window_->openFile(path);
        window_->show();
        QElapsedTimer waited;
        waited.start();
        while (!window_->household()->reckoningIsCurrent() && waited.elapsed() < 60'000) QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 5);
        settle();
    }
    window::MainWindow& window() { return *window_; }
    shelf::ShelfPage& shelf() { return *window_->desk()->shelf(); }

private:
    QTemporaryDir folder_;
    ui::Theme theme_;
    ui::SystemDialogs dialogs_;
    std::unique_ptr<ui::Settings> settings_ = ui::passingSettings();
    std::unique_ptr<window::MainWindow> window_;
};

void scroll(int stacks)
{
    Window shown{tests::sampleJournal(stacks), tests::sampleReckoning(stacks)};
    auto* area = shown.shelf().findChild<QScrollArea*>();
    QScrollBar* bar = area->verticalScrollBar();
    for (const int step : {40, 120}) { // a notch of the wheel; a fling
        Spread first, again;
        for (Spread* spread : {&first, &again}) {
            bar->setValue(0);
            settle();
            while (bar->value() < bar->maximum()) {
                QElapsedTimer since;
                since.start();
                bar->setValue(bar->value() + step);
                settle();
                spread->all.push_back(msOf(since));
            }
        }
        std::printf("%d stacks, %d px a frame: median %.1f ms, p95 %.1f, worst %.1f of %zu frames; once more: %.1f, %.1f, %.1f  (bar 16)\n", stacks, step, first.at(0.5), first.at(0.95),
                    first.at(1), first.all.size(), again.at(0.5), again.at(0.95), again.at(1));
    }
    Spread made;
    for (int round = 0; round < 5; ++round) {
        QElapsedTimer since;
        since.start();
        shown.shelf().refreshNow();
        settle();
        made.all.push_back(msOf(since));
    }
    std::printf("%d stacks, all told anew after a change: median %.1f ms\n", stacks, made.at(0.5));
}

void pageSwitch(int years)
{
    const journal::Entries entries = bench::yearsOfThreeStacks(years);
    reckoning::Options options;
    options.asOf = entries.back().date.day;
    Window shown{entries, reckoning::reckon(entries, options)};
    Spread switches;
    for (int turn = 0; turn < 15; ++turn) {
        shown.window().desk()->showPage(window::Desk::Page::journal);
        settle();
        QElapsedTimer since;
        since.start();
        shown.window().desk()->showPage(window::Desk::Page::shelf);
        settle();
        switches.all.push_back(msOf(since));
    }
    Spread anew;
    for (int turn = 0; turn < 15; ++turn) {
        QElapsedTimer since;
        since.start();
        shown.shelf().refreshNow();
        settle();
        anew.all.push_back(msOf(since));
    }
    Spread opened;
    for (int turn = 0; turn < 15; ++turn) {
        shown.shelf().closePanel(true);
        settle();
        QElapsedTimer since;
        since.start();
        shown.shelf().openPanel(shown.shelf().currentStack(), turn % 3);
        settle();
        opened.all.push_back(msOf(since));
    }
    std::printf("%d years of 3 stacks, %zu entries: page switch to the shelf median %.1f ms, p95 %.1f  (bar 100)\n", years, entries.size(), switches.at(0.5), switches.at(0.95));
    std::printf("  made anew after a change: median %.1f ms, p95 %.1f; a tray opened: median %.1f ms, p95 %.1f\n", anew.at(0.5), anew.at(0.95), opened.at(0.5), opened.at(0.95));
}

}

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    scroll(argc > 1 ? std::max(9, std::atoi(argv[1])) : 200);
    pageSwitch(argc > 2 ? std::max(1, std::atoi(argv[2])) : 10);
    return 0;
}
