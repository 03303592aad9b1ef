#pragma once

#include <QString>
#include <QWidget>

class QVBoxLayout;

namespace tierloam::forms {

/// The first-run page: three ways in, and what to know before worms are bought. It opens nothing itself; the window acts on its signals.
class Welcome : public QWidget {
    Q_OBJECT

public:
    explicit Welcome(QWidget* parent = nullptr);
    /// Files opened before, shown as further ways in; at most five are shown.
    void setRecentFiles(const QStringList& paths);

Q_SIGNALS:
    void startFirstStack();          ///< a new household, then the guided form
    void openDemo();
    void openFile();                 ///< choose a household file
    void importJournal();            ///< choose a journal CSV
    void openRecent(const QString& path);

private:
    QVBoxLayout* recent_ = nullptr;
    QWidget* recentBox_ = nullptr;
};

}
