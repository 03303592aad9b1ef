// A drop-down list that is open takes its keys: it chooses by them, and neither the form nor the page behind it hears them.
#include "ui/common/actions.h"
#include "ui/common/field_edit.h"

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QTest>
#include <QVBoxLayout>

namespace tierloam::ui {
namespace {

/// A form that counts what would save or close it, on a page with a single letter of its own.
class Form final : public QWidget {
public:
    Form()
    {
        list_ = new FieldCombo{this};
        list_->addItems({QStringLiteral("apples"), QStringLiteral("bread"), QStringLiteral("feathers")});
        rows_.addWidget(list_);
        QAction* feed = makeAction(ActionId::feed, this);
        QAction* edit = makeAction(ActionId::editEntry, this); // Return and Enter
        addActions({feed, edit});
        for (const QAction* each : {feed, edit}) connect(each, &QAction::triggered, this, [this] { ++acts; });
        show();
        QApplication::setActiveWindow(this);
        list_->setFocus();
    }
    FieldCombo* list() const { return list_; }
    int heard = 0, acts = 0;

protected:
    void keyPressEvent(QKeyEvent*) override { ++heard; }

private:
    QVBoxLayout rows_{this};
    FieldCombo* list_;
};

class PopupKeysOf : public testing::Test {
protected:
    /// As the desktop sends it: to the window that has the keys, which is the open list.
    void press(Qt::Key key)
    {
        QWidget* popup = QApplication::activePopupWidget();
        QWindow* to = (popup ? popup : &form_)->windowHandle();
        ASSERT_NE(to, nullptr);
        QTest::keyPress(to, key);
        QTest::keyRelease(form_.windowHandle(), key);
        QCoreApplication::processEvents();
    }
    void open()
    {
        form_.list()->setCurrentIndex(0);
        form_.list()->showPopup();
        ASSERT_TRUE(QTest::qWaitFor([&] { return form_.list()->view()->isVisible() && QApplication::activePopupWidget(); }));
    }
    Form form_;
};

TEST_F(PopupKeysOf, ADropDownListChoosesByEnterAndSpace)
{
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form_));
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Space}) {
        SCOPED_TRACE(key);
        open();
        press(Qt::Key_Down);
        press(key);
        EXPECT_FALSE(form_.list()->view()->isVisible());
        EXPECT_EQ(form_.list()->currentIndex(), 1);
        EXPECT_EQ(form_.heard, 0) << "the form behind would save";
        EXPECT_EQ(form_.acts, 0);
    }
}

TEST_F(PopupKeysOf, ADropDownListIsLeftByEscWithoutClosingTheForm)
{
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form_));
    open();
    press(Qt::Key_Down);
    press(Qt::Key_Escape);
    EXPECT_FALSE(form_.list()->view()->isVisible());
    EXPECT_EQ(form_.list()->currentIndex(), 0);
    EXPECT_EQ(form_.heard, 0);
    press(Qt::Key_Escape);
    EXPECT_EQ(form_.heard, 1) << "the next one is the form's";
}

TEST_F(PopupKeysOf, LettersGoToTheListAndDoNothingOnThePage)
{
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form_));
    open();
    press(Qt::Key_F);
    EXPECT_EQ(form_.acts, 0);
    EXPECT_TRUE(form_.list()->view()->isVisible());
    press(Qt::Key_Return);
    EXPECT_EQ(form_.list()->currentText(), QStringLiteral("feathers"));
    press(Qt::Key_F);
    EXPECT_EQ(form_.acts, 1) << "with the list closed it is the page's again";
}

}
}
