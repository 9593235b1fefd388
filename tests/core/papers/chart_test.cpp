#include "core/papers/chart.h"

#include "fixed_measure.h"

#include <gtest/gtest.h>

namespace stow::papers {
namespace {

const FixedMeasure measure;
constexpr Extent extent{from_mm(160), from_mm(45)};

Chart columns(const std::vector<double>& values)
{
    Chart chart;
    for (const double v : values)
        chart.values.push_back({v, "wk " + std::to_string(chart.values.size()), "1.00", false});
    return chart;
}

std::vector<int> heights(const DisplayList& list)
{
    std::vector<int> found;
    for (const Mark& mark : list.marks) {
        const auto* const path = std::get_if<Path>(&mark);
        if (path && path->fill) found.push_back(path->points[2].y - path->points[0].y);
    }
    return found;
}

std::vector<TextLine> texts(const DisplayList& list)
{
    std::vector<TextLine> found;
    for (const Mark& mark : list.marks) {
        if (const auto* const text = std::get_if<TextLine>(&mark)) found.push_back(*text);
    }
    return found;
}

TEST(Chart, ColumnsAreAsHighAsTheirValuesFromZero)
{
    const auto high = heights(draw(columns({10, 5, 0, 2.5}), extent, measure));
    ASSERT_EQ(high.size(), 3U) << "nothing is drawn for nothing";
    EXPECT_NEAR(high[1], high[0] / 2, 1);
    EXPECT_NEAR(high[2], high[0] / 4, 1);
    EXPECT_LT(high[0], extent.height);
}

TEST(Chart, TextsOfALineKeepClearOfEachOtherAndStayInside)
{
    const DisplayList list = draw(columns(std::vector<double>(60, 3.0)), extent, measure);
    const auto written = texts(list);
    EXPECT_GT(written.size(), 4U);
    EXPECT_LT(written.size(), 120U) << "not all of them have room";
    for (std::size_t i = 0; i < written.size(); ++i) {
        const int end = written[i].at.x + measure.width(written[i].text, written[i].style);
        EXPECT_GE(written[i].at.x, 0);
        EXPECT_LE(end, extent.width);
        for (std::size_t k = 0; k < i; ++k) {
            if (written[i].at.y != written[k].at.y) continue;
            const int other_end = written[k].at.x + measure.width(written[k].text, written[k].style);
            EXPECT_TRUE(end < written[k].at.x || other_end < written[i].at.x) << i << ' ' << k;
        }
    }
    EXPECT_EQ(written.front().text, "wk 0") << "the first is always named";
}

TEST(Chart, OfNothingIsItsAxis)
{
    EXPECT_EQ(draw({}, extent, measure).marks.size(), 1U);
    EXPECT_TRUE(heights(draw(columns({0, 0}), extent, measure)).empty());
}

} // namespace
} // namespace stow::papers
