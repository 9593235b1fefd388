#include "app/sound/speaker.h"

#include <pulse/simple.h>

#include <memory>

namespace stow::sound {

namespace {

bool sounds(Tone tone)
{
    const pa_sample_spec spec{PA_SAMPLE_S16NE, samples_a_second, 1};
    const std::unique_ptr<pa_simple, void (*)(pa_simple*)> out(
        pa_simple_new(nullptr, "Stowbench", PA_STREAM_PLAYBACK, nullptr, "bench", &spec, nullptr, nullptr, nullptr),
        [](pa_simple* simple) {
            if (simple != nullptr) pa_simple_free(simple);
        });
    if (!out) return false;
    const auto wave = samples(tone);
    return pa_simple_write(out.get(), wave.data(), wave.size() * sizeof wave.front(), nullptr) >= 0 &&
           pa_simple_drain(out.get(), nullptr) >= 0;
}

} // namespace

Speaker::Speaker(QObject* parent) : QObject(parent)
{
    there_.moveToThread(&thread_);
    thread_.start(QThread::LowPriority);
}

Speaker::~Speaker()
{
    thread_.quit();
    thread_.wait();
}

void Speaker::play(Tone tone)
{
    QMetaObject::invokeMethod(
        &there_, [this, tone] { emit played(tone, sounds(tone)); }, Qt::QueuedConnection);
}

} // namespace stow::sound
