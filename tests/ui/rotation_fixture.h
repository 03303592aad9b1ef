#pragma once

#include "core/household/household.h"
#include "tests/support/households.h"
#include "ui/common/theme.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/rotation_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QTemporaryDir>
#include <QTest>

#include <functional>
#include <memory>

/// The page on a household of one stack with a real reckoning.
namespace tierloam::rotation {

inline constexpr int patience = 60000;

class RotationPageTest : public testing::Test {
protected:
    void SetUp() override
    {
        const tests::MadeUp made = tests::makeHousehold(0x9a7d, 2, {}, {}, 400);
        today_ = made.asOf;
        theme_.setMode(ui::ThemeMode::light);
        theme_.apply();
        clock_ = std::make_shared<household::FixedClock>(today_);
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.members = 128;
        auto opened = household::Household::open(folder_.filePath(QStringLiteral("mill.tierloam")), clock_, settings);
        household_ = std::move(std::get<std::unique_ptr<household::Household>>(opened));
        journal::Entries entries = made.entries;
        for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
        household_->recordAll(entries, QStringLiteral("made up"));
        household_->finishWrites();
        ASSERT_TRUE(QTest::qWaitFor([this] { return household_->reckoningIsCurrent(); }, patience));
        page_ = std::make_unique<RotationPage>(*household_, theme_);
        page_->resize(1000, 900);
        page_->show();
        ASSERT_TRUE(QTest::qWaitFor([this] { return page_->plan() != nullptr; }, patience));
    }
    void TearDown() override
    {
        page_.reset();
        household_.reset();
        qApp->setStyleSheet({});
    }

    /// The first harvest that can be moved.
    std::optional<std::pair<int, int>> firstLift() const
    {
        const auto& steps = page_->lanes()->year().steps.front();
        for (int i = 0; i < static_cast<int>(steps.size()); ++i)
            if (steps[static_cast<std::size_t>(i)].kind == drawing::Lane::Mark::Kind::lift) return std::pair{0, i};
        return std::nullopt;
    }
    bool planned(const std::function<bool(const planning::YearPlan&)>& is)
    {
        return QTest::qWaitFor([&] { return page_->plan() != nullptr && is(*page_->plan()); }, patience);
    }
    QString text(const char* label) const { return page_->findChild<QLabel*>(QString::fromLatin1(label))->text(); }

    QTemporaryDir folder_;
    ui::Theme theme_;
    Day today_{};
    std::shared_ptr<household::FixedClock> clock_;
    std::unique_ptr<household::Household> household_;
    std::unique_ptr<RotationPage> page_;
};

}
