// Reports of a scale: a weight or a fault, and over time one settled weight.
#include "core/weighing/scale_report.h"
#include "input.h"

#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    (void)stow::weighing::read_scale_report(std::vector<std::uint8_t>(data, data + size));
    return 0;
}
