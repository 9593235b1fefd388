// Documents give back exactly what was written, for every value and every member.
#include "core/intake/document.h"
#include "core/intake/json_members.h"
#include "core/intake/plan_json.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <random>
#include <set>

using namespace stow;
using namespace stow::intake;

namespace {

// Fills any value with chance members; lists get shorter the deeper they lie.
struct Filler {
    std::mt19937 chance;
    int depth = 0;

    int upto(int most) { return std::uniform_int_distribution<int>(0, most)(chance); }

    void fill(bool& v) { v = upto(1) == 1; }
    template <std::integral T>
    void fill(T& v)
    {
        v = static_cast<T>(upto(2'000'000));
        if (std::is_signed_v<T> && upto(3) == 0) v = static_cast<T>(-v);
        if (sizeof(T) == 8 && upto(5) == 0) v = std::numeric_limits<T>::max();
    }
    void fill(std::string& v)
    {
        static const std::vector<std::string> texts{"",  "Tide ink 30 ml", "\"quoted\"\n", "Žofia Lindqvåg", "INK-7",
                                                    "{}"};
        v = texts[static_cast<std::size_t>(upto(5))];
    }
    template <Worded E>
    void fill(E& v)
    {
        int words = 0;
        while (word(static_cast<E>(words))) ++words;
        v = static_cast<E>(upto(words - 1));
    }
    template <class K>
    void fill(Quantity<K>& v)
    {
        fill(v.units);
    }
    template <class K>
    void fill(shop::Code<K>& v)
    {
        fill(v.text);
    }
    template <class K>
    void fill(shop::Id<K>& v)
    {
        fill(v.value);
    }
    void fill(Currency& v) { v = *Currency::from(upto(1) ? "JPY" : "EUR"); }
    void fill(Date& v) { v = Date(std::chrono::days(upto(30'000))); }
    void fill(TimeOfDay& v) { v = TimeOfDay(upto(1439)); }
    void fill(Size& v) { fill(v.x), fill(v.y), fill(v.z); }
    template <class T>
    void fill(std::optional<T>& v)
    {
        if (upto(1)) fill(v.emplace());
    }
    template <class T>
    void fill(std::vector<T>& v)
    {
        ++depth;
        v.resize(static_cast<std::size_t>(upto(depth > 3 ? 0 : 3)));
        for (T& item : v) fill(item);
        --depth;
    }
    template <class T, std::size_t N>
    void fill(std::array<T, N>& v)
    {
        for (T& item : v) fill(item);
    }
    template <class T, std::size_t I = 0>
    void fill_kind(T& v, std::size_t kind)
    {
        if constexpr (I < std::variant_size_v<T>) {
            if (kind == I)
                fill(v.template emplace<I>());
            else
                fill_kind<T, I + 1>(v, kind);
        }
    }
    template <class... Ts>
    void fill(std::variant<Ts...>& v)
    {
        fill_kind(v, static_cast<std::size_t>(upto(sizeof...(Ts) - 1)));
    }
    template <class T>
    requires std::is_aggregate_v<T>
    void fill(T& v)
    {
        members(v, [&](const char*, auto& member) { fill(member); });
    }
};

// How many members an aggregate has: as many as it can be made from.
struct Anything {
    template <class T>
    operator T() const // never called: only whether it could be is asked
    {
        std::abort();
    }
};
template <class T, class... As>
constexpr std::size_t member_count()
{
    if constexpr (requires { T{As{}..., Anything{}}; })
        return member_count<T, As..., Anything>();
    else
        return sizeof...(As);
}

template <class T>
void expect_every_member()
{
    T value{};
    std::set<std::string> names;
    std::set<const void*> places;
    members(value, [&](const char* name, auto& member) {
        names.insert(name);
        places.insert(&member);
    });
    EXPECT_EQ(names.size(), member_count<T>()) << typeid(T).name();
    EXPECT_EQ(places.size(), member_count<T>()) << typeid(T).name();
}

template <class T>
void expect_back_unchanged(std::uint32_t seed)
{
    T value{};
    Filler{std::mt19937(seed)}.fill(value);
    const std::string text = to_document(value);
    const auto back = from_document<T>(text);
    RC_ASSERT(back.has_value());
    RC_ASSERT(to_document(*back) == text);
    if constexpr (std::equality_comparable<T>) RC_ASSERT(*back == value);
}

} // namespace

TEST(Document, NamesEveryMemberOnce)
{
    expect_every_member<Money>();
    expect_every_member<Sheet>();
    expect_every_member<OuterForm>();
    expect_every_member<shop::Good>();
    expect_every_member<shop::Supply>();
    expect_every_member<shop::Wrapping>();
    expect_every_member<shop::HouseRule>();
    expect_every_member<shop::House>();
    expect_every_member<shop::Address>();
    expect_every_member<shop::OrderLine>();
    expect_every_member<shop::Order>();
    expect_every_member<shop::Piece>();
    expect_every_member<fitting::Item>();
    expect_every_member<fitting::Outer>();
    expect_every_member<fitting::Question>();
    expect_every_member<fitting::Placement>();
    expect_every_member<fitting::Refusal>();
    expect_every_member<fitting::Answer>();
    expect_every_member<postage::Format>();
    expect_every_member<postage::Service>();
    expect_every_member<postage::Surcharge>();
    expect_every_member<postage::RateSheet>();
    expect_every_member<postage::Price>();
    expect_every_member<postage::Refused>();
    expect_every_member<postage::Quote>();
    expect_every_member<planning::PackedItem>();
    expect_every_member<planning::PassedOver>();
    expect_every_member<planning::ParcelPlan>();
}

RC_GTEST_PROP(Document, GivesBackWhatWasWritten, (std::uint32_t seed))
{
    expect_back_unchanged<shop::Good>(seed);
    expect_back_unchanged<shop::Supply>(seed);
    expect_back_unchanged<shop::Wrapping>(seed);
    expect_back_unchanged<shop::House>(seed);
    expect_back_unchanged<shop::Order>(seed);
    expect_back_unchanged<postage::RateSheet>(seed);
    expect_back_unchanged<fitting::Question>(seed);
    expect_back_unchanged<fitting::Answer>(seed);
}

RC_GTEST_PROP(PlanJson, GivesBackThePlan, (std::uint32_t seed))
{
    planning::ParcelPlan plan;
    Filler{std::mt19937(seed)}.fill(plan);
    const auto back = plan_from_json(plan_to_json(plan));
    RC_ASSERT(back.has_value());
    RC_ASSERT(plan_to_json(*back) == plan_to_json(plan));
    RC_ASSERT(back->pieces == plan.pieces);
    RC_ASSERT(back->closed == plan.closed);
    RC_ASSERT(back->chosen == plan.chosen);
    RC_ASSERT(back->packaging == plan.packaging);
}

TEST(PlanJson, RefusesWhatIsNoPlan)
{
    EXPECT_FALSE(plan_from_json(""));
    EXPECT_FALSE(plan_from_json("[]"));
    EXPECT_FALSE(plan_from_json(R"({"plan":{}})"));
    EXPECT_FALSE(plan_from_json(R"({"version":2,"plan":{}})")) << "a later version is not guessed at";
    EXPECT_FALSE(plan_from_json(R"({"version":1,"plan":{"part":"one"}})"));
    EXPECT_FALSE(plan_from_json(R"({"version":1,"plan":{"part":99999999999}})"));
    EXPECT_FALSE(plan_from_json(R"({"version":1,"plan":{"packaging":{"minor":1,"currency":"ZZZ"}}})"));
    EXPECT_TRUE(plan_from_json(R"({"version":1,"plan":{}})"));
}
