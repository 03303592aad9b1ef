#pragma once

#include <QString>

#include <functional>
#include <mutex>
#include <utility>
#include <vector>

namespace tierloam::household {

/// Texts from another thread that may come before their reader is there: they wait, and are delivered in order once it is.
class Mailbox {
public:
    void put(const QString& text)
    {
        const std::lock_guard lock{mutex_};
        if (deliver_) deliver_(text);
        else waiting_.push_back(text);
    }
    void deliverTo(std::function<void(const QString&)> deliver)
    {
        const std::lock_guard lock{mutex_};
        deliver_ = std::move(deliver);
        for (const QString& text : std::exchange(waiting_, {})) deliver_(text);
    }

private:
    std::mutex mutex_;
    std::function<void(const QString&)> deliver_;
    std::vector<QString> waiting_;
};

}
