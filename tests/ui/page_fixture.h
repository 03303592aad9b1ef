#pragma once

#include "core/household/household.h"
#include "tests/support/sample_reckoning.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"

#include <QApplication>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

/// One page alone, shown over the sample household on a file of its own, with the sample's estimates.
namespace tierloam::tests {

template <class Page>
class PageTest : public testing::Test {
protected:
    static constexpr int patience = 20000; ///< ms until a test gives up waiting

    /// `journalToo` false: a household without entries.
    void showPage(const QSize& size, bool journalToo = true)
    {
        theme_.setMode(ui::ThemeMode::light);
        theme_.apply();
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.reckon = [](const journal::Entries&, const reckoning::Options&, std::stop_token) { return sampleReckoning(); };
        auto opened = household::Household::open(folder_.filePath(QStringLiteral("mill.tierloam")), std::make_shared<household::FixedClock>(sampleToday()), settings);
        household_ = std::move(std::get<std::unique_ptr<household::Household>>(opened));
        if (journalToo) {
            journal::Entries entries = sampleJournal();
            for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
            household_->recordAll(entries, QStringLiteral("sample"));
            household_->finishWrites();
            ASSERT_TRUE(QTest::qWaitFor([this] { return household_->journal()->pending.empty() && household_->reckoning(); }, patience));
        }
        page_ = std::make_unique<Page>(*household_, theme_, *settings_);
        page_->resize(size);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        QCoreApplication::processEvents();
    }
    void TearDown() override
    {
        page_.reset();
        household_.reset();
        qApp->setStyleSheet({});
    }

    QTemporaryDir folder_;
    ui::Theme theme_;
    std::unique_ptr<ui::Settings> settings_ = ui::passingSettings();
    std::unique_ptr<household::Household> household_;
    std::unique_ptr<Page> page_;
};

}
