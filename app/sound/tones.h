// The two tones of the bench, told apart by pitch, number and length: right is one high short one, wrong two low long
// ones.
#pragma once

#include <cstdint>
#include <vector>

namespace stow::sound {

enum class Tone { right, wrong };

inline constexpr int samples_a_second = 44'100;

// One channel, signed 16 bits. Begins and ends in silence, so that it does not click.
std::vector<std::int16_t> samples(Tone tone);

} // namespace stow::sound
