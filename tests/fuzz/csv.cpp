// Tables: whatever their bytes, they are read or their faults are named; what was read is taken in as goods, supplies
// and orders by the columns guessed.
#include "core/intake/goods_csv.h"
#include "core/intake/orders_csv.h"
#include "core/intake/supplies_csv.h"
#include "input.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace stow;
    auto in = fuzz::stream(data, size);
    const intake::Csv csv = intake::read_csv(in, "fuzz.csv");
    intake::read_goods(csv, {});
    intake::read_supplies(csv, Currency{});
    intake::read_orders(csv, intake::guess_columns(csv, "Shop"));
    return 0;
}
