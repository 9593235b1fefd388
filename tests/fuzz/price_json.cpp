// Postage questions: refused with the member named, or read.
#include "core/intake/price_json.h"
#include "input.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    (void)stow::intake::read_price_question(stow::fuzz::text(data, size));
    return 0;
}
