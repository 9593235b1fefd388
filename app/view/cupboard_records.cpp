#include "app/day_papers.h"
#include "app/her_papers.h"
#include "app/paper_keys.h"
#include "app/view/cupboard.h"
#include "app/view/paper_ways.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "core/book/parcels.h"

#include <map>
#include <numeric>
#include <utility>

namespace stow::view {

namespace {

constexpr std::array<int, 3> periods{28, 91, 365}; // days

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

QString came_back_words(const records::ParcelAccount& a)
{
    const QString back = RecordsController::tr("came back");
    return !a.came_back ? QString() : a.back_why.empty() ? back : back + QStringLiteral(": ") + text(a.back_why);
}

QString overruled_words(const records::ParcelAccount& a)
{
    return !a.overridden
               ? QString()
               : joined({RecordsController::tr("scale overruled"), text(a.overridden_why)}, QStringLiteral(": "));
}

} // namespace

RecordsController::RecordsController(Day& day, QObject* parent) : QObject(parent), day_(day), work_(day) {}

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

void RecordsController::draw_weeks()
{
    papers::Chart chart;
    std::optional<Date> before;
    for (const records::Sum& week :
         records::sums(read_.accounts, records::Grouped::week, day_.cupboard().house.currency)) {
        const auto date = parse_date(week.key);
        const QString label = date ? words::date(*date) : text(week.key);
        // A week without a parcel is a gap in the columns, not a neighbour.
        while (date && before && *before + std::chrono::days(7) < *date) {
            *before += std::chrono::days(7);
            chart.values.push_back({});
        }
        before = date;
        chart.values.push_back(
            {static_cast<double>(week.total.minor), utf8(label), utf8(words::money(week.total)), false});
    }
    if (chart.values.size() < 2) chart.values.clear(); // one column compares with nothing
    weeks_ = chart.values.empty() ? SketchScene{} : sketch_of(std::move(chart), tr("What parcels cost, week by week"));
}

void RecordsController::add_sums(const QString& chapter, records::Grouped by)
{
    const auto sums = records::sums(read_.accounts, by, day_.cupboard().house.currency);
    std::int64_t most = 1;
    for (const records::Sum& s : sums) most = std::max(most, s.total.minor);
    std::map<std::string, std::vector<std::size_t>> behind;
    for (std::size_t i = 0; i < read_.accounts.size(); ++i) {
        behind[records::key_of(read_.accounts[i], by)].push_back(i);
    }
    for (const records::Sum& s : sums) {
        const auto date = by == records::Grouped::week ? parse_date(s.key) : std::nullopt;
        const QString name = date ? tr("week of %1").arg(words::date(*date)) : text(s.key);
        const QString more = joined(
            {tr("%n parcels", nullptr, s.parcels),
             s.paid.minor > 0 ? tr("buyers paid %1 for postage").arg(words::money_with_currency(s.paid)) : QString()});
        add({name, words::money_with_currency(s.total), more, chapter, false,
             static_cast<double>(s.total.minor) / static_cast<double>(most)},
            std::move(behind[s.key]));
    }
}

void RecordsController::refresh()
{
    if (!looked_at_) return;
    if (work_.running()) {
        changed_meanwhile_ = true;
        return;
    }
    const Date until = day_.today() + std::chrono::days(1);
    from_ = day_.today() - std::chrono::days(periods.at(static_cast<std::size_t>(period_)));
    const int count = book::packed_count(day_.book(), from_, until);
    constexpr int at_once = 1'000; // so many are read before she sees that anything was
    if (count <= at_once) {
        read_ = read_records(day_.book(), day_.cupboard(), from_, until);
        show();
        return;
    }
    covers_ = tr("adding up %n parcels", nullptr, count);
    emit changed();
    work_.start(
        [this, path = day_.book().path(), cupboard = day_.cupboard(), from = from_, until](Run&) -> Work::Finish {
            const auto book = book::Book::open(path);
            auto read = book ? read_records(*book, cupboard, from, until) : RecordsRead{};
            return [this, read = std::move(read)]() mutable {
                read_ = std::move(read);
                show();
                if (std::exchange(changed_meanwhile_, false)) refresh();
            };
        });
}

void RecordsController::show()
{
    making_.clear();
    parcels_behind_.clear();
    draw_weeks();
    const int count = static_cast<int>(read_.accounts.size());
    covers_ = tr("%n parcels", nullptr, count);
    if (count == 0) {
        const bool ever = book::packed_count(day_.book(), Date{}, from_) > 0;
        covers_ = ever ? tr("no parcel was packed in this time") : QString();
        rows_.show({});
        emit changed();
        return;
    }
    std::vector<std::size_t> all(read_.accounts.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    const auto those = [&](auto&& which) {
        std::vector<std::size_t> found;
        std::copy_if(all.begin(), all.end(), std::back_inserter(found),
                     [&](std::size_t i) { return which(read_.accounts[i]); });
        return found;
    };
    const Currency currency = day_.cupboard().house.currency;
    const records::Sum whole = records::sum_of(read_.accounts, currency);
    const QString cost = tr("What parcels cost, the goods aside");
    std::int64_t most = 1;
    for (const auto& [on, amount] : whole.spent) most = std::max(most, amount.minor);
    for (const auto& [on, amount] : whole.spent) {
        add({spent_word(on),
             words::money_with_currency(amount),
             {},
             cost,
             false,
             static_cast<double>(amount.minor) / static_cast<double>(most)},
            those([o = on](const auto& a) { return a.spent.contains(o); }));
    }
    add({tr("a parcel, on average"), words::money_with_currency(share(whole.total, 1, count)),
         whole.seconds > 0 ? tr("and %1 minutes of making up and wrapping")
                                 .arg(QLocale().toString(whole.seconds / 60.0 / count, 'f', 1))
                           : QString(),
         cost},
        all);
    add({tr("postage paid by buyers"), words::money_with_currency(whole.paid),
         whole.spent.contains(records::Spent::postage)
             ? tr("against %1 spent").arg(words::money_with_currency(whole.spent.at(records::Spent::postage)))
             : QString(),
         cost},
        those([](const auto& a) { return a.paid.minor > 0; }));
    add_sums(tr("By week"), records::Grouped::week);
    add_sums(tr("By shop"), records::Grouped::shop);
    add_sums(tr("By country"), records::Grouped::country);

    if (const auto empty = whole.empty_permille()) {
        const QString full = tr("How full they were");
        add({tr("empty space in the closed parcels"), percent(*empty),
             tr("our estimate after EU 2025/40, Art. 24, of 19 December 2024: all that is not goods, filler too; the "
                "official method was not adopted when this was written"),
             full, false, *empty / 1000.0},
            all);
        const auto over = those([](const auto& a) { return a.empty_permille().value_or(0) > 500; });
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
    add({tr("off by, on average"), whole.weighed > 0 ? words::weight(whole.off_by()) : QStringLiteral("–"),
         tr("%n parcels were weighed", nullptr, whole.weighed), scale},
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
         tr("they had cost %1").arg(words::money_with_currency(whole.lost)), returned},
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
         tr("they cost %1 more").arg(words::money_with_currency(whole.for_again)), returned},
        resent);
    const auto materials = records::materials(read_.facts, day_.cupboard());
    Weight heaviest{1};
    for (const records::MaterialLine& line : materials) heaviest = std::max(heaviest, line.weight);
    for (const records::MaterialLine& line : materials) {
        add({joined({text(line.country), material_name(line.material)}, QStringLiteral(", ")),
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
        const records::ParcelAccount& a = read_.accounts[i];
        behind.push_back(
            {text(a.number), joined({text(a.order), text(a.shop), text(a.country), words::date(a.packed_on)}),
             words::money_with_currency(a.total),
             joined({a.empty_permille() ? tr("%1 empty").arg(percent(*a.empty_permille())) : QString(),
                     a.weighed ? tr("%1 weighed, %2 expected").arg(words::weight(*a.weighed), words::weight(a.expected))
                               : QString(),
                     overruled_words(a), came_back_words(a), a.again ? tr("sent again") : QString()})});
    }
    behind_.show(std::move(behind));
    emit behindChanged();
}

DraftPaper RecordsController::draft()
{
    const bool any = !read_.accounts.empty();
    return {name_of_paper(text(paper_key::packaging)),
            any ? material_paper(day_, read_.facts, from_, day_.today()) : papers::Document{}, &palette_of(day_),
            tr("Print"), [this] { printFiles(); }};
}

void RecordsController::printFiles()
{
    if (read_.accounts.empty()) return emit said(tr("There is nothing to write yet."));
    const auto file = print_material_report(day_, read_.facts, from_, day_.today(), paper_folder(day_));
    emit said(file ? tr("Packaging of %1, with a table for a register's form: %2").arg(period(), text(file->string()))
                   : tr("The file cannot be written."));
    if (file) emit written(text(paper_key::packaging), text(file->string()));
}

} // namespace stow::view
