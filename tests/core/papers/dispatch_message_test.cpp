#include "core/papers/dispatch_message.h"

#include <gtest/gtest.h>

namespace stow::papers {
namespace {

MessageFacts facts()
{
    return {"Ines Halvard", "HS-1001", "RR473124829DK", "Skua Post", "Packet", "Harbour Ink", parse_date("2026-12-02")};
}

TEST(DispatchMessage, InTheBuyersLanguage)
{
    const std::vector<shop::DispatchText> texts{{"en", "Dear {name}: {order}"}, {"de", "Guten Tag {name}: {order}"}};
    EXPECT_EQ(dispatch_message(texts, Language::german, facts()), "Guten Tag Ines Halvard: HS-1001");
    EXPECT_EQ(dispatch_message({texts[0]}, Language::german, facts()), "Dear Ines Halvard: HS-1001");
    EXPECT_EQ(dispatch_message({}, Language::german, facts()), "");
}

TEST(DispatchMessage, LeavesOutALineThatHasNothingToSay)
{
    const std::vector<shop::DispatchText> texts{{"en", "Hello {name}\nNumber: {number}\nBy {arrives}\n{else}"}};
    MessageFacts untracked = facts();
    untracked.number.clear();
    untracked.arrives.reset();
    EXPECT_EQ(dispatch_message(texts, Language::english, untracked), "Hello Ines Halvard\n{else}");
    EXPECT_NE(dispatch_message(texts, Language::english, facts()).find("Number: RR473124829DK"), std::string::npos);
}

} // namespace
} // namespace stow::papers
