// The pseudo-language of languages_test.cpp in what opens in place, in the tables beside the charts, and in the windows beside that of the program.
#include "tests/ui/access_fixture.h"

#include "ui/rotation/rotation_page.h"

#include <QLineEdit>

namespace tierloam::window {

namespace {

class LanguagesBeside : public AccessTest {
protected:
    void SetUp() override
    {
        AccessTest::SetUp();
        QCoreApplication::installTranslator(&texts_);
        make();
        openSample();
    }
    void TearDown() override
    {
        QCoreApplication::removeTranslator(&texts_);
        AccessTest::TearDown();
    }
    Look collecting(QStringList& found, const QStringList& own = {})
    {
        return [&found, own](const QString& where, QWidget* root) {
            for (const QString& each : plainIn(root, own)) found << where % QStringLiteral(": ") % each;
            for (const QString& each : clippedIn(root)) found << where % QStringLiteral(": clipped: ") % each;
        };
    }

    LongTexts texts_;
};

}

TEST_F(LanguagesBeside, WhatOpensInPlaceIsTranslated)
{
    QStringList found;
    inPlace(collecting(found, {QStringLiteral("Not written down: the disk is full.")}));
    press("Ctrl+3");
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk().rotation()->plan() != nullptr; }, patience));
    settle();
    collecting(found)(QStringLiteral("rotation with its plan"), window_.get());
    // The sample foresees no steps, and a table without any does not stand there.
    const QAbstractItemModel& steps = *desk().rotation()->findChild<QTableView*>()->model();
    ASSERT_EQ(steps.columnCount(), 6);
    for (int column = 0; column < steps.columnCount(); ++column) {
        const QString head = steps.headerData(column, Qt::Horizontal).toString();
        if (!head.contains(u'⟦')) found << QStringLiteral("steps as table: ") + head;
    }
    found.removeDuplicates();
    EXPECT_TRUE(found.isEmpty()) << found.join(u'\n').toStdString();
}

TEST_F(LanguagesBeside, WindowsBesideAreTranslated)
{
    QStringList found;
    // Names and cells of the files that are looked at.
    beside(collecting(found, {QStringLiteral("Day"), QStringLiteral("Bin"), QStringLiteral("Scraps"), QStringLiteral("Weight"), QStringLiteral("Comments"), QStringLiteral("kitchen mix"), QStringLiteral("lots"), QStringLiteral("peel"),
                              QStringLiteral("time"), QStringLiteral("probe 1"), QStringLiteral("room air C"), QStringLiteral("20,5  ·  21,5  ·  broken")}));
    found.removeDuplicates();
    EXPECT_TRUE(found.isEmpty()) << found.join(u'\n').toStdString();
}

TEST_F(LanguagesBeside, PlantedEnglishIsFound)
{
    QStringList found;
    openedBy("Ctrl+Shift+P", [&](const QString& where, QWidget* root) {
        collecting(found)(where, root);
        EXPECT_TRUE(found.isEmpty());
        new QLabel{QStringLiteral("Trays"), root};
        root->findChildren<QLabel*>().constLast()->show();
        collecting(found)(where, root);
    });
    EXPECT_FALSE(found.isEmpty());
}

}
