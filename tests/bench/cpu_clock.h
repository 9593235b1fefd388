// Time as the benchmark programs count it: processor time of the calling thread, because the machine may be shared.
#pragma once

#include <chrono>
#include <ctime>

namespace stow::bench {

// A clock for Run.
inline std::chrono::steady_clock::time_point thread_time()
{
    timespec t{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return std::chrono::steady_clock::time_point(std::chrono::seconds(t.tv_sec) + std::chrono::nanoseconds(t.tv_nsec));
}

// Since it was made.
class Stopwatch {
public:
    double seconds() const { return std::chrono::duration<double>(thread_time() - from_).count(); }
    double milliseconds() const { return 1000 * seconds(); }

private:
    std::chrono::steady_clock::time_point from_ = thread_time();
};

} // namespace stow::bench
