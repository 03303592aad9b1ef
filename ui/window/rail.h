#pragma once

#include "ui/common/theme.h"

#include <QFrame>
#include <QList>

class QAction;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tierloam::window {

/// The list of pages at the leading edge, and the state of the file at its foot.
class Rail : public QFrame {
    Q_OBJECT

public:
    explicit Rail(const ui::Theme& theme, QWidget* parent = nullptr);

    /// A page in the list; the action is checkable and chosen by the window.
    void addPage(QAction* action);
    void setPageShown(const QAction* action, bool shown);
    /// Another word on the button than the action has, e.g. "Due (3)".
    void setPageText(const QAction* action, const QString& text);
    /// "Saved 18:42: Feed 450 g, Scullery", "Saving…", "Read only"; what the file holds; and where it lies.
    void setState(const QString& saved, const QString& holds, const QString& where);
    QString savedText() const;
    int wantedWidth() const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    void tighten();
    int neededHeight(bool tight, bool withHolds) const;

    const ui::Theme& theme_;
    QVBoxLayout* pages_;
    struct Entry {
        const QAction* action;
        QPushButton* button;
    };
    QList<Entry> buttons_;
    QLabel* name_;
    QLabel* saved_;
    QLabel* holds_;
    bool tight_ = false;
};

}
