// What the program asks of a scale on a cable: its reports, one after the other.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace stow::scale {

using Report = std::vector<std::uint8_t>; // of the weight, its report id taken off

class Device {
public:
    Device() = default;
    Device(const Device&) = delete;
    Device& operator=(const Device&) = delete;
    virtual ~Device() = default;

    // The reports since it was asked last, oldest first, without waiting. Nothing: no scale is plugged in.
    virtual std::optional<std::vector<Report>> read() = 0;
};

} // namespace stow::scale
