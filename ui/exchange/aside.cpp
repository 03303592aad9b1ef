#include "ui/exchange/aside.h"

#include "core/log/log.h"

#include <QThreadPool>

#include <condition_variable>
#include <mutex>
#include <optional>
#include <utility>

namespace tierloam::exchange_view {

/// What both threads know; the one that works may outlive the other's Aside.
struct Aside::Shared {
    std::mutex mutex;
    std::condition_variable wake;
    std::optional<Work> next;
    quint64 number = 0;
    std::stop_source running;
    Aside* owner = nullptr;          ///< nullptr: it is gone, or about to be
};

Aside::Aside(QObject* parent, AtTheEnd atTheEnd) : QObject{parent}, shared_{std::make_shared<Shared>()}, atTheEnd_{atTheEnd}
{
    shared_->owner = this;
    thread_ = std::thread{[shared = shared_] { loop(shared); }};
}

Aside::~Aside()
{
    {
        const std::lock_guard lock{shared_->mutex};
        shared_->owner = nullptr;
        shared_->running.request_stop();
    }
    shared_->wake.notify_one();
    if (atTheEnd_ == AtTheEnd::wait) thread_.join();
    else QThreadPool::globalInstance()->start([thread = std::make_shared<std::thread>(std::move(thread_))] { thread->join(); }); // the pool is waited for when the program ends
}

void Aside::run(Work work)
{
    busy_ = true;
    {
        const std::lock_guard lock{shared_->mutex};
        shared_->next = std::move(work);
        ++shared_->number;
        shared_->running.request_stop();
    }
    shared_->wake.notify_one();
}

void Aside::callOff()
{
    busy_ = false;
    const std::lock_guard lock{shared_->mutex};
    shared_->next.reset();
    ++shared_->number;
    shared_->running.request_stop();
}

void Aside::letGo(std::shared_ptr<const void> held)
{
    if (held) QThreadPool::globalInstance()->start([held = std::move(held)]() mutable { held.reset(); });
}

void Aside::loop(const std::shared_ptr<Shared>& shared)
{
    for (;;) {
        Work work;
        std::stop_token stop;
        quint64 number = 0;
        {
            std::unique_lock lock{shared->mutex};
            shared->wake.wait(lock, [&] { return !shared->owner || shared->next; });
            if (!shared->owner) return;
            work = std::move(*shared->next);
            shared->next.reset();
            number = shared->number;
            shared->running = std::stop_source{};
            stop = shared->running.get_token();
        }
        Answer answer;
        try {
            answer = work(stop);
        } catch (...) {
            log::note(log::What::workFailed); // nothing is answered; what leaves a thread's function would end the program
        }
        auto give = [shared, number, answer = std::move(answer)] {
            Aside* owner = nullptr;
            {
                const std::lock_guard lock{shared->mutex};
                if (number != shared->number) return; // a newer one is under way
                owner = shared->owner;
            }
            owner->busy_ = false; // called by way of it, so it is there
            if (answer) answer();
        };
        work = {};
        const std::lock_guard lock{shared->mutex};
        if (!shared->owner) return;
        QMetaObject::invokeMethod(shared->owner, std::move(give), Qt::QueuedConnection);
    }
}

}
