// How long people wait after they have started the program: from the start of its process until the shelf has been painted, until a click on a
// button is answered, and until estimates are on the screen; and how much memory it then holds. Each start is a process of its own, which does what
// app/window_start.cpp does, on the offscreen platform. First with nothing kept, then with estimates and members of the session before, then each start a day later. Medians.
//     start_bench [STARTS]
#include "core/quantity/day_text.h"
#include "tests/bench/bench_household.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/shelf/shelf_page.h"
#include "ui/window/desk.h"
#include "ui/window/main_window.h"
#include "ui/window/system_scheme.h"

#include <QAbstractButton>
#include <QApplication>
#include <QFile>
#include <QMouseEvent>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>

#include <cstdio>
#include <ctime>
#include <map>

using namespace tierloam;

namespace {

constexpr double patienceMs = 120'000;

/// The same clock in all processes.
double nowMs()
{
    timespec time{};
    clock_gettime(CLOCK_MONOTONIC, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

double megabytes(const char* field)
{
    QFile status{QStringLiteral("/proc/self/status")};
    if (!status.open(QIODevice::ReadOnly)) return 0;
    const auto lines = status.readAll().split('\n');
    for (const QByteArray& line : lines)
        if (line.startsWith(field)) return line.mid(static_cast<qsizetype>(qstrlen(field)) + 1).trimmed().split(' ').front().toDouble() / 1024;
    return 0;
}

class Paints : public QObject {
public:
    explicit Paints(QWidget* widget) : widget_{widget} { widget->installEventFilter(this); }
    int count = 0;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (watched == widget_ && event->type() == QEvent::Paint) ++count;
        return false;
    }

private:
    QWidget* widget_;
};

/// Asleep between events, so that other threads get on; looks again every 2 ms.
template <class Condition>
void waitFor(Condition condition)
{
    QTimer wake;
    wake.setTimerType(Qt::PreciseTimer);
    wake.start(2);
    const double since = nowMs();
    while (!condition() && nowMs() - since < patienceMs) QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
}

void tell(const char* what, double value) { std::printf("%s\t%.2f\n", what, value); }

int start(int& argc, char** argv, double started)
{
    tell("main", nowMs() - started);
    const QApplication application{argc, argv};
    const auto settings = ui::passingSettings();
    ui::Theme theme;
    theme.restore(*settings);
    theme.apply();
    const window::SystemScheme scheme{theme};
    ui::SystemDialogs dialogs;
    household::Household::Settings kept;
    kept.estimatesFolder = QString::fromLocal8Bit(argv[3]);
    kept.program = "bench";
    window::MainWindow window{{std::make_shared<household::FixedClock>(*parseDay(argv[4])), theme, dialogs, *settings, kept, QStringLiteral("bench"), false}};
    window.resize(1440, 900);
    const double opening = nowMs();
    if (!window.openFile(QString::fromLocal8Bit(argv[2]))) return 1;
    tell("opened", nowMs() - started);
    window.show();
    shelf::ShelfPage* shelf = window.desk()->shelf();
    Paints paints{shelf};
    double estimates = 0;
    waitFor([&] { return paints.count > 0; });
    tell("painted", nowMs() - started);
    if (window.household()->reckoning()) estimates = nowMs();

    auto* button = window.findChild<QAbstractButton*>(QStringLiteral("newStackButton"));
    if (!button) return 1;
    int before = paints.count;
    bool answered = false;
    QObject::connect(button, &QAbstractButton::clicked, button, [&] { answered = true; });
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        const QPointF at = button->rect().center();
        QCoreApplication::postEvent(button, new QMouseEvent{type, at, button->mapToGlobal(at), Qt::LeftButton, type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier});
    }
    waitFor([&] { return answered && paints.count > before; });
    tell("answered", nowMs() - started);
    if (estimates <= 0) {
        waitFor([&] { return window.household()->reckoning() != nullptr; });
        before = paints.count;
        shelf->update();
        waitFor([&] { return paints.count > before; });
        estimates = nowMs();
    }
    tell("estimates", estimates - started);
    tell("estimates after opening", estimates - opening);
    waitFor([&] { return window.household()->reckoningIsCurrent(); });
    tell("current", nowMs() - started);
    // The first entry, made at once: what the model has to run through for it.
    journal::Entry fed;
    fed.date.day = *parseDay(argv[4]);
    fed.stack = window.household()->reckoning()->stacks.front().name;
    fed.action = journal::Feed{{500, Unit::g}, {}, {}};
    const double recording = nowMs();
    bool recorded = false;
    QObject::connect(window.household(), &household::Household::recorded, window.household(), [&] { recorded = true; });
    window.household()->record(fed, QStringLiteral("feed"));
    waitFor([&] { return recorded && window.household()->reckoningIsCurrent(); });
    tell("first entry", nowMs() - recording);
    for (int i = 0; i < 20; ++i) QCoreApplication::processEvents();
    tell("memory", megabytes("VmRSS:"));
    tell("most memory", megabytes("VmHWM:"));
    std::fflush(stdout);
    window.close();
    return 0;
}

using Told = std::map<QByteArray, std::vector<double>>;

bool startOnce(const QString& self, const QString& file, const QString& cache, Day today, Told& told)
{
    QProcess child;
    child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    child.start(self, {QStringLiteral("--start"), file, cache, QString::fromStdString(dayText(today)), QString::number(nowMs(), 'f', 3)});
    if (!child.waitForFinished(static_cast<int>(patienceMs)) || child.exitCode() != 0) return false;
    const auto lines = child.readAllStandardOutput().split('\n');
    for (const QByteArray& line : lines) {
        const auto parts = line.split('\t');
        if (parts.size() == 2) told[parts[0]].push_back(parts[1].toDouble());
    }
    return true;
}

void report(const char* what, Told& told)
{
    const auto middle = [&](const char* key) {
        auto& values = told[key];
        std::sort(values.begin(), values.end());
        return values.empty() ? 0.0 : values[values.size() / 2];
    };
    std::printf("%s, medians of %zu starts\n", what, told["main"].size());
    std::printf("  main's first line %.0f ms, file opened %.0f, shelf painted %.0f, a click answered %.0f (worst %.0f)  (bar 500)\n", middle("main"), middle("opened"), middle("painted"),
                middle("answered"), told["answered"].empty() ? 0 : told["answered"].back());
    std::printf("  first estimates on screen %.0f ms, %.0f after the file was asked for; estimates of now %.0f\n", middle("estimates"), middle("estimates after opening"), middle("current"));
    std::printf("  new estimates after an entry made at once %.0f ms\n", middle("first entry"));
    std::printf("  memory at rest %.0f MB, most %.0f MB\n", middle("memory"), middle("most memory"));
}

}

int main(int argc, char** argv)
{
    if (argc == 6 && QByteArray{argv[1]} == "--start") return start(argc, argv, QByteArray{argv[5]}.toDouble());
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QCoreApplication application{argc, argv};
    const int starts = argc > 1 ? std::max(1, std::atoi(argv[1])) : 9;
    const QTemporaryDir folder;
    std::vector<std::string> many;
    for (int i = 1; i <= 200; ++i) many.push_back("Stack " + std::to_string(i));
    struct Case {
        const char* name;
        journal::Entries entries;
        int cold, warm;
    };
    const Case cases[] = {{"ten years of three stacks", bench::tenDrainedYears(), starts, starts}, {"two years of 200 stacks", bench::yearsOfStacks(2, many), 1, std::min(starts, 5)}};
    for (const Case& one : cases) {
        const QString file = folder.filePath(QStringLiteral("%1.tierloam").arg(one.entries.size()));
        const QString cache = folder.filePath(QStringLiteral("%1").arg(one.entries.size()));
        if (!bench::makeHousehold(file, one.entries)) return 1;
        const Day today = one.entries.back().date.day;
        Told cold, warm, later;
        for (int i = 0; i < one.cold; ++i)
            if (!startOnce(application.applicationFilePath(), file, QString{}, today, cold)) return 1;
        report((std::string{one.name} + ", nothing kept").c_str(), cold);
        Told first;
        if (!startOnce(application.applicationFilePath(), file, cache, today, first)) return 1;
        for (int i = 0; i < one.warm; ++i)
            if (!startOnce(application.applicationFilePath(), file, cache, today, warm)) return 1;
        report((std::string{one.name} + ", with what the session before kept").c_str(), warm);
        for (int i = 0; i < one.warm; ++i)
            if (!startOnce(application.applicationFilePath(), file, cache, today + std::chrono::days{i + 1}, later)) return 1;
        report((std::string{one.name} + ", each start a day later").c_str(), later);
    }
    return 0;
}
