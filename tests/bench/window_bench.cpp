// How long people wait: first paint, estimates on screen, a click on Feed until it is durable and drawn, new estimates, and how long
// the window was ever blocked. Opens the demo journal in a real window on the offscreen platform; prints medians of several clicks.
//     window_bench [CLICKS]
#include "core/exchange/journal_csv.h"
#include "core/household/clock.h"
#include "core/store/household_file.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/shelf/shelf_page.h"
#include "ui/window/desk.h"
#include "ui/window/main_window.h"

#include <QAbstractButton>
#include <QApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <cstdio>
#include <vector>

using namespace tierloam;

namespace {

constexpr int patienceMs = 60'000;

/// Ticks every 2 ms from the event loop; the longest gap between ticks is how long nothing could be clicked or painted.
class Heartbeat : public QObject {
public:
    Heartbeat()
    {
        timer_.setInterval(2);
        timer_.setTimerType(Qt::PreciseTimer);
        connect(&timer_, &QTimer::timeout, this, [this] { beat(); });
        timer_.start();
        since_.start();
    }
    void reset()
    {
        longest_ = 0;
        since_.restart();
    }
    double longestMs() const { return static_cast<double>(longest_) / 1e6; }

private:
    void beat()
    {
        longest_ = std::max(longest_, since_.nsecsElapsed());
        since_.restart();
    }
    QTimer timer_;
    QElapsedTimer since_;
    qint64 longest_ = 0;
};

/// Watches for the first paint of a widget after it is armed.
class PaintWatch : public QObject {
public:
    explicit PaintWatch(QWidget* widget) : widget_{widget} { widget->installEventFilter(this); }
    void arm() { painted = false; }
    bool painted = false;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (watched == widget_ && event->type() == QEvent::Paint) painted = true;
        return false;
    }

private:
    QWidget* widget_;
};

template <class Condition>
double waitFor(const QElapsedTimer& since, Condition condition)
{
    while (!condition() && since.elapsed() < patienceMs) QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 5);
    return static_cast<double>(since.nsecsElapsed()) / 1e6;
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values.empty() ? 0.0 : values[values.size() / 2];
}

bool makeHousehold(const QString& path)
{
    QFile csv{QStringLiteral(TIERLOAM_SOURCE_DIR "/demo-data/journal.csv")};
    if (!csv.open(QIODevice::ReadOnly)) return false;
    const QByteArray text = csv.readAll();
    const exchange::ReadJournal read = exchange::readJournal({text.constData(), static_cast<std::size_t>(text.size())}, {});
    auto opened = store::HouseholdFile::open(path, store::HouseholdFile::Mode::createIfAbsent);
    auto* file = std::get_if<std::unique_ptr<store::HouseholdFile>>(&opened);
    return file != nullptr && read.faults.empty() && std::holds_alternative<std::vector<journal::EntryId>>((*file)->apply(read.edit));
}

}

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    const int clicks = argc > 1 ? std::max(1, std::atoi(argv[1])) : 15;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("bench.tierloam"));
    if (!makeHousehold(path)) {
        std::fprintf(stderr, "the demo journal could not be opened\n");
        return 1;
    }

    Heartbeat heart;
    QElapsedTimer start;
    start.start();
    ui::Theme theme;
    theme.apply();
    ui::SystemDialogs dialogs;
    const auto settings = ui::passingSettings();
    window::MainWindow window{{std::make_shared<household::FixedClock>(*parseDay("2031-05-06")), theme, dialogs, *settings, {}, QStringLiteral("bench"), false}};
    window.resize(1440, 900);
    if (!window.openFile(path)) return 1;
    window.show();
    PaintWatch paint{window.desk()->shelf()};
    const double firstPaint = waitFor(start, [&] { return paint.painted; });
    const double before = heart.longestMs(); // the window is not there yet: what people wait for is the first paint
    heart.reset();
    const double estimates = waitFor(start, [&] { return window.household()->reckoningIsCurrent(); });
    paint.arm();
    window.desk()->shelf()->update();
    const double onScreen = waitFor(start, [&] { return paint.painted; });
    std::printf("first paint                    %8.1f ms  (bar 1000)\n", firstPaint);
    std::printf("estimates there                %8.1f ms, on screen %.1f ms after the first paint  (bar 2000)\n", estimates, onScreen - firstPaint);
    std::printf("longest block before it        %8.1f ms\n", before);
    std::printf("longest block from it on       %8.1f ms  (bar 50)\n", heart.longestMs());

    for (const auto& [page, name] : {std::pair{window::Desk::Page::trends, "trends"}, std::pair{window::Desk::Page::journal, "journal"}, std::pair{window::Desk::Page::shelf, "shelf"}}) {
        std::vector<double> switches;
        for (int turn = 0; turn < 5; ++turn) {
            window.desk()->showPage(page == window::Desk::Page::shelf ? window::Desk::Page::journal : window::Desk::Page::shelf);
            QCoreApplication::processEvents();
            QElapsedTimer since;
            since.start();
            window.desk()->showPage(page);
            window.grab(); // laid out and painted
            switches.push_back(static_cast<double>(since.nsecsElapsed()) / 1e6);
        }
        std::printf("page switch to %-9s       %8.1f ms median, %.1f the first time  (bar 100)\n", name, median(switches), switches.front());
    }

    std::vector<double> durable, reckoned;
    double worstBlock = 0.0;
    for (int click = 0; click < clicks; ++click) {
        auto* feed = window.desk()->shelf()->findChild<QAbstractButton*>(QStringLiteral("feedButton"));
        if (feed == nullptr) return 1;
        bool recorded = false;
        const auto done = QObject::connect(window.household(), &household::Household::recorded, &heart, [&] { recorded = true; });
        heart.reset();
        QElapsedTimer since;
        since.start();
        feed->click();
        waitFor(since, [&] { return recorded; });
        paint.arm();
        window.desk()->shelf()->update();
        durable.push_back(waitFor(since, [&] { return paint.painted; }));
        reckoned.push_back(waitFor(since, [&] { return window.household()->reckoningIsCurrent(); }));
        QObject::disconnect(done);
        worstBlock = std::max(worstBlock, heart.longestMs());
    }
    std::printf("click on Feed, durable + drawn %8.1f ms median, %.1f worst of %d  (bar 100)\n", median(durable), *std::max_element(durable.begin(), durable.end()), clicks);
    std::printf("new estimates                  %8.1f ms median, %.1f worst  (bar 1000)\n", median(reckoned), *std::max_element(reckoned.begin(), reckoned.end()));
    std::printf("longest block while clicking   %8.1f ms  (bar 50)\n", worstBlock);
    return 0;
}
