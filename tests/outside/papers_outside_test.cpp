#include "app/painting/fonts.h"
#include "app/painting/paint.h"
#include "core/papers/payload.h"
#include "core/papers/qr.h"
#include "tests/core/papers/samples.h"
#include "tests/outside/papers_read_back.h"

#include <QFontInfo>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

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
    return *to_text(Payload{Payload::Kind::parcel, parcel});
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

Document labels()
{
    const painting::FontMeasure measure;
    Document document;
    document.title = "labels";
    for (LabelData label : {samples::home_label(), samples::abroad_label()}) {
        label.code = code_of(label.parcel);
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
        EXPECT_EQ(*payload, (Payload{Payload::Kind::parcel, parcel}));
    }
}

TEST_P(AtDpi, CodesOfLabelsAreReadInBlackOnly)
{
    const Rendered rendered(labels(), true);
    ASSERT_TRUE(rendered.written());
    EXPECT_THAT(rendered.codes(1, GetParam()), ElementsAre(code_of("2611-017")));
    EXPECT_THAT(rendered.codes(2, GetParam()), ElementsAre(code_of("2611-018")));
}

// 2 % of the pixels turned over, the paper laid askew by five degrees: as off a worn thermal head. A scanner looks many
// times a second; it may look as often as this. (At 300 dpi the first look reads all, at 150 about half of them.)
constexpr unsigned looks = 8;
TEST_P(AtDpi, CodesOfLabelsAreReadThroughNoiseAndAskew)
{
    const painting::FontMeasure measure;
    for (const shop::LabelForm form : shop::all_label_forms) {
        LabelData label = samples::abroad_label();
        label.code = code_of(label.parcel);
        label.marks = {HandlingMark::fragile, HandlingMark::this_way_up};
        const Rendered rendered(Document{"label", {lay_out(label, english, measure, form)}}, true);
        ASSERT_TRUE(rendered.written());
        for (const double degrees : {-5.0, 0.0, 5.0}) {
            std::vector<std::string> codes;
            for (unsigned look = 1; look <= looks && codes.empty(); ++look) {
                codes = rendered.codes_of_worse(1, GetParam(), 0.02, degrees, look);
            }
            EXPECT_THAT(codes, ElementsAre(code_of("2611-018"))) << shop::name_of(form) << " turned by " << degrees;
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
