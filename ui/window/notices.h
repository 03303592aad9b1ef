#pragma once

#include <QFrame>
#include <QString>

#include <functional>

class QVBoxLayout;

namespace tierloam::window {

/// Messages above the page. What went well goes by itself after a while; what people should know, or what went wrong, stays until it is dismissed
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
    QStringList texts() const;

private:
    void dismiss(QFrame* frame);
    void letGo(QFrame* frame);

    static constexpr int most = 4;
    static constexpr int secondsDone = 10; ///< that what went well is told
    QVBoxLayout* rows_;
    QList<QFrame*> frames_;          ///< oldest first
};

}
