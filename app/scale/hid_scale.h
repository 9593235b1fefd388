// A USB scale of the HID point-of-sale page 0x8D, through hidapi. Plugging in, pulling out and plugging in again at any
// time is no fault: what is not there is looked for again, every two seconds.
#pragma once

#include "app/scale/scale_device.h"

#include <chrono>
#include <memory>

namespace stow::scale {

class HidScale : public Device {
public:
    HidScale();
    ~HidScale() override;

    std::optional<std::vector<Report>> read() override;

private:
    struct Handle;
    bool open();

    std::unique_ptr<Handle> handle_;
    std::chrono::steady_clock::time_point next_look_{};
};

} // namespace stow::scale
