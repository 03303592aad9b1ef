#pragma once

#include <QFrame>

#include <algorithm>

class QScrollArea;

namespace tierloam::shelf {

/// The place under the shelf where panels and forms open: one at a time, never over the drawing. What is higher than its share scrolls:
/// a form scrolls its own fields, so that its cautions and buttons stay in view, and takes more than its share when they alone need it; a panel, or a
/// form whose rest is too high even then, scrolls as a whole.
class FormHost : public QFrame {
    Q_OBJECT

public:
    explicit FormHost(QWidget* parent = nullptr);

    /// Takes the widget; the one before it is deleted.
    void show(QWidget* content);
    void clear();
    QWidget* content() const { return content_; }
    /// Its share of the page's height, and the most that it takes when what must stay in view needs it.
    void setRoom(int height, int most);
    bool hasHeightForWidth() const override { return false; } ///< its height is its content's at its width, held to the room
    QSize sizeHint() const override { return {400, height_}; }
    QSize minimumSizeHint() const override { return {0, std::min(height_, 80)}; } ///< never holds the window open

Q_SIGNALS:
    void fitted(int height); ///< the height that it asks for has been worked out anew

protected:
    // While it is hidden its width is not known; it is then taken from its page.
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();
    void takeOut();
    void place(bool whole);
    int heightAt(int width) const;

    QScrollArea* scroll_;
    QWidget* content_ = nullptr;
    int room_ = 240, most_ = 240, height_ = 60;
    static constexpr int sideSpace_ = 18; ///< that its page leaves at either side of it
};

}
