#pragma once

#include <QScrollArea>

namespace tierloam::forms {

/// A scroll area that asks for the whole height of what it holds, so that nothing scrolls unless there is too little room. What has the
/// focus stays in sight when there comes to be less.
class FitArea : public QScrollArea {
    Q_OBJECT

public:
    explicit FitArea(QWidget* parent = nullptr);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void settleBar();
    void keepFocusInSight();
};

}
