#include "app/painting/coverage.h"
#include "app/painting/fonts.h"
#include "app/painting/paint.h"
#include "core/papers/address.h"
#include "core/papers/capitals.h"
#include "core/papers/countries.h"
#include "core/papers/payload.h"
#include "core/papers/qr.h"
#include "tests/core/papers/samples.h"
#include "tests/outside/papers_read_back.h"

#include <QFontInfo>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

namespace stow::outside {
namespace {

using namespace papers;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

const Words english(Language::english), german(Language::german);

std::string code_of(const std::string& parcel)
{
    return *to_text(Payload{Payload::Kind::paper, parcel});
}

std::string code_of_label(const LabelData& label)
{
    return *to_text(Payload{Payload::Kind::label, label.parcel, label.print});
}

Slip coded(Slip slip)
{
    slip.code = code_of(slip.parcel);
    return slip;
}

BenchCard coded(BenchCard card)
{
    card.code = code_of(card.parcel);
    return card;
}

int neither_black_nor_white(const QImage& page)
{
    int found = 0;
    for (int y = 0; y < page.height(); ++y) {
        for (int x = 0; x < page.width(); ++x) {
            const QRgb pixel = page.pixel(x, y) & RGB_MASK;
            found += pixel != 0 && pixel != RGB_MASK ? 1 : 0;
        }
    }
    return found;
}

Document labels()
{
    const painting::FontMeasure measure;
    Document document;
    document.title = "labels";
    for (LabelData label : {samples::home_label(), samples::abroad_label()}) {
        label.code = code_of_label(label);
        document.pages.push_back(lay_out(label, english, measure));
    }
    return document;
}

// 203 dpi: what thermal label printers have; 150: a poor scan; 300: office printers.
class AtDpi : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(Printers, AtDpi, testing::Values(150, 203, 300));

TEST_P(AtDpi, CodesOfSlipsAndCardsAreRead)
{
    const painting::FontMeasure measure;
    const std::vector<std::pair<std::string, Document>> papers{
        {"2611-017", lay_out(coded(samples::plain_slip()), Format::a4, english, measure)},
        {"2612-204", lay_out(coded(samples::long_slip()), Format::a4, german, measure)},
        {"2611-021", lay_out(coded(samples::gift_slip()), Format::letter, english, measure)},
        {"2611-017", lay_out(coded(samples::bench()), Format::a4, english, measure)},
        {"2611-018", lay_out(coded(samples::mailer_bench()), Format::a4, german, measure)}};
    for (const auto& [parcel, document] : papers) {
        const Rendered rendered(document, false);
        ASSERT_TRUE(rendered.written());
        const auto codes = rendered.codes(1, GetParam());
        ASSERT_EQ(codes.size(), 1U) << document.title;
        const auto payload = parse_payload(codes[0]);
        ASSERT_TRUE(payload) << codes[0];
        EXPECT_EQ(*payload, (Payload{Payload::Kind::paper, parcel}));
    }
}

TEST_P(AtDpi, CodesOfLabelsAreReadInBlackOnly)
{
    const Rendered rendered(labels(), true);
    ASSERT_TRUE(rendered.written());
    EXPECT_THAT(rendered.codes(1, GetParam()), ElementsAre(code_of_label(samples::home_label())));
    EXPECT_THAT(rendered.codes(2, GetParam()), ElementsAre(code_of_label(samples::abroad_label())));
}

// 2 % of the pixels turned over, the paper laid askew by five degrees: as off a worn thermal head. A scanner looks many
// times a second; it may look as often as this. (At 300 dpi the first look reads all, at 150 about half of them.)
constexpr unsigned looks = 8;
TEST_P(AtDpi, CodesOfLabelsAreReadThroughNoiseAndAskew)
{
    const painting::FontMeasure measure;
    for (const shop::LabelForm form : shop::all_label_forms) {
        LabelData label = samples::abroad_label();
        label.code = code_of_label(label);
        label.marks = {HandlingMark::fragile, HandlingMark::this_way_up};
        const DisplayList page = lay_out(label, english, measure, form);
        const auto code = std::find_if(page.marks.begin(), page.marks.end(),
                                       [](const Mark& mark) { return std::holds_alternative<Modules>(mark); });
        ASSERT_NE(code, page.marks.end());
        const Rendered rendered(before_the_scanner(page, std::get<Modules>(*code)), true);
        ASSERT_TRUE(rendered.written());
        for (const double degrees : {-5.0, 0.0, 5.0}) {
            std::vector<std::string> codes;
            for (unsigned look = 1; look <= looks && codes.empty(); ++look) {
                codes = rendered.codes_of_worse(1, GetParam(), 0.02, degrees, look);
            }
            EXPECT_THAT(codes, ElementsAre(label.code)) << shop::name_of(form) << " turned by " << degrees;
        }
    }
}

TEST_P(AtDpi, CommandCardsAreRead)
{
    const painting::FontMeasure measure;
    const Rendered rendered(command_cards(Format::a4, german, measure), true);
    ASSERT_TRUE(rendered.written());
    std::set<std::string> codes; // of looks from several sides: seven codes at once are more than it is made for
    for (const double degrees : {0.0, -2.0, 2.0}) {
        for (const std::string& code : rendered.codes_of_worse(1, GetParam(), 0, degrees, 1)) codes.insert(code);
    }
    std::vector<Command> read;
    for (const std::string& code : codes) {
        const auto payload = parse_payload(code);
        ASSERT_TRUE(payload) << code;
        EXPECT_EQ(payload->kind, Payload::Kind::command);
        const auto known = command(payload->number);
        ASSERT_TRUE(known) << code;
        read.push_back(*known);
    }
    EXPECT_THAT(read, testing::UnorderedElementsAreArray(all_commands));
}

TEST_P(AtDpi, PagesHaveTheirTrueSize)
{
    const painting::FontMeasure measure;
    const auto pixels = [&](int mm_hundredths) { return mm_hundredths / 2540.0 * GetParam(); };
    const auto check = [&](const Document& document) {
        const Rendered rendered(document, false);
        const QImage page = rendered.page(1, GetParam());
        const Extent extent = document.pages.front().extent;
        // A PDF page counts in whole points (1/72 inch) here, so half a point and a pixel are allowed.
        const double tolerance = GetParam() / 72.0 / 2 + 1;
        EXPECT_NEAR(page.width(), pixels(extent.width), tolerance);
        EXPECT_NEAR(page.height(), pixels(extent.height), tolerance);
    };
    check(lay_out(samples::pick_round(), Format::a4, english, measure));
    check(lay_out(samples::pick_round(), Format::letter, english, measure));
    check(labels());
}

// qrcode.com worked example: 29 modules at 0.254 mm are 7.366 mm wide. Drawn 1:1, measured in the picture.
TEST(PrintedCode, IsAsLargeAsThePublishedExample)
{
    const auto code = qr_code(std::string(50, 'B'));
    ASSERT_TRUE(code);
    ASSERT_EQ(code->side, 29);
    Document document;
    document.title = "code";
    document.pages = {{{from_mm(50), from_mm(50)}, {modules(*code, {500, 500}, 50)}}};
    const Rendered rendered(document, true);
    const int dpi = 508; // 0.05 mm a pixel: ten pixels a module
    const QImage page = rendered.page(1, dpi);
    int left = page.width(), right = -1;
    for (int y = 0; y < page.height(); ++y) {
        for (int x = 0; x < page.width(); ++x) {
            if (qGray(page.pixel(x, y)) > 128) continue;
            left = std::min(left, x);
            right = std::max(right, x);
        }
    }
    EXPECT_NEAR(right - left + 1, 29 * 10, 1); // 29 × 0.5 mm, as 29 × 0.254 are 7.366
    EXPECT_NEAR(left, (500 + 4 * 50) / 5, 1);  // the quiet zone: four modules
}

// Handling marks are pictures: the number of their shapes in ink besides the rules, frame and words.
int shapes_of_marks(const DisplayList& page)
{
    int shapes = 0;
    for (const Mark& mark : page.marks) {
        const auto* path = std::get_if<Path>(&mark);
        shapes += path != nullptr && path->fill && path->fill->role == Role::ink ? 1 : 0;
    }
    return shapes;
}

TEST(Labels, KeepTheirMarksBesideTheLongestAddressInEveryForm)
{
    const painting::FontMeasure measure;
    for (const shop::LabelForm form : shop::all_label_forms) {
        for (const int print : {1, 2}) {
            LabelData label = samples::longest_label();
            label.print = print;
            label.marks = {HandlingMark::fragile, HandlingMark::this_way_up, HandlingMark::keep_from_sun,
                           HandlingMark::keep_dry};
            const DisplayList page = lay_out(label, german, measure, form);
            int expected = 0;
            for (const HandlingMark mark : label.marks) expected += shapes_of_marks(draw(mark, from_mm(10)));
            EXPECT_EQ(shapes_of_marks(page), expected) << shop::name_of(form);
            bool found = false;
            for (const Mark& mark : page.marks) {
                const auto* line = std::get_if<TextLine>(&mark);
                if (line == nullptr || line->text.find("NEBELBACH") == std::string::npos) continue;
                found = true;
                EXPECT_GE(line->style.size, from_pt(11)) << shop::name_of(form);
            }
            EXPECT_TRUE(found) << shop::name_of(form);
        }
    }
}

// Seven lines at 11 points, and the marks. Long ones lose the air over them and grow smaller before a mark is left out.
TEST(Labels, KeepTheirMarksBesideSevenLinesInEveryForm)
{
    const painting::FontMeasure measure;
    for (const shop::LabelForm form : shop::all_label_forms) {
        for (const auto& [sample, least] :
             {std::pair(samples::seven_line_label(), from_pt(11)), std::pair(samples::overlong_label(), from_pt(9))}) {
            for (const int print : {1, 2}) {
                LabelData label = sample;
                label.print = print;
                label.marks = {HandlingMark::fragile, HandlingMark::this_way_up, HandlingMark::keep_from_sun,
                               HandlingMark::keep_dry};
                const DisplayList page = lay_out(label, german, measure, form);
                int expected = 0;
                for (const HandlingMark mark : label.marks) expected += shapes_of_marks(draw(mark, from_mm(10)));
                EXPECT_EQ(fit_of(label, german, measure, form), LabelFit::all_of_it);
                EXPECT_EQ(shapes_of_marks(page), expected) << shop::name_of(form) << " " << label.to.size();
                std::set<std::string> found;
                for (const Mark& mark : page.marks) {
                    const auto* line = std::get_if<TextLine>(&mark);
                    if (line == nullptr) continue;
                    for (const std::string& of_address : label.to) {
                        if (!of_address.starts_with(line->text)) continue;
                        found.insert(of_address);
                        EXPECT_GE(line->style.size, least) << shop::name_of(form) << line->text;
                    }
                }
                EXPECT_GE(found.size(), 6U) << shop::name_of(form);
            }
        }
    }
}

// Beyond that the marks go, "fragile" last, and at the end the address has no room: the label says so itself, so that
// it can be told before it is stuck on.
TEST(Labels, TellWhatTheyHaveNoRoomFor)
{
    const painting::FontMeasure measure;
    const auto form = shop::LabelForm::a4_of_6;
    const auto all_of = [](std::vector<HandlingMark> marks) {
        int shapes = 0;
        for (const HandlingMark mark : marks) shapes += shapes_of_marks(draw(mark, from_mm(10)));
        return shapes;
    };
    LabelData label = samples::overlong_label();
    label.marks = {HandlingMark::fragile, HandlingMark::this_way_up, HandlingMark::keep_from_sun,
                   HandlingMark::keep_dry};
    std::vector<LabelFit> fits;
    std::vector<int> shapes;
    for (int more = 0; more < 12; ++more) {
        fits.push_back(fit_of(label, english, measure, form));
        shapes.push_back(shapes_of_marks(lay_out(label, english, measure, form)));
        label.to.insert(label.to.begin() + 2, "Second staircase, third door, please ring");
    }
    EXPECT_EQ(fits.front(), LabelFit::all_of_it);
    EXPECT_EQ(fits.back(), LabelFit::too_long);
    EXPECT_TRUE(std::is_sorted(fits.begin(), fits.end()));
    std::set<int> kept;
    for (std::size_t i = 0; i < fits.size(); ++i) {
        if (fits[i] == LabelFit::all_of_it)
            EXPECT_EQ(shapes[i], all_of(label.marks)) << i;
        else
            kept.insert(shapes[i]);
    }
    EXPECT_THAT(kept, testing::Contains(all_of({HandlingMark::fragile})));
    EXPECT_THAT(kept, testing::Contains(0));
    label.marks.clear(); // nothing of these is missed then
    label.to = samples::home_label().to;
    EXPECT_EQ(fit_of(label, english, measure, form), LabelFit::all_of_it);
}

// Filled shapes of ink by their widths.
std::multiset<int> widths_of_shapes(const DisplayList& page)
{
    std::multiset<int> widths;
    for (const Mark& mark : page.marks) {
        const auto* path = std::get_if<Path>(&mark);
        if (path == nullptr || !path->fill || path->fill->role != Role::ink) continue;
        const auto [left, right] =
            std::minmax_element(path->points.begin(), path->points.end(), [](Point a, Point b) { return a.x < b.x; });
        widths.insert(right->x - left->x);
    }
    return widths;
}

// Where the label is high enough they stay 11 mm: beside the sender, when the address leaves the foot no room.
TEST(Labels, KeepTheirMarksLargeBesideTheSenderOnHighForms)
{
    const painting::FontMeasure measure;
    for (const shop::LabelForm form :
         {shop::LabelForm::single_100x150, shop::LabelForm::single_a6, shop::LabelForm::a4_of_4}) {
        LabelData label = samples::longest_label();
        label.marks = {HandlingMark::fragile, HandlingMark::this_way_up, HandlingMark::keep_from_sun,
                       HandlingMark::keep_dry};
        const std::multiset<int> found = widths_of_shapes(lay_out(label, english, measure, form));
        for (const HandlingMark mark : label.marks) {
            for (const int width : widths_of_shapes(draw(mark, from_mm(11))))
                EXPECT_TRUE(found.contains(width)) << shop::name_of(form);
        }
    }
}

TEST(Texts, StayTextInThePdf)
{
    const painting::FontMeasure measure;
    const std::string slip =
        Rendered(lay_out(coded(samples::plain_slip()), Format::a4, english, measure), false).text();
    for (const char* text :
         {"Packing slip", "Order 1042 of 25 November 2026", "Ink bottle, sea green", "29.00 EUR", "79.45 EUR"}) {
        EXPECT_THAT(slip, HasSubstr(text));
    }
    const std::string pick = Rendered(lay_out(samples::pick_round(), Format::a4, german, measure), false).text();
    EXPECT_THAT(pick, HasSubstr("„engrave: Anna“"));
    EXPECT_THAT(pick, HasSubstr("Pál Verrin"));
    const std::string list = Rendered(lay_out(samples::list_of(40), Format::a4, english, measure), false).text();
    EXPECT_THAT(list, HasSubstr("SK 4417 139 882 NO"));
    EXPECT_THAT(list, HasSubstr("40 parcels"));
    const std::string label = Rendered(labels(), true).text();
    EXPECT_THAT(label, HasSubstr("Aleksandrína Þorvaldsdóttir-"));
    EXPECT_THAT(label, HasSubstr("AUSTRIA"));
}

TEST(Texts, NameNoPriceInAGift)
{
    const painting::FontMeasure measure;
    const std::string slip = Rendered(lay_out(coded(samples::gift_slip()), Format::a4, english, measure), false).text();
    EXPECT_THAT(slip, HasSubstr("From Oda Lind"));
    EXPECT_THAT(slip, Not(HasSubstr("EUR")));
    EXPECT_THAT(slip, Not(HasSubstr("14.50")));
}

// All forty lines, in order, over three pages.
TEST(Texts, KeepTheOrderOfALongSlip)
{
    const painting::FontMeasure measure;
    const Slip slip = coded(samples::long_slip());
    const std::string text = Rendered(lay_out(slip, Format::a4, german, measure), false).text();
    std::size_t at = 0;
    for (const Slip::Line& line : slip.lines) {
        at = text.find(line.name.substr(0, 20), at);
        ASSERT_NE(at, std::string::npos) << line.name;
        ++at;
    }
    EXPECT_THAT(text, HasSubstr("Seite 3 von 3"));
}

// The list of iso-codes (Debian), ISO 3166-1: every code, and its short or common name, in capitals and without marks
// that not every post reads. Names that are shorter or told apart otherwise are named here.
TEST(Countries, AreThoseOfIsoCodes)
{
    std::ifstream file("/usr/share/iso-codes/json/iso_3166-1.json");
    if (!file) GTEST_SKIP() << "iso-codes is not installed";
    const std::map<std::string, std::string> ours_on_purpose{{"CD", "CONGO (DEM. REP.)"},
                                                             {"CI", "COTE D'IVOIRE"},
                                                             {"CW", "CURACAO"},
                                                             {"FK", "FALKLAND ISLANDS"},
                                                             {"MF", "SAINT MARTIN"},
                                                             {"RE", "REUNION"},
                                                             {"SX", "SINT MAARTEN"},
                                                             {"VA", "VATICAN CITY"},
                                                             {"VG", "BRITISH VIRGIN ISLANDS"},
                                                             {"VI", "US VIRGIN ISLANDS"},
                                                             {"HM", "HEARD AND MCDONALD ISLANDS"}};
    const nlohmann::json list = nlohmann::json::parse(file)["3166-1"];
    EXPECT_EQ(list.size(), countries.size());
    for (const nlohmann::json& country : list) {
        const std::string code = country["alpha_2"], name = country["name"], ours = country_in_capitals(code);
        const std::string common = country.contains("common_name") ? country["common_name"].get<std::string>() : name;
        if (const auto known = ours_on_purpose.find(code); known != ours_on_purpose.end())
            EXPECT_EQ(ours, known->second);
        else
            EXPECT_THAT(
                (std::vector{in_capitals(name), in_capitals(common), in_capitals(name.substr(0, name.find(',')))}),
                testing::Contains(ours))
                << code;
    }
}

TEST(Fonts, AreOursAndEmbedded)
{
    EXPECT_EQ(QFontInfo(painting::font_of({400, Face::regular, Role::ink})).family(), painting::text_family());
    // Not the monospaced cut: an i is narrower than an m.
    const painting::FontMeasure measure;
    const Style style{1000, Face::regular, Role::ink};
    EXPECT_LT(measure.width("iiii", style) * 3, measure.width("mmmm", style) * 2);
    EXPECT_EQ(QFontInfo(painting::font_of({400, Face::bold, Role::ink})).family(), painting::text_family());
    EXPECT_GE(QFontInfo(painting::font_of({400, Face::bold, Role::ink})).weight(), QFont::Bold);
    const std::string raw = Rendered(lay_out(samples::pick_round(), Format::a4, english, measure), false).raw();
    EXPECT_THAT(raw, HasSubstr("/FontFile2"));
}

// The letters of Europe, Arabic, Hebrew, Chinese, Japanese and Korean are there with the packages the tests need; a
// code point that Unicode (15) has not given to any writing, and a private one, no font can have.
TEST(Fonts, AreKnownToLackALetter)
{
    for (const char* there :
         {"Großherzogin-Elisabeth-Straße 117", "ul. Źródlana 3, Łódź", "Þorvaldsdóttir", "12, rue de l’Île",
          "شارع البحر ١٢", "רחוב הנמל 12", "〒154-0023 東京都港区 みなと", "서울특별시", "", "a\nb\tc"}) {
        EXPECT_EQ(painting::letters_without_font(there), "") << there;
    }
    const std::string unassigned = "\u0378", private_use = "\U0010FFFD";
    EXPECT_EQ(painting::letters_without_font("Hafen" + unassigned + "weg " + private_use + unassigned),
              unassigned + private_use);
    EXPECT_EQ(painting::letters_without_font(std::string(3000, 'x') + "\n" + unassigned), unassigned);
    EXPECT_EQ(painting::package_with(unassigned), "");
    EXPECT_EQ(painting::package_with("🎁"), "fonts-symbola");
    EXPECT_EQ(painting::package_with("港"), "fonts-noto-cjk");
    EXPECT_EQ(painting::package_with("서"), "fonts-noto-cjk");
    EXPECT_EQ(painting::package_with("ش"), "fonts-noto-core");
}

// Digits are equally wide, so that columns of numbers align.
TEST(Fonts, HaveEqualDigits)
{
    const painting::FontMeasure measure;
    for (const Face face : {Face::regular, Face::bold}) {
        const Style style{1000, face, Role::ink};
        for (char digit = '1'; digit <= '9'; ++digit) {
            EXPECT_EQ(measure.width(std::string(10, digit), style), measure.width("0000000000", style)) << digit;
        }
    }
}

TEST(Pdf, IsTheSameEveryTimeButForItsDate)
{
    const painting::FontMeasure measure;
    const auto masked = [&] {
        std::string raw = Rendered(lay_out(coded(samples::bench()), Format::a4, english, measure), false).raw();
        for (const char* stamp :
             {"/CreationDate (D:", "<xmp:CreateDate>", "<xmp:ModifyDate>", "<xmp:MetadataDate>", "/ID ["}) {
            for (std::size_t at = raw.find(stamp); at != std::string::npos; at = raw.find(stamp, at + 1)) {
                const std::size_t end = raw.find_first_of(")<]\n", at + std::string(stamp).size());
                raw.replace(at + std::string(stamp).size(), end - at - std::string(stamp).size(), "");
            }
        }
        const std::size_t id = raw.find("uuid:");
        if (id != std::string::npos) raw.replace(id, 41, "");
        return raw;
    };
    const std::string once = masked();
    EXPECT_FALSE(once.empty());
    EXPECT_EQ(once, masked());
}

TEST(Pdf, SaysSoWhenItCannotBeWritten)
{
    Document document;
    EXPECT_FALSE(painting::write_pdf(QStringLiteral("/nowhere/at/all.pdf"), document, painting::light()));
    document.pages.push_back({{1000, 1000}, {}});
    EXPECT_FALSE(painting::write_pdf(QStringLiteral("/nowhere/at/all.pdf"), document, painting::light()));
}

// Contrast of text by WCAG 2.1, success criteria 1.4.3 (4.5 : 1) and 1.4.11 (3 : 1 for marks), formula as published
// there.
double luminance(const QColor& c)
{
    const auto part = [](double v) { return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * part(c.redF()) + 0.7152 * part(c.greenF()) + 0.0722 * part(c.blueF());
}

double contrast(const QColor& a, const QColor& b)
{
    const double x = luminance(a), y = luminance(b);
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

TEST(Palettes, CanBeReadOnEveryGround)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 0.01); // WCAG: black on white is 21 : 1
    for (const painting::Palette* palette : {&painting::light(), &painting::dark(), &painting::black_only()}) {
        for (const Role ground : {Role::paper, Role::sheet}) {
            for (const Role text : {Role::ink, Role::second_ink}) {
                EXPECT_GE(contrast(palette->of(text), palette->of(ground)), 4.5);
            }
            for (const Role mark : {Role::accent, Role::ochre, Role::brick}) {
                EXPECT_GE(contrast(palette->of(mark), palette->of(ground)), 3.0);
            }
        }
        for (const Role ground : {Role::board, Role::goods_a, Role::goods_b, Role::goods_c, Role::goods_d,
                                  Role::goods_e, Role::goods_f, Role::highlight}) {
            for (const Shade shade : {Shade::lit, Shade::half, Shade::shaded}) {
                EXPECT_GE(contrast(palette->of(Role::ink), palette->of(Fill{ground, shade})), 3.0);
            }
        }
        EXPECT_GE(contrast(palette->of(Role::sheet), palette->of(Role::accent)), 4.5); // the number lit up
    }
}

// Every paper in black only, read without smoothing: each pixel is black or white, nothing between, no colour.
TEST(BlackOnly, HasNoColourAndNoGreyOnAnyPaper)
{
    const painting::FontMeasure measure;
    const std::vector<std::pair<const char*, Document>> papers{
        {"slip", lay_out(coded(samples::plain_slip()), Format::a4, english, measure)},
        {"gift slip", lay_out(coded(samples::gift_slip()), Format::a4, english, measure)},
        {"pick list", lay_out(samples::pick_round(), Format::a4, english, measure)},
        {"pick list by order", lay_out_by_order(samples::pick_round(), Format::a4, english, measure)},
        {"carton", lay_out(coded(samples::bench()), Format::a4, english, measure)},
        {"mailer", lay_out(coded(samples::mailer_bench()), Format::a4, english, measure)},
        {"tube", lay_out(coded(samples::tube_bench()), Format::a4, english, measure)},
        {"customs", lay_out(samples::customs(), Format::a4, english, measure)},
        {"reorder list", lay_out(samples::reorder(), Format::a4, english, measure)},
        {"materials", lay_out(samples::materials(4), Format::a4, english, measure)},
        {"hand-over list", lay_out(samples::list_of(4), Format::a4, english, measure)},
        {"labels", labels()}};
    for (const auto& [name, document] : papers) {
        const QImage black = Rendered(document, true).sharp_page(1, 200);
        ASSERT_FALSE(black.isNull()) << name;
        EXPECT_EQ(neither_black_nor_white(black), 0) << name;
        int dark = 0;
        for (int y = 0; y < black.height(); ++y) {
            for (int x = 0; x < black.width(); ++x) dark += qGray(black.pixel(x, y)) < 128 ? 1 : 0;
        }
        EXPECT_GT(dark, 1000) << name;                               // something stands there
        EXPECT_LT(dark, black.width() * black.height() / 5) << name; // and no tint became a black field
    }
    // The same reading sees the colours and tints of the papers in colour.
    EXPECT_GT(neither_black_nor_white(Rendered(papers[4].second, false).sharp_page(1, 200)), 10'000);
    EXPECT_GT(neither_black_nor_white(Rendered(papers[0].second, false).sharp_page(1, 200)), 1'000);
}

// Whatever its file holds (the picture taken out of the PDF by pdfimages of poppler).
TEST(BlackOnly, TakesTheGreysOutOfALogo)
{
    const painting::FontMeasure measure;
    const QTemporaryDir folder;
    const QString logo = folder.filePath(QStringLiteral("logo.png"));
    QImage picture(120, 60, QImage::Format_ARGB32);
    for (int x = 0; x < 120; ++x) {
        for (int y = 0; y < 60; ++y) picture.setPixelColor(x, y, QColor::fromHsv(x * 2, 200, 60 + y * 3, 100 + x));
    }
    ASSERT_TRUE(picture.save(logo));
    Slip slip = coded(samples::plain_slip());
    slip.logo = logo.toStdString();
    const Document document = lay_out(slip, Format::a4, english, measure);
    const auto black = Rendered(document, true).pictures(), coloured = Rendered(document, false).pictures();
    ASSERT_EQ(black.size(), 1U);
    EXPECT_GT(black[0].width(), 300); // fine enough for its edges
    EXPECT_EQ(neither_black_nor_white(black[0]), 0);
    ASSERT_FALSE(coloured.empty());
    EXPECT_GT(neither_black_nor_white(coloured[0]), 1000);
}

// What is to be looked at is hatched where it cannot be tinted.
TEST(BlackOnly, HatchesTheThingToLookAt)
{
    DisplayList list{{2000, 2000}, {}};
    const auto square = [&](int left, Fill fill) {
        list.add(Path{{{left, 200}, {left + 600, 200}, {left + 600, 1800}, {left, 1800}}, true, std::nullopt, fill});
    };
    square(200, {Role::highlight, Shade::lit});
    square(1200, {Role::goods_a, Shade::lit});
    const QImage image = painting::to_image(list, {400, 400}, painting::black_only());
    int hatched = 0, plain = 0;
    for (int y = 60; y < 340; ++y) {
        for (int x = 0; x < 400; ++x) {
            const bool dark = qGray(image.pixel(x, y)) < 160;
            (x < 200 ? hatched : plain) += dark ? 1 : 0;
            if (x < 38 || (x > 162 && x < 200)) {
                EXPECT_FALSE(dark) << "beyond its edges at " << x;
            }
        }
    }
    EXPECT_GT(hatched, 1000);
    EXPECT_EQ(plain, 0);
}

TEST(Screen, LeavesThePainterAsItWas)
{
    QImage image(200, 100, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(2, 2);
    const QTransform before = painter.transform();
    View view;
    view.extent = {9000, 9000};
    painting::paint(painter, QRectF(10, 10, 50, 30), draw(samples::bench().arrangement, view), painting::light(),
                    painting::on_screen);
    EXPECT_EQ(painter.transform(), before);
    // Painted, and only into its target: 20 to 120 across, 20 to 80 down.
    int inside = 0, outside_target = 0;
    for (int y = 0; y < 100; ++y) {
        for (int x = 0; x < 200; ++x) {
            const bool touched = image.pixel(x, y) != QColor(Qt::white).rgb();
            const bool in_target = x >= 20 && x < 120 && y >= 20 && y < 80;
            (in_target ? inside : outside_target) += touched ? 1 : 0;
        }
    }
    EXPECT_GT(inside, 500);
    EXPECT_EQ(outside_target, 0);
}

} // namespace
} // namespace stow::outside

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    const QGuiApplication application(argc, argv);
    if (!stow::painting::load_fonts()) return 1;
    return RUN_ALL_TESTS();
}
