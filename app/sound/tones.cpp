#include "app/sound/tones.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace stow::sound {

namespace {

// Hertz, of the equal-tempered scale on a' = 440 Hz (ISO 16).
constexpr double c_three_lines = 1046.5, a_small = 220.0;
constexpr double loud = 0.4 * 32'767; // of the greatest sample

void add(std::vector<std::int16_t>& to, double hertz, double seconds)
{
    const auto count = static_cast<int>(seconds * samples_a_second);
    const int edge = samples_a_second / 100; // 10 ms up and down
    for (int i = 0; i < count; ++i) {
        const double swell = std::min({1.0, static_cast<double>(i) / edge, static_cast<double>(count - 1 - i) / edge});
        const double wave = std::sin(2 * std::numbers::pi * hertz * i / samples_a_second);
        to.push_back(static_cast<std::int16_t>(std::lround(loud * swell * wave)));
    }
}

void add_silence(std::vector<std::int16_t>& to, double seconds)
{
    to.insert(to.end(), static_cast<std::size_t>(seconds * samples_a_second), 0);
}

} // namespace

std::vector<std::int16_t> samples(Tone tone)
{
    std::vector<std::int16_t> all;
    if (tone == Tone::right) {
        add(all, c_three_lines, 0.12);
    } else {
        add(all, a_small, 0.22);
        add_silence(all, 0.08);
        add(all, a_small, 0.3);
    }
    return all;
}

} // namespace stow::sound
