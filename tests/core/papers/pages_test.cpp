// What holds for every paper: nothing lost, nothing over anything else, nothing off the sheet, nothing too small.
#include "tests/core/papers/fixed_measure.h"
#include "tests/core/papers/samples.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace stow::papers {
namespace {

const FixedMeasure measure;

struct Paper {
    std::string name;
    Document document;
    bool numbered = true; // says "Page 1 of 2" where it has several
};

std::vector<Paper> every_paper()
{
    std::vector<Paper> papers;
    for (const Language language : all_languages) {
        const Words words(language);
        for (const Format format : {Format::a4, Format::letter}) {
            const std::string suffix =
                " " + std::string(code_of(language)) + std::string(format == Format::a4 ? " A4" : " Letter");
            const auto add = [&](const std::string& name, Document d) {
                papers.push_back({name + suffix, std::move(d), true});
            };
            add("slip", lay_out(samples::plain_slip(), format, words, measure));
            add("long slip", lay_out(samples::long_slip(), format, words, measure));
            add("gift slip", lay_out(samples::gift_slip(), format, words, measure));
            add("pick", lay_out(samples::pick_round(), format, words, measure));
            add("long pick", lay_out(samples::long_round(), format, words, measure));
            add("pick by order", lay_out_by_order(samples::pick_round(), format, words, measure));
            add("long pick by order", lay_out_by_order(samples::long_round(), format, words, measure));
            add("bench", lay_out(samples::bench(), format, words, measure));
            add("mailer", lay_out(samples::mailer_bench(), format, words, measure));
            add("tube", lay_out(samples::tube_bench(), format, words, measure));
            add("customs", lay_out(samples::customs(), format, words, measure));
            add("reorder", lay_out(samples::reorder(), format, words, measure));
            add("materials", lay_out(samples::materials(40), format, words, measure));
            add("list of 1", lay_out(samples::list_of(1), format, words, measure));
            add("list of 40", lay_out(samples::list_of(40), format, words, measure));
        }
        Document labels;
        labels.pages = {lay_out(samples::home_label(), words, measure),
                        lay_out(samples::abroad_label(), words, measure),
                        lay_out(samples::abroad_label(), words, measure, shop::LabelForm::single_a6)};
        for (const shop::LabelForm form : shop::all_label_forms) {
            for (LabelData label : {samples::home_label(), samples::abroad_label(), samples::longest_label(),
                                    samples::overlong_label()}) {
                label.marks = {HandlingMark::fragile, HandlingMark::this_way_up, HandlingMark::keep_from_sun,
                               HandlingMark::keep_dry};
                labels.pages.push_back(lay_out(label, words, measure, form));
                label.returns = true;
                label.print = 13;
                labels.pages.push_back(lay_out(label, words, measure, form));
            }
        }
        papers.push_back({"labels", std::move(labels), false});
        papers.push_back(
            {"label sheets",
             lay_out(std::vector<LabelData>(5, samples::abroad_label()), 3, words, measure, shop::LabelForm::a4_of_4),
             false});
        papers.push_back({"command cards", command_cards(Format::a4, words, measure), false});
        papers.push_back({"gift note", gift_note(*samples::gift_slip().gift, measure), false});
    }
    return papers;
}

std::vector<TextLine> texts(const DisplayList& page)
{
    std::vector<TextLine> found;
    for (const Mark& mark : page.marks) {
        if (const auto* text = std::get_if<TextLine>(&mark)) found.push_back(*text);
    }
    return found;
}

std::string all_text(const Document& document)
{
    std::string text;
    for (const DisplayList& page : document.pages) {
        for (const TextLine& line : texts(page)) text += line.text + "\n";
    }
    return text;
}

// Without blanks, so that wrapped words are found.
bool says(const Document& document, const std::string& what)
{
    const auto squeezed = [](const std::string& text) {
        std::string kept;
        for (const char c : text) {
            if (c != ' ' && c != '\n') kept += c;
        }
        return kept;
    };
    return squeezed(all_text(document)).find(squeezed(what)) != std::string::npos;
}

Box area(const TextLine& line)
{
    const int width = measure.width(line.text, line.style);
    int left = line.at.x;
    if (line.align == Align::centre) left -= width / 2;
    if (line.align == Align::end) left -= width;
    // Letters reach from 0.75 em above the baseline to 0.25 em below it.
    return {{left, line.at.y - line.style.size * 3 / 4}, {left + width, line.at.y + line.style.size / 4}};
}

bool overlap(const Box& a, const Box& b)
{
    return a.least.x < b.most.x && b.least.x < a.most.x && a.least.y < b.most.y && b.least.y < a.most.y;
}

TEST(EveryPaper, KeepsItsTextsApart)
{
    for (const Paper& paper : every_paper()) {
        for (const DisplayList& page : paper.document.pages) {
            const auto lines = texts(page);
            for (std::size_t i = 0; i < lines.size(); ++i) {
                for (std::size_t j = 0; j < i; ++j) {
                    EXPECT_FALSE(overlap(area(lines[i]), area(lines[j])))
                        << paper.name << ": \"" << lines[i].text << "\" on \"" << lines[j].text << '"';
                }
            }
        }
    }
}

TEST(EveryPaper, KeepsClearOfTheEdges)
{
    for (const Paper& paper : every_paper()) {
        for (const DisplayList& page : paper.document.pages) {
            const int edge = from_mm(5); // what common printers cannot reach (common practice, no source)
            std::vector<Box> boxes{*bounds(page)};
            for (const TextLine& line : texts(page)) boxes.push_back(area(line));
            for (const Box& box : boxes) {
                EXPECT_GE(box.least.x, edge) << paper.name;
                EXPECT_GE(box.least.y, edge) << paper.name;
                EXPECT_LE(box.most.x, page.extent.width - edge) << paper.name;
                EXPECT_LE(box.most.y, page.extent.height - edge) << paper.name;
            }
        }
    }
}

TEST(EveryPaper, SetsNothingUnderNinePoints)
{
    for (const Paper& paper : every_paper()) {
        for (const DisplayList& page : paper.document.pages) {
            for (const TextLine& line : texts(page)) EXPECT_GE(line.style.size, from_pt(9)) << paper.name << line.text;
        }
    }
}

TEST(EveryPaper, KeepsItsCodesLargeAndFree)
{
    for (const Paper& paper : every_paper()) {
        for (const DisplayList& page : paper.document.pages) {
            for (const Mark& mark : page.marks) {
                const auto* code = std::get_if<Modules>(&mark);
                if (code == nullptr) continue;
                EXPECT_GE(code->module, 50) << paper.name; // 0.5 mm: 4 dots at 200 dpi (qrcode.com, cell size)
                const int quiet = 4 * code->module, edge = code->side * code->module;
                const Box zone{{code->at.x - quiet, code->at.y - quiet},
                               {code->at.x + edge + quiet, code->at.y + edge + quiet}};
                EXPECT_LE(zone.most.x, page.extent.width) << paper.name;
                for (const TextLine& line : texts(page))
                    EXPECT_FALSE(overlap(zone, area(line))) << paper.name << line.text;
                for (const Mark& other : page.marks) {
                    const auto* path = std::get_if<Path>(&other);
                    if (path == nullptr) continue;
                    for (const Point& p : path->points) {
                        const bool in_zone =
                            p.x > zone.least.x && p.x < zone.most.x && p.y > zone.least.y && p.y < zone.most.y;
                        EXPECT_FALSE(in_zone) << paper.name << ": a line in the quiet zone";
                    }
                }
            }
        }
    }
}

TEST(EveryPaper, NumbersItsPagesWhereThereAreSeveral)
{
    for (const Paper& paper : every_paper()) {
        if (!paper.numbered) continue;
        const std::size_t count = paper.document.pages.size();
        const auto language = std::find_if(all_languages.begin(), all_languages.end(), [&](Language l) {
            return paper.name.find(" " + std::string(code_of(l)) + " ") != std::string::npos;
        });
        const Words words(language == all_languages.end() ? Language::english : *language);
        const std::string last = std::string(words(Word::page)) + " " + std::to_string(count) + " " +
                                 std::string(words(Word::of)) + " " + std::to_string(count);
        EXPECT_EQ(says(paper.document, last), count > 1) << paper.name;
    }
}

const Words english(Language::english), german(Language::german);

int pages_with(const Document& document, const std::string& text)
{
    int count = 0;
    for (const DisplayList& page : document.pages) {
        const auto lines = texts(page);
        count += std::any_of(lines.begin(), lines.end(), [&](const TextLine& l) { return l.text == text; }) ? 1 : 0;
    }
    return count;
}

TEST(PackingSlip, SaysAllLinesOfALongOrderUnderCarriedHeads)
{
    const Slip slip = samples::long_slip();
    const Document document = lay_out(slip, Format::a4, english, measure);
    EXPECT_GE(document.pages.size(), 3U);
    for (const Slip::Line& line : slip.lines) EXPECT_TRUE(says(document, line.name)) << line.name;
    EXPECT_EQ(pages_with(document, "Item"), static_cast<int>(document.pages.size()));
    EXPECT_EQ(pages_with(document, "Packing slip, continued"), static_cast<int>(document.pages.size()) - 1);
    EXPECT_TRUE(says(document, "In another parcel of this order"));
    EXPECT_TRUE(says(document, "Parcel 1 of 2"));
}

TEST(PackingSlip, AddsUp)
{
    const Document document = lay_out(samples::plain_slip(), Format::a4, english, measure);
    EXPECT_TRUE(says(document, "29.00 EUR")); // 2 × 14.50
    EXPECT_TRUE(says(document, "74.50 EUR")); // 29.00 + 36.00 + 9.50
    EXPECT_TRUE(says(document, "79.45 EUR")); // and postage 4.95
}

TEST(PackingSlip, GivesNoSumWhereAPriceIsMissing)
{
    Slip slip = samples::plain_slip();
    slip.lines[1].price.reset();
    const Document document = lay_out(slip, Format::a4, english, measure);
    EXPECT_FALSE(says(document, "Total"));
    EXPECT_TRUE(says(document, "29.00 EUR"));
}

TEST(PackingSlip, ShowsNoPriceWhenAskedNotTo)
{
    Slip slip = samples::plain_slip();
    slip.prices = false;
    EXPECT_FALSE(says(lay_out(slip, Format::a4, english, measure), "EUR"));
}

TEST(GiftSlip, NamesTheGiverAndNoPrice)
{
    Slip slip = samples::gift_slip();
    slip.prices = true; // a gift shows none even so
    for (const Words& words : {english, german}) {
        const Document document = lay_out(slip, Format::letter, words, measure);
        EXPECT_FALSE(says(document, "EUR"));
        EXPECT_TRUE(says(document, slip.gift->giver));
        EXPECT_TRUE(says(document, "the colour is the sea off the pier"));
        EXPECT_FALSE(says(document, "1042")); // the order number would lead to the price
        EXPECT_TRUE(says(document, slip.parcel));
    }
}

TEST(PickList, RingsQuantitiesAboveOneAndTicksEveryTray)
{
    const PickSheet sheet = samples::pick_round();
    const Document document = lay_out(sheet, Format::a4, english, measure);
    int boxes = 0, rings = 0;
    for (const DisplayList& page : document.pages) {
        for (const Mark& mark : page.marks) {
            if (const auto* path = std::get_if<Path>(&mark)) {
                if (!path->closed || path->points.size() != 4) continue;
                ++boxes;
                const int edge = path->points[2].x - path->points[0].x;
                EXPECT_GE(edge, from_mm(6)); // tick boxes 6 to 8 mm (common practice, no source)
                EXPECT_LE(edge, from_mm(8));
            }
            const auto* arc = std::get_if<Arc>(&mark);
            rings += arc != nullptr && arc->pen && arc->pen->width >= 50 ? 1 : 0;
        }
    }
    int into = 0, above_one = 0;
    for (const PickSheet::Line& line : sheet.lines) {
        for (const PickSheet::Into& one : line.into) {
            ++into;
            above_one += one.count > 1 ? 1 : 0;
        }
    }
    EXPECT_EQ(boxes, into);
    EXPECT_EQ(rings, above_one);
}

TEST(PickList, ShowsPersonalTextsNotesAndEveryShelf)
{
    const PickSheet sheet = samples::pick_round();
    const Document document = lay_out(sheet, Format::a4, english, measure);
    EXPECT_TRUE(says(document, "“engrave: Anna”"));
    EXPECT_TRUE(says(document, "Please no plastic, and could the wax be the darker red?"));
    for (const PickSheet::Line& line : sheet.lines) {
        EXPECT_TRUE(says(document, line.name));
        EXPECT_TRUE(says(document, line.shelf.empty() ? "no place" : line.shelf));
    }
}

TEST(PickList, NamesTheShelfAgainOnANewPage)
{
    PickSheet sheet = samples::long_round();
    for (PickSheet::Line& line : sheet.lines) line.shelf = "K7";
    const Document document = lay_out(sheet, Format::a4, english, measure);
    EXPECT_GE(document.pages.size(), 2U);
    EXPECT_EQ(pages_with(document, "K7"), static_cast<int>(document.pages.size()));
}

TEST(BenchCardPage, SaysAllThatPackingNeeds)
{
    const BenchCard card = samples::bench();
    const Document document = lay_out(card, Format::a4, english, measure);
    EXPECT_EQ(document.pages.size(), 1U);
    for (const char* text :
         {"2611-017", "Ines Halvard", "Carton K3", "2 × Ink bottle, sea green", "double corrugated wrap",
          "1.4 L shredded paper", "0.8 m", "812 ± 28 g", "228 × 168 × 128 mm", "Skua Post, tracked packet", "4.60 EUR",
          "no price anywhere", "harbour master", "keep off the walls", "“engrave: I. H.”"}) {
        EXPECT_TRUE(says(document, text)) << text;
    }
}

// The drawings give way to the list, but only where that helps.
TEST(BenchCardPage, DrawsSmallerWhereThatSavesAPage)
{
    BenchCard card = samples::bench();
    const auto lowest_caption = [](const Document& document) { // under the drawings
        int lowest = 0;
        for (const TextLine& line : texts(document.pages.front())) {
            if (line.text.starts_with("Layer")) lowest = std::max(lowest, line.at.y);
        }
        return lowest;
    };
    const int usual = lowest_caption(lay_out(card, Format::a4, english, measure));
    card.steps.insert(card.steps.end(), 2, card.steps.back());
    const Document fuller = lay_out(card, Format::a4, english, measure);
    EXPECT_EQ(fuller.pages.size(), 1U);
    EXPECT_LT(lowest_caption(fuller), usual);
    card.steps.insert(card.steps.end(), 12, card.steps.back());
    const Document longer = lay_out(card, Format::a4, english, measure);
    EXPECT_EQ(longer.pages.size(), 2U);
    EXPECT_EQ(lowest_caption(longer), usual);
}

// What is known of the whole parcel is not torn apart; what must be heeded is read before anything is put in.
TEST(BenchCardPage, KeepsItsFactsTogetherAndItsCautionsFirst)
{
    BenchCard card = samples::bench();
    for (int more = 0; more < 20; ++more) {
        const Document document = lay_out(card, Format::a4, english, measure);
        EXPECT_EQ(pages_with(document, "Filler"), 1);
        for (const DisplayList& page : document.pages) {
            const Document alone{{}, {page}};
            for (const char* also : {"812 ± 28 g", "4.60 EUR"})
                EXPECT_EQ(says(alone, also), says(alone, "1.4 L shredded paper")) << also << more;
        }
        int caution = 0, drawing = 0;
        for (const TextLine& line : texts(document.pages.front())) {
            if (line.text.find("keep off the walls") != std::string::npos) caution = line.at.y;
            if (line.text == "Layer 1") drawing = line.at.y;
        }
        EXPECT_GT(caution, 0);
        EXPECT_LT(caution, drawing);
        card.steps.push_back(card.steps.back());
    }
}

TEST(BenchCardPage, CallsItsOwnPapersByTheReadersWords)
{
    BenchCard card = samples::bench();
    card.steps.front().name = "packing slip";
    card.steps.front().own_paper = Word::insert_slip;
    EXPECT_TRUE(says(lay_out(card, Format::a4, german, measure), "Lieferschein"));
    EXPECT_FALSE(says(lay_out(card, Format::a4, german, measure), "packing slip"));
}

TEST(BenchCardPage, NumbersEveryPlacementOnceInTheDrawingsAndInTheList)
{
    const BenchCard card = samples::bench();
    const Document document = lay_out(card, Format::a4, english, measure);
    std::map<std::string, int> discs;
    for (const Mark& mark : document.pages.front().marks) {
        const auto* text = std::get_if<TextLine>(&mark);
        if (text != nullptr && text->align == Align::centre &&
            text->text.find_first_not_of("0123456789") == std::string::npos) {
            ++discs[text->text];
        }
    }
    for (std::size_t i = 1; i <= card.arrangement.placements.size(); ++i) EXPECT_EQ(discs[std::to_string(i)], 2) << i;
}

TEST(Label, SetsTheAddressLargeAndTheCountryLast)
{
    const LabelData label = samples::abroad_label();
    const DisplayList list = lay_out(label, german, measure);
    const auto lines = texts(list);
    const auto country =
        std::find_if(lines.begin(), lines.end(), [](const TextLine& l) { return l.text == "AUSTRIA"; });
    ASSERT_NE(country, lines.end());
    EXPECT_EQ(country->style.face, Face::bold);
    EXPECT_GE(country->style.size, from_pt(11));
    for (const TextLine& line : lines) {
        if (line.at.y > from_mm(50) && line.at.y < country->at.y) {
            EXPECT_GE(line.style.size, from_pt(11)) << line.text;
            EXPECT_LT(line.at.y, country->at.y);
        }
    }
    Document document;
    document.pages = {list};
    for (const std::string& line : label.to) EXPECT_TRUE(says(document, line)) << line;
    EXPECT_TRUE(says(document, "Paket 2 von 3"));
}

// One block: what runs from the left in an address from the right stands at its right edge too.
TEST(Label, AlignsAnAddressFromTheRightAsOneBlock)
{
    for (const shop::LabelForm form : shop::all_label_forms) {
        const LabelData label = samples::hebrew_label();
        std::set<int> edges;
        std::size_t lines = 0;
        for (const TextLine& line : texts(lay_out(label, english, measure, form))) {
            if (std::find(label.to.begin(), label.to.end(), line.text) == label.to.end()) continue;
            ++lines;
            EXPECT_EQ(line.align, Align::end) << line.text;
            edges.insert(line.at.x);
        }
        EXPECT_EQ(lines, label.to.size()) << shop::name_of(form);
        EXPECT_EQ(edges.size(), 1U) << shop::name_of(form);
    }
    // On the slip and in the customs data too.
    Slip slip = samples::plain_slip();
    slip.to = samples::hebrew_label().to;
    CustomsData customs = samples::customs();
    customs.to = slip.to;
    for (const Document& document :
         {lay_out(slip, Format::a4, english, measure), lay_out(customs, Format::a4, english, measure)}) {
        std::set<int> edges;
        for (const TextLine& line : texts(document.pages[0])) {
            if (std::find(slip.to.begin(), slip.to.end(), line.text) != slip.to.end()) edges.insert(line.at.x);
        }
        EXPECT_EQ(edges.size(), 1U);
    }
}

TEST(Label, SaysInAFrameWhichPrintItIsFromTheSecondOn)
{
    for (const shop::LabelForm form : shop::all_label_forms) {
        LabelData label = samples::home_label();
        Document document{"", {lay_out(label, english, measure, form)}};
        EXPECT_FALSE(says(document, "print")) << shop::name_of(form);
        label.print = 3;
        document.pages = {lay_out(label, english, measure, form)};
        const auto lines = texts(document.pages[0]);
        const auto print = std::find_if(lines.begin(), lines.end(), [](const auto& l) { return l.text == "print 3"; });
        ASSERT_NE(print, lines.end()) << shop::name_of(form);
        const auto number =
            std::find_if(lines.begin(), lines.end(), [&](const auto& l) { return l.text == label.parcel; });
        EXPECT_LT(print->style.size, number->style.size); // discreet: the carrier reads past it
        int framed = 0;
        for (const Mark& mark : document.pages[0].marks) {
            const auto* path = std::get_if<Path>(&mark);
            if (path == nullptr || !path->closed || !path->pen || path->fill) continue;
            const Box words = area(*print);
            framed += path->points[0].x <= words.least.x && path->points[0].y <= words.least.y &&
                      path->points[2].x >= words.most.x && path->points[2].y >= words.most.y;
        }
        EXPECT_EQ(framed, 1) << shop::name_of(form);
    }
}

TEST(Reprints, SayWhichPrintAndWhenOnEveryPage)
{
    const Reprint third{3, samples::day, std::chrono::minutes(15 * 60 + 48)};
    PickSheet pick = samples::long_round();
    Slip slip = samples::long_slip();
    BenchCard card = samples::bench();
    HandOverList list = samples::list_of(40);
    NeedList need = samples::reorder();
    MaterialReport report = samples::materials(40);
    const auto all = [&](const Words& words) {
        return std::vector<Document>{
            lay_out(pick, Format::a4, words, measure),  lay_out_by_order(pick, Format::a4, words, measure),
            lay_out(slip, Format::a4, words, measure),  lay_out(card, Format::a4, words, measure),
            lay_out(list, Format::a4, words, measure),  lay_out(need, Format::a4, words, measure),
            lay_out(report, Format::a4, words, measure)};
    };
    for (const Document& first : all(english)) EXPECT_EQ(pages_with(first, "Reprint"), 0) << first.title;
    pick.reprint = slip.reprint = card.reprint = list.reprint = need.reprint = report.reprint = third;
    for (const Document& again : all(english)) {
        EXPECT_EQ(pages_with(again, "Reprint (print 3): 25 November 2026, 15:48"), static_cast<int>(again.pages.size()))
            << again.title;
    }
    for (const Document& again : all(german)) {
        EXPECT_EQ(pages_with(again, "Nachdruck (3. Druck): 25. November 2026, 15:48"),
                  static_cast<int>(again.pages.size()));
    }
    // In the buyer's language where the buyer gets it.
    const Document french = lay_out(slip, Format::a4, Words(Language::french), measure);
    EXPECT_EQ(pages_with(french, "Réimpression (tirage 3) : 25 novembre 2026, 15:48"),
              static_cast<int>(french.pages.size()));
}

TEST(HandOver, SaysWhichLabelIsTheRightOne)
{
    HandOverList list = samples::list_of(3);
    EXPECT_FALSE(says(lay_out(list, Format::a4, english, measure), "print"));
    list.lines[1].label_print = 2;
    const Document document = lay_out(list, Format::a4, english, measure);
    EXPECT_EQ(pages_with(document, "print 2"), 1);
}

TEST(PickListByOrder, HasEveryPieceOfEveryTrayUnderItsTray)
{
    for (const PickSheet& sheet : {samples::pick_round(), samples::long_round()}) {
        const Document document = lay_out_by_order(sheet, Format::a4, english, measure);
        // What stands under a tray's letter up to the next one, over all pages: names with their counts.
        std::map<std::string, std::map<std::string, int>> found;
        std::string tray, count;
        for (const DisplayList& page : document.pages) {
            for (const TextLine& line : texts(page)) {
                const auto is_tray = [&](const PickSheet::Tray& t) { return t.letter == line.text; };
                if (std::any_of(sheet.trays.begin(), sheet.trays.end(), is_tray)) tray = line.text;
                if (line.align == Align::centre) count = line.text;
                for (const PickSheet::Line& good : sheet.lines) {
                    if (good.name.rfind(line.text, 0) == 0 && line.text.size() > 8 && !count.empty()) {
                        found[tray][good.name] += std::stoi(count);
                        count.clear();
                        break;
                    }
                }
            }
        }
        std::map<std::string, std::map<std::string, int>> expected;
        for (const PickSheet::Line& line : sheet.lines) {
            for (const PickSheet::Into& into : line.into) expected[into.tray][line.name] += into.count;
        }
        EXPECT_EQ(found, expected);
    }
}

TEST(PickListByOrder, NamesTheTrayAgainWhereAPageEndsWithinIt)
{
    const Document document = lay_out_by_order(samples::long_round(), Format::a4, english, measure);
    ASSERT_GE(document.pages.size(), 3U);
    EXPECT_TRUE(says({"", {document.pages[1]}}, "A · 2611-017, continued"));
}

TEST(HandOver, CountsWhatTheCarrierSigns)
{
    const HandOverList list = samples::list_of(40);
    const Document document = lay_out(list, Format::a4, english, measure);
    EXPECT_TRUE(says(document, "40 parcels"));
    for (const HandOverList::Line& line : list.lines) {
        EXPECT_TRUE(says(document, line.parcel));
        EXPECT_TRUE(says(document, line.tracking));
    }
    EXPECT_TRUE(says(document, "Taken by Skua Post"));
    EXPECT_TRUE(says(lay_out(samples::list_of(1), Format::a4, english, measure), "1 parcel"));
    EXPECT_EQ(pages_with(document, "Tracking number"), static_cast<int>(document.pages.size()));
}

TEST(LabelSheets, BeginAtTheLabelAskedFor)
{
    const std::vector<LabelData> three(3, samples::home_label());
    const Document document = lay_out(three, 3, english, measure, shop::LabelForm::a4_of_4);
    ASSERT_EQ(document.pages.size(), 2U); // two on the begun sheet, one on the next
    const auto starts = [&](const DisplayList& page) {
        std::vector<Point> found;
        for (const TextLine& line : texts(page)) {
            if (line.text == "From") found.push_back(line.at);
        }
        return found;
    };
    const auto first = starts(document.pages[0]), second = starts(document.pages[1]);
    ASSERT_EQ(first.size(), 2U);
    EXPECT_GT(first[0].y, from_mm(148)); // the lower half
    EXPECT_LT(first[0].x, from_mm(105));
    EXPECT_GT(first[1].x, from_mm(105));
    ASSERT_EQ(second.size(), 1U);
    EXPECT_LT(second[0].y, from_mm(148));
    EXPECT_TRUE(lay_out(std::vector<LabelData>{}, 1, english, measure, shop::LabelForm::a4_of_6).pages.empty());
}

TEST(GiftNote, SaysTheMessageAndTheGiverOnly)
{
    const Document document = gift_note({"Oda", "Write soon,\nand write long."}, measure);
    ASSERT_EQ(document.pages.size(), 1U);
    EXPECT_EQ(all_text(document), "Write soon,\nand write long.\n\nOda\n");
    EXPECT_TRUE(gift_note({"", ""}, measure).pages.empty());
}

TEST(GiftNote, GrowsSmallerThenGoesOnToASecondCard)
{
    std::string message;
    for (int i = 0; i < 60; ++i) message += "word" + std::to_string(i) + " and more, ";
    const Document small = gift_note({"Oda", message.substr(0, 500)}, measure);
    EXPECT_EQ(small.pages.size(), 1U);
    EXPECT_LT(texts(small.pages[0]).front().style.size, from_pt(16));
    const Document two = gift_note({"Oda", message + message + message}, measure);
    EXPECT_GT(two.pages.size(), 1U);
    EXPECT_EQ(texts(two.pages[0]).front().style.size, from_pt(9));
    EXPECT_TRUE(says(two, message.substr(message.size() - 30, 25)));
}

TEST(CustomsPage, SumsAndSaysWhatIsMissing)
{
    const CustomsData data = samples::customs();
    const Document document = lay_out(data, Format::a4, english, measure);
    for (const char* text : {"2 × Writing ink in glass bottles, 50 ml", "321590", "29.00 EUR", "770 g", "912 g",
                             "sale of goods", "missing"}) {
        EXPECT_TRUE(says(document, text)) << text;
    }
    EXPECT_FALSE(says(document, "47.00 EUR")); // no total where a value is missing
    CustomsData whole = data;
    whole.lines.pop_back();
    const Document complete = lay_out(whole, Format::a4, english, measure);
    EXPECT_TRUE(says(complete, "47.00 EUR"));
    EXPECT_FALSE(says(complete, "missing"));
}

TEST(NeedListPage, CarriesItsHeads)
{
    const Document document = lay_out(samples::reorder(), Format::a4, english, measure);
    EXPECT_GE(document.pages.size(), 2U);
    EXPECT_EQ(pages_with(document, "On hand"), static_cast<int>(document.pages.size()));
    EXPECT_TRUE(says(document, "Kartonwerk Nebelbach"));
    EXPECT_TRUE(says(document, "Supply no. 40"));
    EXPECT_EQ(pages_with(document, "No supplier named"), 1); // or its lines would pass for the supplier's before it
}

// Dashes drawn twice run into each other and make a solid line.
TEST(CommandCards, DrawEveryEdgeOnce)
{
    const Document document = command_cards(Format::a4, english, measure);
    std::set<std::pair<std::pair<int, int>, std::pair<int, int>>> edges;
    for (const Mark& mark : document.pages.front().marks) {
        const auto* path = std::get_if<Path>(&mark);
        if (path == nullptr || !path->pen) continue;
        ASSERT_EQ(path->points.size(), 2U);
        const Point a = path->points[0], b = path->points[1];
        EXPECT_TRUE(edges.insert(std::minmax(std::pair(a.x, a.y), std::pair(b.x, b.y))).second);
    }
    EXPECT_EQ(edges.size(), 20U); // seven cards in two columns: 4 × 7 less 8 that two share
}

TEST(MaterialReportPage, SumsByCountryAndSaysWhatItCovers)
{
    const MaterialReport report = samples::materials();
    const Document document = lay_out(report, Format::a4, english, measure);
    for (const char* text :
         {"117 parcels", "1.20 kg", "700 g", "500 g", "200 g", "DE · GERMANY", "FR · FRANCE", "Glass"}) {
        EXPECT_TRUE(says(document, text)) << text;
    }
    EXPECT_TRUE(says(lay_out(report, Format::a4, german, measure), "Papier und Pappe"));
    const Document longer = lay_out(samples::materials(40), Format::a4, english, measure);
    EXPECT_GT(longer.pages.size(), 2U);
    EXPECT_EQ(pages_with(longer, "Packaging by material, continued"), static_cast<int>(longer.pages.size()) - 1);
}

} // namespace
} // namespace stow::papers
