#include "core/papers/chart.h"

#include <algorithm>
#include <cmath>

namespace stow::papers {

namespace {

constexpr Style label_style{from_pt(10), Face::regular, Role::second_ink};
constexpr Style words_style{from_pt(10), Face::bold, Role::ink};
constexpr int label_height = from_mm(6), words_height = from_mm(6), apart = from_mm(2), widest_column = from_mm(14);

class Drawing {
public:
    Drawing(const Chart& chart, Extent extent, const TextMeasure& measure)
        : chart_(chart), measure_(measure), list_{extent, {}}, floor_(extent.height - label_height)
    {
        for (const Chart::Value& v : chart.values) most_ = std::max(most_, v.value);
        slot_ = chart.values.empty() ? extent.width : extent.width / static_cast<int>(chart.values.size());
    }

    DisplayList draw()
    {
        list_.add(Path{{{0, floor_}, {list_.extent.width, floor_}}, false, Pen{Role::hairline, 25}, {}});
        if (chart_.kind == Chart::Kind::columns)
            columns();
        else
            curve();
        texts();
        return std::move(list_);
    }

private:
    int x(std::size_t i) const { return slot_ * static_cast<int>(i) + slot_ / 2; }
    int y(std::size_t i) const
    {
        const int room = floor_ - words_height;
        return most_ > 0 ? floor_ - static_cast<int>(std::lround(room * chart_.values[i].value / most_)) : floor_;
    }

    void columns()
    {
        const int half = std::min(slot_ * 3 / 4, widest_column) / 2;
        for (std::size_t i = 0; i < chart_.values.size(); ++i) {
            if (chart_.values[i].value <= 0) continue;
            const Fill fill{chart_.values[i].marked ? Role::accent : Role::second_ink};
            list_.add(Path{{{x(i) - half, y(i)}, {x(i) + half, y(i)}, {x(i) + half, floor_}, {x(i) - half, floor_}},
                           true,
                           {},
                           fill});
        }
    }

    void curve()
    {
        Path line{{}, false, Pen{Role::second_ink, 45}, {}};
        for (std::size_t i = 0; i < chart_.values.size(); ++i) line.points.push_back({x(i), y(i)});
        list_.add(std::move(line));
        for (std::size_t i = 0; i < chart_.values.size(); ++i) {
            const bool marked = chart_.values[i].marked;
            const int radius = marked ? 130 : 80;
            list_.add(Arc{
                {x(i), y(i)}, radius, radius, 0, 0, full_circle, {}, Fill{marked ? Role::accent : Role::second_ink}});
        }
    }

    struct Span {
        int from, to;
    };
    // Writes the text where nothing is written yet along its line: centred at the value, or beginning there.
    void write(std::vector<Span>& taken, const std::string& text, std::size_t i, int baseline, const Style& style,
               bool centred)
    {
        if (text.empty()) return;
        const int width = measure_.width(text, style);
        const int from = std::clamp(centred ? x(i) - width / 2 : x(i), 0, std::max(0, list_.extent.width - width));
        const Span own{from, from + width};
        const bool free = std::none_of(taken.begin(), taken.end(), [&](const Span& other) {
            return own.from < other.to + apart && other.from < own.to + apart;
        });
        if (!free) return;
        taken.push_back(own);
        list_.add(TextLine{{from, baseline}, text, style});
    }

    void texts()
    {
        std::vector<std::size_t> order; // who may write first
        for (std::size_t i = 0; i < chart_.values.size(); ++i) order.push_back(i);
        const auto rank = [&](std::size_t i) {
            if (chart_.values[i].marked) return 0;
            return i == 0 || i + 1 == chart_.values.size() ? 1 : 2;
        };
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
        std::vector<Span> below, above;
        for (const std::size_t i : order) {
            write(below, chart_.values[i].label, i, floor_ + label_height - from_mm(1), label_style, true);
            // What stands over one column may lie across a higher one beside it, so that all keep clear of each other.
            // A curve of costs falls from the left: to the right of a point there is room.
            write(above, chart_.values[i].words, i, y(i) - from_mm(3) / 2, words_style,
                  chart_.kind == Chart::Kind::columns);
        }
    }

    const Chart& chart_;
    const TextMeasure& measure_;
    DisplayList list_;
    int floor_, slot_ = 0;
    double most_ = 0;
};

} // namespace

DisplayList draw(const Chart& chart, Extent extent, const TextMeasure& measure)
{
    return Drawing(chart, extent, measure).draw();
}

} // namespace stow::papers
