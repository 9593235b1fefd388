// One lambda for each alternative of a variant: std::visit(Overload{[](A) {...}, [](B) {...}}, variant).
#pragma once

namespace stow {

template <class... F>
struct Overload : F... {
    using F::operator()...;
};
template <class... F>
Overload(F...) -> Overload<F...>; // clang 14 does not deduce it by itself

} // namespace stow
