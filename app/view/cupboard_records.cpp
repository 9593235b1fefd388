#include "app/day_papers.h"
#include "app/records.h"
#include "app/supply_papers.h"
#include "app/view/cupboard.h"
#include "app/view/text.h"
#include "app/words/format.h"

#include <fmt/format.h>
#include <fstream>
#include <numeric>

namespace stow::view {

namespace {

constexpr std::array<int, 3> periods{28, 91, 365}; // days

QString material_word(shop::Material material)
{
    using M = shop::Material;
    switch (material) {
    case M::paper: return RecordsController::tr("paper and board");
    case M::plastic: return RecordsController::tr("plastic");
    case M::glass: return RecordsController::tr("glass");
    case M::wood: return RecordsController::tr("wood");
    case M::ferrous: return RecordsController::tr("steel");
    case M::aluminium: return RecordsController::tr("aluminium");
    case M::composite: return RecordsController::tr("composite");
    case M::other: return RecordsController::tr("other");
    }
    return {};
}

QString spent_word(records::Spent spent)
{
    using S = records::Spent;
    switch (spent) {
    case S::outer: return RecordsController::tr("outers");
    case S::wrap: return RecordsController::tr("wraps");
    case S::filler: return RecordsController::tr("filler");
    case S::tape: return RecordsController::tr("tape");
    case S::label: return RecordsController::tr("labels");
    case S::insert: return RecordsController::tr("inserts");
    case S::other: return RecordsController::tr("ribbon and paper");
    case S::postage: return RecordsController::tr("postage");
    }
    return {};
}

QString percent(int permille)
{
    return QLocale().toString(permille / 10.0, 'f', 1) + QChar(QChar::Nbsp) + QLatin1Char('%');
}

std::string key_of(const records::ParcelAccount& a, records::Grouped by)
{
    if (by == records::Grouped::shop) return a.shop;
    if (by == records::Grouped::country) return a.country;
    return records::sums({a}, by, a.total.currency).front().key;
}

QString came_back_words(const records::ParcelAccount& a)
{
    const QString back = RecordsController::tr("came back");
    return a.back_why.empty() ? back : back + QStringLiteral(": ") + text(a.back_why);
}

} // namespace

RecordsController::RecordsController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

QString RecordsController::period() const
{
    switch (period_) {
    case 0: return tr("4 weeks");
    case 1: return tr("13 weeks");
    default: return tr("12 months");
    }
}

void RecordsController::look()
{
    looked_at_ = true;
    refresh();
}

void RecordsController::nextPeriod()
{
    period_ = (period_ + 1) % static_cast<int>(periods.size());
    refresh();
}

void RecordsController::add(RecordRow row, std::vector<std::size_t> parcels)
{
    row.behind = static_cast<int>(parcels.size());
    row.first = making_.empty() || making_.back().chapter != row.chapter;
    making_.push_back(std::move(row));
    parcels_behind_.push_back(std::move(parcels));
}

void RecordsController::add_sums(const QString& chapter, records::Grouped by)
{
    const auto sums = records::sums(accounts_, by, day_.cupboard().house.currency);
    std::int64_t most = 1;
    for (const records::Sum& s : sums) most = std::max(most, s.total.minor);
    for (const records::Sum& s : sums) {
        std::vector<std::size_t> parcels;
        for (std::size_t i = 0; i < accounts_.size(); ++i) {
            if (key_of(accounts_[i], by) == s.key) parcels.push_back(i);
        }
        const auto date = by == records::Grouped::week ? parse_date(s.key) : std::nullopt;
        const QString name = date ? tr("week of %1").arg(words::date(*date)) : text(s.key);
        const QString more =
            joined({tr("%n parcels", nullptr, s.parcels),
                    s.paid.minor > 0 ? tr("buyers paid %1 for postage").arg(words::money(s.paid)) : QString()});
        add({name, words::money_with_currency(s.total), more, chapter, false,
             static_cast<double>(s.total.minor) / static_cast<double>(most)},
            std::move(parcels));
    }
}

void RecordsController::refresh()
{
    if (!looked_at_) return;
    making_.clear();
    parcels_behind_.clear();
    const Date until = day_.today() + std::chrono::days(1);
    facts_ = parcel_facts(day_, day_.today() - std::chrono::days(periods.at(static_cast<std::size_t>(period_))), until);
    accounts_ = parcel_accounts(day_, facts_);
    const int count = static_cast<int>(accounts_.size());
    covers_ = count == 0 ? QString() : tr("%n parcels", nullptr, count);
    if (count == 0) {
        rows_.show({});
        emit changed();
        return;
    }
    std::vector<std::size_t> all(accounts_.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    const auto those = [&](auto&& which) {
        std::vector<std::size_t> found;
        std::copy_if(all.begin(), all.end(), std::back_inserter(found),
                     [&](std::size_t i) { return which(accounts_[i]); });
        return found;
    };
    const Currency currency = day_.cupboard().house.currency;
    std::map<records::Spent, Money> spent;
    Money total{0, currency}, paid = total, lost = total, again = total;
    int seconds = 0;
    for (const records::ParcelAccount& a : accounts_) {
        for (const auto& [on, amount] : a.spent) spent.try_emplace(on, Money{0, currency}).first->second += amount;
        total += a.total;
        paid += a.paid;
        if (a.came_back) lost += a.total;
        if (a.again) again += a.total;
        seconds += a.seconds;
    }
    const QString cost = tr("What parcels cost, the goods aside");
    std::int64_t most = 1;
    for (const auto& [on, amount] : spent) most = std::max(most, amount.minor);
    for (const auto& [on, amount] : spent) {
        add({spent_word(on),
             words::money_with_currency(amount),
             {},
             cost,
             false,
             static_cast<double>(amount.minor) / static_cast<double>(most)},
            those([o = on](const auto& a) { return a.spent.contains(o); }));
    }
    add({tr("a parcel, on average"), words::money_with_currency(share(total, 1, count)),
         seconds > 0
             ? tr("and %1 minutes of making up and wrapping").arg(QLocale().toString(seconds / 60.0 / count, 'f', 1))
             : QString(),
         cost},
        all);
    add({tr("postage paid by buyers"), words::money_with_currency(paid),
         spent.contains(records::Spent::postage)
             ? tr("against %1 spent").arg(words::money_with_currency(spent.at(records::Spent::postage)))
             : QString(),
         cost},
        those([](const auto& a) { return a.paid.minor > 0; }));
    add_sums(tr("By week"), records::Grouped::week);
    add_sums(tr("By shop"), records::Grouped::shop);
    add_sums(tr("By country"), records::Grouped::country);

    std::vector<records::PackedParcel> packed;
    for (const records::ParcelFacts& f : facts_) packed.push_back({f.plan, f.postage, f.weighed, f.country});
    const records::Summary s = records::summarise(packed, day_.cupboard());
    if (const auto empty = s.empty_permille()) {
        const QString full = tr("How full they were");
        add({tr("empty space in the closed parcels"), percent(*empty),
             tr("our estimate after EU 2025/40, Art. 24, of 19 December 2024: all that is not goods, filler too; the "
                "official method was not adopted when this was written"),
             full, false, *empty / 1000.0},
            all);
        const auto over = those([](const auto& a) { return a.empty_permille.value_or(0) > 500; });
        add({tr("more than half empty"),
             QLocale().toString(static_cast<qlonglong>(over.size())),
             {},
             full,
             false,
             static_cast<double>(over.size()) / count},
            over);
    }
    const QString scale = tr("Estimate against scale");
    const auto weighed = those([](const auto& a) { return a.weighed.has_value(); });
    add({tr("off by, on average"), s.weighed > 0 ? words::weight(s.off_by) : QStringLiteral("–"),
         tr("%n parcels were weighed", nullptr, s.weighed), scale},
        weighed);
    const auto overridden = those([](const auto& a) { return a.overridden; });
    add({tr("closed although the scale objected"),
         QLocale().toString(static_cast<qlonglong>(overridden.size())),
         {},
         scale},
        overridden);
    const auto back = those([](const auto& a) { return a.came_back; });
    const auto shelved = those([](const auto& a) { return a.restocked; });
    const QString returned = tr("What came back");
    add({tr("parcels"), QLocale().toString(static_cast<qlonglong>(back.size())),
         tr("they had cost %1").arg(words::money_with_currency(lost)), returned},
        back);
    add({tr("of these, goods on the shelf again"),
         QLocale().toString(static_cast<qlonglong>(shelved.size())),
         {},
         returned},
        shelved);
    const auto gone = those([](const auto& a) { return a.written_off; });
    add({tr("of these, goods written off"), QLocale().toString(static_cast<qlonglong>(gone.size())), {}, returned},
        gone);
    const auto resent = those([](const auto& a) { return a.again; });
    add({tr("sent again"), QLocale().toString(static_cast<qlonglong>(resent.size())),
         tr("they cost %1 more").arg(words::money_with_currency(again)), returned},
        resent);
    const auto materials = records::materials(facts_, day_.cupboard());
    Weight heaviest{1};
    for (const records::MaterialLine& line : materials) heaviest = std::max(heaviest, line.weight);
    for (const records::MaterialLine& line : materials) {
        add({joined({text(line.country), material_word(line.material)}, QStringLiteral(", ")),
             words::weight(line.weight),
             line.of_goods > Weight{} ? tr("%1 of it the goods' own").arg(words::weight(line.of_goods)) : QString(),
             tr("Packaging by country and material"), false, in_grams(line.weight) / in_grams(heaviest)},
            those([&](const auto& a) { return a.country == line.country; }));
    }
    rows_.show(std::move(making_));
    emit changed();
}

void RecordsController::open(int index)
{
    const RecordRow* row = rows_.shown(index);
    if (row == nullptr) return;
    const auto at = static_cast<std::size_t>(row - rows_.all().data());
    behind_title_ = joined({row->chapter, row->name}, QStringLiteral(": "));
    std::vector<BehindRow> behind;
    constexpr std::size_t most = 500;
    for (const std::size_t i : parcels_behind_.at(at)) {
        if (behind.size() == most) break;
        const records::ParcelAccount& a = accounts_[i];
        behind.push_back(
            {text(a.number), joined({text(a.order), text(a.shop), text(a.country), words::date(a.packed_on)}),
             words::money_with_currency(a.total),
             joined({a.empty_permille ? tr("%1 empty").arg(percent(*a.empty_permille)) : QString(),
                     a.weighed ? tr("%1 weighed, %2 expected").arg(words::weight(*a.weighed), words::weight(a.expected))
                               : QString(),
                     a.overridden ? tr("scale overruled") : QString(), a.came_back ? came_back_words(a) : QString(),
                     a.again ? tr("sent again") : QString()})});
    }
    behind_.show(std::move(behind));
    emit behindChanged();
}

void RecordsController::printFiles()
{
    if (accounts_.empty()) return emit said(tr("There is nothing to write yet."));
    const auto folder = paper_folder(day_);
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    std::ofstream out(folder / "packaging.csv", std::ios::binary);
    out << "country,material,grams,of_goods_grams\n";
    for (const records::MaterialLine& line : records::materials(facts_, day_.cupboard())) {
        out << csv_cell(line.country) << ',' << shop::name_of(line.material)
            << fmt::format(",{:.1f},{:.1f}\n", in_grams(line.weight), in_grams(line.of_goods));
    }
    emit said(out.flush()
                  ? tr("Packaging of %1 in %2. It counts what the ledger used and the goods' own; each country's "
                       "register decides what is to be reported.")
                        .arg(period(), text((folder / "packaging.csv").string()))
                  : tr("The file cannot be written."));
}

} // namespace stow::view
