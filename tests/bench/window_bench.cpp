// The window over thousands of open orders: what a step of scrolling costs to lay out and draw, what a key costs that
// writes a step or types a letter of a filter, and how many rows are alive.
//   window_bench [--orders 10000] [--steps 300]
#include "app/painting/fonts.h"
#include "app/watch/application.h"
#include "core/book/parcels.h"
#include "tests/bench/report.h"
#include "tests/quick/many_orders.h"

#include <QQuickStyle>
#include <QTest>
#include <QWheelEvent>

#include <fmt/format.h>
#include <functional>

namespace {

using namespace stow;

struct Measured {
    std::vector<double> frames, events; // ms on the wall
    std::vector<double> frames_cpu, events_cpu;
    QString longest;
    double longest_ms = 0, longest_cpu_ms = 0;
};
Measured* measuring = nullptr;

double ms(watch::Nanoseconds time)
{
    return std::chrono::duration<double, std::milli>(time).count();
}

void heard(const watch::Held& event)
{
    if (measuring == nullptr) return;
    const bool frame =
        event.by.startsWith(QLatin1String("Timer to Main_")) || event.by.startsWith(QLatin1String("UpdateRequest to"));
    (frame ? measuring->frames : measuring->events).push_back(ms(event.on_the_wall));
    (frame ? measuring->frames_cpu : measuring->events_cpu).push_back(ms(event.of_the_processor));
    if (ms(event.on_the_wall) > measuring->longest_ms) {
        measuring->longest_ms = ms(event.on_the_wall);
        measuring->longest_cpu_ms = ms(event.of_the_processor);
        measuring->longest = event.by;
    }
}

// Until nothing moves any more: animations last 150 ms, a wheel a little longer.
void rest(int for_ms = 60)
{
    QTest::qWait(for_ms);
}

class Bench {
public:
    explicit Bench(quick::Workshop& shop) : shop_(shop) {}

    void steps(const char* name, int times, const std::function<void()>& step, int rest_ms = 40)
    {
        rest(300);
        Measured measured;
        measuring = &measured;
        for (int i = 0; i < times; ++i) {
            step();
            rest(rest_ms);
        }
        measuring = nullptr;
        const auto cell = [](const std::vector<double>& values, double share) {
            return bench::fixed(bench::quantile(values, share), 1);
        };
        rows_.push_back({name, std::to_string(times), std::to_string(measured.frames.size()),
                         cell(measured.frames, 0.5), cell(measured.frames, 0.99), cell(measured.frames, 1),
                         cell(measured.frames_cpu, 0.99), cell(measured.frames_cpu, 1), cell(measured.events, 1),
                         cell(measured.events_cpu, 1), std::to_string(rows_alive())});
        fmt::print(stderr, "{}: longest {:.1f} ms, of the processor {:.1f}: {}\n", name, measured.longest_ms,
                   measured.longest_cpu_ms, measured.longest.toStdString());
    }
    void key(const char* name, Qt::Key key, int times = 1, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        steps(
            name, times, [&] { shop_.at().press(key, with); }, 250);
    }
    int rows_alive() const { return static_cast<int>(shop_.at().names(QAccessible::ListItem).size()); }
    void wheel(QQuickWindow& window, int notches)
    {
        const QPointF at(400, 400);
        QWheelEvent event(at, window.mapToGlobal(at), {}, {0, notches * 120}, Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&window, &event);
    }
    void print() const
    {
        bench::print_table({"what", "times", "frames", "frame: median ms", "99th percentile", "longest",
                            "processor: 99th percentile", "longest", "event: longest ms", "processor", "rows alive"},
                           rows_);
    }

private:
    quick::Workshop& shop_;
    std::vector<bench::TableRow> rows_;
};

QQuickWindow& window()
{
    return *qobject_cast<QQuickWindow*>(QGuiApplication::focusWindow());
}

} // namespace

int main(int argc, char** argv)
{
    const bench::Options options(argc, argv, {{"--orders", "10000"}, {"--steps", "300"}});
    watch::Application application(argc, argv, heard, watch::Nanoseconds::zero());
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    if (!painting::load_fonts()) return 2;
    const int steps = options.number("--steps");

    quick::Workshop shop;
    shop.furnish();
    quick::take_in_many(shop, options.number("--orders"));
    if (!shop.open()) return 1;
    Bench bench(shop);
    shop.at().press(Qt::Key_F1);
    bench.steps("Arrivals: a notch of the wheel", steps, [&] { bench.wheel(window(), -1); });
    bench.steps("Arrivals: Down", steps, [&] { shop.at().press(Qt::Key_Down); });
    bench.key("Arrivals: an order called off", Qt::Key_X);
    bench.key("undone", Qt::Key_Z, 1, Qt::ControlModifier);
    bench.key("Arrivals: all that are fine checked", Qt::Key_R);
    bench.key("undone", Qt::Key_Z, 1, Qt::ControlModifier);
    const auto type = [&](const char* place) {
        shop.at().click(shop.at().named(QString::fromLatin1(place), QAccessible::EditableText));
        bench.key(place, Qt::Key_B);
        bench.key("a second letter", Qt::Key_U);
        bench.key("and deleted", Qt::Key_Backspace, 2);
    };
    type("Filter the orders");

    quick::plan_many(shop);
    rest(1000);
    bench.key("to the Plan", Qt::Key_F2);
    bench.steps("Plan: a notch of the wheel", steps, [&] { bench.wheel(window(), -1); });
    bench.steps("Plan: Down", steps, [&] { shop.at().press(Qt::Key_Down); });
    bench.key("Plan: a parcel locked and let go", Qt::Key_L, 4);
    type("Filter the parcels");
    shop.at().press(Qt::Key_F1); // out of the field
    shop.at().press(Qt::Key_F2);
    rest(300);
    shop.at().letter(Qt::Key_O);
    shop.at().press(Qt::Key_Down);
    bench.key("another outer taken", Qt::Key_Return);
    bench.key("to the Arrivals", Qt::Key_F1);
    shop.at().press(Qt::Key_F, Qt::ControlModifier);
    bench.key("Find: a letter", Qt::Key_B, 1);
    bench.key("Find: a second letter", Qt::Key_U, 1);
    shop.at().press(Qt::Key_Escape);
    bench.key("to Pick", Qt::Key_F3);
    bench.key("a round begun, its papers written", Qt::Key_Return);
    bench.key("Pick: a line ticked", Qt::Key_Space, 3);
    while (!shop.desk().pick()->roundDone()) shop.desk().pick()->tick(shop.desk().pick()->nextRow());
    bench.key("the round ended", Qt::Key_Return);
    bench.key("to the Bench", Qt::Key_F4);
    bench.key("Bench: a step done", Qt::Key_Space, 2);
    bench.key("Bench: the outer is gone", Qt::Key_B);
    shop.at().press(Qt::Key_Space); // past the word, if there was no other
    bench.key("to the Hand-over", Qt::Key_F5);
    bench.key("to the Cupboard", Qt::Key_F9);

    bench::print_heading("The window over " + options.text("--orders") + " open orders", options.command());
    bench.print();
    return 0;
}
