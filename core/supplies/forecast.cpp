#include "core/supplies/forecast.h"

#include "core/supplies/stock.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace stow::supplies {

namespace {

constexpr int year = 52;
constexpr int around = 2; // weeks to either side that a week of last year is taken with

double as_double(std::int64_t n)
{
    return static_cast<double>(n);
}

std::optional<double> smoothed(const Weeks& weeks)
{
    if (weeks.empty()) return std::nullopt;
    double level = as_double(weeks.front());
    for (const std::int64_t use : weeks) level += smoothing * (as_double(use) - level);
    return level;
}

double mean(const Weeks& weeks, int from, int until) // as far as they are there
{
    from = std::max(from, 0);
    until = std::min(until, static_cast<int>(weeks.size()));
    if (from >= until) return 0;
    return as_double(std::accumulate(weeks.begin() + from, weeks.begin() + until, std::int64_t{0})) / (until - from);
}

// What a week of last year was to the quarter before it: how the season moved then.
std::optional<double> season(const Weeks& weeks, int week)
{
    const int then = week - year, now = static_cast<int>(weeks.size()) - year;
    constexpr int quarter = 13;
    if (now - 4 < 0) return std::nullopt;
    const double before = mean(weeks, now - quarter, now);
    if (before <= 0) return std::nullopt;
    return std::clamp(mean(weeks, then - around, then + around + 1) / before, 0.2, 5.0);
}

std::optional<double> next(Method method, const Weeks& weeks)
{
    const auto weeks_ahead = expected(method, weeks, 1);
    return weeks_ahead ? std::optional(weeks_ahead->front()) : std::nullopt;
}

// Absolute errors of forecasting each of the weeks from..until from those before it.
std::vector<double> errors(Method method, const Weeks& weeks, std::size_t from, std::size_t until)
{
    std::vector<double> found;
    for (std::size_t w = from; w < until; ++w) {
        const auto told = next(method, Weeks(weeks.begin(), weeks.begin() + static_cast<std::ptrdiff_t>(w)));
        if (told) found.push_back(std::abs(as_double(weeks[w]) - *told));
    }
    return found;
}

double root_mean_square(const std::vector<double>& errors)
{
    double squares = 0;
    for (const double e : errors) squares += e * e;
    return errors.empty() ? 0 : std::sqrt(squares / static_cast<double>(errors.size()));
}

} // namespace

std::string_view name_of(Method method)
{
    switch (method) {
    case Method::steady: return "steady";
    case Method::intermittent: return "intermittent";
    case Method::seasonal: return "seasonal";
    }
    return {};
}

double Croston::rate(bool corrected) const
{
    return (corrected ? 1 - smoothing / 2 : 1.0) * size / interval;
}

std::optional<Croston> croston(const Weeks& weeks, double alpha)
{
    std::optional<Croston> state;
    double since = 0;
    int uses = 0;
    for (const std::int64_t use : weeks) {
        ++since;
        if (use <= 0) continue;
        ++uses;
        if (!state) {
            state = Croston{as_double(use), since};
        } else {
            state->size += alpha * (as_double(use) - state->size);
            state->interval += alpha * (since - state->interval);
        }
        since = 0;
    }
    return uses < 2 ? std::nullopt : state;
}

bool is_intermittent(const Weeks& weeks)
{
    const auto used = std::count_if(weeks.begin(), weeks.end(), [](std::int64_t use) { return use > 0; });
    return used > 0 && static_cast<double>(weeks.size()) / static_cast<double>(used) > 1.32;
}

std::optional<std::vector<double>> expected(Method method, const Weeks& weeks, int ahead)
{
    const auto count = static_cast<std::size_t>(std::max(ahead, 0));
    const auto level = smoothed(weeks);
    if (!level) return std::nullopt;
    switch (method) {
    case Method::steady: return std::vector<double>(count, *level);
    case Method::intermittent: {
        const auto state = croston(weeks, smoothing);
        if (!state) return std::nullopt;
        return std::vector<double>(count, state->rate());
    }
    case Method::seasonal: break;
    }
    std::vector<double> told;
    const int now = static_cast<int>(weeks.size());
    const double quarter = mean(weeks, now - 13, now);
    for (int w = 0; w < ahead; ++w) {
        const auto factor = season(weeks, now + w);
        if (!factor) return std::nullopt;
        told.push_back(quarter * *factor);
    }
    return told;
}

std::optional<Forecast> forecast(const Weeks& weeks, int ahead, int kept_back)
{
    // What lies before the first use says nothing: the supply was not there yet.
    const auto first = std::find_if(weeks.begin(), weeks.end(), [](std::int64_t use) { return use > 0; });
    const Weeks known(first, weeks.end());
    if (known.empty()) return std::nullopt;
    const std::size_t n = known.size();
    const std::size_t back = n > 2 * static_cast<std::size_t>(kept_back) ? static_cast<std::size_t>(kept_back) : 0;
    const std::size_t begin = std::max<std::size_t>(1, n - back > 26 ? n - back - 26 : 1); // half a year to choose by

    Forecast best;
    std::optional<double> least;
    for (const Method method : all_methods) {
        if (method == Method::intermittent && !is_intermittent(known)) continue;
        if (!expected(method, known, ahead)) continue;
        const auto own = errors(method, known, begin, n - back);
        // A method that could tell but few of the weeks is not comparable.
        if (own.size() * 10 < (n - back - begin) * 9) continue;
        const double error = root_mean_square(own);
        if (least && *least <= error) continue;
        least = error;
        best.method = method;
    }
    best.ahead = expected(best.method, known, ahead).value();
    best.spread = root_mean_square(errors(best.method, known, begin, n));
    if (back > 0) {
        const auto judged = errors(best.method, known, n - back, n);
        if (!judged.empty()) best.error = root_mean_square(judged);
        std::vector<double> last_week;
        for (std::size_t w = n - back; w < n; ++w) last_week.push_back(as_double(known[w] - known[w - 1]));
        best.error_as_last_week = root_mean_square(last_week);
        best.judged = static_cast<int>(judged.size());
    }
    return best;
}

Point reorder_point(const Forecast& forecast, int lead_days, double service_level)
{
    Point point;
    double days = lead_days;
    for (std::size_t w = 0; days > 0 && !forecast.ahead.empty(); ++w, days -= 7) {
        const double week = forecast.ahead[std::min(w, forecast.ahead.size() - 1)];
        point.expected += week * std::min(days, 7.0) / 7;
    }
    point.safety = z_of(service_level) * forecast.spread * std::sqrt(std::max(lead_days, 0) / 7.0);
    return point;
}

std::optional<int> days_of_cover(std::int64_t on_hand, const Forecast& forecast)
{
    double left = as_double(on_hand);
    if (left <= 0) return 0;
    int days = 0;
    for (const double week : forecast.ahead) {
        if (left < week) return days + static_cast<int>(left * 7 / week);
        left -= week;
        days += 7;
    }
    return std::nullopt;
}

} // namespace stow::supplies
