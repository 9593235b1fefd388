// Questions whose answer is known, because the arrangement came first and the outer was drawn around it: over all
// turns, gaps, linings, beds, shapes and kinds of outers. Nothing of the kind may ever be answered "cannot fit".
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"
#include "tests/bench/random.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace stow::bench {

enum class Scene {
    carton,       // cells of a box cut up, a body in each
    cut_carton,   // the same, in a carton that must be cut down
    gift_box,     //
    board_mailer, //
    mailer,       // the block of the contents, in a sleeve just wide enough
    padded_mailer,
    tube_bundle,  // the same, in the circle around its section
    tube_rolls,   // a ring of equal rolls, with or without one in the middle; or sheets rolled up
    jars_in_rows, // upright, rows shifted by half
    jars_zigzag,  // upright, of several diameters, each touching the last and a wall in turn
    gift_inside   // a gift box with its content beside other things in a carton
};
inline constexpr std::array all_scenes{Scene::carton,       Scene::cut_carton, Scene::gift_box,
                                       Scene::board_mailer, Scene::mailer,     Scene::padded_mailer,
                                       Scene::tube_bundle,  Scene::tube_rolls, Scene::jars_in_rows,
                                       Scene::jars_zigzag,  Scene::gift_inside};
std::string_view name_of(Scene scene);

struct Constructed {
    fitting::Question question;
    std::string outer;
    std::optional<Length> cut_height;
    std::vector<fitting::Placement> placements; // sound under `support` none
};

// Nothing when the construction did not work out (some zigzags touch themselves).
std::optional<Constructed> construct(Dice& dice, Scene scene);

} // namespace stow::bench
