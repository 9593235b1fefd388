#include "small_shop.h"

namespace stow::book {
namespace {

weighing::Lesson lesson(Weight reading)
{
    weighing::Lesson l;
    l.things = {{"INK-SEA", false, 2, 1000, SmallShop::good("INK-SEA", 0).weight}};
    l.rest = {grams(100), tenth_g(5)};
    l.reading = reading;
    return l;
}

Reading reading(Weight weight)
{
    return {shop::WeighingStage::closed, weight, false, {}, shop::WeightEstimate{grams(520), grams(6)}, lesson(weight)};
}

TEST(Weighing, TeachesAndUndoingItTakesBackWhatItTaught)
{
    SmallShop shop;
    shop.stock_up();
    for (const char* number : {"1001", "1002", "1003"}) {
        ASSERT_TRUE(weigh(shop.book, shop.planned(number), reading(grams(532))));
    }
    const shop::Cupboard before = cupboard(shop.book);
    EXPECT_GT(before.weight_of(before.goods.at({"INK-SEA"})).one.mean, grams(211));
    const auto step = weigh(shop.book, shop.planned("1004"), reading(grams(540)));
    ASSERT_TRUE(step);
    EXPECT_NE(cupboard(shop.book).learnt_goods, before.learnt_goods);
    ASSERT_TRUE(undo(shop.book, **step));
    EXPECT_EQ(cupboard(shop.book).learnt_goods, before.learnt_goods);
    EXPECT_EQ(lessons(shop.book).size(), 3u);
    EXPECT_EQ(cupboard(shop.book).goods.at({"INK-SEA"}).weight.mean, grams(210)) << "what she entered stays hers";
}

TEST(Weighing, AParcelTeachesOnceByItsLastWeighing)
{
    SmallShop shop;
    const shop::ParcelId id = shop.planned("1001");
    ASSERT_TRUE(weigh(shop.book, id, reading(grams(532))));
    ASSERT_TRUE(weigh(shop.book, id, reading(grams(530))));
    ASSERT_EQ(lessons(shop.book).size(), 1u);
    EXPECT_EQ(lessons(shop.book)[0].reading, grams(530));
    Reading overridden = reading(grams(700));
    overridden.overridden = true;
    ASSERT_TRUE(weigh(shop.book, id, overridden));
    EXPECT_EQ(lessons(shop.book).size(), 1u) << "she knew better: nothing is learnt";
}

TEST(Weighing, KeepsTheEstimateBesideTheScale)
{
    SmallShop shop;
    const shop::ParcelId id = shop.planned("1001");
    weigh(shop.book, id, reading(grams(532))).value();
    weigh(shop.book, id, {shop::WeighingStage::contents, grams(430)}).value();
    const auto record = weighed(shop.book, shop::WeighingStage::closed);
    ASSERT_EQ(record.size(), 1u);
    EXPECT_EQ(record[0].expected.mean, grams(520));
    EXPECT_EQ(record[0].reading, grams(532));
    EXPECT_TRUE(weighed(shop.book, shop::WeighingStage::contents).empty()) << "no estimate was given";
    EXPECT_EQ(parcel(shop.book, id)->parcel.weighings[0].expected->spread, grams(6));
}

TEST(Bench, RemembersWhichGoodsWereScanned)
{
    SmallShop shop;
    const shop::ParcelId id = shop.planned("1001");
    const auto scanned = [&] { return parcel(shop.book, id)->parcel.scanned; };
    bench_tick(shop.book, id, 1).value();
    bench_tick(shop.book, id, 2, true).value();
    EXPECT_EQ(scanned(), 0b10);
    bench_tick(shop.book, id, 3, true).value();
    EXPECT_EQ(scanned(), 0b110);
    bench_tick(shop.book, id, 2).value(); // back
    EXPECT_EQ(scanned(), 0b10);
    bench_tick(shop.book, id, 3).value(); // ticked this time
    EXPECT_EQ(scanned(), 0b10);
}

TEST(Stamps, LeaveTheStockAndComeBackWithUndo)
{
    SmallShop shop;
    shop.stock_up();
    take_in_supplies(shop.book, {SmallShop::carton("STAMP-1", 40)}, "stamps.csv");
    const shop::ParcelId id = shop.planned("1001");
    const PostageBought bought{0, id, "Skerry Post", "PACKET", {690, {}}, "", {}, false};
    const auto step = buy_postage(shop.book, bought, false, {{{"STAMP-1"}, 3}});
    ASSERT_TRUE(step);
    EXPECT_EQ(supplies_on_hand(shop.book).at({"STAMP-1"}), shop::pieces(37));
    ASSERT_TRUE(undo(shop.book, **step));
    EXPECT_EQ(supplies_on_hand(shop.book).at({"STAMP-1"}), shop::pieces(40));
    EXPECT_TRUE(postage_bought(shop.book, id).empty());
    EXPECT_EQ(buy_postage(shop.book, bought, false, {{{"NONE"}, 1}}).error().why, Why::unknown_supply);
    EXPECT_TRUE(postage_bought(shop.book, id).empty());
}

TEST(Tracking, ManyNumbersAreOneStepOrNone)
{
    SmallShop shop;
    const shop::ParcelId a = shop.planned("1001"), b = shop.planned("1002");
    const std::string first = parcel(shop.book, a)->parcel.number, second = parcel(shop.book, b)->parcel.number;
    EXPECT_EQ(set_trackings(shop.book, {{first, "RR473124829DK"}, {"2611-999", "X"}}).error().why, Why::unknown_parcel);
    EXPECT_EQ(parcel(shop.book, a)->parcel.tracking, "");
    const auto step = set_trackings(shop.book, {{first, "RR473124829DK"}, {second, "RR123456785DK"}});
    ASSERT_TRUE(step);
    EXPECT_EQ(parcel_by_tracking(shop.book, "RR123456785DK"), b);
    EXPECT_EQ(parcel_by_tracking(shop.book, ""), std::nullopt);
    ASSERT_TRUE(undo(shop.book, **step));
    EXPECT_EQ(parcel_by_tracking(shop.book, "RR123456785DK"), std::nullopt);
}

TEST(Dispatch, BeginsWithWhatWeKnowAndKeepsWhatSheSays)
{
    SmallShop shop;
    shop::Dispatch settings = dispatch(shop.book);
    EXPECT_EQ(settings, shop::first_dispatch());
    settings.tax_numbers.import_scheme = "IM0000000000";
    settings.customs.places.pop_back();
    settings.send_files = {{"Skerry Post", {{"ref", "parcel"}, {"kg", "weight kg"}}, ';', ','}};
    settings.stamps = {{{"STAMP-1"}, Money{110, {}}}};
    ASSERT_TRUE(put_dispatch(shop.book, settings));
    EXPECT_EQ(dispatch(shop.book), settings);
    for (const Step& step : steps(shop.book)) {
        for (const auto& [name, words] : step.words) EXPECT_EQ(words.find("IM000"), std::string::npos);
    }
}

} // namespace
} // namespace stow::book
