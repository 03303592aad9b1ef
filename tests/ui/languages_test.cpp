#include "tests/ui/walk.h"

#include "core/reckoning/reckon.h"
#include "tests/support/colour_science.h"
#include "tests/support/pictures.h"
#include "ui/common/formats.h"
#include "ui/materials/materials_model.h"
#include "ui/materials/materials_page.h"
#include "ui/materials/mix_bench.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/rotation_page.h"
#include "ui/shelf/stack_column.h"
#include "ui/shelf/strips_view.h"
#include "ui/trends/measure_section.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trend_words.h"
#include "ui/window/due_notice.h"

#include <QFile>
#include <QFileInfo>
#include <QHeaderView>
#include <QLibraryInfo>
#include <QLocale>
#include <QScrollArea>
#include <QScrollBar>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QChart>
#include <QTableView>

namespace tierloam::window {

namespace {

/// Labels of the axes of the chart of a measure, values or days.
QStringList axisLabels(trends::TrendsPage* page, trends::Measure measure, Qt::Orientation orientation)
{
    for (auto* section : page->findChildren<trends::MeasureSection*>())
        for (auto* chart : section->findChildren<trends::TrendChart*>()) {
            if (section->measure() != measure) continue;
            const auto axes = chart->chart()->axes(orientation);
            if (auto* axis = axes.isEmpty() ? nullptr : qobject_cast<QCategoryAxis*>(axes.front())) return axis->categoriesLabels();
        }
    return {};
}

class WindowLanguages : public WindowTest {
protected:
    void TearDown() override
    {
        WindowTest::TearDown();
        ui::setMeasures(ui::Measures::metric);
        QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedKingdom});
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    }
    /// As they stand now on the trends page.
    QString labels(trends::Measure measure, Qt::Orientation orientation)
    {
        desk().showPage(Desk::Page::trends);
        desk().trends()->refreshNow();
        settled();
        return axisLabels(desk().trends(), measure, orientation).join(u'|');
    }
};

void tell(const std::set<QString>& found)
{
    for (const QString& each : found) ADD_FAILURE() << each.toStdString();
}

TEST_F(WindowLanguages, EveryTextIsTranslatedAndNoneIsClipped)
{
    LongTexts texts;
    QCoreApplication::installTranslator(&texts);
    make();
    openSample();
    std::set<QString> plain, clipped;
    walkAll(*window_, [&](const QString& where, QWidget* root) {
        for (const QString& each : plainIn(root)) plain.insert(where % QStringLiteral(": ") % each);
        for (const QString& each : clippedIn(root)) clipped.insert(where % QStringLiteral(": ") % each);
    });
    QCoreApplication::removeTranslator(&texts);
    tell(plain);
    tell(clipped);
}

TEST_F(WindowLanguages, UnitsAndLanguageAreChosenWhileTheWindowStands)
{
    QStringList used;
    LongTexts texts;
    window_ = std::make_unique<MainWindow>(MainWindow::Needs{std::make_shared<household::FixedClock>(tests::sampleToday(), 18 * 60 + 42), *theme_, answers_, *settings_, {}, QStringLiteral("1.2.3"), true,
                                                             [&](const QString& language) {
                                                                 used << language;
                                                                 QCoreApplication::removeTranslator(&texts);
                                                                 if (language == QLatin1StringView{"de"}) QCoreApplication::installTranslator(&texts);
                                                             }});
    openSample();
    const std::size_t before = entries();
    desk().showPage(Desk::Page::trends);
    window_->action(ui::ActionId::languageGerman)->trigger();
    settle();
    EXPECT_EQ(used, QStringList{QStringLiteral("de")});
    EXPECT_EQ(settings_->value(QStringLiteral("window/language")).toString(), QStringLiteral("de"));
    EXPECT_EQ(desk().page(), Desk::Page::trends) << "the page stays";
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(window_->action(ui::ActionId::openHousehold)->text().startsWith(u'⟦'));
    EXPECT_TRUE(window_->action(ui::ActionId::languageGerman)->isChecked());
    EXPECT_EQ(window_->menuBar()->actions().size(), 5);
    EXPECT_TRUE(window_->menuBar()->actions().constFirst()->text().startsWith(u'⟦'));
    window_->action(ui::ActionId::languageEnglish)->trigger();
    settle();
    EXPECT_EQ(window_->action(ui::ActionId::openHousehold)->text(), QStringLiteral("&Open household…"));

    window_->action(ui::ActionId::measuresUs)->trigger();
    settle();
    EXPECT_EQ(ui::measures(), ui::Measures::us);
    EXPECT_EQ(settings_->value(QStringLiteral("window/measures")).toString(), QStringLiteral("us"));
    desk().showPage(Desk::Page::shelf);
    settle();
    bool pounds = false;
    for (const Said& each : saidBy(window_.get())) pounds = pounds || each.text.contains(QStringLiteral("\u00a0lb"));
    EXPECT_TRUE(pounds);
}

TEST_F(WindowLanguages, AxesFollowLanguageAndUnitsWhileTheWindowStands)
{
    window_ = std::make_unique<MainWindow>(MainWindow::Needs{std::make_shared<household::FixedClock>(tests::sampleToday(), 18 * 60 + 42), *theme_, answers_, *settings_, {}, QStringLiteral("1.2.3"), true,
                                                             [](const QString& language) { QLocale::setDefault(language == QLatin1StringView{"de"} ? QLocale{QLocale::German, QLocale::Germany} : QLocale{QLocale::English, QLocale::UnitedKingdom}); }});
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedKingdom});
    openSample();
    using trends::Measure;
    const QString points = labels(Measure::feedToCast, Qt::Vertical), kilograms = labels(Measure::colony, Qt::Vertical), english = labels(Measure::colony, Qt::Horizontal), celsius = labels(Measure::temperature, Qt::Vertical);
    EXPECT_TRUE(points.contains(u'.')) << points.toStdString();
    EXPECT_FALSE(points.contains(u',')) << points.toStdString();
    window_->action(ui::ActionId::languageGerman)->trigger();
    settled();
    const QString commas = labels(Measure::feedToCast, Qt::Vertical), german = labels(Measure::colony, Qt::Horizontal);
    EXPECT_EQ(commas, QString{points}.replace(u'.', u',')) << "the same steps";
    EXPECT_NE(german, english) << "names of months: " << german.toStdString();
    window_->action(ui::ActionId::measuresUs)->trigger();
    settled();
    const QString fahrenheit = labels(Measure::temperature, Qt::Vertical);
    EXPECT_NE(fahrenheit, celsius);
    EXPECT_GE(fahrenheit.split(u'|').constLast().toDouble(), 70.0) << fahrenheit.toStdString();
    EXPECT_NE(labels(Measure::colony, Qt::Vertical), kilograms) << "pounds have other steps";
    window_->action(ui::ActionId::languageEnglish)->trigger();
    window_->action(ui::ActionId::measuresMetric)->trigger();
    settled();
    EXPECT_EQ(labels(Measure::feedToCast, Qt::Vertical), points) << "and back";
    EXPECT_EQ(labels(Measure::colony, Qt::Vertical), kilograms);
    EXPECT_EQ(labels(Measure::colony, Qt::Horizontal), english);
}

// The counter-check of the one above: a window that is not told the language keeps its marks and months, and the comparison sees that.
TEST_F(WindowLanguages, AxesOfAWindowThatIsNotToldTheLanguageAreFound)
{
    window_ = std::make_unique<MainWindow>(MainWindow::Needs{std::make_shared<household::FixedClock>(tests::sampleToday(), 18 * 60 + 42), *theme_, answers_, *settings_, {}, QStringLiteral("1.2.3"), true, [](const QString&) {}});
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedKingdom});
    openSample();
    const QString points = labels(trends::Measure::feedToCast, Qt::Vertical), english = labels(trends::Measure::colony, Qt::Horizontal);
    window_->action(ui::ActionId::languageGerman)->trigger();
    settled();
    EXPECT_EQ(labels(trends::Measure::feedToCast, Qt::Vertical), points);
    EXPECT_NE(points, QString{points}.replace(u'.', u',')) << "there is a mark to be turned";
    EXPECT_EQ(labels(trends::Measure::colony, Qt::Horizontal), english);
    ui::setMeasures(ui::Measures::us); // and one that was not told the units: its axes stand as they were
    EXPECT_EQ(axisLabels(desk().trends(), trends::Measure::feedToCast, Qt::Vertical).join(u'|'), points);
    const QString celsius = axisLabels(desk().trends(), trends::Measure::temperature, Qt::Vertical).join(u'|');
    EXPECT_LT(celsius.split(u'|').constLast().toDouble(), 70.0) << celsius.toStdString();
}

/// A unit of the metric system behind a number, in a bracket, or alone.
const QRegularExpression& metricUnit()
{
    static const QRegularExpression unit{QStringLiteral("(^|[\\d\\s\u00a0(])(kg|g|mg|L|mL|cm|mm|m²|°C)(?=$|[\\s\u00a0.,;:)/])")};
    return unit;
}

// Pages, forms, due list with its reasons, rotation with its plan, axes and tips of the trends. Left out: the handbook's figures, which quote their
// sources, and the names of choices that are units of either system (a column of a file, the units that may be typed).
TEST_F(WindowLanguages, InUsUnitsNoMetricUnitIsLeft)
{
    ui::setMeasures(ui::Measures::us);
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedStates});
    reckoning::Options options;
    options.asOf = today_;
    options.members = 64;
    auto estimates = std::make_shared<reckoning::Reckoning>(*reckoning::reckon(tests::sampleJournal(), options));
    for (reckoning::StackReckoning& stack : estimates->stacks) { // as much due as can be
        stack.record.lastFeed = today_ - std::chrono::days{10};
        stack.now.binTempC = {30, 32, 34};
        stack.record.spigotShut = true;
        stack.now.sumpL = {3.8, 4.0, 4.0};
    }
    estimates_ = estimates;
    make();
    openSample();
    std::set<QString> metric;
    int said = 0, us = 0;
    static const QRegularExpression usUnit{QStringLiteral("\\d[\\s\u00a0](lb|oz|gal|fl oz|in|°F)\\b")};
    const auto look = [&](const QString& where, QWidget* root) {
        for (const Said& each : saidBy(root)) {
            ++said;
            us += usUnit.match(each.text).hasMatch() ? 1 : 0;
            if (metricUnit().match(each.text).hasMatch()) metric.insert(where % QStringLiteral(": ") % each.where % QStringLiteral(": «") % each.text.left(160) % u'»');
        }
    };
    desk().showPage(Desk::Page::rotation);
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk().rotation()->plan() != nullptr; }, patience));
    walkAll(*window_, [&](const QString& where, QWidget* root) {
        if (where != QLatin1StringView{"handbook"}) look(where, root);
    });
    ASSERT_GE(desk().due()->count(), 6);
    for (int line = 0; line < desk().due()->count(); ++line) {
        QList<QPushButton*> seen;
        for (auto* each : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueWhy")))
            if (each->isVisibleTo(desk().due()) && !each->isHidden() && !each->isChecked() && !each->parentWidget()->parentWidget()->isHidden()) seen << each;
        if (line >= seen.size()) break;
        seen[line]->click();
        settle();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        look(QStringLiteral("reasons"), desk().due());
    }
    desk().showPage(Desk::Page::rotation);
    settle();
    for (const auto& steps : desk().rotation()->lanes()->year().steps)
        for (const rotation::PlanStep& step : steps) {
            const QString text = rotation::stepText(step, today_);
            EXPECT_FALSE(metricUnit().match(text).hasMatch()) << text.toStdString();
        }
    for (const trends::Measure measure : trends::allMeasures) {
        EXPECT_FALSE(metricUnit().match(trends::axisUnit(measure).unit).hasMatch()) << trends::axisUnit(measure).unit.toStdString();
        EXPECT_FALSE(metricUnit().match(trends::measureNote(measure, 7)).hasMatch()) << trends::measureNote(measure, 7).toStdString();
        EXPECT_FALSE(metricUnit().match(trends::valueText(measure, {1.0, 2.0, 3.0})).hasMatch()) << trends::valueText(measure, {1.0, 2.0, 3.0}).toStdString();
    }
    // What leaves the window: the calendar, unfolded, and what is told on the desktop.
    const QString ics = path(QStringLiteral("us.ics"));
    ASSERT_TRUE(window_->exportCalendar(ics));
    QFile file{ics};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString calendar = QString::fromUtf8(file.readAll()).remove(QStringLiteral("\r\n "));
    int events = 0;
    for (const QString& line : calendar.split(QStringLiteral("\r\n"))) {
        if (!line.startsWith(QStringLiteral("SUMMARY")) && !line.startsWith(QStringLiteral("DESCRIPTION"))) continue;
        ++events;
        us += usUnit.match(line).hasMatch() ? 1 : 0;
        EXPECT_FALSE(metricUnit().match(line).hasMatch()) << line.toStdString();
    }
    EXPECT_GT(events, 10);
    struct Told final : DesktopNotes {
        void show(const QString& title, const QString& text) override { said = title + u'\n' + text; }
        QString said;
    } told;
    const auto settings = ui::passingSettings();
    DueNotice::setWanted(*settings, true);
    DueNotice notice{*desk().due(), household(), *settings, told, nullptr};
    notice.look();
    EXPECT_TRUE(usUnit.match(told.said).hasMatch()) << told.said.toStdString();
    EXPECT_FALSE(metricUnit().match(told.said).hasMatch()) << told.said.toStdString();
    tell(metric);
    EXPECT_GT(said, 500);
    EXPECT_GT(us, 100);
    // What must be found: the same pages in the other system.
    ui::setMeasures(ui::Measures::metric);
    metric.clear();
    desk().shelf()->refreshNow();
    desk().showPage(Desk::Page::shelf);
    settle();
    look(QStringLiteral("metric"), desk().shelf());
    EXPECT_GT(metric.size(), 5u);
}

/// How far the shelf would have to be scrolled to the side.
int sideways(const Desk& desk)
{
    const auto* area = qobject_cast<QScrollArea*>(desk.shelf()->board()->parentWidget()->parentWidget());
    return area ? area->horizontalScrollBar()->maximum() : -1;
}

TEST_F(WindowLanguages, ThreeStacksStandBesideEachOtherInEachLanguage)
{
    for (const char* language : {"de", "es", "fr", "en"}) {
        QTranslator texts;
        ASSERT_TRUE(texts.load(QStringLiteral("tierloam_") % QString::fromLatin1(language), QFileInfo{QStringLiteral(TIERLOAM_PROGRAM)}.absolutePath())) << language;
        QLocale::setDefault(QLocale{QString::fromLatin1(language)});
        QCoreApplication::installTranslator(&texts);
        make();
        const QString file = sampleFile(QString::fromLatin1(language) % QStringLiteral(".tierloam"));
        ASSERT_TRUE(window_->openFile(file));
        show({1280, 800});
        ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr; }, patience));
        for (int n = 0; n < 4; ++n) settle();
        std::set<QString> letters;
        for (const QAction* menu : window_->menuBar()->actions()) EXPECT_TRUE(letters.insert(QKeySequence::mnemonic(menu->text()).toString()).second) << language << ": " << menu->text().toStdString() << " has the letter of another menu";
        ASSERT_TRUE(desk().dueBeside()) << language;
        ASSERT_EQ(desk().shelf()->board()->columns().size(), 3u);
        EXPECT_EQ(sideways(desk()), 0) << language;
        for (const auto* column : desk().shelf()->board()->columns()) {
            (void)window_->grab();
            EXPECT_TRUE(column->canvas()->labelsFit()) << language;
        }
        for (const QString& each : clippedIn(desk().shelf())) ADD_FAILURE() << language << ": " << each.toStdString();
        // What must not pass: labels that nobody could set beside a tray at that width.
        desk().shelf()->board()->setView({500, 700});
        settle();
        EXPECT_GT(desk().shelf()->board()->width(), 500) << language;
        QCoreApplication::removeTranslator(&texts);
    }
}

/// Of the columns that are to be read without scrolling, those that are cut at the right of what the table shows.
QStringList cutColumns(const QTableView& table)
{
    using Model = materials_page::MaterialsModel;
    QStringList cut;
    for (const int column : {Model::name, Model::welcome, Model::ratio, Model::moisture}) {
        const int words = table.horizontalHeader()->fontMetrics().horizontalAdvance(table.model()->headerData(column, Qt::Horizontal).toString());
        if (table.columnViewportPosition(column) + table.columnWidth(column) > table.viewport()->width() || table.columnWidth(column) < words)
            cut << table.model()->headerData(column, Qt::Horizontal).toString();
    }
    return cut;
}

TEST_F(WindowLanguages, MaterialsShowNameWelcomeRatioAndMoistureInEachLanguage)
{
    for (const char* language : {"de", "es", "fr", "en"}) {
        QTranslator texts;
        ASSERT_TRUE(texts.load(QStringLiteral("tierloam_") % QString::fromLatin1(language), QFileInfo{QStringLiteral(TIERLOAM_PROGRAM)}.absolutePath())) << language;
        QLocale::setDefault(QLocale{QString::fromLatin1(language)});
        QCoreApplication::installTranslator(&texts);
        make();
        openSample();
        desk().showPage(Desk::Page::materials);
        auto* page = desk().materials();
        const bool longest = QLatin1StringView{language} == QLatin1StringView{"de"}; // words of all four
        for (const int scale : longest ? std::vector{100, 150, 200} : std::vector{100}) {
            if (scale != 100) {
                theme_->setFontScale(scale);
                theme_->apply();
            }
            for (const QSize size : {QSize{1000, 640}, QSize{1280, 800}}) {
                if (scale == 200 && size.width() == 1000) continue; // there the table is scrolled to the side
                window_->resize(size);
                for (int n = 0; n < 4; ++n) settle();
                ASSERT_EQ(window_->size(), size);
                EXPECT_EQ(cutColumns(*page->table()).join(u',').toStdString(), "") << language << ' ' << scale << " % " << size.width();
                for (const QWidget* each : page->mix()->findChildren<QWidget*>()) {
                    const int beyond = each->isVisible() ? each->mapTo(page, QPoint{each->width(), 0}).x() - page->width() : 0;
                    EXPECT_LE(beyond, 0) << language << ' ' << scale << " % " << size.width() << ": " << each->objectName().toStdString();
                }
            }
        }
        // What must not pass: a column as wide as the longest of names.
        page->table()->setColumnWidth(materials_page::MaterialsModel::name, page->table()->viewport()->width());
        EXPECT_FALSE(cutColumns(*page->table()).isEmpty());
        theme_->setFontScale(100);
        theme_->apply();
        QCoreApplication::removeTranslator(&texts);
    }
}

TEST_F(WindowLanguages, QtSpeaksEachLanguageToo)
{
    for (const char* language : {"de", "es", "fr"}) {
        QTranslator qt;
        EXPECT_TRUE(qt.load(QLocale{QString::fromLatin1(language)}, QStringLiteral("qtbase"), QStringLiteral("_"), QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
            << language << ": the package qt6-translations-l10n is needed";
        EXPECT_FALSE(qt.translate("QPlatformTheme", "Cancel").isEmpty()) << language;
    }
}

/// What in it still runs from left to right, or is cut.
std::set<QString> wrongWay(QWidget* root, const QString& where)
{
    std::set<QString> wrong;
    for (const QWidget* each : root->findChildren<QWidget*>()) {
        if (each->isVisibleTo(root) && each->layoutDirection() != Qt::RightToLeft && !each->testAttribute(Qt::WA_SetLayoutDirection))
            wrong.insert(where % QStringLiteral(": ") % nameOf(each));
    }
    for (const QString& each : clippedIn(root)) wrong.insert(where % QStringLiteral(": ") % each);
    return wrong;
}

TEST_F(WindowLanguages, FromRightToLeftEverythingIsMirroredAndNumbersStayWhole)
{
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    make();
    openSample();
    std::set<QString> wrong;
    walkAll(*window_, [&](const QString& where, QWidget* root) {
        wrong.merge(wrongWay(root, where));
        tests::keepPicture(root->grab().toImage(), QStringLiteral("rtl-") % where);
    });
    tell(wrong);
    const auto* rail = window_->findChild<QWidget*>(QStringLiteral("rail"));
    ASSERT_NE(rail, nullptr);
    EXPECT_GT(rail->mapTo(window_.get(), QPoint{0, 0}).x(), window_->width() / 2) << "the rail stands at the leading edge";
    // What must be found: one button that goes the other way, and one that has no room for its words.
    desk().showPage(Desk::Page::shelf);
    settled();
    ASSERT_TRUE(wrongWay(desk().shelf(), {}).empty());
    auto* feed = button("feedButton", desk().shelf());
    ASSERT_NE(feed, nullptr);
    feed->setLayoutDirection(Qt::LeftToRight);
    feed->setAttribute(Qt::WA_SetLayoutDirection, false);
    EXPECT_EQ(wrongWay(desk().shelf(), {}).size(), 1u);
    feed->unsetLayoutDirection();
    ASSERT_TRUE(wrongWay(desk().shelf(), {}).empty());
    feed->setFixedWidth(20);
    settled();
    EXPECT_FALSE(wrongWay(desk().shelf(), {}).empty());
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    settled();
    EXPECT_LT(rail->mapTo(window_.get(), QPoint{0, 0}).x(), window_->width() / 2);
}

/// Where the ink of a rectangle lies, as shares of its width: from the first column that holds any to the last, and how many hold some.
struct Spread {
    double first = 1, last = 0, columns = 0;
};

Spread spreadOf(const QImage& picture, const QRect& box)
{
    const QRect seen = box.intersected(picture.rect());
    const QColor ground = picture.pixelColor(seen.topLeft());
    Spread spread;
    for (int x = seen.left(); x <= seen.right(); ++x) {
        bool any = false;
        for (int y = seen.top(); y <= seen.bottom() && !any; ++y) any = test::contrast(picture.pixelColor(x, y), ground) >= 3.0;
        if (!any) continue;
        const double share = static_cast<double>(x - seen.left()) / seen.width();
        spread.first = std::min(spread.first, share);
        spread.last = std::max(spread.last, share);
        spread.columns += 1.0 / seen.width();
    }
    return spread;
}

/// Share of the columns of two boxes of one size that agree in holding ink or none: of the same words in the same letters nearly all do.
double likeness(const QImage& one, QPoint at, const QImage& other, QPoint there, QSize size)
{
    const auto inked = [](const QImage& picture, QPoint corner, int column, int height) {
        const QColor ground = picture.pixelColor(1, picture.height() / 2);
        for (int y = 0; y < height; ++y)
            if (test::contrast(picture.pixelColor(std::clamp(corner.x() + column, 0, picture.width() - 1), corner.y() + y), ground) >= 2.0) return true;
        return false;
    };
    double best = 0;
    for (const int shift : {-2, -1, 0, 1, 2}) {
        int same = 0;
        for (int column = 0; column < size.width(); ++column) same += inked(one, at, column, size.height()) == inked(other, there, column + shift, size.height());
        best = std::max(best, static_cast<double>(same) / size.width());
    }
    return best;
}

// Drawn things: what is said stands at the leading edge, time runs to the right as on every chart, and so do its keys.
TEST_F(WindowLanguages, FromRightToLeftDrawingsAreMirroredAndTimeStillRunsToTheRight)
{
    estimates_ = nullptr; // as the model makes them: lanes need its members
    double axisColumns = 0, lanesColumns = 0;
    QImage plain;
    for (const Qt::LayoutDirection direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const bool mirrored = direction == Qt::RightToLeft;
        QGuiApplication::setLayoutDirection(direction);
        make();
        ASSERT_TRUE(window_->openFile(sampleFile(QStringLiteral("way%1.tierloam").arg(mirrored))));
        show();
        ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoningIsCurrent(); }, patience));
        settled();
        shelf::StripsView* strips = desk().shelf()->board()->columns().front()->strips();
        ASSERT_NE(strips, nullptr);
        const QImage strip = strips->grab().toImage();
        const drawing::Type type = drawing::Type::from(strips->font());
        const int line = static_cast<int>(drawing::lineHeight(type.small));
        // Title at one edge, value at the other: the line reaches both.
        const Spread head = spreadOf(strip, {0, 0, strips->width(), line});
        EXPECT_LE(head.first, 0.05) << mirrored;
        EXPECT_GE(head.last, 0.95) << mirrored;
        const int title = static_cast<int>(drawing::textWidth(type.small, desk().shelf()->board()->columns().front()->canvas()->stack().processing.title));
        EXPECT_GE(spreadOf(strip, {mirrored ? strips->width() - title - 2 : 0, 0, title + 2, line}).columns, 0.5) << "the title stands at the leading edge, " << mirrored;
        if (!mirrored) plain = strip;
        const QSize words{title, line};
        const QPoint leading{mirrored ? strip.width() - 1 - title : 1, 0};
        EXPECT_GE(likeness(plain, {1, 0}, strip, leading, words), 0.9) << mirrored;
        if (mirrored) { // what must be found: a picture that was not turned, and one whose letters were turned with it
            EXPECT_LT(likeness(plain, {1, 0}, plain, leading, words), 0.85);
            EXPECT_LT(likeness(plain, {1, 0}, plain.mirrored(true, false), leading, words), 0.85);
        }
        // Names of months stand apart as they do from left to right, not over each other.
        const Spread months = spreadOf(strip, {0, strips->height() - line + 1, strips->width(), line - 1});
        if (!mirrored) axisColumns = months.columns;
        EXPECT_NEAR(months.columns, axisColumns, 0.03);
        EXPECT_GE(months.columns, 0.1);
        ASSERT_TRUE(desk().shelf()->openPanel(QStringLiteral("Scullery"), 1));
        settled();
        tests::keepPicture(window_->grab().toImage(), QStringLiteral("way-tray-%1").arg(mirrored));
        desk().shelf()->closePanel(true);
        desk().showPage(Desk::Page::trends);
        settled();
        tests::keepPicture(window_->grab().toImage(), QStringLiteral("way-trends-%1").arg(mirrored));
        for (auto* chart : desk().trends()->findChildren<trends::TrendChart*>()) EXPECT_LT(chart->frame().x(chart->period().from), chart->frame().x(chart->period().until));
        desk().showPage(Desk::Page::rotation);
        ASSERT_TRUE(QTest::qWaitFor([this] { return desk().rotation()->plan() != nullptr; }, patience));
        settled();
        tests::keepPicture(window_->grab().toImage(), QStringLiteral("way-rotation-%1").arg(mirrored));
        rotation::LanesView* lanes = desk().rotation()->lanes();
        const Spread axis = spreadOf(lanes->grab().toImage(), {lanes->width() / 4, 10, lanes->width() * 3 / 4, line});
        if (!mirrored) lanesColumns = axis.columns;
        EXPECT_NEAR(axis.columns, lanesColumns, 0.03);
        lanes->setFocus();
        for (int lane = 0; lane < 3 && (!lanes->chosen() || lanes->year().steps[static_cast<std::size_t>(lanes->year().lanes.chosen->first)].size() < 2); ++lane) press("Down");
        press("Home");
        ASSERT_NE(lanes->chosen(), nullptr);
        const Day before = lanes->chosen()->on;
        press("Right");
        EXPECT_GT(lanes->chosen()->on, before) << "to the right is later, " << mirrored;
    }
}

TEST_F(WindowLanguages, EverythingThatCanBeWorkedHasAName)
{
    openSample();
    std::set<QString> unnamed;
    walkAll(*window_, [&](const QString& where, QWidget* root) {
        for (QWidget* each : root->findChildren<QWidget*>()) {
            if (!each->isVisibleTo(root) || !each->isEnabled() || each->focusProxy() || !(each->focusPolicy() & Qt::TabFocus)) continue;
            auto* interface = QAccessible::queryAccessibleInterface(each);
            if (!interface || interface->text(QAccessible::Name).trimmed().isEmpty()) unnamed.insert(where % QStringLiteral(": ") % nameOf(each));
        }
    });
    tell(unnamed);
}

}

}
