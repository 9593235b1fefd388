#include "core/papers/label.h"

#include "core/papers/address.h"
#include "core/papers/payload.h"
#include "core/papers/qr.h"
#include "core/papers/sheet.h"

namespace stow::papers {

namespace {

constexpr int least_size = from_pt(11), most_size = from_pt(17);
constexpr int usual_address_top = from_mm(50);
constexpr int country_gap = from_mm(2);

// Height of the address at this size, wrapped.
int height_at(const Sheet& s, const LabelData& label, int size)
{
    int height = label.abroad ? country_gap : 0;
    for (std::size_t i = 0; i < label.to.size(); ++i) {
        const bool bold = i == 0 || (label.abroad && i + 1 == label.to.size());
        height += s.paragraph_height(s.width(), label.to[i], {size, bold ? Face::bold : Face::regular, Role::ink});
    }
    return height;
}

bool one_line_each(const Sheet& s, const LabelData& label, int size)
{
    return std::all_of(label.to.begin(), label.to.end(), [&](const std::string& line) {
        return s.width_of(line, {size, Face::bold, Role::ink}) <= s.width();
    });
}

// The largest size at which no line breaks; where none is, the largest at which the broken lines have room.
int address_size(const Sheet& s, const LabelData& label, int room)
{
    for (int size = most_size; size >= least_size; --size) {
        if (one_line_each(s, label, size) && height_at(s, label, size) <= room) return size;
    }
    for (int size = from_pt(14); size > least_size; --size) {
        if (height_at(s, label, size) <= room) return size;
    }
    return least_size;
}

} // namespace

LabelData label(const shop::Parcel& parcel, const shop::Address& to, const shop::House& house,
                const std::string& service, int part, int parts)
{
    LabelData made;
    made.to = address_lines(to, house.address.country);
    made.abroad = to.country != house.address.country;
    made.from = address_lines(house.address, to.country);
    made.parcel = parcel.number;
    made.service = service;
    made.part = part;
    made.parts = parts;
    made.code = to_text(Payload{Payload::Kind::parcel, parcel.number}).value_or("");
    return made;
}

DisplayList lay_out(const LabelData& label, const Words& words, const TextMeasure& measure, Format format)
{
    constexpr Style sender{from_pt(9), Face::regular, Role::ink};
    Sheet s(format, words, measure, nullptr);
    s.line(s.left(), s.y(), std::string(words(Word::from)), Style{from_pt(9), Face::bold, Role::ink});
    s.down(s.line_height(sender));
    for (const std::string& line : label.from) s.down(s.paragraph(s.left(), s.y(), s.width(), line, sender));

    // The foot takes what it needs, the address the rest.
    constexpr int module = 75; // six dots a module at 203 dpi: read at arm's length, and off a worn roll
    constexpr Style number{from_pt(18), Face::bold, Role::ink}, strong{from_pt(11), Face::bold, Role::ink},
        plain{from_pt(11), Face::regular, Role::ink};
    std::vector<std::pair<std::string, Style>> foot{{label.parcel, number}};
    if (label.parts > 1) {
        foot.emplace_back(words.with(Word::part, std::to_string(label.part), std::to_string(label.parts)), strong);
    }
    if (!label.service.empty()) foot.emplace_back(label.service, plain);
    if (label.reprint) foot.emplace_back(std::string(words(Word::reprint)), sender);
    const std::optional<QrCode> code = qr_code(label.code);
    const int edge = code ? printed_edge(*code, module) : 0;
    const int foot_width = s.width() - std::max(0, edge - quiet_modules * module);
    int foot_height = 0;
    for (const auto& [text, style] : foot) foot_height += s.paragraph_height(foot_width, text, style);
    const int foot_top = s.bottom() - std::max(foot_height, edge - 2 * quiet_modules * module);
    const int floor = foot_top - quiet_modules * module;

    const int address_top = std::max(usual_address_top, s.y() + from_mm(12)); // lower under a long sender
    s.rule(address_top - from_mm(9), Role::ink);
    s.line(s.left(), address_top - from_mm(7), std::string(words(Word::to)), sender);
    const int size = address_size(s, label, floor - from_mm(2) - address_top);
    int y = address_top;
    for (std::size_t i = 0; i < label.to.size(); ++i) {
        const bool country = label.abroad && i + 1 == label.to.size();
        if (country) y += country_gap;
        const Style style{size, i == 0 || country ? Face::bold : Face::regular, Role::ink};
        y += s.paragraph(s.left(), y, s.width(), label.to[i], style);
    }

    s.rule(floor, Role::ink);
    s.code({s.right() + quiet_modules * module, floor}, label.code, module);
    y = foot_top;
    for (const auto& [text, style] : foot) y += s.paragraph(s.left(), y, foot_width, text, style);
    return std::move(s.page());
}

Document on_a4_sheets(const std::vector<LabelData>& labels, int start_at, const Words& words,
                      const TextMeasure& measure)
{
    const Extent sheet = extent_of(Format::a4);
    Document document;
    int place = std::clamp(start_at, 1, 4) - 1;
    for (const LabelData& one : labels) {
        if (document.pages.empty() || place == 4) {
            if (place == 4) place = 0;
            document.pages.push_back({sheet, {}});
        }
        // Quarters of the sheet; A6 is half a millimetre lower than a quarter of A4.
        const Point corner{place % 2 == 0 ? 0 : sheet.width / 2, place < 2 ? 0 : sheet.height / 2};
        document.pages.back().add(lay_out(one, words, measure, Format::a6), corner);
        ++place;
    }
    return document;
}

} // namespace stow::papers
