// Copies of the book, and what is remembered of solved questions.
#include "core/book/backup.h"
#include "core/book/rate_sheets.h"
#include "core/book/schema.h"
#include "core/book/settings.h"
#include "core/book/solved.h"
#include "core/book/verify.h"
#include "small_shop.h"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace stow;
using namespace stow::book;
using Fault = BackupProblem::Fault;

TEST(Backup, CopiesTheBookWhileItIsOpen)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.labelled("1001");
    const auto copy = shop.folder / "copy.book";
    ASSERT_TRUE(backup_to(shop.book, copy));
    EXPECT_FALSE(std::filesystem::exists(shop.folder / "copy.book.part"));
    EXPECT_FALSE(std::filesystem::exists(shop.folder / "copy.book-wal")) << "one file, nothing beside it";
    EXPECT_EQ(std::filesystem::status(copy).permissions(),
              std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);

    take_in_goods(shop.book, {SmallShop::good("WAX-RED", 4)}, "later.csv");
    const Book opened = open_or_throw(copy, system_time);
    EXPECT_EQ(parcel(opened, id)->parcel.number, "2611-001");
    EXPECT_EQ(steps(opened).size(), steps(shop.book).size() - 1);
    EXPECT_TRUE(verify(opened).empty());
}

TEST(Backup, SaysWhenItCannotWriteAndKeepsTheOlderOne)
{
    SmallShop shop;
    const auto nowhere = backup_to(shop.book, shop.folder / "no such folder" / "copy.book");
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().fault, Fault::cannot_write);
    EXPECT_FALSE(nowhere.error().detail.empty());
}

TEST(Restore, PutsACopyInPlaceAndKeepsTheOldBook)
{
    SmallShop shop;
    shop.stock_up();
    const auto copy = shop.folder / "copy.book", place = shop.folder / "other.book";
    ASSERT_TRUE(backup_to(shop.book, copy));
    {
        Book other = open_or_throw(place, system_time);
        put_good(other, SmallShop::good("OLD", 1)).value();
        const auto refused = restore(copy, place);
        ASSERT_FALSE(refused) << "the book is open";
        EXPECT_EQ(refused.error().fault, Fault::in_use);
    }
    ASSERT_TRUE(restore(copy, place));
    const Book restored = open_or_throw(place, system_time);
    EXPECT_EQ(cupboard(restored).pieces.at({"INK-SEA"}), 20);
    const Book old = open_or_throw(shop.folder / "other.book.before-restore", system_time);
    EXPECT_EQ(cupboard(old).goods.count({"OLD"}), 1u);
}

TEST(Restore, OfAnOlderBookLeavesOneFileForItsOwnerOnly)
{
    const Folder folder;
    const auto copy = folder / "copy.book", place = folder / "place" / "shop.book";
    std::filesystem::create_directory(folder / "place");
    {
        SQLite::Database older(copy.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        older.exec("PRAGMA application_id = " + std::to_string(book_mark));
        ASSERT_TRUE(migrate(older, {migrations().front()}));
    }
    std::filesystem::permissions(copy, std::filesystem::perms(0644));
    ASSERT_TRUE(restore(copy, place));
    EXPECT_EQ(std::filesystem::status(place).permissions(), std::filesystem::perms(0600));
    int files = 0;
    for ([[maybe_unused]] const auto& file : std::filesystem::directory_iterator(folder / "place")) ++files;
    EXPECT_EQ(files, 1);
}

TEST(Restore, RefusesACopyThatIsNotSoundAndChangesNothing)
{
    SmallShop shop;
    shop.stock_up();
    const auto copy = shop.folder / "copy.book", place = shop.folder / "other.book";
    {
        open_or_throw(place, system_time);
    }
    ASSERT_TRUE(backup_to(shop.book, copy));
    {
        SQLite::Database later(copy.string(), SQLite::OPEN_READWRITE);
        later.exec("PRAGMA user_version = 99");
    }
    auto refused = restore(copy, place);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().fault, Fault::source_refused);
    EXPECT_EQ(refused.error().source->fault, OpenFault::newer);

    std::filesystem::resize_file(copy, 20'000);
    refused = restore(copy, place);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().source->fault, OpenFault::damaged);
    EXPECT_EQ(restore(shop.folder / "none", place).error().source->fault, OpenFault::unreadable);
    EXPECT_FALSE(std::filesystem::exists(shop.folder / "other.book.before-restore"));
    EXPECT_TRUE(verify(open_or_throw(place, system_time)).empty());
}

TEST(SolvedQuestions, AreRememberedForThisEngineOnly)
{
    SmallShop shop;
    const fitting::Question question = shop.plan(shop::OrderId{1}).question;
    fitting::Answer answer;
    answer.verdict = fitting::Verdict::fits;
    answer.outer = "K2";
    answer.proven_smallest = true;
    answer.work = 42;
    SolvedQuestions memory(shop.book.path());
    EXPECT_FALSE(memory.recall(question));
    memory.keep(question, answer);
    const auto known = memory.recall(question);
    ASSERT_TRUE(known);
    EXPECT_EQ(known->outer, "K2");
    EXPECT_EQ(known->work, 42u);

    fitting::Question other = question;
    other.gap = tenth_mm(1);
    EXPECT_FALSE(memory.recall(other)) << "another gap is another question";
    shop.book.db().exec("UPDATE solved SET engine = engine + 1");
    EXPECT_FALSE(memory.recall(question)) << "another engine may answer otherwise";
}

TEST(SolvedQuestions, AreWorkedOutAgainWhenAsked)
{
    SmallShop shop;
    fitting::Question question;
    fitting::Item jar;
    jar.id = "jar";
    jar.count = 2;
    jar.shape = Block{{mm(50), mm(50), mm(80)}};
    jar.weight = grams(100);
    question.items = {jar};
    for (const int length : {90, 110}) {
        fitting::Outer outer;
        outer.id = length == 90 ? "S" : "M";
        outer.form.inner = {mm(length), mm(60), mm(85)};
        outer.form.outer = {mm(length + 6), mm(66), mm(91)};
        question.outers.push_back(outer);
    }
    SolvedQuestions memory(shop.book.path());
    stow::Run run;
    const fitting::Answer right = fitting::fit(question, run, &memory);
    ASSERT_EQ(right.outer, "M");
    const SolvedAgain holds = verify_solved(shop.book, run);
    EXPECT_TRUE(holds.findings.empty());
    EXPECT_EQ(holds.questions, 1);
    EXPECT_EQ(holds.refusals, 1);
    EXPECT_EQ(holds.undecided, 0);

    fitting::Answer wrong = right; // as a faulty engine might have left it
    wrong.refused.push_back({"M", fitting::Verdict::cannot_fit, fitting::Proof::geometry, {}, {}, {}});
    wrong.placements[0].at.x = wrong.placements[1].at.x;
    memory.keep(question, wrong);
    const auto findings = verify_solved(shop.book, run).findings;
    ASSERT_EQ(findings.size(), 2u);
    EXPECT_EQ(findings[0].what, Unsound::plan_geometry);
    EXPECT_EQ(findings[1].what, Unsound::refusal);
    EXPECT_EQ(findings[1].detail, "M");
}

TEST(SolvedQuestions, AreOnlyAdvice)
{
    SmallShop shop;
    const fitting::Question question = shop.plan(shop::OrderId{1}).question;
    SolvedQuestions nowhere(shop.folder / "none.book");
    nowhere.keep(question, {});
    EXPECT_FALSE(nowhere.recall(question));
    SolvedQuestions memory(shop.book.path());
    shop.book.db().exec("BEGIN IMMEDIATE");
    memory.keep(question, {}); // cannot write now
    shop.book.db().exec("COMMIT");
    EXPECT_FALSE(memory.recall(question));
}

TEST(RateSheets, OneForEachCarrierAndFirstDay)
{
    SmallShop shop;
    postage::RateSheet sheet;
    sheet.carrier = "Skerry Post";
    sheet.valid_from = parse_date("2026-01-01");
    sheet.steps = {{"PACKET", "DK", "", grams(500), {690, {}}}};
    postage::RateSheet next = sheet;
    next.valid_from = parse_date("2027-01-01");
    EXPECT_EQ(take_in_rate_sheets(shop.book, {next, sheet}, "rates").fresh, 2);
    EXPECT_FALSE(take_in_rate_sheets(shop.book, {next, sheet}, "rates").step);
    EXPECT_EQ(rate_sheets(shop.book), (std::vector{sheet, next}));
    sheet.steps[0].price.minor = 720;
    EXPECT_EQ(take_in_rate_sheets(shop.book, {sheet}, "rates").changed, 1);
    EXPECT_EQ(rate_sheets(shop.book).at(0), sheet);
    ASSERT_TRUE(remove_rate_sheet(shop.book, "Skerry Post", next.valid_from));
    EXPECT_EQ(rate_sheets(shop.book).size(), 1u);
}

TEST(Settings, AreRememberedByName)
{
    SmallShop shop;
    remember(shop.book, "screen", "bench");
    remember(shop.book, "screen", "bench 2611-001");
    EXPECT_EQ(remembered(shop.book, "screen"), "bench 2611-001");
    EXPECT_EQ(remembered(shop.book, "nothing"), std::nullopt);
    EXPECT_TRUE(steps(shop.book).empty()) << "where she stopped is no step";
    ASSERT_TRUE(remember_columns(shop.book, "Harbour Market", "number=Order no."));
    EXPECT_EQ(all_columns(shop.book).at("Harbour Market"), "number=Order no.");
    EXPECT_EQ(remember_columns(shop.book, "Harbour Market", "number=Order no.").value(), std::nullopt);
}

TEST(Cupboard, GivesBackWhatWasTakenIn)
{
    SmallShop shop;
    shop.stock_up();
    shop::Wrapping wrapping;
    wrapping.code = {"TISSUE"};
    wrapping.growth = {mm(4), mm(4), mm(8)};
    wrapping.uses = {{{"TISSUE-SHEET"}, shop::Amount{500}}};
    take_in_wrappings(shop.book, {wrapping}, "wrappings.csv");
    const shop::HouseRule card{shop::HouseRule::When::gift, {}, std::nullopt, {"CARD"}, 1};
    EXPECT_TRUE(take_in_rules(shop.book, {card}, "rules.csv").step);
    EXPECT_FALSE(take_in_rules(shop.book, {card}, "rules.csv").step);
    shop::House house;
    house.trays = 9;
    house.address.town = "Vesterskær";
    put_house(shop.book, house).value();

    const shop::Cupboard all = cupboard(shop.book);
    EXPECT_EQ(all.house, house);
    EXPECT_EQ(all.goods.at({"INK-SEA"}).shape, SmallShop::good("INK-SEA", 0).shape);
    EXPECT_EQ(all.goods.at({"INK-SEA"}).pieces, 20);
    EXPECT_EQ(all.pieces.at({"NIB-F"}), 50);
    EXPECT_EQ(all.supplies.at({"K2"}).form, SmallShop::carton("K2", 0).form);
    EXPECT_EQ(all.on_hand.at({"K3"}), shop::pieces(10));
    EXPECT_EQ(all.wrappings.at({"TISSUE"}).growth, wrapping.growth);
    ASSERT_EQ(all.rules.size(), 1u);
    EXPECT_EQ(all.rules[0].insert.text, "CARD");
}
