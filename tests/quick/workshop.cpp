#include "tests/quick/workshop.h"

#include "app/plan_day.h"
#include "app/take_in.h"
#include "core/book/backup.h"
#include "core/book/orders.h"
#include "core/intake/csv.h"
#include "core/intake/orders_csv.h"

#include <QTest>

#include <algorithm>
#include <filesystem>
#include <stdexcept>

namespace stow::quick {

namespace {

using namespace std::chrono_literals;
namespace fs = std::filesystem;

constexpr LocalTime morning{Date{std::chrono::year{2026} / 11 / 25}, 9h};
const fs::path source = STOW_SOURCE_DIR;

// An arrangement that does not come about would make every check after it mean nothing.
template <class Result>
void must(const Result& done)
{
    if (!done) throw std::logic_error("the workshop could not be arranged");
}

std::string book_file(const Workshop& shop)
{
    return shop.folder().toStdString() + "/shop.book";
}

} // namespace

Workshop::Workshop()
{
    open_book();
}

Workshop::Workshop(const Workshop& like) : second_(std::make_shared<int>(*like.second_))
{
    must(book::backup_to(like.book(), book_file(*this)));
    open_book();
}

Workshop::~Workshop()
{
    close();
}

void Workshop::open_book()
{
    auto book = book::Book::open(book_file(*this), [second = second_] {
        return Instant{morning.day + morning.time + std::chrono::seconds{(*second)++}};
    });
    must(book);
    day_ = std::make_unique<Day>(std::move(*book), [] { return morning; });
}

void Workshop::furnish()
{
    const auto take = [&](TakeInKind kind, const fs::path& file) { must(!stow::take_in(*day_, kind, file).refused); };
    take(TakeInKind::supplies, source / "demo_orders/supplies.csv");
    take(TakeInKind::house, source / "demo_orders/house.csv");
    take(TakeInKind::wrappings, source / "demo_orders/wrappings.csv");
    take(TakeInKind::goods, source / "demo_orders/goods.csv");
    take(TakeInKind::rules, source / "demo_orders/house_rules.csv");
    std::vector<fs::path> sheets;
    for (const auto& entry : fs::directory_iterator(source / "rate_tables")) {
        if (entry.path().extension() == ".csv") sheets.push_back(entry.path());
    }
    std::sort(sheets.begin(), sheets.end());
    for (const fs::path& sheet : sheets) take(TakeInKind::rates, sheet);
}

void Workshop::remember_titles(const std::string& but)
{
    for (const intake::CsvRow& row : intake::read_csv_file((source / "demo_orders/matches.csv").string()).rows) {
        const auto& cells = row.cells;
        if (cells.at(1) == but) continue;
        must(book::remember_match(day_->book(), {cells.at(0), cells.at(1), cells.at(2), {cells.at(3)}}));
    }
    day_->moved();
}

void Workshop::take_in(const char* shop, const char* file)
{
    const intake::Csv csv = intake::read_csv_file((source / "demo_orders" / file).string());
    must(!take_in_orders(*day_, csv, columns_for(*day_, csv, shop)).refused);
}

void Workshop::check_what_is_sound()
{
    std::vector<shop::OrderId> sound;
    for (const shop::HeldOrder& held : day_->orders()) {
        const auto findings = shop::look_over(held.order, day_->today());
        const bool blocked = std::any_of(findings.begin(), findings.end(), [](const auto& f) { return f.blocks; });
        if (held.state == shop::OrderState::arrived && !blocked) sound.push_back(held.id);
    }
    must(book::check_orders(day_->book(), sound));
    day_->moved();
}

void Workshop::plan()
{
    PlanInput input = gather(*day_, planning::Preference::smallest);
    input.wish.prove = false;
    Run run;
    const auto plan = planning::plan_day(input.cupboard, input.orders, input.rate_sheets, input.wish, run);
    must(store(*day_, input, plan));
}

void Workshop::plan_the_morning()
{
    furnish();
    remember_titles();
    take_in("Harbour Stall", "harbour_stall.csv");
    check_what_is_sound();
    plan();
}

std::vector<shop::ParcelId> Workshop::pick(std::size_t trays)
{
    std::vector<shop::ParcelId> ids;
    std::vector<book::Tray> round;
    for (const shop::Parcel& parcel : book::parcels_in(day_->book(), shop::ParcelState::planned)) {
        if (!parcel.tray.empty() || round.size() == trays) continue;
        round.push_back({parcel.id, std::string(1, static_cast<char>('A' + round.size()))});
        ids.push_back(parcel.id);
    }
    must(book::start_round(day_->book(), round));
    for (const shop::ParcelId id : ids) must(book::mark_picked(day_->book(), id));
    day_->moved();
    return ids;
}

void Workshop::pack(const std::vector<shop::ParcelId>& parcels)
{
    for (const shop::ParcelId id : parcels) {
        const auto held = book::parcel(day_->book(), id);
        must(held && held->plan.chosen);
        const postage::Quote& quote = held->plan.quotes[*held->plan.chosen];
        must(book::weigh(day_->book(), id, {shop::WeighingStage::closed, held->plan.weight.mean}));
        must(book::choose_service(day_->book(), id, quote.carrier, quote.service, quote.price()->total));
        must(book::mark_packed(day_->book(), id));
    }
    day_->moved();
}

void Workshop::label(const std::vector<shop::ParcelId>& parcels)
{
    for (const shop::ParcelId id : parcels) must(book::mark_labelled(day_->book(), id));
    day_->moved();
}

bool Workshop::open()
{
    if (!day_) open_book();
    if (auto* watched = dynamic_cast<watch::Application*>(QCoreApplication::instance()))
        QObject::connect(day_.get(), &Day::called, watched, &watch::Application::calls);
    desk_ = std::make_unique<view::Desk>(*day_);
    engine_ = std::make_unique<QQmlApplicationEngine>();
    engine_->setInitialProperties({{QStringLiteral("desk"), QVariant::fromValue(desk_.get())}});
    engine_->load(QUrl(QStringLiteral("qrc:/qt-project.org/imports/Stowbench/Screens/Main.qml")));
    if (engine_->rootObjects().isEmpty()) return false;
    window_ = qobject_cast<QQuickWindow*>(engine_->rootObjects().front());
    if (window_ == nullptr) return false;
    at_ = std::make_unique<AtTheWindow>(*window_);
    window_->requestActivate();
    return QTest::qWaitForWindowActive(window_);
}

void Workshop::close()
{
    at_.reset();
    engine_.reset();
    desk_.reset();
    day_.reset();
    window_ = nullptr;
}

} // namespace stow::quick
