// What each paper is called in file names, on the command line, in the count of prints and in the settings of printers.
#pragma once

namespace stow::paper_key {

inline constexpr const char* pick_list = "pick-list";
inline constexpr const char* pick_list_by_order = "pick-list-by-order";
inline constexpr const char* packing_slips = "packing-slips";
inline constexpr const char* bench_cards = "bench-cards";
inline constexpr const char* labels = "labels";
inline constexpr const char* return_labels = "return-labels";
inline constexpr const char* gift_notes = "gift-notes";
inline constexpr const char* customs = "customs";
inline constexpr const char* hand_over_list = "hand-over-list";
inline constexpr const char* reorder_list = "reorder-list";
inline constexpr const char* making_list = "making-list";
inline constexpr const char* packaging = "packaging";
inline constexpr const char* paper_box = "paper-box";
inline constexpr const char* command_cards = "command-cards";

} // namespace stow::paper_key
