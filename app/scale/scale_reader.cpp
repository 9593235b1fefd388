#include "app/scale/scale_reader.h"

namespace stow::scale {

ScaleReader::ScaleReader(std::unique_ptr<Device> device, QObject* parent) : QObject(parent), device_(std::move(device))
{
    timer_.setInterval(100);
    connect(&timer_, &QTimer::timeout, this, &ScaleReader::poll);
    timer_.start();
}

void ScaleReader::poll()
{
    const auto reports = device_->read();
    if (!reports) {
        if (feed_.now().state != weighing::ScaleState::absent) tell(feed_.unplugged());
        return;
    }
    for (const Report& report : *reports) tell(feed_.report(report));
}

void ScaleReader::tell(const weighing::ScaleSays& said)
{
    const bool same = said.state == told_.state && said.weight == told_.weight && !said.fresh;
    told_ = said;
    if (!same) emit says(said);
}

} // namespace stow::scale
