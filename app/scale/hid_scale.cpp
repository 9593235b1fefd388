#include "app/scale/hid_scale.h"

#include <hidapi/hidapi.h>

#include <array>

namespace stow::scale {

namespace {

constexpr unsigned short scale_page = 0x8D; // USB-IF HID Point of Sale Usage Tables 1.02
constexpr std::size_t weight_report = 6;    // report id, status, unit, power of ten, weight low, weight high
constexpr std::chrono::seconds between_looks{2};

} // namespace

struct HidScale::Handle {
    hid_device* device = nullptr;

    explicit Handle(hid_device* opened) : device(opened) { hid_set_nonblocking(device, 1); }
    Handle(const Handle&) = delete;
    Handle& operator=(const Handle&) = delete;
    ~Handle() { hid_close(device); }
};

HidScale::HidScale()
{
    hid_init();
}

HidScale::~HidScale()
{
    handle_.reset();
    hid_exit();
}

bool HidScale::open()
{
    const auto now = std::chrono::steady_clock::now();
    if (now < next_look_) return false;
    next_look_ = now + between_looks;
    hid_device_info* all = hid_enumerate(0, 0);
    for (const hid_device_info* info = all; info != nullptr && !handle_; info = info->next) {
        if (info->usage_page != scale_page) continue;
        if (hid_device* device = hid_open_path(info->path)) handle_ = std::make_unique<Handle>(device);
    }
    hid_free_enumeration(all);
    return handle_ != nullptr;
}

std::optional<std::vector<Report>> HidScale::read()
{
    if (!handle_ && !open()) return std::nullopt;
    std::vector<Report> reports;
    std::array<unsigned char, 64> bytes{};
    for (int most = 64; most > 0; --most) { // a scale that never stops talking is heard next time
        const int got = hid_read(handle_->device, bytes.data(), bytes.size());
        if (got == 0) return reports;
        if (got < 0) { // pulled out
            handle_.reset();
            return std::nullopt;
        }
        // Other reports (limits, statistics) are of other lengths.
        if (static_cast<std::size_t>(got) == weight_report)
            reports.emplace_back(bytes.begin() + 1, bytes.begin() + got);
    }
    return reports;
}

} // namespace stow::scale
