#pragma once

#include <QString>

#include <cstdint>
#include <deque>
#include <map>
#include <set>

namespace tierloam::household {

/// The household's settings as they are in the file, and on top of them the values that were asked for and not yet answered.
/// No thread, no file, no signal.
class OpenSettings {
public:
    using Values = std::map<QString, QString>; ///< by name

    explicit OpenSettings(Values recorded) : recorded_{std::move(recorded)} {}

    /// The value asked for last, else what is in the file; empty: there is none.
    QString value(const QString& name) const;
    /// Whether the file holds this value and no other one is being written: asking for it would change nothing.
    bool stands(const QString& name, const QString& value) const;

    void ask(std::uint64_t ticket, const QString& name, const QString& value);
    /// The value is durable.
    void settle(std::uint64_t ticket);
    void giveUp(std::uint64_t ticket);
    /// Another program wrote: what the file holds now. Returns the names whose values differ.
    std::set<QString> replaceRecorded(Values now);

private:
    struct Asked {
        std::uint64_t ticket = 0;
        QString name, value;
    };

    Values recorded_;
    std::deque<Asked> asked_; ///< in the order in which they are written
};

}
