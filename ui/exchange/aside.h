#pragma once

#include <QObject>

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

namespace tierloam::exchange_view {

/// Work that would hold the window up, done beside its thread. A newer piece of work takes the place of an older one, which is told to
/// stop and whose answer is never given.
class Aside : public QObject {
    Q_OBJECT

public:
    using Answer = std::function<void()>;
    /// Runs beside the window and returns what is then to be done in the window's thread.
    using Work = std::function<Answer(const std::stop_token&)>;

    explicit Aside(QObject* parent = nullptr);
    ~Aside() override;

    void run(Work work);
    /// Nothing that was asked for is answered any more.
    void callOff();
    bool busy() const { return busy_; }

private:
    void loop();

    std::mutex mutex_;
    std::condition_variable wake_;
    std::optional<Work> next_;
    quint64 number_ = 0;
    std::stop_source running_;
    bool closing_ = false;
    bool busy_ = false;              ///< of the window's thread alone
    std::jthread thread_;            ///< last: the others outlive it
};

}
