// What is remembered from one run to the next, through the settings file itself; and what a double click on a file does.
#include "tests/ui/window_fixture.h"

#include "ui/window/one_window.h"
#include "ui/window/recent_files.h"
#include "ui/window/shortcuts_view.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSettings>

namespace tierloam::window {

namespace {

class Restart : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        settings_.reset();
        restart();
    }
    void TearDown() override
    {
        WindowTest::TearDown();
        // Other tests begin as on a new machine.
        QSettings{QSettings::IniFormat, QSettings::UserScope, QStringLiteral("tierloam"), QStringLiteral("tierloam")}.clear();
    }
    /// As the program starts: settings read from their file, a theme of its own, the last file.
    void restart()
    {
        window_.reset();
        theme_.reset();
        settings_ = ui::systemSettings();
        theme_ = std::make_unique<ui::Theme>();
        theme_->restore(*settings_);
        theme_->apply();
        make();
        if (const QString last = lastFile(*settings_); !last.isEmpty()) window_->openFile(last);
        window_->restoreState();
    }
};

}

TEST_F(Restart, ColoursTextSizePlacePageAndFileHold)
{
    openSample({1100, 700});
    EXPECT_EQ(theme_->mode(), ui::ThemeMode::system);
    press("Ctrl+Alt+D");
    press("Ctrl++");
    press("Ctrl++");
    press("Ctrl+4");
    window_->resize(1111, 777);
    settle();
    window_->close();
    restart();
    EXPECT_EQ(theme_->mode(), ui::ThemeMode::dark);
    EXPECT_TRUE(window_->action(ui::ActionId::themeDark)->isChecked());
    EXPECT_EQ(theme_->fontScale(), 150);
    EXPECT_EQ(window_->size(), QSize(1111, 777));
    ASSERT_NE(window_->household(), nullptr);
    EXPECT_EQ(window_->household()->path(), path(QStringLiteral("mill.tierloam")));
    EXPECT_EQ(desk().page(), Desk::Page::journal);
    EXPECT_EQ(recentFiles(*settings_), QStringList{path(QStringLiteral("mill.tierloam"))});
}

TEST_F(Restart, ChangesHoldWithoutAProperEnd)
{
    openSample();
    press("Ctrl+Alt+L");
    press("Ctrl++");
    settings_.reset(); // what a program that is killed has handed to the system by then
    settings_ = ui::systemSettings();
    ui::Theme theme;
    theme.restore(*settings_);
    EXPECT_EQ(theme.mode(), ui::ThemeMode::light);
    EXPECT_EQ(theme.fontScale(), 125);
    EXPECT_EQ(lastFile(*settings_), path(QStringLiteral("mill.tierloam")));
    window_.reset(); // it remembers into the settings that are gone
}

TEST_F(Restart, SettingsThatMakeNoSenseAreLeftOut)
{
    for (const char* key : {"window/theme", "window/fontScale", "window/geometry", "window/page", "files/recent"}) settings_->setValue(QString::fromLatin1(key), QStringLiteral("nonsense"));
    settings_->setValue(QStringLiteral("window/fontScale"), 9000);
    settings_->setValue(QStringLiteral("window/page"), -3);
    restart();
    EXPECT_EQ(theme_->mode(), ui::ThemeMode::system);
    EXPECT_EQ(theme_->fontScale(), 100);
    show();
    EXPECT_EQ(window_->household(), nullptr) << "the welcome page";
}

TEST_F(Restart, LicenceCanBeReadAsAWhole)
{
    show();
    press("Shift+F1");
    auto* about = window_->findChild<AboutView*>();
    ASSERT_NE(about, nullptr);
    click(button("readLicence", about));
    auto* text = window_->findChild<QLabel*>(QStringLiteral("licenceText"));
    ASSERT_NE(text, nullptr);
    EXPECT_TRUE(text->text().contains(QStringLiteral("TERMS AND CONDITIONS")));
    EXPECT_TRUE(text->text().contains(QStringLiteral("How to Apply These Terms to Your New Programs")));
}

namespace {

/// The Exec line of the desktop entry as a desktop runs it on a double click: the program found in PATH, %f the file.
class DesktopEntry : public testing::Test {
protected:
    static QStringList execLine(const QString& file)
    {
        QFile entry{QStringLiteral(TIERLOAM_SOURCE_DIR "/app/desktop/tierloam.desktop")};
        EXPECT_TRUE(entry.open(QIODevice::ReadOnly));
        const auto match = QRegularExpression{QStringLiteral("^Exec=(.+)$"), QRegularExpression::MultilineOption}.match(QString::fromUtf8(entry.readAll()));
        QStringList words = match.captured(1).split(u' ');
        for (QString& word : words)
            if (word == QStringLiteral("%f")) word = file;
        return words;
    }
    void begin(QProcess& process, const QString& file)
    {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
        environment.insert(QStringLiteral("PATH"), QFileInfo{QStringLiteral(TIERLOAM_PROGRAM)}.absolutePath() % u':' % environment.value(QStringLiteral("PATH")));
        process.setProcessEnvironment(environment);
        QStringList words{QStringLiteral("-c"), QStringLiteral("exec \"$@\""), QStringLiteral("sh")};
        process.start(QStringLiteral("/bin/sh"), words + execLine(file));
    }

    QTemporaryDir folder_;
};

}

TEST_F(DesktopEntry, ASecondDoubleClickLeavesTheFileToTheWindowThatShowsIt)
{
    const QString file = folder_.filePath(QStringLiteral("my worms & more.tierloam"));
    {
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        ASSERT_TRUE(std::holds_alternative<std::unique_ptr<household::Household>>(household::Household::open(file, std::make_shared<household::SystemClock>(), settings)));
    }
    EXPECT_FALSE(OneWindow::isTaken(file));
    QProcess first, second;
    begin(first, file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return OneWindow::isTaken(file); }, 30000)) << first.readAllStandardError().toStdString();
    begin(second, file);
    ASSERT_TRUE(second.waitForFinished(30000));
    EXPECT_EQ(second.exitCode(), 0) << second.readAllStandardError().toStdString();
    EXPECT_EQ(first.state(), QProcess::Running);
    first.terminate();
    EXPECT_TRUE(first.waitForFinished(30000));
}

}
