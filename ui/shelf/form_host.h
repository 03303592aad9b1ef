#pragma once

#include <QFrame>

#include <algorithm>

class QScrollArea;

namespace tierloam::shelf {

/// The place under the shelf where panels and forms open: one at a time, never over the drawing. What is higher than its share scrolls:
/// a form scrolls its own fields, so that its buttons stay in view; a panel, or a form whose rest alone is too high, scrolls as a whole.
class FormHost : public QFrame {
    Q_OBJECT

public:
    explicit FormHost(QWidget* parent = nullptr);

    /// Takes the widget; the one before it is deleted.
    void show(QWidget* content);
    void clear();
    QWidget* content() const { return content_; }
    /// The most of the page's height that it takes.
    void setRoom(int height);
    bool hasHeightForWidth() const override { return false; } ///< its height is its content's at its width, held to the room
    QSize sizeHint() const override { return {400, height_}; }
    QSize minimumSizeHint() const override { return {0, std::min(height_, 80)}; } ///< never holds the window open

protected:
    // While it is hidden its width is not known; it is then taken from its page.
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();
    void takeOut();

    QScrollArea* scroll_;
    QWidget* content_ = nullptr;
    int room_ = 240, height_ = 60;
    static constexpr int sideSpace_ = 18; ///< that its page leaves at either side of it
};

}
