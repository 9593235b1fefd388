// One outer tried for one set of contents, in every manner its sheets may travel.
#pragma once

#include "core/planning/cushion.h"
#include "core/planning/pack.h"
#include "core/planning/wrapped_items.h"

#include <deque>
#include <vector>

namespace stow::planning {

struct Held { // the outer holds the load
    const Load* load = nullptr;
    fitting::Question question;
    fitting::Answer answer;
    bool squeezed = false;
};

struct Tried {
    std::optional<Held> held;
    fitting::Refusal refusal;   // otherwise
    bool more_may_help = false; // undecided only because the work given was used up
};

// The loads of one parcel, made once for each manner and shared by all outers.
class Attempts {
public:
    Attempts(const Bench& bench, const Task& task, const Contents& contents);

    // Every manner that suits the kind of outer, until one holds, with so much work for each (0: no bound). Answers
    // have passed the checker.
    Tried try_outer(const shop::Supply& outer, fitting::Effort effort, bool squeezed, std::uint64_t work);
    std::uint64_t work_done() const { return work_done_; }

    const Cushion& cushion() const { return cushion_; }
    // The load as it travels in this kind of outer when nothing is folded or pressed.
    const Load& plain_load(OuterKind kind) { return setting(manners_for(kind, false).front(), kind).load; }
    // No arrangement is thinner than this: the thickest of the items' thinnest sides.
    Length least_thickness(OuterKind kind);
    // How far the wrap of this item gives when pressed.
    Length gives(const std::string& item) const;

private:
    struct Setting {
        Manner manner;
        bool under_cushion = false;
        Load load;
        Length bed;
        std::optional<fitting::Resolved> in_lined, in_bare; // what lies in its gift boxes, once fitted
    };
    std::vector<Manner> manners_for(OuterKind kind, bool squeezed) const;
    Setting& setting(Manner manner, OuterKind kind);
    fitting::Answer ask(const fitting::Question& question, fitting::Effort effort, std::uint64_t work,
                        std::optional<fitting::Resolved>& content);

    const Bench& bench_;
    const Task& task_;
    const Contents& contents_;
    Cushion cushion_;
    bool rolls_ = false, folds_ = false;
    std::uint64_t work_done_ = 0;
    std::deque<Setting> settings_; // stays where it is while it grows
};

} // namespace stow::planning
