#include "app/view/background.h"

namespace stow::view {

Work::Work(QObject* parent) : QObject(parent) {}

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
        Finish finish = job(run);
        report([this, finish = std::move(finish)] {
            thread_->wait();
            thread_.reset();
            finish();
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
    QMetaObject::invokeMethod(this, std::move(there), Qt::QueuedConnection);
}

void Work::report_progress(double done)
{
    report([this, done] {
        progress_ = done;
        emit changed();
    });
}

} // namespace stow::view
