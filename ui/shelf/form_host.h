#pragma once

#include <QFrame>

class QScrollArea;

namespace tierloam::shelf {

/// The place under the shelf where panels and forms open: one at a time, never over the drawing, scrolling when it is higher than its share.
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

protected:
    // While it is hidden its width is not known; it is then taken from its page.
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();

    QScrollArea* scroll_;
    QWidget* content_ = nullptr;
    int room_ = 240;
    static constexpr int sideSpace_ = 18; ///< that its page leaves at either side of it
};

}
