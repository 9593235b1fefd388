// Names by which things of the shop are known; each kind its own type.
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace stow::shop {

template <class Kind>
struct Code { // as she writes it: "INK-SEA", "K3"
    std::string text;
    friend auto operator<=>(const Code&, const Code&) = default;
    bool empty() const { return text.empty(); }
};
using GoodCode = Code<struct GoodKind>;
using SupplyCode = Code<struct SupplyCodeKind>;
using WrappingCode = Code<struct WrappingKind>;

template <class Kind>
struct Id { // a row of the shop book
    std::int64_t value = 0;
    friend auto operator<=>(Id, Id) = default;
};
using OrderId = Id<struct OrderKind>;
using ParcelId = Id<struct ParcelKind>;
using ListId = Id<struct HandOverListKind>;

} // namespace stow::shop
