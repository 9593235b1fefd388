// Values of the shop as JSON documents and back, complete and exact: how the shop book stores what it reads and writes
// whole. Lengths in 0.1 mm, weights in 0.1 g, money in minor units, as in the values themselves.
#pragma once

#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace stow::intake {

// Made for: Good, Supply, Wrapping, std::vector<HouseRule>, House, Dispatch, Lesson, Address, Order, RateSheet,
// Question, Answer and ParcelPlan (that one through plan_json.h, which adds a version). Equal values give equal
// documents.
template <class T>
std::string to_document(const T& value);

// In words of the JSON library where the text is not such a document.
template <class T>
tl::expected<T, std::string> from_document(std::string_view text);

} // namespace stow::intake
