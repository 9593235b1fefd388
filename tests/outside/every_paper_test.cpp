// Every paper in each of its forms, read back out of its PDF: sizes of its letters, room at its edges, codes, fonts.
#include "app/painting/fonts.h"
#include "app/painting/paint.h"
#include "core/paperbox/net.h"
#include "core/papers/payload.h"
#include "core/papers/template.h"
#include "tests/core/papers/samples.h"
#include "tests/outside/papers_read_back.h"

#include <QFile>
#include <QImage>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace stow::outside {
namespace {

using namespace papers;

struct Paper {
    std::string name;
    Document document;
    int margin = 0;                     // kept free at left and right, 0.01 mm; a code's quiet zone may reach into it
    std::vector<std::string> address{}; // the beginnings of its lines
    std::vector<std::string> codes{};   // of its first page
};

const std::vector<HandlingMark> all_marks{HandlingMark::fragile, HandlingMark::this_way_up, HandlingMark::keep_from_sun,
                                          HandlingMark::keep_dry};

LabelData coded(LabelData label, int print)
{
    label.print = print;
    label.code = *to_text({Payload::Kind::label, label.parcel, print});
    return label;
}

// On sheets of hers, with her margin.
std::vector<Paper> papers_on(const Blank& blank, const Words& words, const std::string& logo)
{
    const painting::FontMeasure measure;
    const auto code_of = [](const std::string& parcel) { return *to_text({Payload::Kind::paper, parcel}); };
    std::vector<Paper> all;
    const auto add = [&](const char* name, Document document) -> Paper& {
        all.push_back({name, std::move(document), blank.margin});
        return all.back();
    };
    for (const auto& [name, sample] :
         {std::pair("slip", samples::plain_slip()), std::pair("long slip", samples::long_slip()),
          std::pair("gift slip", samples::gift_slip())}) {
        Slip slip = sample;
        slip.code = code_of(slip.parcel);
        slip.logo = logo;
        slip.reprint = Reprint{2, samples::day, {}};
        Paper& paper = add(name, lay_out(slip, blank, words, measure));
        for (const std::string& line : slip.to) paper.address.push_back(line.substr(0, 12));
        paper.codes = {slip.code};
    }
    for (const auto& [name, sample] :
         {std::pair("carton card", samples::bench()), std::pair("mailer card", samples::mailer_bench()),
          std::pair("tube card", samples::tube_bench())}) {
        BenchCard card = sample;
        card.code = code_of(card.parcel);
        card.reprint = Reprint{2, samples::day, {}};
        add(name, lay_out(card, blank, words, measure)).codes = {card.code};
    }
    add("pick list", lay_out(samples::pick_round(), blank, words, measure));
    add("long pick list", lay_out(samples::long_round(), blank, words, measure));
    add("pick list by order", lay_out_by_order(samples::long_round(), blank, words, measure));
    add("customs data", lay_out(samples::customs(), blank, words, measure)).address = {"Pál Verrin", "Kaigata 1",
                                                                                       "0150 Skerha"};
    add("reorder list", lay_out(samples::reorder(), blank, words, measure));
    NeedList making = samples::reorder();
    making.kind = NeedList::Kind::making;
    add("making list", lay_out(making, blank, words, measure));
    add("material report", lay_out(samples::materials(40), blank, words, measure));
    add("hand-over list", lay_out(samples::list_of(40), blank, words, measure));
    Paper& cards = add("command cards", command_cards(blank, words, measure));
    for (const Command command : all_commands)
        cards.codes.push_back(*to_text({Payload::Kind::command, std::string(word_of(command))}));
    return all;
}

// What has sheets of its own.
std::vector<Paper> papers_of_their_own(const Words& words)
{
    const painting::FontMeasure measure;
    std::vector<Paper> all;
    for (const shop::LabelForm form : shop::all_label_forms) {
        const int edge = from_mm(form == shop::LabelForm::roll_62 ? 5 : 6);
        for (const LabelData& sample : {samples::home_label(), samples::abroad_label(), samples::longest_label()}) {
            for (const bool returns : {false, true}) {
                LabelData label = coded(sample, returns ? 2 : 1);
                label.returns = returns;
                if (!returns) label.marks = all_marks; // those are the outer's, on its way out
                Paper paper{std::string(returns ? "return label " : "label ") + std::string(shop::name_of(form)),
                            {"label", {lay_out(label, words, measure, form)}},
                            edge};
                for (const std::string& line : label.to) paper.address.push_back(line.substr(0, 10));
                paper.codes = {label.code};
                all.push_back(std::move(paper));
            }
        }
    }
    for (const shop::LabelForm form : {shop::LabelForm::a4_of_4, shop::LabelForm::a4_of_6}) { // begun sheets
        std::vector<LabelData> several;
        for (const LabelData& sample :
             {samples::home_label(), samples::abroad_label(), samples::longest_label(), samples::seven_line_label(),
              samples::overlong_label(), samples::hebrew_label(), samples::japanese_label()}) {
            several.push_back(coded(sample, 1 + static_cast<int>(several.size()) % 2));
            several.back().marks = all_marks;
        }
        all.push_back({"sheet of labels " + std::string(shop::name_of(form)), lay_out(several, 3, words, measure, form),
                       from_mm(6)});
    }
    for (const LabelData& sample : {samples::hebrew_label(), samples::japanese_label()}) {
        const LabelData label = coded(sample, 2);
        all.push_back(
            {"label of another script", {"label", {lay_out(label, words, measure)}}, from_mm(6), {}, {label.code}});
    }
    Slip slip = samples::plain_slip();
    slip.to = samples::hebrew_label().to;
    slip.code = *to_text({Payload::Kind::paper, slip.parcel});
    all.push_back({"slip of another script", lay_out(slip, Format::a4, words, measure), from_mm(18), {}, {slip.code}});
    all.push_back({"gift note", gift_note(*samples::gift_slip().gift, measure), from_mm(6)});
    for (const paperbox::Kind kind :
         {paperbox::Kind::one_square, paperbox::Kind::tray, paperbox::Kind::pillow, paperbox::Kind::envelope}) {
        const paperbox::Wanted wanted{kind, {mm(120), mm(80), mm(kind == paperbox::Kind::envelope ? 0 : 30)}};
        const auto laid = paperbox::lay(wanted);
        if (!laid.net) continue;
        all.push_back({"template " + std::string(paperbox::name_of(kind)),
                       lay_out(BoxTemplate{"box", "cut along the lines", *laid.net}, Format::a4, words, measure), 0});
    }
    return all;
}

std::vector<Paper> every_paper(const std::string& logo)
{
    std::vector<Paper> all;
    const auto add = [&](std::vector<Paper> papers) {
        std::move(papers.begin(), papers.end(), std::back_inserter(all));
    };
    const Words english(Language::english), german(Language::german);
    for (const Blank& blank : {Blank(Format::a4), Blank(extent_of(Format::letter), from_mm(40))})
        add(papers_on(blank, english, logo));
    for (const Blank& blank : {Blank(Format::letter), Blank(extent_of(Format::a4), from_mm(8))})
        add(papers_on(blank, german, {}));
    add(papers_of_their_own(english));
    add(papers_of_their_own(german));
    return all;
}

std::string a_logo(const QTemporaryDir& folder)
{
    const QString file = folder.filePath(QStringLiteral("logo.png"));
    QImage picture(240, 60, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    return picture.save(file) ? file.toStdString() : std::string();
}

// 9 points for everything, 11 for addresses: what the workshop asks of its papers. Sizes are read to a third of a
// point.
TEST(EveryPaperPrinted, HasLettersThatCanBeReadWithinItsMargins)
{
    constexpr double least = 8.99, least_of_addresses = 10.99, point = 72.0 / 2540.0;
    const QTemporaryDir folder;
    const std::string logo = a_logo(folder);
    ASSERT_FALSE(logo.empty());
    std::size_t read = 0;
    for (const Paper& paper : every_paper(logo)) {
        const Rendered rendered(paper.document, false);
        ASSERT_TRUE(rendered.written()) << paper.name;
        const std::vector<PrintedText> texts = rendered.texts();
        ASSERT_FALSE(texts.empty()) << paper.name;
        read += texts.size();
        for (const PrintedText& text : texts) {
            const Extent extent = paper.document.pages.at(static_cast<std::size_t>(text.page) - 1).extent;
            EXPECT_GE(text.size, least) << paper.name << ": " << text.text;
            EXPECT_GE(text.left, paper.margin * point - 0.5) << paper.name << ": " << text.text;
            EXPECT_LE(text.left + text.width, (extent.width - paper.margin) * point + 0.5)
                << paper.name << ": " << text.text;
            EXPECT_GE(text.top, 0) << paper.name << ": " << text.text;
            EXPECT_LE(text.top + text.height, extent.height * point) << paper.name << ": " << text.text;
        }
        for (const std::string& line : paper.address) {
            bool found = false;
            for (const PrintedText& text : texts) {
                if (!text.text.starts_with(line)) continue;
                found = true;
                EXPECT_GE(text.size, least_of_addresses) << paper.name << ": " << text.text;
            }
            EXPECT_TRUE(found) << paper.name << ": " << line;
        }
    }
    EXPECT_GT(read, 3000U);
}

// Words that run into each other, in whatever margins and language. Lines below one another may touch, as their letters
// do not: a quarter of their height is air.
TEST(EveryPaperPrinted, HasNoWordsOverEachOther)
{
    const QTemporaryDir folder;
    for (const Paper& paper : every_paper(a_logo(folder))) {
        const std::vector<PrintedText> texts = Rendered(paper.document, false).texts();
        ASSERT_FALSE(texts.empty()) << paper.name;
        for (std::size_t i = 0; i < texts.size(); ++i) {
            for (std::size_t j = i + 1; j < texts.size(); ++j) {
                const PrintedText &a = texts[i], &b = texts[j];
                if (a.page != b.page) continue;
                const double across = std::min(a.left + a.width, b.left + b.width) - std::max(a.left, b.left);
                const double down = std::min(a.top + a.height, b.top + b.height) - std::max(a.top, b.top);
                EXPECT_FALSE(across > 1 && down > std::min(a.height, b.height) / 3)
                    << paper.name << ", page " << a.page << ": " << a.text << " | " << b.text;
            }
        }
    }
}

// To be looked at: with STOW_KEEP_PAPERS=FOLDER they are kept there, in black only too.
TEST(EveryPaperPrinted, CanBeKeptToBeLookedAt)
{
    const QString keep = QString::fromUtf8(qgetenv("STOW_KEEP_PAPERS"));
    if (keep.isEmpty()) GTEST_SKIP() << "no folder named";
    const QTemporaryDir folder;
    int number = 0;
    for (const Paper& paper : every_paper(a_logo(folder))) {
        const bool black = ++number % 2 == 0;
        const QString name = QStringLiteral("%1/%2 %3%4.pdf")
                                 .arg(keep)
                                 .arg(number, 3, 10, QLatin1Char('0'))
                                 .arg(QString::fromStdString(paper.name), black ? QStringLiteral(" black") : QString());
        EXPECT_TRUE(painting::write_pdf(name, paper.document, black ? painting::black_only() : painting::light()));
    }
}

// Embedded, and with a table of their letters, so that text can be searched and copied (pdffonts of poppler: columns
// emb and uni; its sub goes by a name that Qt does not write). Only the letters used: a paper is smaller than one whole
// font.
TEST(EveryPaperPrinted, CarriesThePartsOfItsFontsThatItUses)
{
    QFile font(QStringLiteral(":/stow/fonts/B612-Regular.otf"));
    ASSERT_TRUE(font.open(QIODevice::ReadOnly));
    const auto whole_font = static_cast<std::size_t>(font.size());
    for (const Paper& paper : papers_on(Blank(Format::a4), Words(Language::german), {})) {
        const Rendered rendered(paper.document, false);
        const QList<QByteArray> lines = rendered.fonts().split('\n');
        ASSERT_GT(lines.size(), 3) << paper.name;
        for (qsizetype i = 2; i < lines.size(); ++i) {
            if (lines[i].isEmpty()) continue;
            const QList<QByteArray> words = lines[i].simplified().split(' ');
            ASSERT_GE(words.size(), 5) << lines[i].toStdString();
            const qsizetype emb = words.size() - 5; // emb sub uni object generation
            EXPECT_EQ(words[emb], "yes") << paper.name << ": " << lines[i].toStdString();
            EXPECT_EQ(words[emb + 2], "yes") << paper.name << ": " << lines[i].toStdString();
        }
        EXPECT_LT(rendered.raw().size(), whole_font) << paper.name;
    }
}

class CodesOfEveryPaper : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(Printers, CodesOfEveryPaper, testing::Values(150, 203, 300));

// Every paper with a code, as worn as a label: 2 % of the pixels turned over, askew by five degrees, some looks.
TEST_P(CodesOfEveryPaper, AreReadThroughNoiseAndAskew)
{
    constexpr unsigned looks = 8;
    const QTemporaryDir folder;
    std::vector<Paper> all = papers_on(Blank(Format::letter), Words(Language::english), a_logo(folder));
    std::set<std::string> seen; // address labels are tried in papers_outside_test.cpp; one return label of each form
    for (Paper& paper : papers_of_their_own(Words(Language::german))) {
        if (paper.name.starts_with("return label") && seen.insert(paper.name).second) all.push_back(std::move(paper));
    }
    int with_codes = 0;
    for (const Paper& paper : all) {
        std::set<std::string> codes;
        for (const Mark& mark : paper.document.pages[0].marks) {
            const auto* const code = std::get_if<Modules>(&mark);
            if (code == nullptr) continue;
            ++with_codes;
            const Rendered rendered(before_the_scanner(paper.document.pages[0], *code), true);
            for (const double degrees : {-5.0, 5.0}) {
                std::vector<std::string> read;
                for (unsigned look = 1; look <= looks && read.empty(); ++look) {
                    read = rendered.codes_of_worse(1, GetParam(), 0.02, degrees, look);
                }
                EXPECT_EQ(read.size(), 1U) << paper.name << " turned by " << degrees;
                codes.insert(read.begin(), read.end());
            }
        }
        EXPECT_THAT(codes, testing::UnorderedElementsAreArray(paper.codes)) << paper.name;
    }
    EXPECT_EQ(with_codes, 6 + 7 + 5); // slips and bench cards, command cards, return labels
}

} // namespace
} // namespace stow::outside
