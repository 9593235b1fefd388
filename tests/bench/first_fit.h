// The plain baseline: pieces by falling volume, each at the first corner where it goes in, lowest first. First fit
// decreasing is the textbook rule (Johnson 1974, for one dimension); corners are those left by the pieces put before.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"

#include <optional>
#include <vector>

namespace stow::bench {

class FirstFit {
public:
    FirstFit(const Size& inner, bool full_support) : inner_(inner), full_support_(full_support) {}

    // At the first corner that takes one of the turned sizes; false when none does.
    bool put(const std::vector<Size>& turned);
    const std::vector<fitting::Placement>& placed() const { return placed_; }
    Volume volume_inside() const { return volume_; }

private:
    bool free_at(const Size& at, const Size& size) const;
    bool supported(const Size& at, const Size& size) const;

    Size inner_;
    bool full_support_;
    std::vector<Size> corners_{{}}; // by z, y, x
    std::vector<fitting::Placement> placed_;
    Volume volume_;
};

struct LoosePiece {
    std::string item;
    int copy = 1;
    std::vector<Size> turned;
    Volume volume;
};
// All pieces of a question by falling volume, ties as they come.
std::vector<LoosePiece> pieces_by_volume(const fitting::Question& question);

// Index of the first outer, by volume inside, that takes all; cartons and blocks, without gap, lining and bed.
std::optional<std::size_t> first_fit_outer(const fitting::Question& question);
// As much as goes into the first outer.
Volume first_fit_filled(const fitting::Question& question);
// Outers of the first kind that are needed, each piece in the first one that takes it.
int first_fit_bins(const fitting::Question& question);

} // namespace stow::bench
