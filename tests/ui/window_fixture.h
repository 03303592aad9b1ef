#pragma once

#include "core/reckoning/reckon.h"
#include "tests/support/sample_reckoning.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/journal/journal_page.h"
#include "ui/shelf/shelf_board.h"
#include "ui/shelf/shelf_page.h"
#include "ui/trends/trends_page.h"
#include "ui/window/desk.h"
#include "ui/window/due_list.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QPrinter>
#include <QPushButton>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QLabel>
#include <QTableView>
#include <QTest>
#include <QUndoStack>

#include <atomic>
#include <thread>

/// The real window on a household of its own, and hands that click and type in it as a person does. No test opens a modal dialog.
namespace tierloam::window {

/// Answers what the window asks; a question that no test prepared for is an error.
class Answers final : public ui::Dialogs {
public:
    QStringList files;               ///< answers to file questions, in turn; an empty one calls off
    QStringList texts;
    QList<bool> decisions;
    QStringList told, asked, labels, proposedFiles;

    void tell(QWidget*, const QString&, const QString& text) override { told << text; }
    bool ask(QWidget*, const QString&, const QString& text, const QString&) override
    {
        asked << text;
        if (decisions.isEmpty()) {
            ADD_FAILURE() << "unexpected question: " << text.toStdString();
            return false;
        }
        return decisions.takeFirst();
    }
    QString text(QWidget*, const QString&, const QString& label, const QString&) override
    {
        labels << label;
        return next(texts);
    }
    QString fileToOpen(QWidget*, const QString&, const QString&, const QString&) override { return next(files); }
    QString fileToSave(QWidget*, const QString&, const QString& proposed, const QString&, const QString&) override
    {
        proposedFiles << proposed;
        return next(files);
    }
    QString folder(QWidget*, const QString&, const QString&) override { return next(files); }
    /// Prints into a PDF file, the next of `files`; an empty one calls off.
    bool choosePrinter(QWidget*, const QString&, QPrinter& printer) override
    {
        printer.setOutputFileName(next(files));
        return !printer.outputFileName().isEmpty();
    }

private:
    static QString next(QStringList& answers)
    {
        if (answers.isEmpty()) {
            ADD_FAILURE() << "unexpected question for a file or a text";
            return {};
        }
        return answers.takeFirst();
    }
};

class WindowTest : public testing::Test {
protected:
    static constexpr int patience = 20000; ///< ms until a test gives up waiting
    DesktopNotes* desktop_ = nullptr;      ///< set before SetUp() by tests of what is told there
    Day today_ = tests::sampleToday();     ///< of the clock of the next window that is made

    void SetUp() override
    {
        theme_ = std::make_unique<ui::Theme>();
        theme_->setMode(ui::ThemeMode::light);
        theme_->apply();
        settings_ = ui::passingSettings();
        make();
    }
    void TearDown() override
    {
        window_.reset();
        theme_.reset();
        qApp->setStyleSheet({});
        QApplication::setFont(font_);
    }

    void make()
    {
        window_.reset();
        household::Household::Settings household;
        household.busyTimeout = busyTimeout_;
        household.reckon = [this](const journal::Entries& entries, const reckoning::Options& options, std::stop_token stop) {
            for (int waited = 0; waited < estimatesTake_ && !stop.stop_requested(); waited += 5) std::this_thread::sleep_for(std::chrono::milliseconds{5});
            if (!entries.empty() && !estimates_) {
                reckoning::Options few = options;
                few.members = members_;
                return reckoning::reckon(entries, few);
            }
            if (!entries.empty()) return estimates_;
            auto none = std::make_shared<reckoning::Reckoning>();
            none->asOf = options.asOf;
            return std::shared_ptr<const reckoning::Reckoning>{none};
        };
        window_ = std::make_unique<MainWindow>(
            MainWindow::Needs{std::make_shared<household::FixedClock>(today_, 18 * 60 + 42), *theme_, answers_, *settings_, household, QStringLiteral("1.2.3"), true, {}, desktop_});
    }
    void show(QSize size = {1440, 900})
    {
        window_->resize(size);
        window_->show();
        QApplication::setActiveWindow(window_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }

    QString path(const QString& name) const { return folder_.filePath(name); }
    /// A file with the sample journal, not open.
    QString sampleFile(const QString& name = QStringLiteral("mill.tierloam"))
    {
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.reckon = [](const journal::Entries&, const reckoning::Options&, std::stop_token) { return tests::sampleReckoning(); };
        auto opened = household::Household::open(path(name), std::make_shared<household::FixedClock>(tests::sampleToday()), settings);
        auto& household = std::get<std::unique_ptr<household::Household>>(opened);
        journal::Entries entries = tests::sampleJournal();
        for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
        household->recordAll(entries, QStringLiteral("sample"));
        household->finishWrites();
        return path(name);
    }
    /// The sample household, open in the shown window, estimates there.
    void openSample(QSize size = {1440, 900})
    {
        ASSERT_TRUE(window_->openFile(sampleFile())) << notices().join(u' ').toStdString();
        show(size);
        ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr && household().journal()->pending.empty(); }, patience));
        settle();
    }
    void settle() { QCoreApplication::sendPostedEvents(); QCoreApplication::processEvents(); }
    /// Until layouts of layouts have taken hold and what was thrown away is gone.
    void settled()
    {
        for (int round = 0; round < 6; ++round) {
            settle();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
    }

    household::Household& household() { return *window_->household(); }
    Desk& desk() { return *window_->desk(); }
    QStringList notices() { return window_->notices()->texts(); }
    std::size_t entries() { return household().journal()->entries.size(); }
    bool written(std::size_t count)
    {
        return QTest::qWaitFor([&] { return entries() == count && household().journal()->pending.empty(); }, patience);
    }
    void press(const char* keys) { QTest::keySequence(QApplication::focusWidget() ? QApplication::focusWidget() : window_.get(), QKeySequence{QString::fromLatin1(keys)}); }
    QPushButton* button(const char* objectName, QWidget* within = nullptr)
    {
        for (auto* each : (within ? within : window_.get())->findChildren<QPushButton*>(QString::fromLatin1(objectName))) {
            if (each->isVisible()) return each;
        }
        ADD_FAILURE() << "no button " << objectName;
        return nullptr;
    }
    void click(QWidget* widget)
    {
        ASSERT_NE(widget, nullptr);
        ASSERT_TRUE(QTest::qWaitFor([widget] { return widget->isVisible(); }, patience));
        ASSERT_TRUE(widget->isEnabled());
        QTest::mouseClick(widget, Qt::LeftButton);
    }

    std::shared_ptr<const reckoning::Reckoning> estimates_ = tests::sampleReckoning(); ///< to be set before a file is opened; none: as the model makes them
    std::atomic<int> estimatesTake_ = 0;                   ///< ms, of those asked for from now on
    int members_ = 64;                       ///< of each stack: fewer than people have, for speed
    std::chrono::milliseconds busyTimeout_{50};            ///< of the households of the next window that is made
    Answers answers_;
    std::unique_ptr<ui::Theme> theme_;
    std::unique_ptr<ui::Settings> settings_;
    std::unique_ptr<MainWindow> window_;
    QTemporaryDir folder_;

private:
    QFont font_ = QApplication::font();
};

}
