// Long work on a thread of its own, with progress and a way to stop it; results come back to the thread of the screen.
#pragma once

#include "app/view/guarded.h"
#include "core/run/run.h"

#include <QObject>
#include <QThread>

#include <atomic>
#include <functional>
#include <memory>

namespace stow::view {

class Work : public QObject {
    Q_OBJECT
public:
    explicit Work(Day& day, QObject* parent = nullptr);
    ~Work() override; // cancels and waits

    // Only one at a time. `job` runs on the other thread and must hold values only; what it returns is called here.
    // A book that fails in either is told to the day.
    using Finish = std::function<void()>;
    void start(std::function<Finish(Run&)> job);
    void cancel();

    bool running() const { return thread_ != nullptr; }
    double progress() const { return progress_; }
    // To be called by the job: runs `there` on the thread of this object.
    void report(std::function<void()> there);
    void report_progress(double done);

signals:
    void changed();

private:
    Day& day_;
    std::unique_ptr<QThread> thread_;
    std::shared_ptr<std::atomic<bool>> cancelled_;
    double progress_ = 0;
};

} // namespace stow::view
