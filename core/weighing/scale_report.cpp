#include "core/weighing/scale_report.h"

#include <limits>
#include <optional>

namespace stow::weighing {

namespace {

// One unit in nanograms; ounces and pounds by their international definition (1 lb = 453.59237 g).
std::optional<std::int64_t> nanograms(std::uint8_t unit)
{
    switch (unit) {
    case 0x1: return 1'000'000;         // milligram
    case 0x2: return 1'000'000'000;     // gram
    case 0x3: return 1'000'000'000'000; // kilogram
    case 0x4: return 200'000'000;       // metric carat
    case 0x6: return 64'798'910;        // grain
    case 0x7: return 1'555'173'840;     // pennyweight
    case 0xA: return 31'103'476'800;    // troy ounce
    case 0xB: return 28'349'523'125;    // avoirdupois ounce
    case 0xC: return 453'592'370'000;   // pound
    default: return std::nullopt;
    }
}

// nanograms * 10^power in 0.1 g, to the nearest; nothing where it leaves the range.
std::optional<std::int64_t> tenth_grams(std::int64_t ng, int power)
{
    std::int64_t unit = 100'000'000; // of 0.1 g
    for (; power < 0; ++power) {
        if (unit > std::numeric_limits<std::int64_t>::max() / 20) return 0; // far below 0.1 g, whatever stood before
        unit *= 10;
    }
    for (; power > 0; --power) {
        if (ng > std::numeric_limits<std::int64_t>::max() / 20) return std::nullopt;
        ng *= 10;
    }
    return (ng + unit / 2) / unit;
}

} // namespace

tl::expected<Weight, ScaleFault> read_scale_report(const std::vector<std::uint8_t>& bytes)
{
    if (bytes.size() != 5) return tl::unexpected(ScaleFault::not_a_report);
    bool negative = false;
    switch (bytes[0]) {
    case 1: return tl::unexpected(ScaleFault::fault);
    case 2: return Weight{}; // stable at zero
    case 3: return tl::unexpected(ScaleFault::in_motion);
    case 4: break; // stable
    case 5: negative = true; break;
    case 6: return tl::unexpected(ScaleFault::over_limit);
    case 7: return tl::unexpected(ScaleFault::needs_calibration);
    case 8: return tl::unexpected(ScaleFault::needs_zero);
    default: return tl::unexpected(ScaleFault::not_a_report);
    }
    const auto unit = nanograms(bytes[1]);
    if (!unit) return tl::unexpected(ScaleFault::unknown_unit);
    const int power = bytes[2] < 128 ? bytes[2] : bytes[2] - 256;
    const std::int64_t count = bytes[3] + 256 * bytes[4];
    const auto tenths = tenth_grams(count * *unit, power);
    if (!tenths) return tl::unexpected(ScaleFault::out_of_range);
    return Weight{negative ? -*tenths : *tenths};
}

} // namespace stow::weighing
