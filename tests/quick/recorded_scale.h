// A scale on its cable that says what was recorded: reports of five bytes (USB HID, page 0x8D: report, status, unit,
// exponent, weight in two bytes).
#pragma once

#include "app/scale/scale_device.h"

#include <deque>
#include <memory>
#include <optional>
#include <vector>

namespace stow::quick {

// One report each time it is asked.
class RecordedScale : public scale::Device {
public:
    struct Cable {
        bool plugged = false;
        std::deque<scale::Report> reports;

        void say(int status, int grams, int times = 1)
        {
            for (int i = 0; i < times; ++i) {
                reports.push_back({static_cast<std::uint8_t>(status), 2, 0, static_cast<std::uint8_t>(grams % 256),
                                   static_cast<std::uint8_t>(grams / 256)});
            }
        }
        // As a hand puts it on: moving, wavering, standing still.
        void put_on(int grams)
        {
            say(3, grams / 2);
            say(4, grams + 2);
            say(4, grams, 4);
        }
        void take_off()
        {
            say(3, 40);
            say(2, 0, 4);
        }
    };

    explicit RecordedScale(std::shared_ptr<Cable> cable) : cable_(std::move(cable)) {}
    std::optional<std::vector<scale::Report>> read() override
    {
        if (!cable_->plugged) return std::nullopt;
        std::vector<scale::Report> now;
        if (!cable_->reports.empty()) {
            now.push_back(cable_->reports.front());
            cable_->reports.pop_front();
        }
        return now;
    }

private:
    std::shared_ptr<Cable> cable_;
};

} // namespace stow::quick
