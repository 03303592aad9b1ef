// How quick the trends page is on a household of ten years and three stacks: switching to it from each other page, a notch of the wheel, a drag,
// a step of the crosshair, each until it is painted. In a real window on the offscreen platform; medians and 95th percentiles.
//     trends_bench [FRAMES [WIDTH HEIGHT]]
#include "core/household/clock.h"
#include "tests/bench/bench_household.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trends_page.h"
#include "ui/window/desk.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

using namespace tierloam;

namespace {

constexpr qint64 patienceMs = 120'000;

void tell(const char* what, std::vector<double> ms, double bar)
{
    std::sort(ms.begin(), ms.end());
    const auto at = [&](double share) { return ms[std::min(ms.size() - 1, static_cast<std::size_t>(share * static_cast<double>(ms.size())))]; };
    std::printf("%-44s %7.1f ms median, %7.1f p95, %7.1f worst of %zu  (bar %.0f)\n", what, at(0.5), at(0.95), ms.back(), ms.size(), bar);
}

/// All that is waiting is done, paints too.
void drain()
{
    for (int turn = 0; turn < 4; ++turn) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
}

template <class Act>
double timed(Act act)
{
    QElapsedTimer since;
    since.start();
    act();
    drain();
    return static_cast<double>(since.nsecsElapsed()) / 1e6;
}

void wheel(trends::TrendChart& chart, QPointF at, int turn)
{
    QWidget* target = chart.viewport();
    QWheelEvent event{at, target->mapToGlobal(at), {}, {0, turn}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false};
    QCoreApplication::sendEvent(target, &event);
}

void pointer(trends::TrendChart& chart, QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons held)
{
    QWidget* target = chart.viewport();
    QMouseEvent event{type, at, target->mapToGlobal(at), button, held, Qt::NoModifier};
    QCoreApplication::sendEvent(target, &event);
}

}

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    const int frames = argc > 1 ? std::max(20, std::atoi(argv[1])) : 200;
    const QSize size = argc > 3 ? QSize{std::atoi(argv[2]), std::atoi(argv[3])} : QSize{1440, 900};
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("bench.tierloam"));
    const journal::Entries entries = bench::tenDrainedYears();
    const auto clock = std::make_shared<household::FixedClock>(entries.back().date.day);
    if (!bench::makeHousehold(path, entries)) return 1;

    ui::Theme theme;
    theme.apply();
    ui::SystemDialogs dialogs;
    const auto settings = ui::passingSettings();
    window::MainWindow window{{clock, theme, dialogs, *settings, {}, QStringLiteral("bench"), false}};
    window.resize(size);
    if (!window.openFile(path)) return 1;
    window.show();
    QElapsedTimer since;
    since.start();
    while (!window.household()->reckoningIsCurrent() && since.elapsed() < patienceMs) QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
    if (!window.household()->reckoningIsCurrent()) return 1;
    drain();
    std::printf("ten years, three stacks, %zu entries, %d x %d\n", entries.size(), size.width(), size.height());

    using Page = window::Desk::Page;
    window.desk()->trends()->setRange(trends::Range::all);
    for (const auto& [page, name] : {std::pair{Page::shelf, "shelf"}, std::pair{Page::trends, "trends"}, std::pair{Page::journal, "journal"},
                                     std::pair{Page::rotation, "rotation"}, std::pair{Page::materials, "materials"}, std::pair{Page::handbook, "handbook"}}) {
        std::vector<double> switches;
        double first = 0;
        for (int turn = 0; turn < 9; ++turn) {
            window.desk()->showPage(page == Page::shelf ? Page::journal : Page::shelf);
            drain();
            const double ms = timed([&] { window.desk()->showPage(page); });
            if (turn == 0) first = ms;
            else switches.push_back(ms);
        }
        std::printf("first time %7.1f ms; ", first);
        tell((std::string{"then switch to "} + name).c_str(), switches, 100);
    }

    window.desk()->showPage(Page::trends);
    drain();
    trends::TrendsPage& trends = *window.desk()->trends();
    auto* chart = trends.findChild<trends::TrendChart*>(QStringLiteral("chart"));
    if (!chart) return 1;
    for (const bool together : {false, true}) {
        trends.setTogether(together);
        drain();
        chart = trends.findChild<trends::TrendChart*>(QStringLiteral("chart"));
        const QRectF area = chart->frame().area;
        std::vector<double> zooms, steps, drags, rests;
        const QPointF middle = area.center();
        for (int frame = 0; frame < frames; ++frame) zooms.push_back(timed([&] { wheel(*chart, middle, frame / 12 % 2 == 0 ? 120 : -120); }));
        trends.showWhole();
        drain();
        for (int frame = 0; frame < frames; ++frame) {
            const QPointF at{area.left() + area.width() * (0.05 + 0.9 * frame / frames), middle.y()};
            steps.push_back(timed([&] { pointer(*chart, QEvent::MouseMove, at, Qt::NoButton, Qt::NoButton); }));
        }
        pointer(*chart, QEvent::MouseButtonPress, {area.left() + 10, middle.y()}, Qt::LeftButton, Qt::LeftButton);
        for (int frame = 0; frame < frames / 2; ++frame) {
            const QPointF at{area.left() + 10 + (area.width() - 20) * frame / (frames / 2), middle.y()};
            drags.push_back(timed([&] { pointer(*chart, QEvent::MouseMove, at, Qt::NoButton, Qt::LeftButton); }));
        }
        pointer(*chart, QEvent::MouseButtonRelease, {area.center().x(), middle.y()}, Qt::LeftButton, Qt::NoButton);
        drain();
        trends.showWhole();
        drain();
        std::printf("%s\n", together ? "stacks together" : "stacks side by side");
        tell("a notch of the wheel", zooms, 16);
        tell("a step of the crosshair", steps, 16);
        tell("a step of a drag", drags, 16);
    }
    std::size_t most = 0;
    for (const auto* each : trends.findChildren<trends::TrendChart*>(QStringLiteral("chart")))
        for (const auto& series : each->contents()) most = std::max({most, series.past.size(), series.ahead.size()});
    std::printf("most points of a series %zu  (bar %zu)\n", most, trends::mostPoints + 2);
    return 0;
}
