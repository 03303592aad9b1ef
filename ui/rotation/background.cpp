#include "ui/rotation/background.h"

#include "core/log/log.h"

#include <algorithm>
#include <utility>

namespace tierloam::rotation {

Background::Background(QObject* parent) : QObject{parent}, thread_{[this](std::stop_token closing) { run(closing); }} {}

Background::~Background()
{
    thread_.request_stop();
    {
        const std::lock_guard lock{mutex_};
        runningStop_.request_stop();
    }
    thread_.join();
}

bool Background::busy(const QString& name) const
{
    const auto open = open_.find(name);
    return open != open_.end() && open->second > 0;
}

bool Background::busy() const
{
    return std::ranges::any_of(open_, [](const auto& each) { return each.second > 0; });
}

void Background::forget()
{
    {
        const std::lock_guard lock{mutex_};
        waiting_.clear();
        runningStop_.request_stop();
    }
    forgotten_ = last_;
    open_.clear();
    Q_EMIT busyChanged();
}

void Background::ask(const QString& name, Work work, Turn turn)
{
    const quint64 number = ++last_;
    newest_[name] = number;
    {
        const std::lock_guard lock{mutex_};
        if (waiting_.contains(name)) --open_[name]; // the older one is never answered
        waiting_.insert_or_assign(name, Question{number, std::move(work), turn});
        if (running_ == name) runningStop_.request_stop();
    }
    ++open_[name];
    wake_.notify_one();
    Q_EMIT busyChanged();
}

void Background::run(std::stop_token closing)
{
    for (;;) {
        Question question{};
        QString name;
        std::stop_token stop;
        {
            std::unique_lock lock{mutex_};
            if (!wake_.wait(lock, closing, [this] { return !waiting_.empty(); })) return;
            // Within the lock: the destructor asks first for the end, then, with the lock, for that of what runs. What is taken up here either finds the
            // end asked for or is stopped by it; looked at before, a question could begin in between and hold the window up until it was through.
            if (closing.stop_requested()) return;
            const auto first = std::ranges::min_element(waiting_, {}, [](const auto& each) { return std::pair{each.second.turn, each.second.number}; });
            name = first->first;
            question = std::move(first->second);
            waiting_.erase(first);
            running_ = name;
            runningStop_ = std::stop_source{};
            stop = runningStop_.get_token();
        }
        Use use;
        try {
            use = question.work(stop);
        } catch (...) {
            log::note(log::What::workFailed); // the page goes on showing what it had; what leaves a thread's function would end the program
        }
        {
            const std::lock_guard lock{mutex_};
            running_.clear();
        }
        // Dropped by Qt when this object has gone meanwhile.
        QMetaObject::invokeMethod(this, [this, name, number = question.number, use = std::move(use)] {
            if (number <= forgotten_) return;
            --open_[name];
            if (use && newest_[name] == number) use();
            Q_EMIT busyChanged();
        }, Qt::QueuedConnection);
    }
}

}
