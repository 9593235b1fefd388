// Whether sizes and weights are shown in millimetres and grams, or in inches and ounces. Of the application, as its
// language is; papers stay metric, which carriers and customs in Europe ask for.
#pragma once

#include <QString>

#include <optional>
#include <string_view>

class QCoreApplication;

namespace stow::words {

enum class Measures { metric, inches_and_ounces };

inline constexpr const char* remembered_measures = "units"; // in the book; empty: metric

std::string_view name_of(Measures measures); // "metric", "inches"
std::optional<Measures> measures(std::string_view name);

void use_measures(QCoreApplication& application, Measures measures);
Measures measures_in_use(); // metric where nothing was said

QString unit_of_weight(); // "g", "oz": what a bare number is taken for at the scale

} // namespace stow::words
