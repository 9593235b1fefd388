#include "core/run/run.h"

#include <algorithm>

namespace stow {

Run::Run(Limits limits, const std::atomic<bool>* cancelled, Clock clock)
    : work_limit_(limits.work), cancelled_(cancelled), clock_(std::move(clock))
{
    if (limits.time) deadline_ = now() + *limits.time;
}

Run Run::part(Limits limits) const
{
    Run inner(limits, cancelled_, clock_);
    if (deadline_ && (!inner.deadline_ || *deadline_ < *inner.deadline_)) inner.deadline_ = deadline_;
    return inner;
}

bool Run::go_on(std::uint64_t nodes)
{
    if (stopped_) return false;
    work_done_ += nodes;
    if (work_limit_ != 0 && work_done_ > work_limit_) stopped_ = Stop::work;
    if (work_done_ >= next_look_) {
        next_look_ = work_done_ + 256;
        if (cancelled_ != nullptr && cancelled_->load(std::memory_order_relaxed))
            stopped_ = Stop::cancelled;
        else if (!stopped_ && deadline_ && now() >= *deadline_)
            stopped_ = Stop::time;
    }
    return !stopped_;
}

std::optional<std::chrono::milliseconds> Run::time_left() const
{
    if (!deadline_) return std::nullopt;
    return std::max(std::chrono::milliseconds{},
                    std::chrono::duration_cast<std::chrono::milliseconds>(*deadline_ - now()));
}

void Run::tell_progress(double done) const
{
    if (progress_) progress_(std::clamp(done, 0.0, 1.0));
}

std::chrono::steady_clock::time_point Run::now() const
{
    return clock_ ? clock_() : std::chrono::steady_clock::now();
}

} // namespace stow
