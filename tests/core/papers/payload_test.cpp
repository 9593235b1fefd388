#include "core/papers/payload.h"
#include "core/papers/qr.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace stow::papers {
namespace {

// Worked examples of ISO/IEC 7064 MOD 37-2 as used for donation numbers (ICCBBA ST-001): G123489654321 has check
// character Y (from memory).
TEST(Check372, AgreesWithThePublishedExample)
{
    EXPECT_EQ(check_37_2("G123489654321"), 'Y');
    EXPECT_TRUE(holds_37_2("G123489654321Y"));
    EXPECT_FALSE(holds_37_2("G123489654321X"));
}

TEST(Check372, RefusesOtherCharacters)
{
    EXPECT_EQ(check_37_2("a1"), std::nullopt);
    EXPECT_EQ(check_37_2("A*"), std::nullopt);
    EXPECT_FALSE(holds_37_2(""));
}

const std::string letters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

rc::Gen<std::string> numbers_of_parcels()
{
    return rc::gen::suchThat(rc::gen::container<std::string>(rc::gen::elementOf(letters + "-")),
                             [](const std::string& s) { return !s.empty() && s.size() <= 30; });
}

TEST(Payload, SaysWhatWeDocument)
{
    const auto text = to_text({Payload::Kind::paper, "2611-017"});
    ASSERT_TRUE(text);
    EXPECT_EQ(text->substr(0, 15), "SB2:P:2611-017:");
    EXPECT_EQ(text->size(), 16U);
    EXPECT_EQ(text->back(), *check_37_2("SB2P2611017"));
    const auto label = to_text({Payload::Kind::label, "2611-017", 12});
    ASSERT_TRUE(label);
    EXPECT_EQ(label->substr(0, 18), "SB2:L:2611-017:12:");
    EXPECT_EQ(label->back(), *check_37_2("SB2L261101712"));
}

TEST(Payload, ComesBackAsItWas)
{
    EXPECT_TRUE(rc::check([] {
        const auto number = *numbers_of_parcels();
        Payload payload{*rc::gen::element(Payload::Kind::label, Payload::Kind::paper, Payload::Kind::unmarked,
                                          Payload::Kind::order, Payload::Kind::command),
                        number};
        if (payload.kind == Payload::Kind::label) payload.print = *rc::gen::inRange(1, most_prints + 1);
        const auto text = to_text(payload);
        RC_ASSERT(text.has_value());
        const auto parsed = parse_payload(" " + *text + "\r\n"); // scanners end with a line end
        RC_ASSERT(parsed.has_value());
        RC_ASSERT(*parsed == payload);
    }));
}

// A modulus that is prime and does not divide radix - 1 finds every single change and every swap of neighbours.
TEST(Payload, FindsEveryChangedCharacter)
{
    EXPECT_TRUE(rc::check([] {
        std::string text = *to_text({Payload::Kind::label, *numbers_of_parcels(), *rc::gen::inRange(1, most_prints)});
        const auto at = *rc::gen::inRange<std::size_t>(2, text.size());
        const auto other = *rc::gen::elementOf(letters);
        RC_PRE(text[at] != other && text[at] != '-' && text[at] != ':');
        text[at] = other;
        RC_ASSERT(!parse_payload(text).has_value());
    }));
}

TEST(Payload, FindsSwappedNeighbours)
{
    EXPECT_TRUE(rc::check([] {
        std::string text = *to_text({Payload::Kind::order, *numbers_of_parcels()});
        RC_PRE(text.size() > 9U);
        const auto at = *rc::gen::inRange<std::size_t>(6, text.size() - 3);
        RC_PRE(text[at] != text[at + 1] && text[at] != '-' && text[at + 1] != '-');
        std::swap(text[at], text[at + 1]);
        RC_ASSERT(parse_payload(text) == tl::unexpected(NotOurs::damaged));
    }));
}

TEST(Payload, TellsForeignDamagedAndNewerApart)
{
    for (const char* foreign : {"", "4006381333931", "https://example.org/SB1", "SB", "SBX:P:1:2", "SHIP:1", "SB1"}) {
        EXPECT_EQ(parse_payload(foreign), tl::unexpected(NotOurs::foreign)) << foreign;
    }
    const std::string sound = *to_text({Payload::Kind::paper, "2611-017"});
    EXPECT_EQ(parse_payload(sound.substr(0, sound.size() - 1)), tl::unexpected(NotOurs::damaged));
    EXPECT_EQ(parse_payload(sound.substr(0, 10)), tl::unexpected(NotOurs::damaged));
    EXPECT_EQ(parse_payload("SB1:"), tl::unexpected(NotOurs::damaged));

    const auto with_check = [](const std::string& text, const std::string& counted) {
        return text + ":" + *check_37_2(counted);
    };
    EXPECT_EQ(parse_payload(with_check("SB3:P:7", "SB3P7")), tl::unexpected(NotOurs::newer_version));
    EXPECT_EQ(parse_payload(with_check("SB1:X:7", "SB1X7")), tl::unexpected(NotOurs::damaged));
    EXPECT_EQ(parse_payload(with_check("SB1:P:", "SB1P")), tl::unexpected(NotOurs::damaged));
    EXPECT_EQ(parse_payload(with_check("SB1:P", "SB1P")), tl::unexpected(NotOurs::damaged));
    // A label without its print, or with what is no print; a letter of the other version.
    for (const char* label : {"7", "7:", "7:0", "7:01", "7:1000", "7:A", ":1", "7:1:1"}) {
        const std::string text = std::string("SB2:L:") + label;
        std::string counted = text;
        counted.erase(std::remove(counted.begin(), counted.end(), ':'), counted.end());
        EXPECT_EQ(parse_payload(with_check(text, counted)), tl::unexpected(NotOurs::damaged)) << text;
    }
    EXPECT_EQ(parse_payload(with_check("SB1:L:7:1", "SB1L71")), tl::unexpected(NotOurs::damaged));
    EXPECT_EQ(parse_payload(with_check("SB2:O:7", "SB2O7")), tl::unexpected(NotOurs::damaged));
}

// What was printed before labels said which print they are; written down by the program of that time.
TEST(Payload, StillReadsTheFirstVersion)
{
    EXPECT_EQ(parse_payload("SB1:P:2611-017:W"), (Payload{Payload::Kind::unmarked, "2611-017"}));
}

TEST(Payload, RefusesNumbersItCannotCarry)
{
    for (const char* number : {"", "2611/017", "a", "2611 017", "1234567890123456789012345678901", "Ä"}) {
        EXPECT_EQ(to_text({Payload::Kind::paper, number}), std::nullopt) << number;
    }
    EXPECT_EQ(to_text({Payload::Kind::label, "2611-017", 0}), std::nullopt);
    EXPECT_EQ(to_text({Payload::Kind::label, "2611-017", most_prints + 1}), std::nullopt);
}

// Capacity in alphanumeric characters and bytes, level M, versions 1 to 10 (ISO/IEC 18004 table 7, as listed by
// several public sources).
TEST(Qr, IsAsLargeAsTheStandardSays)
{
    constexpr std::array<std::pair<std::size_t, std::size_t>, 10> capacity{{{20, 14},
                                                                            {38, 26},
                                                                            {61, 42},
                                                                            {90, 62},
                                                                            {122, 84},
                                                                            {154, 106},
                                                                            {178, 122},
                                                                            {221, 152},
                                                                            {262, 180},
                                                                            {311, 213}}};
    for (std::size_t i = 0; i < capacity.size(); ++i) {
        const int version = static_cast<int>(i) + 1;
        for (const auto& [count, letter] : {std::pair(capacity[i].first, 'A'), std::pair(capacity[i].second, 'a')}) {
            const auto fits = qr_code(std::string(count, letter));
            ASSERT_TRUE(fits);
            EXPECT_EQ(fits->version, version) << letter;
            EXPECT_EQ(fits->side, 17 + 4 * version);
            EXPECT_EQ(qr_code(std::string(count + 1, letter))->version, version + 1) << letter;
        }
    }
}

// qrcode.com, "Point of setting up the module size": 50 alphanumeric characters at level M are version 3; at 0.254 mm a
// module the area with its quiet zone is 9.398 mm.
TEST(Qr, AgreesWithThePublishedWorkedExample)
{
    const auto code = qr_code(std::string(50, 'B'));
    ASSERT_TRUE(code);
    EXPECT_EQ(code->version, 3);
    EXPECT_EQ(code->side * 254, 7366);
    EXPECT_EQ(printed_edge(*code, 254), 9398); // in µm
}

TEST(Qr, HasItsThreeFinderPatterns)
{
    const auto code = qr_code("SB2:L:2611-017:999:A"); // the largest that a label says of a number of that length
    ASSERT_TRUE(code);
    EXPECT_EQ(code->version, 1);
    const auto dark = [&](int row, int column) {
        return code->dark[static_cast<std::size_t>(row * code->side + column)];
    };
    const int far = code->side - 7;
    for (const auto& [top, left] : {std::pair(0, 0), std::pair(0, far), std::pair(far, 0)}) {
        for (int r = 0; r < 7; ++r) {
            for (int c = 0; c < 7; ++c) {
                const int ring = std::max(std::abs(r - 3), std::abs(c - 3)); // dark core, light ring, dark ring
                EXPECT_EQ(dark(top + r, left + c), ring != 2) << top << ' ' << left << ' ' << r << ' ' << c;
            }
        }
    }
}

TEST(Qr, RefusesWhatNoCodeHolds)
{
    EXPECT_FALSE(qr_code(""));
    EXPECT_FALSE(qr_code(std::string(5000, 'A')));
}

TEST(Qr, LeavesFourModulesFree)
{
    const auto code = qr_code("SB1:P:1:A");
    ASSERT_TRUE(code);
    const Modules marks = modules(*code, {1000, 2000}, 50);
    EXPECT_EQ(marks.at, (Point{1200, 2200}));
    EXPECT_EQ(printed_edge(*code, 50), (code->side + 8) * 50);
}

} // namespace
} // namespace stow::papers
