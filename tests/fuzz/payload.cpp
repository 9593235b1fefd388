// Scanned codes: ours are read and written back as they were, all others are named.
#include "core/papers/payload.h"
#include "input.h"

#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace stow::papers;
    const auto payload = parse_payload(stow::fuzz::text(data, size));
    if (!payload) return 0;
    const auto again = to_text(*payload);
    const auto parsed = again ? parse_payload(*again) : payload;
    if (!again || !parsed || !(*parsed == *payload)) std::abort();
    return 0;
}
