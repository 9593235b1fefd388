// Packing questions: refused with the member named, or answered within a little work.
#include "core/intake/fit_json.h"
#include "core/fitting/fit.h"
#include "input.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace stow;
    const auto request = intake::read_fit_question(fuzz::text(data, size), {});
    if (!request) return 0;
    int pieces = 0;
    for (const auto& item : request->question.items) pieces += item.count;
    if (pieces > 40) return 0; // long, but nothing new
    Run run({.time = std::nullopt, .work = 200});
    fitting::fit(request->question, run);
    return 0;
}
