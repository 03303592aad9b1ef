// A race on purpose, built with the thread sanitizer only: under the options of the other tests it must still be reported.
#include <cstdio>
#include <thread>

namespace {

int shared = 0;

void add()
{
    for (int i = 0; i < 100000; ++i) ++shared;
}

}

int main()
{
    std::thread one{add};
    std::thread other{add};
    one.join();
    other.join();
    std::printf("%d\n", shared);
    return 0;
}
