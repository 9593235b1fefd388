// Papers of an invented workshop, as plain and as awkward as they come; shared by the tests that read rendered papers.
#pragma once

#include "core/papers/bench_card.h"
#include "core/papers/command_cards.h"
#include "core/papers/customs.h"
#include "core/papers/gift_note.h"
#include "core/papers/hand_over.h"
#include "core/papers/label.h"
#include "core/papers/material_report.h"
#include "core/papers/need_list.h"
#include "core/papers/pick_list.h"
#include "core/papers/slip.h"

namespace stow::papers::samples {

inline Money euro(std::int64_t cents)
{
    return {cents, Currency()};
}

inline const Date day = std::chrono::sys_days(std::chrono::year(2026) / 11 / 25);

inline std::vector<std::string> sender()
{
    return {"Skerrywick Ink & Paper", "Netmakers' Row 4", "26899 Skerrywick"};
}

inline Slip plain_slip()
{
    Slip slip;
    slip.sender = sender();
    slip.contact = "hello@skerrywick.example";
    slip.to = {"Ines Halvard", "Lotsenweg 12", "18001 Ostermund"};
    slip.order_numbers = {"1042"};
    slip.ordered = day;
    slip.parcel = "2611-017";
    slip.lines = {{2, "Ink bottle, sea green", "50 ml", "", euro(1450)},
                  {2, "Notebook, ruled", "A5, thread-bound", "", euro(1800)},
                  {1, "Sealing wax, brick red", "", "engrave: I. H.", euro(950)}};
    slip.postage = euro(495);
    slip.code = "SB2:P:2611-017:A";
    return slip;
}

inline Slip long_slip()
{
    Slip slip = plain_slip();
    slip.parcel = "2612-204";
    slip.parts = 2;
    slip.order_numbers = {"A-2207-118", "A-2207-131"};
    slip.to = {"Aleksandrína Þorvaldsdóttir-Wintersberger zu Hohenfels", "Werkstätte für Buchbinderei und Kalligrafie",
               "Großherzogin-Elisabeth-Straße 117, Hinterhaus, 3. Obergeschoss links", "99084 Nebelbach an der Aue"};
    slip.lines.clear();
    for (int i = 1; i <= 40; ++i) {
        slip.lines.push_back({i % 7 == 0 ? 12 : 1 + i % 3,
                              i % 9 == 0 ? "Calligraphy nib assortment with brass reservoirs, pointed and broad edge, "
                                           "in a tin with a hinged lid"
                                         : "Ink bottle no. " + std::to_string(i),
                              i % 2 == 0 ? "30 ml, iron gall" : "", i % 11 == 0 ? "for Anna" : "", euro(850 + i * 15)});
    }
    slip.apart = {{1, "Print, harbour at night", "400 × 300, rolled", "", std::nullopt}};
    slip.code = "SB2:P:2612-204:A";
    return slip;
}

inline Slip gift_slip()
{
    Slip slip = plain_slip();
    slip.parcel = "2611-021";
    slip.gift = shop::Gift{
        "Oda Lind",
        "Dear Tove,\nthe colour is the sea off the pier on the morning you left. Write soon,\nand write long."};
    slip.to = {"Tove Amdal", "Brygga 3", "Lysvik"};
    return slip;
}

inline PickSheet pick_round()
{
    PickSheet sheet;
    sheet.day = day;
    sheet.round = 2;
    sheet.trays = {{"A", "2611-017", "Ines Halvard", false, ""},
                   {"B", "2611-018", "Pál Verrin", false, "Please no plastic, and could the wax be the darker red?"},
                   {"C", "2611-019", "Aleksandrína Þorvaldsdóttir-Wintersberger", true, ""},
                   {"D", "2611-020", "Tove Amdal", false, ""},
                   {"E", "2611-021", "Oda Lind", true, ""},
                   {"F", "2611-022", "Mikkel Aas", false, ""}};
    sheet.lines = {
        {"A1", "INK-SEA", "Ink bottle, sea green", "50 ml", "", {{"A", 2}, {"C", 1}, {"E", 12}}},
        {"A1", "INK-SOOT", "Ink bottle, soot black", "50 ml", "", {{"B", 1}}},
        {"A3", "INK-OX", "Ink bottle, ox blood", "30 ml", "", {{"A", 1}, {"B", 1}, {"C", 3}, {"D", 1}, {"F", 2}}},
        {"B2", "WAX-RED", "Sealing wax, brick red", "", "engrave: Anna", {{"C", 1}}},
        {"B2", "WAX-RED", "Sealing wax, brick red", "", "", {{"B", 2}}},
        {"B10",
         "NIB-SET",
         "Calligraphy nib assortment with brass reservoirs, pointed and broad edge",
         "tin with a hinged lid",
         "",
         {{"D", 1}, {"E", 1}}},
        {"C4", "NOTE-R", "Notebook, ruled", "A5, thread-bound", "", {{"A", 2}}},
        {"", "PRINT-H", "Print, harbour at night", "400 × 300, rolled", "", {{"F", 1}}}};
    return sheet;
}

inline PickSheet long_round()
{
    PickSheet sheet = pick_round();
    sheet.lines.clear();
    for (int i = 1; i <= 40; ++i) {
        sheet.lines.push_back({"K" + std::to_string((i + 2) / 3),
                               "G" + std::to_string(i),
                               "Good number " + std::to_string(i),
                               "",
                               "",
                               {{"A", i % 4 + 1}, {"D", 1}}});
    }
    return sheet;
}

inline fitting::Placement put(const std::string& item, int copy, Size at, Size size,
                              std::optional<fitting::Axis> axis = std::nullopt)
{
    return {item, copy, at, size, axis, {}};
}

inline BenchCard bench()
{
    BenchCard card;
    card.parcel = "2611-017";
    card.tray = "C";
    card.buyer = "Ines Halvard";
    card.town = "Ostermund";
    card.country = "DE";
    card.order_numbers = {"1042"};
    card.outer_name = "Carton K3";
    card.proven_smallest = true;
    Arrangement& a = card.arrangement;
    a.form.kind = OuterKind::carton;
    a.form.inner = {mm(220), mm(160), mm(120)};
    a.form.outer = {mm(226), mm(166), mm(126)};
    a.placements = {put("note", 1, {mm(4), mm(4), mm(2)}, {mm(210), mm(50), mm(20)}),
                    put("note", 2, {mm(4), mm(4), mm(22)}, {mm(210), mm(50), mm(20)}),
                    put("ink", 1, {mm(10), mm(60), mm(2)}, {mm(60), mm(60), mm(90)}, fitting::Axis::z),
                    put("ink", 2, {mm(74), mm(60), mm(2)}, {mm(60), mm(60), mm(90)}, fitting::Axis::z),
                    put("wax", 1, {mm(140), mm(60), mm(2)}, {mm(70), mm(70), mm(40)})};
    a.looks = looks_by_item(a.placements);
    a.looks[2].wrap = a.looks[3].wrap = mm(5);
    const std::vector<int> n = numbers(a.placements);
    card.steps = {{{}, 1, "Thank-you card", "", "", true, false, false, {}},
                  {{n[0]}, 1, "Notebook, ruled", "tissue, twine", "", false, false, false, {}},
                  {{n[2], n[3]}, 2, "Ink bottle, sea green", "double corrugated wrap", "", false, false, false, {}},
                  {{n[4]}, 1, "Sealing wax, brick red", "tissue", "engrave: I. H.", false, false, false, {}},
                  {{n[1]}, 1, "Notebook, ruled", "tissue, twine", "", false, false, false, {}}};
    card.filler = "shredded paper";
    card.filler_volume = millilitres(1400);
    card.tape = mm(800);
    card.weight = {grams(812), grams(14)};
    card.closed = {mm(228), mm(168), mm(128)};
    card.service = "Skua Post, tracked packet";
    card.postage = euro(460);
    card.gift = true;
    card.note = "Please leave it with the harbour master if nobody opens.";
    card.glass = card.liquid = true;
    card.code = "SB2:P:2611-017:A";
    return card;
}

inline BenchCard mailer_bench()
{
    BenchCard card = bench();
    card.parcel = "2611-018";
    card.tray = "";
    card.gift = false;
    card.note.clear();
    card.glass = card.liquid = false;
    card.outer_name = "Padded mailer P2";
    Arrangement& a = card.arrangement;
    a = {};
    a.form.kind = OuterKind::padded_mailer;
    a.form.inner = {mm(260), mm(180), mm(0)};
    a.form.outer = {mm(270), mm(200), mm(8)};
    a.form.wall = mm(4);
    a.contents_thickness = mm(11);
    a.placements = {put("print", 1, {}, {mm(200), mm(140), mm(3)}),
                    put("card", 1, {mm(10), mm(10), mm(3)}, {mm(100), mm(70), mm(1)}),
                    put("nib", 1, {mm(120), mm(20), mm(3)}, {mm(40), mm(10), mm(8)})};
    a.looks = looks_by_item(a.placements);
    card.steps = {{{1}, 1, "Print, pier", "glassine", "", false, false, false, {}},
                  {{2}, 1, "Card, gift note", "", "", false, false, false, {}},
                  {{3}, 1, "Nib, pointed", "", "", false, false, false, {}}};
    card.filler.clear();
    card.tape = {};
    card.service.clear();
    return card;
}

inline BenchCard tube_bench()
{
    BenchCard card = mailer_bench();
    card.parcel = "2611-019";
    card.outer_name = "Tube T2";
    Arrangement& a = card.arrangement;
    a = {};
    a.form.kind = OuterKind::tube;
    a.form.inner = {mm(80), mm(80), mm(430)};
    a.form.outer = {mm(84), mm(84), mm(440)};
    a.placements = {put("print", 1, {mm(1), mm(20), mm(10)}, {mm(40), mm(40), mm(300)}, fitting::Axis::z),
                    put("map", 1, {mm(42), mm(22), mm(10)}, {mm(36), mm(36), mm(400)}, fitting::Axis::z)};
    a.looks = looks_by_item(a.placements);
    card.steps = {{{1}, 1, "Print, harbour at night", "glassine", "", false, false, true, {}},
                  {{2}, 1, "Chart of the sound", "glassine", "", false, false, true, {}}};
    return card;
}

inline LabelData home_label()
{
    return {{"Ines Halvard", "Lotsenweg 12", "18001 Ostermund"},
            false,
            sender(),
            "2611-017",
            "Skua Post, tracked packet",
            1,
            1,
            "SB2:L:2611-017:1:A"};
}

inline LabelData longest_label()
{
    std::vector<std::string> from{"Skerrywick Ink & Paper, Workshop of Bookbinding and Calligraphy",
                                  "Netmakers' Row 4, back yard, second staircase", "26899 Skerrywick-on-the-Sound",
                                  "GERMANY"};
    return {{"Aleksandrína Þorvaldsdóttir-Wintersberger zu Hohenfels", "Werkstätte für Buchbinderei und Kalligrafie",
             "Großherzogin-Elisabeth-Straße 117, Hinterhaus, 3. Obergeschoss links", "99084 NEBELBACH AN DER AUE",
             "SOUTH GEORGIA AND SOUTH SANDWICH ISLANDS"},
            true,
            from,
            "2611-018",
            "Skua Post, tracked packet, cover to 100 EUR, signed for",
            12,
            13,
            "SB2:L:2611-018:2:A",
            2};
}

// Seven lines, none of them long.
inline LabelData seven_line_label()
{
    LabelData label = longest_label();
    label.to = {"Pál Verrin",      "Pier Bindery",  "c/o Amdal", "Kaigata 117 B",
                "2nd floor, left", "0150 SKERHAVN", "NORWAY"};
    return label;
}

// An address from right to left, with a town's code and a country that do not run so.
inline LabelData hebrew_label()
{
    LabelData label = longest_label();
    label.to = {"נועה ברק", "סדנת הנייר", "רחוב הנמל 12", "31000", "ISRAEL"};
    label.service = "Skua Post, packet";
    label.part = label.parts = 1;
    return label;
}

inline LabelData japanese_label()
{
    LabelData label = hebrew_label();
    label.to = {"〒154-0023", "東京都港区", "海岸通り三丁目12-3", "紙とインクの工房", "波止場 みなと", "JAPAN"};
    return label;
}

// More than any label has room for at a good size.
inline LabelData overlong_label()
{
    LabelData label = longest_label();
    label.to.insert(label.to.begin() + 2, 2,
                    "c/o Association of the Friends of Ink, Paper and Wax, Department of Nibs");
    return label;
}

inline LabelData abroad_label()
{
    std::vector<std::string> from = sender();
    from.emplace_back("GERMANY");
    return {{"Aleksandrína Þorvaldsdóttir-Wintersberger zu Hohenfels", "Werkstätte für Buchbinderei und Kalligrafie",
             "Großherzogin-Elisabeth-Straße 117, Hinterhaus, 3. Obergeschoss links", "9990 Nebelbach", "AUSTRIA"},
            true,
            from,
            "2611-018",
            "Skua Post, tracked packet, cover to 100 EUR",
            2,
            3,
            "SB2:L:2611-018:2:A",
            2};
}

inline HandOverList list_of(int parcels)
{
    HandOverList list;
    list.carrier = "Skua Post";
    list.number = "2611-25-1";
    list.date = day;
    list.time = std::chrono::minutes(16 * 60 + 30);
    list.sender = sender();
    for (int i = 1; i <= parcels; ++i) {
        const std::string running = std::to_string(100 + i);
        list.lines.push_back({"2611-" + running,
                              i % 6 == 0 ? "Aleksandrína Þorvaldsdóttir-Wintersberger zu Hohenfels" : "Pál Verrin",
                              "0" + running + " Skerhavn · NO", "tracked packet",
                              i % 5 == 0 ? "" : "SK 4417 " + running + " 882 NO", grams(200 + 37 * i)});
    }
    return list;
}

inline CustomsData customs()
{
    CustomsData data;
    data.from = sender();
    data.from.emplace_back("GERMANY");
    data.to = {"Pál Verrin", "Kaigata 1", "0150 Skerhavn", "NORWAY"};
    data.contact = "hello@skerrywick.example";
    data.parcel = "2611-018";
    data.lines = {
        {2, "Writing ink in glass bottles, 50 ml", grams(420), euro(2900), "321590", "DE"},
        {1, "Paper notebook, A5, with a thread-bound spine and marbled covers", grams(310), euro(1800), "482010", "DE"},
        {1, "", grams(40), std::nullopt, "", ""}};
    data.gross = grams(912);
    data.date = day;
    return data;
}

inline NeedList reorder()
{
    NeedList list;
    list.day = day;
    list.groups = {{"Kartonwerk Nebelbach",
                    {{"Carton K3", "K3", "25 a pack, 6 days", "4", "50"},
                     {"Shredded paper, unbleached, from our own offcuts and the mill's", "SHRED", "10 kg a bag",
                      "1.2 kg", "10 kg"}}},
                   {"", {{"Label roll", "LAB", "", "80", "500"}}}};
    for (int i = 1; i <= 40; ++i) {
        list.groups[0].lines.push_back(
            {"Supply no. " + std::to_string(i), "S" + std::to_string(i), "", std::to_string(i), "100"});
    }
    return list;
}

inline MaterialReport materials(int countries = 2)
{
    using M = shop::Material;
    MaterialReport report{day - std::chrono::days(28), day, 117, {}};
    report.lines = {{"DE", M::paper, grams(700), {}, grams(200)},
                    {"DE", M::glass, grams(156), grams(156), {}},
                    {"FR", M::paper, grams(500), {}, {}}};
    for (int i = 2; i < countries; ++i)
        report.lines.push_back({"X" + std::to_string(10 + i), M::wood, grams(1), {}, {}});
    return report;
}

} // namespace stow::papers::samples
