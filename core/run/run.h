// What every long piece of work carries: deadline, cancellation, work budget, progress. "Stopped" is a result.
#pragma once

#include <atomic>
#include <chrono>
#include <cstdint>
#include <functional>
#include <optional>
#include <utility>

namespace stow {

enum class Stop { cancelled, work, time }; // why work ended early

class Run {
public:
    using Clock = std::function<std::chrono::steady_clock::time_point()>;
    struct Limits {
        std::optional<std::chrono::milliseconds> time; // safety stop; answers may then differ between machines
        std::uint64_t work = 0;                        // search nodes; 0: no bound. The same everywhere.
    };

    Run() = default;
    explicit Run(Limits limits, const std::atomic<bool>* cancelled = nullptr, Clock clock = {});

    // A part of this run with its own work budget; never later than this run's deadline, cancelled with it.
    Run part(Limits limits) const;

    // Counts `nodes` of work and says whether to go on. Cheap enough for the innermost loop.
    bool go_on(std::uint64_t nodes = 1);
    std::optional<Stop> stopped() const { return stopped_; }
    std::uint64_t work_done() const { return work_done_; }
    // Until the deadline, never below zero; nothing: there is none. For what keeps time by itself.
    std::optional<std::chrono::milliseconds> time_left() const;

    // Progress from 0 to 1, told to `listener` by the thread that works.
    void on_progress(std::function<void(double)> listener) { progress_ = std::move(listener); }
    void tell_progress(double done) const;

private:
    std::chrono::steady_clock::time_point now() const;

    std::optional<std::chrono::steady_clock::time_point> deadline_;
    std::uint64_t work_limit_ = 0;
    std::uint64_t work_done_ = 0;
    std::uint64_t next_look_ = 0; // the clock is read every few hundred nodes only
    const std::atomic<bool>* cancelled_ = nullptr;
    Clock clock_;
    std::optional<Stop> stopped_;
    std::function<void(double)> progress_;
};

} // namespace stow
