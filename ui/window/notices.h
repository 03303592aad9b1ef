#pragma once

#include <QFrame>
#include <QPointer>
#include <QString>

#include <functional>

class QVBoxLayout;

namespace tierloam::window {

/// Messages above the page, the first in the layout of their parent. What went well goes by itself after a while; what people should know, or what went wrong, stays until it is dismissed
/// or settled.
class Notices : public QWidget {
    Q_OBJECT

public:
    enum class Kind { done, notice, failure };

    explicit Notices(QWidget* parent = nullptr);
    /// The same text is not shown twice. `key` names what it is about, so that settle() can take it away once it is put right.
    /// `act`: a button beside it, where something can be done about it; the message stays until it is settled.
    struct Act {
        QString text;
        std::function<void()> done;
    };
    void show(Kind kind, const QString& text, const QString& key = {}, const Act& act = {});
    void settle(const QString& key);
    void clear();
    /// While a form is filled in, messages lie over what stands beneath them: coming and going they move nothing that is about to be clicked.
    void setFloating(bool floating);
    bool isFloating() const { return floating_; }
    QStringList texts() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void place();
    int heightIn(int width) const;
    void dismiss(QFrame* frame);
    void letGo(QFrame* frame);

    static constexpr int most = 4;
    static constexpr int secondsDone = 10; ///< that what went well is told
    QVBoxLayout* rows_;
    QList<QFrame*> frames_;          ///< oldest first
    bool floating_ = false;
    QPointer<QWidget> room_;         ///< kept in the layout, of the messages that stood there when the form came up
};

}
