// Templates of paper boxes as they come off a printer: the page is rendered, and every score and cut is where the
// folded box needs it, to half a millimetre. Where that is, is worked out here anew from the shape of the box.
#include "app/painting/fonts.h"
#include "core/papers/template.h"
#include "tests/outside/papers_read_back.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace stow::outside {
namespace {

using paperbox::Kind;

constexpr int dpi = 300;
constexpr double edge = 10; // mm, of the page
constexpr double near = 0.5;

struct At {
    double x, y; // mm on the sheet
};
using Curve = std::function<At(double)>; // from 0 to 1

Curve line(At a, At b)
{
    return [=](double t) { return At{a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}; };
}

// An arc through (x0, y), (x0 + w, y) whose middle lies `out` above.
Curve arc(double x0, double w, double y, double out)
{
    const double s = std::abs(out), radius = (w * w / 4 + s * s) / (2 * s);
    return [=](double t) {
        const double along = (t - 0.5) * w;
        const double rise = std::sqrt(radius * radius - along * along) - (radius - s);
        return At{x0 + t * w, y - (out > 0 ? rise : -rise)};
    };
}

class Printed {
public:
    explicit Printed(const paperbox::Wanted& wanted)
    {
        const painting::FontMeasure measure;
        const papers::BoxTemplate box{"Box", "cut and score", *paperbox::lay(wanted).net};
        document_ = papers::lay_out(box, papers::Format::a4, papers::Words(papers::Language::english), measure);
        const Rendered rendered(document_, true);
        if (rendered.written()) image_ = rendered.page(1, dpi).convertToFormat(QImage::Format_Grayscale8);
        width_ = in_mm(box.net.length);
        height_ = in_mm(box.net.width);
    }

    std::size_t pages() const { return document_.pages.size(); }
    bool dark(double x_mm, double y_mm) const // of the page
    {
        const int x = static_cast<int>(x_mm / 25.4 * dpi), y = static_cast<int>(y_mm / 25.4 * dpi);
        return image_.valid(x, y) && qGray(image_.pixel(x, y)) < 160;
    }

    // Share of the curve that has ink within half a millimetre.
    double drawn(const Curve& curve) const
    {
        int inked = 0;
        constexpr int samples = 400;
        for (int i = 1; i < samples; ++i) {
            const At at = curve(static_cast<double>(i) / samples);
            bool ink = false;
            for (double dx = -near; dx <= near && !ink; dx += 0.06) {
                for (double dy = -near; dy <= near && !ink; dy += 0.06) {
                    ink = dx * dx + dy * dy <= near * near && dark(edge + at.x + dx, edge + at.y + dy);
                }
            }
            inked += ink ? 1 : 0;
        }
        return static_cast<double>(inked) / (samples - 1);
    }

    // Ink on the sheet that is further than half a millimetre from all of these curves and from the sheet's own edge.
    int stray(const std::vector<Curve>& curves) const
    {
        std::vector<At> spots;
        for (const Curve& c : curves) {
            for (int i = 0; i <= 1500; ++i) spots.push_back(c(i / 1500.0));
        }
        int found = 0;
        for (double y = near; y < height_ - near; y += 0.25) {
            for (double x = near; x < width_ - near; x += 0.25) {
                if (!dark(edge + x, edge + y)) continue;
                const bool known = std::any_of(spots.begin(), spots.end(),
                                               [&](const At& s) { return std::hypot(s.x - x, s.y - y) <= near + 0.1; });
                found += known ? 0 : 1;
            }
        }
        return found;
    }

    double width() const { return width_; }
    double height() const { return height_; }

private:
    papers::Document document_;
    QImage image_;
    double width_ = 0, height_ = 0;
};

void expect_printed(const Printed& page, const std::vector<Curve>& marks)
{
    ASSERT_EQ(page.pages(), 1U);
    for (std::size_t i = 0; i < marks.size(); ++i) {
        // Dashes and their gaps are 1.4 and 1 mm; with half a millimetre around it nearly all of a line is near ink.
        EXPECT_GT(page.drawn(marks[i]), 0.9) << i;
    }
    EXPECT_EQ(page.stray(marks), 0);
    // The same curves, moved by 1.2 mm, are not there: the measure is fine enough to tell.
    int missed = 0;
    for (const Curve& c : marks) {
        const auto moved = [&](double t) { return At{c(t).x + 1.2, c(t).y + 1.2}; };
        missed += page.drawn(moved) < 0.9 ? 1 : 0;
    }
    EXPECT_GT(missed, 0);
}

TEST(PaperBoxTemplate, OneSquareFoldsWhereItsWallsAre)
{
    const double w = 60, d = 50, h = 20, s = (w + d + 2 * h) / std::sqrt(2.0) + 25;
    const Printed page({Kind::one_square, {mm(60), mm(50), mm(20)}});
    EXPECT_NEAR(page.width(), s, 0.15);
    // Lines at 45°: all points of the sheet at one distance from its diagonals.
    std::vector<Curve> marks;
    const double reach = s / std::sqrt(2.0), r = std::sqrt(0.5), m = s / 2;
    for (const double across : {d / 2, -d / 2, d / 2 + h, -d / 2 - h}) {
        const double end = reach - std::abs(across);
        marks.push_back(
            line({m + (-end - across) * r, m + (-end + across) * r}, {m + (end - across) * r, m + (end + across) * r}));
    }
    for (const double along : {w / 2, -w / 2, w / 2 + h, -w / 2 - h}) {
        const double end = reach - std::abs(along);
        marks.push_back(
            line({m + (along + end) * r, m + (along - end) * r}, {m + (along - end) * r, m + (along + end) * r}));
    }
    expect_printed(page, marks);
}

TEST(PaperBoxTemplate, EnvelopeFoldsAroundItsCard)
{
    paperbox::Wanted wanted{Kind::envelope, {mm(110), mm(80), {}}};
    wanted.overlap = mm(15);
    const double w = 110, d = 80, s = (w + d) / std::sqrt(2.0) + 15;
    const Printed page(wanted);
    std::vector<Curve> marks;
    const double reach = s / std::sqrt(2.0), r = std::sqrt(0.5), m = s / 2;
    for (const double across : {d / 2, -d / 2}) {
        const double end = reach - std::abs(across);
        marks.push_back(
            line({m + (-end - across) * r, m + (-end + across) * r}, {m + (end - across) * r, m + (end + across) * r}));
    }
    for (const double along : {w / 2, -w / 2}) {
        const double end = reach - std::abs(along);
        marks.push_back(
            line({m + (along + end) * r, m + (along - end) * r}, {m + (along - end) * r, m + (along + end) * r}));
    }
    expect_printed(page, marks);
}

void expect_tray(const Printed& page, double w, double d, double h)
{
    EXPECT_NEAR(page.width(), w + 2 * h, 0.05);
    EXPECT_NEAR(page.height(), d + 2 * h, 0.05);
    std::vector<Curve> marks;
    for (const double y : {h, h + d}) marks.push_back(line({0, y}, {w + 2 * h, y}));
    for (const double x : {h, h + w}) {
        marks.push_back(line({x, 0}, {x, h}));
        marks.push_back(line({x, h}, {x, h + d}));
        marks.push_back(line({x, h + d}, {x, d + 2 * h}));
    }
    expect_printed(page, marks);
}

TEST(PaperBoxTemplate, TrayAndLidAreScoredAtTheirHeight)
{
    expect_tray(Printed({Kind::tray, {mm(80), mm(60), mm(25)}}), 80, 60, 25);
    expect_tray(Printed({Kind::lid, {mm(80), mm(60), mm(20)}}), 82.5, 62.5, 20);
}

TEST(PaperBoxTemplate, PillowBulgesAsItsArcsDo)
{
    const double w = 60, l = 90, s = 10, flap = 12;
    const Printed page({Kind::pillow, {mm(90), mm(60), mm(10)}});
    EXPECT_NEAR(page.width(), 2 * w + flap, 0.05);
    EXPECT_NEAR(page.height(), l + 2 * s, 0.05);
    std::vector<Curve> marks;
    for (const double x : {0.0, w}) {
        for (const double out : {s, -s}) {
            marks.push_back(arc(x, w, s, out));
            marks.push_back(arc(x, w, s + l, out));
        }
    }
    for (const double x : {0.0, w, 2 * w}) marks.push_back(line({x, s}, {x, s + l}));
    marks.push_back(line({2 * w, s}, {2 * w + flap, s + flap}));
    marks.push_back(line({2 * w + flap, s + flap}, {2 * w + flap, s + l - flap}));
    marks.push_back(line({2 * w + flap, s + l - flap}, {2 * w, s + l}));
    expect_printed(page, marks);
}

TEST(PaperBoxTemplate, TheCheckRulerIsATenthOfAMetre)
{
    const Printed page({Kind::tray, {mm(80), mm(60), mm(25)}});
    const double y = 297 - edge; // its line
    double first = 0, last = 0;
    for (double x = 0; x < 115; x += 0.02) {
        if (!page.dark(x, y) && !page.dark(x, y - 0.1) && !page.dark(x, y + 0.05)) continue;
        if (first == 0) first = x;
        if (x < 111) last = x;
    }
    EXPECT_NEAR(first, edge, near);
    EXPECT_NEAR(last - first, 100, near);
}

TEST(PaperBoxTemplate, ALargeOneGoesOverSeveralPages)
{
    const Printed page({Kind::tray, {mm(300), mm(200), mm(60)}});
    EXPECT_EQ(page.pages(), 6U); // 420 × 320 mm on 190 × 261 mm with 10 mm of overlap
}

} // namespace
} // namespace stow::outside
