#include "app/view/background.h"

namespace stow::view {

namespace {

Work::Finish outcome_of(const std::function<Work::Finish(Run&)>& job, Run& run)
{
    try {
        return job(run);
    } catch (const book::BookFailure& failure) { // not on this thread: whoever waits for the work is told
        return [failure] { throw failure; };
    }
}

} // namespace

Work::Work(Day& day, QObject* parent) : QObject(parent), day_(day) {}

Work::~Work()
{
    cancel();
    if (thread_) thread_->wait();
}

void Work::start(std::function<Finish(Run&)> job)
{
    if (running()) return;
    progress_ = 0;
    cancelled_ = std::make_shared<std::atomic<bool>>(false);
    thread_.reset(QThread::create([this, job = std::move(job), cancelled = cancelled_] {
        Run run({}, cancelled.get());
        run.on_progress([this](double done) { report_progress(done); });
        Finish finish = outcome_of(job, run);
        report([this, finish = std::move(finish)] {
            thread_->wait();
            thread_.reset();
            guarded(day_, finish); // what waits for the end of the work hears of it in any case
            emit changed();
        });
    }));
    thread_->start();
    emit changed();
}

void Work::cancel()
{
    if (cancelled_) cancelled_->store(true);
}

void Work::report(std::function<void()> there)
{
    QMetaObject::invokeMethod(
        this, [this, there = std::move(there)] { guarded(day_, there); }, Qt::QueuedConnection);
}

void Work::report_progress(double done)
{
    report([this, done] {
        progress_ = done;
        emit changed();
    });
}

} // namespace stow::view
