#include "core/fitting/asked.h"

#include <boost/container_hash/hash.hpp>

namespace stow::fitting {

// Of what mostly differs; the rest is told apart by comparing.
std::size_t Asked::Hash::operator()(const Question& question) const
{
    std::size_t hash = 0;
    for (const Outer& outer : question.outers) boost::hash_combine(hash, outer.id);
    for (const Item& item : question.items) {
        boost::hash_combine(hash, item.id);
        boost::hash_combine(hash, item.count);
        boost::hash_combine(hash, item.weight.units);
        boost::hash_combine(hash, volume(bounding_size(item.shape)).units);
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
