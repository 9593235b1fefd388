#include "core/intake/document.h"

#include "core/intake/json_members.h"

namespace stow::intake {

template <class T>
std::string to_document(const T& value)
{
    // Text that is not UTF-8 is kept readable rather than refused: it has come this far.
    return written(value).dump(-1, ' ', false, Json::error_handler_t::replace);
}

template <class T>
tl::expected<T, std::string> from_document(std::string_view text)
{
    try {
        return read_or_why<T>(Json::parse(text));
    } catch (const Json::exception& bad) {
        return tl::unexpected(std::string(bad.what()));
    }
}

#define STOW_DOCUMENT(T)                                                                                               \
    template std::string to_document(const T&);                                                                        \
    template tl::expected<T, std::string> from_document<T>(std::string_view);

STOW_DOCUMENT(shop::Good)
STOW_DOCUMENT(shop::Supply)
STOW_DOCUMENT(shop::Wrapping)
STOW_DOCUMENT(std::vector<shop::HouseRule>)
STOW_DOCUMENT(shop::House)
STOW_DOCUMENT(shop::Dispatch)
STOW_DOCUMENT(weighing::Lesson)
STOW_DOCUMENT(shop::Address)
STOW_DOCUMENT(shop::Order)
STOW_DOCUMENT(postage::RateSheet)
STOW_DOCUMENT(fitting::Question)
STOW_DOCUMENT(fitting::Answer)
STOW_DOCUMENT(planning::ParcelPlan)
STOW_DOCUMENT(records::PlannedPart)

} // namespace stow::intake
