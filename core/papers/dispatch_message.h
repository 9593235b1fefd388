// What the buyer is told when the parcel is on its way: a text of hers with its gaps filled in.
#pragma once

#include "core/papers/words.h"
#include "core/shop/dispatch.h"

#include <map>
#include <optional>
#include <string>

namespace stow::papers {

struct MessageFacts {
    std::string name, order, number, carrier, service, workshop;
    std::optional<Date> arrives; // at the latest, by what the carrier says
};

// The text in the buyer's language, else the first there is; empty where there is none. Gaps are {name}, {order},
// {number}, {carrier}, {service}, {arrives}, {workshop}; a gap of another name stays as it is. A line whose only gap
// has nothing to say is left out.
std::string dispatch_message(const std::vector<shop::DispatchText>& texts, Language language,
                             const MessageFacts& facts);

} // namespace stow::papers
