#include "core/fitting/asked.h"

#include <functional>
#include <string>

namespace stow::fitting {

namespace {

void mix(std::size_t& hash, std::size_t value)
{
    hash ^= value + 0x9e3779b97f4a7c15U + (hash << 6U) + (hash >> 2U); // as the constant of Fibonacci hashing
}

} // namespace

// Of what mostly differs; the rest is told apart by comparing.
std::size_t Asked::Hash::operator()(const Question& question) const
{
    const std::hash<std::string> of_text;
    std::size_t hash = 0;
    for (const Outer& outer : question.outers) mix(hash, of_text(outer.id));
    for (const Item& item : question.items) {
        mix(hash, of_text(item.id));
        mix(hash, static_cast<std::size_t>(item.count));
        mix(hash, static_cast<std::size_t>(item.weight.units));
        mix(hash, static_cast<std::size_t>(volume(bounding_size(item.shape)).units));
    }
    return hash;
}

const Answer* Asked::recall(const Question& question) const
{
    const auto found = answers_.find(question);
    return found == answers_.end() ? nullptr : &found->second;
}

void Asked::keep(const Question& question, const Answer& answer)
{
    answers_.emplace(question, answer);
}

} // namespace stow::fitting
