#pragma once

#include "tests/ui/window_fixture.h"

#include "ui/exchange/journal_sheet_view.h"
#include "ui/exchange/readings_view.h"

#include <QComboBox>
#include <QFile>

/// Views of tables that come in, opened in the real window.
namespace tierloam::window {

using exchange_view::JournalSheetView;
using exchange_view::ReadingsView;

inline void write(const QString& path, const std::string& text)
{
    QFile file{path};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(text.data(), static_cast<qint64>(text.size())), static_cast<qint64>(text.size()));
}

inline std::string read(const QString& path)
{
    QFile file{path};
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string{"(not there)"};
}

class ExchangeTest : public WindowTest {
protected:
    JournalSheetView* importing(const char* name)
    {
        answers_.files = {path(QString::fromLatin1(name))};
        window_->action(ui::ActionId::importJournal)->trigger();
        auto* view = newest<JournalSheetView>();
        EXPECT_TRUE(QTest::qWaitFor([&] { return view->plan() != nullptr; }, patience));
        settle();
        return view;
    }
    template <class View>
    View* newest()
    {
        const auto all = window_->findChildren<View*>();
        if (all.isEmpty()) ADD_FAILURE() << "no view";
        return all.last();
    }
    QString text(QWidget* view, const char* label) { return view->findChild<QLabel*>(QString::fromLatin1(label))->text(); }
    void choose(QWidget* view, const char* list, int at)
    {
        QComboBox* box = nullptr;
        // What is asked follows from the rows, which are looked at beside the window.
        ASSERT_TRUE(QTest::qWaitFor([&] {
            box = view->findChild<QComboBox*>(QString::fromLatin1(list));
            return box && box->isVisible();
        }, patience)) << list;
        box->setCurrentIndex(at);
        Q_EMIT box->activated(at);
    }
    bool canImport(QWidget* view, const char* name) { return QTest::qWaitFor([&] { return view->findChild<QPushButton*>(QString::fromLatin1(name))->isEnabled(); }, patience); }
};

}
