#pragma once

#include <unistd.h>

/// Permissions bind nobody who is root. While this lives, files are opened as the user "nobody" where the tests run as root;
/// elsewhere it changes nothing.
namespace tierloam::tests {

class WithoutRoot {
public:
    WithoutRoot() : was_{::geteuid()}
    {
        if (was_ == 0) held_ = ::seteuid(65534) == 0;
    }
    ~WithoutRoot()
    {
        if (held_ && ::seteuid(was_) != 0) ::_exit(99); // going on as the wrong user would make every later test lie
    }
    WithoutRoot(const WithoutRoot&) = delete;
    WithoutRoot& operator=(const WithoutRoot&) = delete;

    bool bound() const { return was_ != 0 || held_; }

private:
    uid_t was_;
    bool held_ = false;
};

}
