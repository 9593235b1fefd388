// How much of a supply will be used: weekly use of the past carried on, by the method that did best on past weeks.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace stow::supplies {

// Use in each past week, oldest first, without gaps, in thousandths of the supply's unit.
using Weeks = std::vector<std::int64_t>;

enum class Method {
    steady,       // simple exponential smoothing
    intermittent, // Croston's method with the correction of Syntetos and Boylan
    seasonal      // steady, times what last year's same weeks were to their surroundings
};
inline constexpr std::array all_methods{Method::steady, Method::intermittent, Method::seasonal};
std::string_view name_of(Method method); // "steady", "intermittent", "seasonal"

inline constexpr double smoothing = 0.2; // of all three; common practice is 0.1 to 0.3

// A week's use in each of the `ahead` weeks to come, in thousandths. Nothing: too little history for the method (steady
// one week, intermittent two weeks of use, seasonal a year and four weeks).
std::optional<std::vector<double>> expected(Method method, const Weeks& weeks, int ahead);

// J. D. Croston, Operational Research Quarterly 23, 1972: size and interval of use smoothed apart, a new value only
// where something was used; A. A. Syntetos, J. E. Boylan, International Journal of Forecasting 21, 2005: their ratio
// less a half of the smoothing, which takes out its bias.
struct Croston {
    double size = 0, interval = 1; // smoothed
    double rate(bool corrected = true) const;
};
std::optional<Croston> croston(const Weeks& weeks, double smoothing);

// Use comes in few weeks: their mean interval is above 1.32 (A. A. Syntetos, J. E. Boylan, J. D. Croston, Journal of
// the Operational Research Society 56, 2005).
bool is_intermittent(const Weeks& weeks);

struct Forecast {
    Method method = Method::steady;
    std::vector<double> ahead; // thousandths a week
    double spread = 0;         // of a week about its forecast, thousandths: root mean square of the errors
    // Root mean square error of one week's forecast over the weeks kept back, which played no part in the choice of the
    // method, and that of "as last week". Nothing where too few weeks were there to keep any back.
    std::optional<double> error, error_as_last_week;
    int judged = 0; // weeks kept back
};

// The method of least root mean square error over the weeks before the last `kept_back`, judged by those. Nothing
// without use.
std::optional<Forecast> forecast(const Weeks& weeks, int ahead, int kept_back = 8);

struct Point {           // when to order, thousandths
    double expected = 0; // use over the lead time
    double safety = 0;   // z · spread · √lead
    double reorder_at() const { return expected + safety; }
};
Point reorder_point(const Forecast& forecast, int lead_days, double service_level);

// Days until `on_hand` (thousandths) is used up as forecast; nothing: not within the weeks forecast.
std::optional<int> days_of_cover(std::int64_t on_hand, const Forecast& forecast);

} // namespace stow::supplies
