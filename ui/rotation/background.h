#pragma once

#include <QObject>

#include <condition_variable>
#include <functional>
#include <map>
#include <mutex>
#include <stop_token>
#include <thread>

namespace tierloam::rotation {

/// Questions to the model that take longer than a window may wait, in a thread of their own. A newer question under the same name takes the
/// place of an older one; what was answered is used in the window's thread, later, and never after this object has gone.
class Background : public QObject {
    Q_OBJECT

public:
    /// What is done with the answer, in the window's thread; empty: nothing, since it was stopped or something was thrown.
    using Use = std::function<void()>;
    /// Works on values of its own, looks at the token often, and returns what is to be done with the answer.
    using Work = std::function<Use(std::stop_token)>;

    explicit Background(QObject* parent = nullptr);
    ~Background() override;

    /// Which of those that wait is taken up: `first` before the others, then as they were asked.
    enum class Turn { first, asAsked };

    void ask(const QString& name, Work work, Turn turn = Turn::asAsked);
    bool busy() const;
    /// Whether a question under that name waits for its answer.
    bool busy(const QString& name) const;
    /// Nothing that was asked for so far is answered any more.
    void forget();

Q_SIGNALS:
    void busyChanged();

private:
    void run(std::stop_token closing);

    struct Question { quint64 number; Work work; Turn turn; };
    mutable std::mutex mutex_;
    std::condition_variable_any wake_;
    std::map<QString, Question> waiting_;
    QString running_;
    std::stop_source runningStop_;
    std::map<QString, quint64> newest_;      ///< of the window's thread
    quint64 last_ = 0;
    quint64 forgotten_ = 0;                  ///< questions up to this number
    std::map<QString, int> open_;            ///< of the window's thread: asked and not answered, by name
    std::jthread thread_;                    ///< last: the others outlive it
};

}
