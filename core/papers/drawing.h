// Drawings of how a parcel goes together: isometric, layer by layer, and flat from the side, always to scale.
// Isometric: x runs to the lower right, y to the lower left, z up; the viewer looks along (-1, -1, -1).
#pragma once

#include "core/fitting/answer.h"
#include "core/measure/shape.h"
#include "core/papers/display_list.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

struct Arrangement { // an outer with what lies in it
    OuterForm form;
    std::optional<Length> cut_height;
    Length contents_thickness; // in sleeves and board mailers
    std::vector<fitting::Placement> placements;
    // How each placement looks; may be shorter than `placements`, the rest then look plain.
    struct Looks {
        int tint = 0;        // equal goods, equal tint
        Length wrap;         // drawn as a second outline this far inside
        bool ribbon = false; // a gift box
    };
    std::vector<Looks> looks;
};

// Tints by item name, in order of first appearance.
std::vector<Arrangement::Looks> looks_by_item(const std::vector<fitting::Placement>& placements);

// The layer of each placement, from 1: one more than the highest layer beneath it.
std::vector<int> layers(const std::vector<fitting::Placement>& placements);

// Indices of placements in the order a person puts them in from above: layer by layer, back to front. Nothing ever has
// to go under something already in.
std::vector<std::size_t> putting_in_order(const std::vector<fitting::Placement>& placements);

// The number of each placement in that order, from 1.
std::vector<int> numbers(const std::vector<fitting::Placement>& placements);

// An order in which to paint blocks seen from (1, 1, 1) so that what is nearer is painted later. Blocks that cover each
// other in a ring are cut; `whole` is the index of the block a part comes from. The blocks must not overlap.
struct Part {
    std::size_t whole = 0;
    Size at, size;
};
std::vector<Part> painting_order(const std::vector<fitting::Placement>& placements,
                                 const std::vector<std::size_t>& shown);

struct View {
    Extent extent;                      // the drawing is made as large as this allows, centred
    std::optional<int> up_to_layer;     // draw only these layers; nothing: all
    std::vector<std::size_t> highlight; // indices of placements
    bool number_items = true;
    std::optional<int> number_layer; // number only this layer; nothing: all that is shown
    double apart = 0;                // 0: as it lies; 1: each layer lifted clear of the one beneath, isometric only
    bool filler = false;             // hatch the empty space lightly
    int number_size = from_pt(10);
    int pen = 25;

    bool lit_up(std::size_t placement) const
    {
        return std::find(highlight.begin(), highlight.end(), placement) != highlight.end();
    }
};

// The drawing that suits the outer: cartons, gift boxes and board mailers isometric, mailers flat with the outline of
// their contents, tubes from the side with their section.
DisplayList draw(const Arrangement& arrangement, const View& view);

// Paper length of a real one: numerator hundredths of a millimetre for `denominator` tenths of a millimetre; 10/1 is
// 1:1.
struct Scale {
    std::int64_t numerator = 10, denominator = 1;
    int operator()(Length real) const;
};

// The largest scale at which outers of these closed sizes stand side by side, `between` apart, in `extent`.
Scale common_scale(const std::vector<Size>& closed, Extent extent, int between);

enum class Standing { chosen, passed_over, empty };

// An outer from its long side, standing on the lower edge of the list's extent, contents as they are seen. Passed over:
// dashed, with a cross, and what stayed out beside it if its size is given.
DisplayList side_view(const Arrangement& arrangement, const Scale& scale, Standing standing,
                      std::optional<Size> stayed_out = std::nullopt);

} // namespace stow::papers
