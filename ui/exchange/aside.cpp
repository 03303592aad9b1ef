#include "ui/exchange/aside.h"

#include "core/log/log.h"

namespace tierloam::exchange_view {

Aside::Aside(QObject* parent) : QObject{parent}, thread_{[this] { loop(); }} {}

Aside::~Aside()
{
    {
        const std::lock_guard lock{mutex_};
        closing_ = true;
        running_.request_stop();
    }
    wake_.notify_one();
    thread_.join();
}

void Aside::run(Work work)
{
    busy_ = true;
    {
        const std::lock_guard lock{mutex_};
        next_ = std::move(work);
        ++number_;
        running_.request_stop();
    }
    wake_.notify_one();
}

void Aside::callOff()
{
    busy_ = false;
    const std::lock_guard lock{mutex_};
    next_.reset();
    ++number_;
    running_.request_stop();
}

void Aside::loop()
{
    for (;;) {
        Work work;
        std::stop_token stop;
        quint64 number = 0;
        {
            std::unique_lock lock{mutex_};
            wake_.wait(lock, [this] { return closing_ || next_; });
            if (closing_) return;
            work = std::move(*next_);
            next_.reset();
            number = number_;
            running_ = std::stop_source{};
            stop = running_.get_token();
        }
        Answer answer;
        try {
            answer = work(stop);
        } catch (...) {
            log::note(log::What::workFailed); // nothing is answered; what leaves a thread's function would end the program
        }
        const auto give = [this, number, answer = std::move(answer)] {
            {
                const std::lock_guard lock{mutex_};
                if (number != number_) return; // a newer one is under way
            }
            busy_ = false;
            if (answer) answer();
        };
        QMetaObject::invokeMethod(this, give, Qt::QueuedConnection);
    }
}

}
