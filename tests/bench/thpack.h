// Container loading problems: the text format of OR-Library's thpack files and the generator they were made with.
//   Bischoff & Ratcliff, "Issues in the development of approaches to container loading", Omega 23(4) 1995, 377-390
//   (classes of 3 to 20 types); Davies & Bischoff, EJOR 114(3) 1999, 509-527 (30 to 100 types).
// One container of 587×233×220 and 100 problems a class. Lengths are whole units of the file.
#pragma once

#include "core/fitting/question.h"

#include <array>
#include <cstdint>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace stow::bench {

struct BoxType {
    std::array<std::int64_t, 3> edge{};
    std::array<bool, 3> vertical{}; // may that edge stand?
    int count = 0;
    friend bool operator==(const BoxType&, const BoxType&) = default;
};

struct ContainerProblem {
    int number = 0;
    std::optional<std::int64_t> seed; // thpack8 has none
    std::array<std::int64_t, 3> container{};
    std::vector<BoxType> types;
    friend bool operator==(const ContainerProblem&, const ContainerProblem&) = default;
};

// Classes 1 to 15 have 3, 5, 8, 10, 12, 15, 20, 30, 40, ... 100 types.
int types_of_class(int br_class);

// Problem 1 to 100 of the class with that many types.
ContainerProblem bischoff_ratcliff(int types, int problem);

// Throws std::runtime_error with the line that cannot be read.
std::vector<ContainerProblem> read_thpack(std::istream& in);
// With the blanks and line ends of the published files.
void write_thpack(std::ostream& out, const std::vector<ContainerProblem>& problems);

// Item "1", "2", ... by type; one carton "container". A unit of the file is a unit of length.
fitting::Question question_of(const ContainerProblem& problem, fitting::Support support = fitting::Support::none);

std::int64_t container_volume(const ContainerProblem& problem);
std::int64_t cargo_volume(const ContainerProblem& problem);

} // namespace stow::bench
