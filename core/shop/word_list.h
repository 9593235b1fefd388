// An enum and the words it is written with, both ways from one table.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

namespace stow::shop {

template <class Enum, std::size_t N>
using WordList = std::array<std::pair<Enum, std::string_view>, N>;

template <class Enum, std::size_t N>
constexpr std::string_view word_for(const WordList<Enum, N>& list, Enum value)
{
    for (const auto& [known, word] : list) {
        if (known == value) return word;
    }
    return {};
}

template <class Enum, std::size_t N>
constexpr std::optional<Enum> value_of(const WordList<Enum, N>& list, std::string_view word)
{
    for (const auto& [value, known] : list) {
        if (known == word) return value;
    }
    return std::nullopt;
}

} // namespace stow::shop
