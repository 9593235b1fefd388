// The bytes of one try, as the readers take them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <sstream>
#include <string>
#include <string_view>

namespace stow::fuzz {

inline std::string_view text(const std::uint8_t* data, std::size_t size)
{
    return {reinterpret_cast<const char*>(data), size};
}
inline std::istringstream stream(const std::uint8_t* data, std::size_t size)
{
    return std::istringstream(std::string(text(data, size)));
}

} // namespace stow::fuzz
