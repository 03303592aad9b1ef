#pragma once

#include <QObject>

#include <functional>
#include <memory>
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
    /// What becomes of work that is under way when this is destroyed: its end is waited for, or it ends by itself and nobody hears of it. Such work
    /// may use nothing but what it holds itself.
    enum class AtTheEnd { wait, leave };

    explicit Aside(QObject* parent = nullptr, AtTheEnd atTheEnd = AtTheEnd::wait);
    ~Aside() override;

    void run(Work work);
    /// Nothing that was asked for is answered any more.
    void callOff();
    bool busy() const { return busy_; }

    /// Gives up what is large, so that its memory is given back beside the window.
    static void letGo(std::shared_ptr<const void> held);

private:
    struct Shared;
    static void loop(const std::shared_ptr<Shared>& shared);

    std::shared_ptr<Shared> shared_;
    AtTheEnd atTheEnd_;
    bool busy_ = false;              ///< of the window's thread alone
    std::thread thread_;
};

}
