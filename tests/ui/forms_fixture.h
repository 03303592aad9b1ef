#pragma once

#include "core/household/household.h"
#include "tests/support/sample_reckoning.h"
#include "ui/common/field.h"
#include "ui/common/field_edit.h"
#include "ui/common/reading_order.h"
#include "ui/forms/action_form.h"
#include "ui/forms/entry_editor.h"
#include "ui/forms/form_shell.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>

#include <set>

/// The sample household on a file of its own, and hands that type and click in its forms as a person does.
namespace tierloam::forms {

class FormsTest : public testing::Test {
protected:
    static constexpr int patience = 20000; ///< ms until a test gives up waiting

    const Day today = tests::sampleToday();

    void SetUp() override { openWith(tests::sampleJournal()); }

    void openWith(const journal::Entries& journal)
    {
        window_.reset();
        household_.reset();
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.busyTimeout = std::chrono::milliseconds{50};
        settings.reckon = [](const journal::Entries&, const reckoning::Options&, std::stop_token) { return tests::sampleReckoning(); };
        auto opened = household::Household::open(path(), clock_, settings);
        if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) {
            ADD_FAILURE() << failure->why.toStdString();
            std::abort();
        }
        household_ = std::move(std::get<std::unique_ptr<household::Household>>(opened));
        QObject::connect(household_.get(), &household::Household::recorded, [this](household::Ticket, const std::vector<journal::EntryId>& ids) { recorded_.push_back(ids); });
        QObject::connect(household_.get(), &household::Household::failed, [this](household::Ticket, const QString& why) { failures_ << why; });
        journal::Entries added = journal;
        for (journal::Entry& entry : added) entry.id = journal::EntryId::none;
        if (!added.empty()) {
            household_->recordAll(added, QStringLiteral("sample"));
            ASSERT_TRUE(QTest::qWaitFor([this] { return !recorded_.empty() || !failures_.empty(); }, patience));
            ASSERT_TRUE(failures_.isEmpty()) << failures_.join(QLatin1Char('\n')).toStdString();
        }
        ASSERT_TRUE(QTest::qWaitFor([this] { return household_->reckoning() != nullptr; }, patience));
        recorded_.clear();
    }

    household::Household& household() { return *household_; }
    QString path() const { return folder_.filePath(QStringLiteral("mill.tierloam")); }
    journal::Entries entries() { return household_->journal()->entries; }

    /// Stands in for the program's window: Tab goes in reading order.
    struct Window final : QWidget {
        bool focusNextPrevChild(bool next) override { return ui::focusInReadingOrder(this, next); }
    };

    /// Puts a form into a window of that width and as tall as it wants, shown and active.
    template <class F>
    F& show(F* form, int width = 340)
    {
        window_ = std::make_unique<Window>();
        auto* column = new QVBoxLayout{window_.get()};
        column->addWidget(form);
        finished_ = false;
        QObject::connect(form, &F::finished, window_.get(), [this] { finished_ = true; });
        window_->resize(width, column->totalHeightForWidth(width));
        window_->show();
        QApplication::setActiveWindow(window_.get());
        EXPECT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        shown_ = form;
        giveItsHeight();
        return *form;
    }
    /// As an owner does that gives the form the height it asks for, now that styles have taken hold.
    void giveItsHeight()
    {
        for (int i = 0; i < 3; ++i) {
            QCoreApplication::processEvents();
            window_->resize(window_->width(), window_->layout()->totalHeightForWidth(window_->width()));
        }
        QCoreApplication::processEvents();
    }
    ActionForm& open(FormKind kind, const char* stack = "Scullery", std::optional<int> slot = std::nullopt)
    {
        return show(new ActionForm{household(), kind, QString::fromUtf8(stack), slot});
    }
    EntryEditor& edit(journal::EntryId id) { return show(new EntryEditor{household(), id}); }
    QWidget& window() { return *window_; }
    bool finished() const { return finished_; }

    FormShell& shell() { return *shown_->findChild<FormShell*>(); }

    /// The field that a person who does not see would be told by that name.
    ui::Field* field(const char* name)
    {
        for (ui::Field* each : shown_->findChildren<ui::Field*>()) {
            if (each->name() == QString::fromUtf8(name) && each->isVisible()) return each;
        }
        ADD_FAILURE() << "no field is called " << name;
        return nullptr;
    }
    /// Goes to the field, replaces what stands there and types.
    void type(const char* name, const char* text)
    {
        QWidget* editor = field(name)->focusProxy();
        editor->setFocus(Qt::TabFocusReason);
        QTest::keySequence(editor, QKeySequence::SelectAll);
        QTest::keyClick(editor, Qt::Key_Delete);
        QTest::keyClicks(editor, QString::fromUtf8(text));
        if (QWidget* popup = QApplication::activePopupWidget()) popup->hide(); // a completer's
    }
    /// Walks a list with the keys to the choice that begins so; `second`: the unit beside a number.
    void choose(const char* name, const char* beginning)
    {
        const auto lists = field(name)->findChildren<QComboBox*>();
        for (QComboBox* list : lists) {
            list->setFocus();
            QTest::keyClick(list, Qt::Key_Home);
            for (int i = 0; i < list->count(); ++i) {
                if (list->currentText().startsWith(QString::fromUtf8(beginning))) return;
                QTest::keyClick(list, Qt::Key_Down);
            }
        }
        ADD_FAILURE() << name << " offers nothing that begins with " << beginning;
    }
    void pressEnter() { QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : shown_, Qt::Key_Return); }
    void pressEscape() { QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : shown_, Qt::Key_Escape); }
    void click(const char* objectName)
    {
        auto* button = shown_->findChild<QAbstractButton*>(QString::fromUtf8(objectName));
        ASSERT_NE(button, nullptr) << objectName;
        QTest::mouseClick(button, Qt::LeftButton);
    }

    /// Enter, then waits until it is durable; the entries of that one step, in journal order.
    std::vector<journal::Entry> record()
    {
        const auto before = recorded_.size();
        pressEnter();
        const bool there = QTest::qWaitFor([&] { return recorded_.size() > before || !failures_.isEmpty() || !shell().problem().isEmpty(); }, 3000);
        EXPECT_TRUE(there) << "nothing was recorded: " << problems().toStdString();
        if (recorded_.size() <= before) {
            ADD_FAILURE() << problems().toStdString() << failures_.join(QLatin1Char(' ')).toStdString();
            return {};
        }
        EXPECT_TRUE(finished_);
        const std::set<journal::EntryId> ids{recorded_.back().begin(), recorded_.back().end()};
        std::vector<journal::Entry> made;
        for (const journal::Entry& entry : entries()) {
            if (ids.contains(entry.id)) made.push_back(entry);
        }
        return made;
    }
    /// The one entry of the form; its action as A.
    template <class A>
    A recordOne()
    {
        const auto made = record();
        if (made.size() != 1) {
            ADD_FAILURE() << made.size() << " entries";
            return {};
        }
        last_ = made.front();
        const A* action = std::get_if<A>(&last_.action);
        EXPECT_NE(action, nullptr);
        return action ? *action : A{};
    }
    /// All that is said to be wrong.
    QString problems()
    {
        QStringList words{shell().problem()};
        for (ui::Field* each : shown_->findChildren<ui::Field*>()) words << each->shownProblem();
        words.removeAll(QString{});
        return words.join(QLatin1Char('\n'));
    }

    std::shared_ptr<household::FixedClock> clock_ = std::make_shared<household::FixedClock>(tests::sampleToday());
    journal::Entry last_;
    std::vector<std::vector<journal::EntryId>> recorded_;
    QStringList failures_;

private:
    QTemporaryDir folder_;
    std::unique_ptr<household::Household> household_;
    std::unique_ptr<QWidget> window_;
    QWidget* shown_ = nullptr;
    bool finished_ = false;
};

}
