#include "tests/support/pictures.h"
#include "tests/ui/window_fixture.h"

#include "ui/paper/labels_view.h"
#include "ui/paper/sheet_view.h"

#include <QComboBox>
#include <QFile>
#include <QListWidget>
#include <QSpinBox>

namespace tierloam::window {

namespace {

class WindowPaper : public WindowTest {
protected:
    template <class View>
    View* open(const char* keys)
    {
        press(keys);
        View* view = window_->findChild<View*>();
        EXPECT_NE(view, nullptr) << keys;
        const bool shown = view != nullptr && QTest::qWaitForWindowExposed(view);
        EXPECT_TRUE(shown);
        return view;
    }
    QByteArray read(const QString& file)
    {
        QFile opened{file};
        return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray{};
    }
    void pressButton(const char* name, QWidget* within) { click(button(name, within)); }
};

}

TEST_F(WindowPaper, SheetIsSavedAndPrintedFromTheKeyboard)
{
    openSample();
    auto* view = open<paper::SheetView>("Ctrl+P");
    ASSERT_NE(view, nullptr);
    auto* stacks = view->findChild<QComboBox*>(QStringLiteral("sheetStack"));
    EXPECT_EQ(stacks->currentText(), desk().shelf()->currentStack());
    EXPECT_EQ(stacks->count(), 3);
    answers_.files = {path(QStringLiteral("a.pdf")), path(QStringLiteral("a.html")), path(QStringLiteral("printed.pdf"))};
    pressButton("savePdf", view);
    EXPECT_TRUE(read(path(QStringLiteral("a.pdf"))).startsWith("%PDF"));
    EXPECT_TRUE(view->resultText().contains(QStringLiteral("a.pdf")));
    QTest::keyClick(stacks, Qt::Key_Down);
    EXPECT_TRUE(view->resultText().isEmpty()) << "what was said of the other stack is gone";
    pressButton("saveHtml", view);
    EXPECT_TRUE(read(path(QStringLiteral("a.html"))).contains(QByteArray{QByteArray{"<h1>"} + stacks->currentText().toUtf8() + "</h1>"}));
    pressButton("printPaper", view);
    EXPECT_TRUE(read(path(QStringLiteral("printed.pdf"))).startsWith("%PDF"));
    EXPECT_TRUE(answers_.files.isEmpty());
    tests::keepPicture(view->grab().toImage(), QStringLiteral("sheet-view"));
    QTest::keyClick(view, Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([this] { return window_->findChild<paper::SheetView*>() == nullptr; }, patience));
}

TEST_F(WindowPaper, AFileThatCannotBeWrittenIsTold)
{
    openSample();
    auto* view = open<paper::SheetView>("Ctrl+P");
    ASSERT_NE(view, nullptr);
    answers_.files = {path(QStringLiteral("none/deep.pdf")), QString{}};
    pressButton("savePdf", view);
    EXPECT_TRUE(view->resultText().contains(QStringLiteral("deep.pdf")));
    pressButton("printPaper", view); // called off
    EXPECT_TRUE(answers_.files.isEmpty());
}

TEST_F(WindowPaper, LabelsOfTheTraysThatAreTicked)
{
    openSample();
    auto* view = open<paper::LabelsView>("Ctrl+Shift+P");
    ASSERT_NE(view, nullptr);
    auto* trays = view->findChild<QListWidget*>(QStringLiteral("labelTrays"));
    ASSERT_EQ(trays->count(), 8);
    answers_.files = {path(QStringLiteral("l.pdf"))};
    pressButton("savePdf", view);
    EXPECT_TRUE(read(path(QStringLiteral("l.pdf"))).startsWith("%PDF"));
    for (int row = 0; row < trays->count(); ++row) trays->item(row)->setCheckState(Qt::Unchecked);
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("savePdf"))->isEnabled()) << "nothing to print";
    trays->setCurrentRow(2);
    QTest::keyClick(trays, Qt::Key_Space);
    EXPECT_TRUE(view->findChild<QPushButton*>(QStringLiteral("savePdf"))->isEnabled());
    auto* first = view->findChild<QSpinBox*>(QStringLiteral("firstPlace"));
    const int before = first->maximum();
    view->findChild<QComboBox*>(QStringLiteral("labelSheet"))->setCurrentIndex(1);
    EXPECT_NE(first->maximum(), before);
    // What is chosen is what goes into the file and to the printer: a sheet of its size, the places before the first left free.
    const auto pages = [&](const char* how) {
        answers_.files = {path(QStringLiteral("chosen.pdf"))};
        pressButton(how, view);
        const QByteArray pdf = read(path(QStringLiteral("chosen.pdf")));
        return std::pair{pdf.count("/Type /Page\n"), pdf.contains("/MediaBox [0 0 612.000000 792.000000]")};
    };
    for (int row = 0; row < trays->count(); ++row) trays->item(row)->setCheckState(Qt::Checked);
    for (const char* how : {"savePdf", "printPaper"}) {
        view->findChild<QComboBox*>(QStringLiteral("labelSheet"))->setCurrentIndex(0);
        first->setValue(1);
        EXPECT_EQ(pages(how), (std::pair{qsizetype{1}, false})) << how;
        view->findChild<QComboBox*>(QStringLiteral("labelSheet"))->setCurrentIndex(2);
        first->setValue(first->maximum());
        EXPECT_EQ(pages(how), (std::pair{qsizetype{2}, true})) << how << ": Letter, one label and the seven others";
    }
    tests::keepPicture(view->grab().toImage(), QStringLiteral("labels-view"));
}

TEST_F(WindowPaper, EmptyHouseholdSaysWhyThereIsNothingToPrint)
{
    ASSERT_TRUE(window_->createFile(path(QStringLiteral("new.tierloam"))));
    show();
    press("Ctrl+P");
    press("Ctrl+Shift+P");
    EXPECT_EQ(window_->findChild<paper::PaperView*>(), nullptr);
    EXPECT_FALSE(notices().isEmpty());
}

}
