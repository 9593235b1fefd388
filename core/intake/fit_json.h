// One packing question as JSON, and its answer: the stateless `stowbench fit`. Members, defaults and limits:
// DEVELOPERS.md, "fit: question". Numbers are read by their shortest decimal text, never through rounding of binary
// fractions: what goes in is rounded up to 0.1 mm (0.1 g), what must hold it is rounded down.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"
#include "core/intake/problem.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace stow::intake {

struct FitRequest {
    fitting::Question question;
    std::optional<std::chrono::milliseconds> time = std::chrono::milliseconds(1000); // nothing: time_ms was 0
    std::uint64_t work = 0;
};

struct FitLimits {
    std::size_t bytes = 8U << 20U;
    int pieces = 500;        // content of items included
    int nesting = 8;         // items within items
    std::int64_t metres = 5; // the longest edge
};

// The problem names the member by its path, "items[2].size_mm", in `column`.
tl::expected<FitRequest, Problem> read_fit_question(std::string_view json, const FitLimits& limits = {});

std::string write_fit_answer(const FitRequest& request, const fitting::Answer& answer, double milliseconds);

} // namespace stow::intake
