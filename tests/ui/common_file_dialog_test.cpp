#include "ui/common/file_dialog.h"
#include "ui/common/seams.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QTreeView>

#include <sys/inotify.h>
#include <unistd.h>

#include <array>
#include <cstring>
#include <functional>

/// A list of files opens none of them: a household that lies there may be open, and reading it beside those who write it can cost them their locks.
namespace tierloam::ui {

namespace {

/// Files that are opened in a folder, as the kernel tells them.
class Opened {
public:
    explicit Opened(const QString& folder) : events_{::inotify_init1(IN_NONBLOCK | IN_CLOEXEC)}
    {
        ::inotify_add_watch(events_, QFile::encodeName(folder).constData(), IN_OPEN);
    }
    ~Opened() { ::close(events_); }
    Opened(const Opened&) = delete;
    Opened& operator=(const Opened&) = delete;

    QStringList names() const
    {
        QStringList names;
        alignas(inotify_event) std::array<char, 16384> bytes{};
        for (;;) {
            const auto read = ::read(events_, bytes.data(), bytes.size());
            if (read <= 0) return names;
            for (qsizetype at = 0; at < read;) {
                inotify_event event{};
                std::memcpy(&event, bytes.data() + at, sizeof event);
                if (!(event.mask & IN_ISDIR) && event.len > 0) names << QFile::decodeName(bytes.data() + at + sizeof event);
                at += static_cast<qsizetype>(sizeof event + event.len);
            }
        }
    }

private:
    int events_;
};

class FileDialogs : public testing::Test {
protected:
    void SetUp() override
    {
        for (const char* name : {"mill.tierloam", "mill.tierloam-wal", "mill.tierloam-shm", "notes", "table.csv"}) {
            QFile file{folder_.filePath(QString::fromLatin1(name))};
            ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write("SQLite format 3") > 0);
        }
    }
    /// Shows a dialog, has its list filled and told, and closes it.
    void look(const std::function<void()>& exec)
    {
        int rows = 0;
        QTimer::singleShot(0, [&] {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog);
            auto* list = dialog->findChild<QTreeView*>(QStringLiteral("treeView"));
            EXPECT_TRUE(QTest::qWaitFor([&] { return list->model()->rowCount(list->rootIndex()) > 0; }, 10000));
            rows = list->model()->rowCount(list->rootIndex());
            for (int row = 0; row < rows; ++row) list->model()->index(row, 2, list->rootIndex()).data();
            QTest::qWait(500); // the kinds of files are looked up in a thread
            dialog->reject();
        });
        exec();
        EXPECT_GT(rows, 0);
    }

    QTemporaryDir folder_;
};

}

TEST_F(FileDialogs, OpenNoneOfTheFilesTheyList)
{
    SystemDialogs dialogs;
    const Opened opened{folder_.path()};
    look([&] { EXPECT_TRUE(dialogs.fileToOpen(nullptr, QStringLiteral("Open"), folder_.path(), QStringLiteral("All files (*)")).isEmpty()); });
    look([&] {
        EXPECT_TRUE(dialogs.fileToSave(nullptr, QStringLiteral("Save"), folder_.filePath(QStringLiteral("new.tierloam")), QStringLiteral("All files (*)"), QStringLiteral("tierloam")).isEmpty());
    });
    EXPECT_EQ(opened.names(), QStringList{});
}

TEST_F(FileDialogs, OneOfQtsOwnIsFoundToOpenThem)
{
    const Opened opened{folder_.path()};
    look([&] {
        QFileDialog dialog{nullptr, QStringLiteral("Open"), folder_.path()};
        dialog.exec();
    });
    EXPECT_TRUE(opened.names().contains(QStringLiteral("mill.tierloam-wal"))) << "else the test above finds nothing either";
}

}
